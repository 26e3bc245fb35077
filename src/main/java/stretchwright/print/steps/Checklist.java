package stretchwright.print.steps;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.HexFormat;
import java.util.List;
import java.util.Objects;
import stretchwright.ground.Document;
import stretchwright.print.kit.Job;
import stretchwright.print.kit.Phrases;
import stretchwright.print.kit.SvgCanvas;
import stretchwright.sewing.SewingPlan.Operation;

/**
 * The plan as one page for a telephone at the machine: a step at a time, a tap goes on. Nothing is fetched; only this
 * page's own style and script may run, told apart by their hashes (Content Security Policy Level 3). Names are escaped.
 */
public final class Checklist {
    private static final String STYLE = resource("checklist.css") + SvgCanvas.styles();
    private static final String SCRIPT = resource("checklist.js");

    private Checklist() {}

    public static Document of(Job job) {
        List<Operation> steps = job.sewing().operations();
        StringBuilder page = new StringBuilder();
        head(page, job, steps.size());
        steps.forEach(o -> step(page, job, o));
        page.append("</main>\n<nav aria-label=\"")
                .append(SvgCanvas.escaped(Phrases.of("checklist.steps")))
                .append("\">");
        button(page, "back", Phrases.of("checklist.back"));
        button(page, "next", Phrases.of("checklist.next"));
        page.append("</nav>\n<script>").append(SCRIPT).append("</script>\n</body>\n</html>\n");
        return new Document(
                "checklist.html", "sewing checklist", 1, page.toString().getBytes(StandardCharsets.UTF_8));
    }

    private static void button(StringBuilder page, String id, String words) {
        page.append("<button type=\"button\" id=\"").append(id).append("\">");
        page.append(SvgCanvas.escaped(words)).append("</button>");
    }

    private static void head(StringBuilder page, Job job, int count) {
        page.append("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n")
                .append("<meta http-equiv=\"Content-Security-Policy\" content=\"")
                .append(policy())
                .append("\">\n<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n<title>")
                .append(SvgCanvas.escaped(Phrases.of("checklist.title", job.make())))
                .append("</title>\n<style>")
                .append(STYLE)
                .append("</style>\n</head>\n<body data-key=\"")
                .append(SvgCanvas.escaped(key(job)))
                .append("\">\n<header>\n<h1><bdi>")
                .append(SvgCanvas.escaped(job.make()))
                .append("</bdi></h1>\n<p id=\"where\" role=\"status\">")
                .append(SvgCanvas.escaped(Phrases.of("checklist.count", String.valueOf(count))))
                .append("</p>\n<progress max=\"")
                .append(Math.max(1, count))
                .append("\" value=\"0\" aria-label=\"")
                .append(SvgCanvas.escaped(Phrases.of("checklist.progress")))
                .append("\"></progress>\n</header>\n<main>\n");
    }

    private static void step(StringBuilder page, Job job, Operation o) {
        int n = o.step();
        StepWords words = StepWords.of(job);
        page.append("<section aria-labelledby=\"t").append(n).append("\">\n<h2 id=\"t");
        page.append(n).append("\" tabindex=\"-1\">").append(SvgCanvas.escaped(words.title(o)));
        page.append("</h2>\n<label class=\"tick\"><input type=\"checkbox\" aria-label=\"");
        page.append(SvgCanvas.escaped(Phrases.of("checklist.step-done", String.valueOf(n))));
        page.append("\"> ")
                .append(SvgCanvas.escaped(Phrases.of("checklist.done")))
                .append("</label>\n");
        paragraph(page, "more", words.work(o));
        paragraph(page, "more", words.setting(o));
        paragraph(page, "more", words.allowance(o));
        if (StepDrawing.shows(job, o)) {
            page.append(StepDrawing.inline(job, o));
        }
        paragraph(page, "do", words.instruction(o));
        for (String said : List.of(
                words.spread(o), words.check(o), words.mistake(o), words.undo(o), words.demand(o), words.why(o))) {
            paragraph(page, "more", said);
        }
        page.append("</section>\n");
    }

    private static void paragraph(StringBuilder page, String cssClass, String words) {
        if (!words.isEmpty()) {
            page.append("<p class=\"").append(cssClass).append("\">");
            page.append(SvgCanvas.escaped(words)).append("</p>\n");
        }
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
