package stretchwright.many;

import java.util.ArrayList;
import java.util.List;

/** Rows of a table as text (RFC 4180): cells between separators, quoted where they hold one, quotes doubled inside. */
final class CsvLines {
    private CsvLines() {}

    /**
     * One row.
     *
     * @param line where it begins in the file, from 1
     */
    record Row(int line, List<String> cells) {
        boolean isBlank() {
            return cells.stream().allMatch(String::isBlank);
        }
    }

    /** A semicolon where the first line has one and no comma stands before it, as some countries' tables have. */
    static char separator(String text) {
        String first = text.lines().findFirst().orElse("");
        int semicolon = first.indexOf(';');
        int comma = first.indexOf(',');
        return semicolon >= 0 && (comma < 0 || semicolon < comma) ? ';' : ',';
    }

    static List<Row> rows(String text, char separator) {
        List<Row> rows = new ArrayList<>();
        List<String> cells = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        boolean quoted = false;
        int line = 1;
        int began = 1;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '\n') {
                line++;
            }
            if (quoted) {
                boolean doubled = c == '"' && i + 1 < text.length() && text.charAt(i + 1) == '"';
                if (c == '"' && !doubled) {
                    quoted = false;
                } else {
                    cell.append(c);
                    i += doubled ? 1 : 0;
                }
            } else if (c == '"' && cell.toString().isBlank()) {
                quoted = true;
                cell.setLength(0);
            } else if (c == separator || c == '\n') {
                cells.add(cell.toString().strip());
                cell.setLength(0);
                if (c == '\n') {
                    rows.add(new Row(began, List.copyOf(cells)));
                    cells.clear();
                    began = line;
                }
            } else {
                cell.append(c);
            }
        }
        if (!cell.isEmpty() || !cells.isEmpty()) {
            cells.add(cell.toString().strip());
            rows.add(new Row(began, List.copyOf(cells)));
        }
        rows.removeIf(Row::isBlank);
        return rows;
    }

    /** A cell for writing; a text that a spreadsheet would run as a formula gets a blank before it. */
    static String cell(String text) {
        String safe = !text.isEmpty() && "=+-@".indexOf(text.charAt(0)) >= 0 ? " " + text : text;
        boolean plain = safe.chars().noneMatch(c -> c == ',' || c == '"' || c == '\n' || c == '\r');
        return plain ? safe : '"' + safe.replace("\"", "\"\"") + '"';
    }
}
