package stretchwright.wearing;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import stretchwright.ground.BadInput;
import stretchwright.ground.Findings;
import stretchwright.ground.Part;
import stretchwright.intake.MakeFile;
import stretchwright.intake.WearingEntry;
import stretchwright.intake.WearingKey;
import stretchwright.intake.WearingReader;
import stretchwright.make.Make;

/**
 * Writes an entry into the text of a make file and leaves every other letter as it is. The result is read again; where that
 * does not give the same make with one entry more, nothing is written and the lines to add are told.
 */
final class WearingText {
    private static final Pattern ITEM = Pattern.compile("^( *)-( +)\\S.*");

    private WearingText() {}

    static Optional<String> with(String text, WearingEntry entry, MakeFile changed, Findings findings) {
        if (text.stripLeading().startsWith("{")) {
            findings.add("", Tell.said("write.json"), Tell.said("write.by-hand", Part.text(json(entry))));
            return Optional.empty();
        }
        String end = text.contains("\r\n") ? "\r\n" : "\n";
        Optional<String> written =
                section(text) < 0 ? Optional.of(appended(text, entry, end)) : inserted(text, entry, end);
        Optional<String> good = written.filter(t -> readsAs(t, changed));
        if (good.isEmpty()) {
            findings.add(
                    WearingReader.SECTION,
                    Tell.said("write.not-so"),
                    Tell.said(
                            "write.by-hand",
                            Part.text(
                                    String.join(" / ", lines(entry, "  ", " ")).strip())));
        }
        return good;
    }

    /** Where the section begins, in lines from 0; -1 for none. */
    private static int section(String text) {
        List<String> lines = text.lines().toList();
        for (int i = 0; i < lines.size(); i++) {
            if (lines.get(i).matches("[\"']?after wearing[\"']?\\s*:.*")) {
                return i;
            }
        }
        return -1;
    }

    private static String appended(String text, WearingEntry entry, String end) {
        String whole = text.isEmpty() || text.endsWith("\n") ? text : text + end;
        return whole + end + "after wearing:" + end + String.join(end, lines(entry, "  ", " ")) + end;
    }

    /** Behind the last line of the section, indented as its first entry is. */
    private static Optional<String> inserted(String text, WearingEntry entry, String end) {
        List<String> lines = new ArrayList<>(text.lines().toList());
        int at = section(text);
        int last = -1;
        Matcher item = null;
        for (int i = at + 1; i < lines.size(); i++) {
            String line = lines.get(i);
            boolean outside = !line.isBlank() && line.matches("[^ \\-#].*");
            if (outside) {
                break;
            }
            Matcher m = ITEM.matcher(line);
            if (item == null && m.matches()) {
                item = m;
            }
            last = line.isBlank() || line.startsWith("#") ? last : i;
        }
        if (item == null || last < 0) {
            return Optional.empty();
        }
        int offset = offset(text, last + 1);
        String head = text.substring(0, offset);
        String gap = head.endsWith("\n") ? "" : end;
        return Optional.of(head
                + gap
                + String.join(end, lines(entry, item.group(1), item.group(2)))
                + end
                + text.substring(offset));
    }

    /** Where a line begins; the text's end where there is no such line. */
    private static int offset(String text, int line) {
        int at = 0;
        for (int i = 0; i < line; i++) {
            int next = text.indexOf('\n', at);
            if (next < 0) {
                return text.length();
            }
            at = next + 1;
        }
        return at;
    }

    private static List<String> lines(WearingEntry entry, String indent, String gap) {
        String inner = indent + " " + gap;
        List<String> out = new ArrayList<>();
        out.add(indent + "-" + gap + "date: " + entry.date());
        out.add(inner + "symptom: " + entry.symptom());
        if (!entry.answer().isEmpty()) {
            out.add(inner + "answer: \"" + entry.answer() + "\"");
        }
        out.add(inner + "change: " + entry.changeText());
        return out;
    }

    private static String json(WearingEntry entry) {
        StringBuilder change = new StringBuilder();
        for (Map.Entry<WearingKey, Double> e : entry.change().entrySet()) {
            change.append(change.isEmpty() ? "" : ", ")
                    .append('"')
                    .append(e.getKey().word())
                    .append("\": \"")
                    .append(e.getKey().shown(e.getValue()))
                    .append('"');
        }
        String answer = entry.answer().isEmpty() ? "" : "\"answer\": \"" + entry.answer() + "\", ";
        return "\"after wearing\": [{\"date\": \"" + entry.date() + "\", \"symptom\": \"" + entry.symptom() + "\", "
                + answer + "\"change\": {" + change + "}}]";
    }

    private static boolean readsAs(String text, MakeFile make) {
        try {
            MakeFile read = Make.read(make.file(), text.getBytes(StandardCharsets.UTF_8));
            return read.worn().equals(make.worn())
                    && read.name().equals(make.name())
                    && read.measured().equals(make.measured())
                    && read.machines().equals(make.machines())
                    && read.boot().equals(make.boot());
        } catch (BadInput e) {
            return false;
        }
    }
}
