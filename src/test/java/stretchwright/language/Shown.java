package stretchwright.language;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.text.PDFTextStripper;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What people read of a file: the text of pages, drawings and paper, what is printed, and the sentences of a report. */
final class Shown {
    private static final Pattern UNSEEN = Pattern.compile("<(script|style)\\b.*?</\\1>", Pattern.DOTALL);
    private static final Pattern COMMENT = Pattern.compile("<!--.*?-->|<\\?.*?\\?>|<!DOCTYPE[^>]*>", Pattern.DOTALL);
    private static final Pattern SPOKEN =
            Pattern.compile("\\b(?:alt|title|aria-label|data-(?:at|all|next|last))=\"([^\"]*)\"");
    private static final Pattern TAG = Pattern.compile("<[^>]*>");

    private Shown() {}

    /** Nothing for files that nobody reads. */
    static List<String> of(Path file) throws IOException {
        String name = file.getFileName().toString();
        String kind = name.substring(name.lastIndexOf('.') + 1);
        return switch (kind) {
            case "out", "err" -> printed(Files.readString(file));
            case "html", "svg" -> markup(Files.readString(file));
            case "pdf" -> paper(file);
            case "json" -> sentences(JsonMapper.builder().build().readTree(Files.readAllBytes(file)));
            case "md" -> List.of(Files.readString(file));
            default -> List.of();
        };
    }

    /** Without the first line, which is the command itself; a table of bodies or a report on standard output is read as such. */
    private static List<String> printed(String text) {
        String rest = text.substring(text.indexOf('\n') + 1).strip();
        boolean json = rest.startsWith("{") || rest.startsWith("[");
        return json
                ? sentences(JsonMapper.builder().build().readTree(rest))
                : List.of(rest.lines().map(Shown::cutShort).collect(Collectors.joining("\n")));
    }

    /** The name of a row that is cut short to fit its column has lost the marks at its end. */
    private static String cutShort(String line) {
        int dots = line.indexOf("...");
        if (dots < 0) {
            return line;
        }
        long open = line.chars()
                        .limit(dots)
                        .filter(c -> c == PseudoBundles.OPEN)
                        .count()
                - line.chars().limit(dots).filter(c -> c == PseudoBundles.SHUT).count();
        String shut = String.valueOf(PseudoBundles.SHUT).repeat((int) Math.max(0, open));
        boolean row = line.startsWith("  ") && open > 0;
        return row ? line.substring(0, dots) + shut + line.substring(dots) : line;
    }

    private static List<String> markup(String text) {
        String seen = COMMENT.matcher(UNSEEN.matcher(text).replaceAll(" ")).replaceAll(" ");
        List<String> out = new ArrayList<>();
        Matcher spoken = SPOKEN.matcher(seen);
        while (spoken.find()) {
            out.add(plain(spoken.group(1)));
        }
        // words of one sentence may stand in several elements, line below line
        out.add(plain(TAG.matcher(seen.replaceAll("(?i)</?(b|bdi|a|strong|span|tspan|em)\\b[^>]*>", ""))
                .replaceAll("\n")));
        return out;
    }

    private static String plain(String html) {
        return html.replace("&lt;", "<")
                .replace("&gt;", ">")
                .replace("&quot;", "\"")
                .replace("&#34;", "\"")
                .replace("&#39;", "'")
                .replace("&amp;", "&");
    }

    private static List<String> paper(Path file) throws IOException {
        try (PDDocument document = Loader.loadPDF(file.toFile())) {
            List<String> out = new ArrayList<>();
            PDFTextStripper stripper = new PDFTextStripper();
            for (int page = 1; page <= document.getNumberOfPages(); page++) {
                stripper.setStartPage(page);
                stripper.setEndPage(page);
                out.add(stripper.getText(document));
            }
            String title = document.getDocumentInformation().getTitle();
            out.add(title == null ? "" : title);
            var outline = document.getDocumentCatalog().getDocumentOutline();
            if (outline != null) {
                for (PDOutlineItem item : outline.children()) {
                    out.add(item.getTitle());
                }
            }
            return out;
        }
    }

    /** The values of a report that are told to people; the others are names and words for programs. */
    private static List<String> sentences(JsonNode root) {
        List<String> out = new ArrayList<>();
        walk("", "", root, out);
        return out;
    }

    private static void walk(String inside, String key, JsonNode node, List<String> out) {
        if (node.isString() && !Contract.holds(inside, key)) {
            out.add(node.asString());
        } else if (node.isArray()) {
            node.forEach(child -> walk(inside, key, child, out));
        } else if (node.isObject()) {
            node.properties().forEach(entry -> walk(key, entry.getKey(), entry.getValue(), out));
        }
    }
}
