package stretchwright.print.steps;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.Utf8ByteOutput;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.HexFormat;
import java.util.Objects;
import stretchwright.ground.Document;
import stretchwright.print.kit.Job;
import stretchwright.print.kit.Phrases;
import stretchwright.print.kit.SvgCanvas;

/**
 * The plan as one page for a telephone at the machine: a step at a time, a tap goes on. Nothing is fetched; only this
 * page's own style and script may run, told apart by their hashes (Content Security Policy Level 3). Names are escaped.
 */
public final class Checklist {
    private static final String STYLE = resource("checklist.css") + SvgCanvas.styles();
    private static final String SCRIPT = resource("checklist.js");

    private static final TemplateEngine PAGES =
            TemplateEngine.createPrecompiled(null, ContentType.Html, null, "stretchwright.print.steps.pages");

    private Checklist() {}

    public static Document of(Job job) {
        ChecklistPage page = new ChecklistPage(
                key(job),
                policy(),
                STYLE,
                SCRIPT,
                job.make(),
                Phrases.of("checklist.title", job.make()),
                job.sewing().operations().stream()
                        .map(o -> ChecklistPage.Step.of(job, o))
                        .toList());
        Utf8ByteOutput out = new Utf8ByteOutput();
        PAGES.render("checklist.jte", page, out);
        return new Document("checklist.html", "sewing checklist", 1, out.toByteArray());
    }

    private static String policy() {
        Base64.Encoder base64 = Base64.getEncoder();
        return "default-src 'none'; style-src 'sha256-" + base64.encodeToString(hash(STYLE))
                + "'; script-src 'sha256-" + base64.encodeToString(hash(SCRIPT))
                + "'; base-uri 'none'; form-action 'none'";
    }

    /** Under which the place is remembered: another make, or another plan of the same make, starts anew. */
    static String key(Job job) {
        String plan = job.sewing().operations().toString();
        return "stretchwright " + job.make() + " "
                + HexFormat.of().formatHex(hash(plan)).substring(0, 16);
    }

    private static byte[] hash(String text) {
        try {
            return MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    private static String resource(String name) {
        try (InputStream in =
                Objects.requireNonNull(Checklist.class.getResourceAsStream("/stretchwright/print/" + name))) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(name + " could not be read", e);
        }
    }
}
