package stretchwright.many;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import stretchwright.body.Body;
import stretchwright.body.Measure;
import stretchwright.body.Value;
import stretchwright.ground.BadInput;
import stretchwright.ground.Document;
import stretchwright.ground.Finding;
import stretchwright.ground.Findings;
import stretchwright.ground.Numbers;
import stretchwright.ground.Said;
import stretchwright.ground.Unit;
import stretchwright.ground.Voice;
import stretchwright.intake.MakeFile;
import stretchwright.report.Report;
import stretchwright.report.ReportWearer;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * Many bodies at once. In: a table with a header row of terms, one body a row. Out: every measure of the good rows with
 * its spread as another table or as JSON, and findings by row and column of the broken ones. Pure.
 */
public record BodyTable(String file, List<Good> good, List<Broken> broken) {
    /** One good row: its line in the table, the name as written, the age with a decimal point. */
    public record Good(int row, String name, String age, Body body) {}

    /** What is wrong in one row; the column is empty where it is the row as a whole. */
    public record Broken(int row, String column, Said wrong, Said right, Unit unit) {
        /** In words. */
        public String problem() {
            return Voice.of(unit).say(wrong);
        }

        /** In words. */
        public String remedy() {
            return Voice.of(unit).say(right);
        }
    }

    /** How a table written here begins. */
    public static final String FIRST_WORDS = "row,name,figure,age,unit,stature,stature origin,stature spread";

    /** 100,000 rows of all measures have about 12 MB. */
    public static final int LARGEST = 64 * 1024 * 1024;

    public BodyTable {
        good = List.copyOf(good);
        broken = List.copyOf(broken);
    }

    /**
     * Reads and estimates.
     *
     * @param unit of bare numbers where the row names none, checked before; empty: a row or cell must
     * @throws BadInput where the header cannot be used: then no row was looked at
     */
    public static BodyTable of(String fileName, byte[] bytes, Optional<String> unit) {
        BodyRows rows = BodyRows.of(fileName, bytes, unit);
        List<Broken> broken = new ArrayList<>();
        for (BodyRows.Refused row : rows.refused()) {
            row.problems()
                    .forEach(p -> broken.add(new Broken(row.line(), p.column(), p.wrong(), p.right(), row.unit())));
        }
        return new BodyTable(
                fileName,
                rows.rows().stream()
                        .map(r -> new Good(r.line(), r.name(), r.age(), r.body()))
                        .toList(),
                broken);
    }

    /** A finding where the word behind --unit is no unit that bodies are measured in. */
    public static void checkUnit(Optional<String> word, Findings findings) {
        word.filter(w -> BodyRows.unit(w).isEmpty())
                .ifPresent(w ->
                        findings.add("--unit", Tell.said("unit.unknown", Tell.quoted(w)), Tell.said("unit.choose")));
    }

    /** By row and column, for people. */
    public List<Finding> findings() {
        return broken.stream()
                .map(b -> new Finding(file, Tell.at(b.row, b.column), 0, b.wrong, b.right, b.unit))
                .toList();
    }

    /** The good rows as another table. */
    public Document document() {
        StringBuilder out = new StringBuilder(heading()).append('\n');
        good.forEach(g -> out.append(line(g)).append('\n'));
        return new Document("bodies.csv", "bodies", 1, out.toString().getBytes(StandardCharsets.UTF_8));
    }

    /** Good and broken rows in one, for other programs; mm. */
    public String json() {
        ObjectNode out = Report.node();
        out.put("bodyTable", MakeFile.VERSION);
        ArrayNode bodies = out.putArray("bodies");
        for (Good g : good) {
            ObjectNode one = bodies.addObject();
            one.put("row", g.row)
                    .put("name", g.name)
                    .put("figure", g.body.figure().word());
            g.body.age().ifPresent(age -> one.put("age", Numbers.mm(age)));
            ObjectNode measurements = one.putObject("measurements");
            g.body.values().forEach((m, value) -> ReportWearer.value(measurements.putObject(m.term()), value));
        }
        ArrayNode list = out.putArray("broken");
        broken.forEach(b -> list.addObject()
                .put("row", b.row)
                .put("column", b.column)
                .put("problem", b.problem())
                .put("remedy", b.remedy()));
        return Report.text(out);
    }

    private static String line(Good good) {
        StringBuilder line = new StringBuilder();
        line.append(good.row).append(',').append(CsvLines.cell(good.name)).append(',');
        line.append(good.body.figure().word()).append(',').append(good.age).append(",mm");
        for (Measure measure : Measure.values()) {
            Value value = good.body.value(measure);
            line.append(',').append(Numbers.rounded(value.mm(), 1).toPlainString());
            line.append(value.origin() == Value.Origin.GIVEN ? ",given," : ",estimated,");
            line.append(Numbers.rounded(value.spread(), 1).toPlainString());
        }
        return line.toString();
    }

    private static String heading() {
        return "row,name,figure,age,unit,"
                + Arrays.stream(Measure.values())
                        .map(m -> m.term() + "," + m.term() + " origin," + m.term() + " spread")
                        .collect(Collectors.joining(","));
    }
}
