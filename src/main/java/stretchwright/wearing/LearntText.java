package stretchwright.wearing;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stretchwright.fabric.Learnt;
import stretchwright.ground.BadInput;
import stretchwright.ground.Findings;
import stretchwright.ground.Part;
import stretchwright.intake.LearntKeys;
import stretchwright.intake.MakeFile;
import stretchwright.make.Make;

/**
 * Writes what was learnt into the text of a make file, in place of what was learnt before, and leaves every other letter. The
 * result is read again; where it does not read as the same make, nothing is written and the lines to add are told.
 */
final class LearntText {
    private LearntText() {}

    static Optional<String> with(String text, Learnt learnt, MakeFile make, Findings findings) {
        List<String> lines = LearntKeys.lines(learnt);
        if (!text.stripLeading().startsWith("{")) {
            String end = text.contains("\r\n") ? "\r\n" : "\n";
            String rest = without(text);
            String whole = rest.isEmpty() || rest.endsWith("\n") ? rest : rest + end;
            String written = whole + String.join(end, lines) + end;
            if (readsAs(written, make)) {
                return Optional.of(written);
            }
        }
        findings.add(
                "learnt", Tell.said("write.not-so"), Tell.said("write.by-hand", Part.text(String.join(" / ", lines))));
        return Optional.empty();
    }

    /** Without the section, as it was before anything was learnt. */
    private static String without(String text) {
        List<String> kept = new ArrayList<>();
        boolean inside = false;
        for (String line : text.split("(?<=\n)", -1)) {
            boolean top = line.matches("(?s)[^\\s#].*");
            inside = top ? line.matches("(?s)[\"']?learnt[\"']?\\s*:.*") : inside && !line.startsWith("#");
            if (!inside) {
                kept.add(line);
            }
        }
        return String.join("", kept);
    }

    private static boolean readsAs(String text, MakeFile make) {
        try {
            MakeFile read = Make.read(make.file(), text.getBytes(StandardCharsets.UTF_8));
            return read.name().equals(make.name())
                    && read.measured().equals(make.measured())
                    && read.style().equals(make.style())
                    && !read.cloth().learnt().isNothing();
        } catch (BadInput e) {
            return false;
        }
    }
}
