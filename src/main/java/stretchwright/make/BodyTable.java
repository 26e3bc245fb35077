package stretchwright.make;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import stretchwright.body.Body;
import stretchwright.body.Figure;
import stretchwright.body.Measure;
import stretchwright.body.Measured;
import stretchwright.body.Measuring;
import stretchwright.body.Value;
import stretchwright.ground.BadInput;
import stretchwright.ground.Finding;
import stretchwright.ground.Findings;
import stretchwright.ground.Quantities;
import stretchwright.ground.Unit;
import stretchwright.print.Document;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * Many bodies at once. In: a table with a header row of terms, one body a row. Out: every measure of the good rows with
 * its spread as another table or as JSON, and findings by row and column of the broken ones. Pure.
 */
public record BodyTable(String file, List<Good> good, List<Broken> broken) {
    /** One good row: its line in the table, the name and age as written. */
    public record Good(int row, String name, String age, Body body) {}

    /** What is wrong in one row; the column is empty where it is the row as a whole. */
    public record Broken(int row, String column, String problem, String remedy) {}

    /** How a table written here begins. */
    public static final String FIRST_WORDS = "row,name,figure,age,unit,stature,stature origin,stature spread";

    /** 100,000 rows of all measures have about 12 MB. */
    public static final int LARGEST = 64 * 1024 * 1024;

    private static final List<String> OTHER = List.of("name", "figure", "age", "unit");

    public BodyTable {
        good = List.copyOf(good);
        broken = List.copyOf(broken);
    }

    /**
     * Reads and estimates.
     *
     * @param unit of bare numbers where the row names none; empty: a row or cell must
     * @throws BadInput where the header cannot be used: then no row was looked at
     */
    public static BodyTable of(String fileName, byte[] bytes, Optional<String> unit) {
        Findings findings = new Findings(fileName);
        Optional<Unit> usual = unit.flatMap(BodyTable::unit);
        if (unit.isPresent() && usual.isEmpty()) {
            findings.add("--unit", Echo.quoted(unit.get()) + " is no unit known here.", "Choose: mm, cm, in.");
        }
        String text = Make.utf8(bytes, findings).orElse("");
        char separator = CsvLines.separator(text);
        List<CsvLines.Row> rows = CsvLines.rows(text, separator);
        findings.throwIfAny();
        if (rows.size() < 2) {
            findings.add(
                    "", "holds no row under a header.", "Begin with a row of terms: name,figure,stature,hip girth");
            findings.throwIfAny();
        }
        List<String> header = rows.get(0).cells();
        header(header, findings);
        findings.throwIfAny();
        List<Good> good = new ArrayList<>();
        List<Broken> broken = new ArrayList<>();
        for (CsvLines.Row row : rows.subList(1, rows.size())) {
            new Reading(header, row, usual, broken).good().ifPresent(good::add);
        }
        return new BodyTable(fileName, good, broken);
    }

    /** By row and column, for people. */
    public List<Finding> findings() {
        return broken.stream()
                .map(b -> new Finding(
                        file, "row " + b.row + (b.column.isEmpty() ? "" : ", column " + b.column), b.problem, b.remedy))
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
                .put("problem", b.problem)
                .put("remedy", b.remedy));
        return Report.text(out);
    }

    private static String line(Good good) {
        StringBuilder line = new StringBuilder();
        line.append(good.row).append(',').append(CsvLines.cell(good.name)).append(',');
        line.append(good.body.figure().word())
                .append(',')
                .append(good.age.replace(',', '.'))
                .append(",mm");
        for (Measure measure : Measure.values()) {
            Value value = good.body.value(measure);
            line.append(',').append(Numbers.rounded(value.mm(), 1).toPlainString());
            line.append(value.origin() == Value.Origin.GIVEN ? ",given," : ",estimated,");
            line.append(Numbers.rounded(value.spread(), 1).toPlainString());
        }
        return line.toString();
    }

    private static void header(List<String> header, Findings findings) {
        List<String> known = new ArrayList<>(OTHER);
        Arrays.stream(Measure.values()).map(Measure::term).forEach(known::add);
        Set<String> seen = new HashSet<>();
        for (String word : header) {
            if (!known.contains(word)) {
                String remedy = Nearest.to(word, known)
                        .map(n -> "Is \"" + n + "\" meant?")
                        .orElse("Known are: " + String.join(", ", known) + ".");
                findings.add("header", Echo.quoted(word) + " is not a column that is known here.", remedy);
            } else if (!seen.add(word)) {
                findings.add("header", Echo.quoted(word) + " stands twice.", "Keep one of them.");
            }
        }
        if (!seen.contains("figure")) {
            findings.add("header", "there is no column \"figure\".", "Each row needs woman, man or child.");
        }
    }

    private static String heading() {
        return "row,name,figure,age,unit,"
                + Arrays.stream(Measure.values())
                        .map(m -> m.term() + "," + m.term() + " origin," + m.term() + " spread")
                        .collect(Collectors.joining(","));
    }

    private static Optional<Unit> unit(String word) {
        return Unit.of(word).filter(u -> u == Unit.MM || u == Unit.CM || u == Unit.IN);
    }

    /** One row on its way to a body. */
    private static final class Reading {
        private final List<String> header;
        private final CsvLines.Row row;
        private final Optional<Unit> usual;
        private final List<Broken> broken;

        Reading(List<String> header, CsvLines.Row row, Optional<Unit> usual, List<Broken> broken) {
            this.header = header;
            this.row = row;
            this.usual = usual;
            this.broken = broken;
        }

        Optional<Good> good() {
            int before = broken.size();
            if (row.cells().size() > header.size()) {
                add("", "has " + row.cells().size() + " cells; the header has " + header.size() + ".", "");
                return Optional.empty();
            }
            Optional<Figure> figure = Arrays.stream(Figure.values())
                    .filter(f -> f.word().equals(cell("figure")))
                    .findFirst();
            if (figure.isEmpty()) {
                add("figure", Echo.quoted(cell("figure")) + " is no figure.", "Choose: woman, man, child.");
            }
            OptionalDouble age = age();
            Map<Measure, Double> given = measures();
            if (broken.size() > before) {
                return Optional.empty();
            }
            Findings aboutBody = new Findings("");
            Optional<Body> body = Measuring.body(Measured.of(figure.orElseThrow(), age, given), aboutBody);
            OwnUnit.findings(aboutBody.all(), unit().orElse(Unit.MM))
                    .forEach(f ->
                            add(f.key().replaceFirst("^wearer\\.(measurements\\.?)?", ""), f.problem(), f.remedy()));
            return body.map(b -> new Good(row.line(), cell("name"), cell("age"), b));
        }

        private String cell(String column) {
            int at = header.indexOf(column);
            return at < 0 || at >= row.cells().size() ? "" : row.cells().get(at);
        }

        private OptionalDouble age() {
            String text = cell("age");
            OptionalDouble age = text.isEmpty() ? OptionalDouble.empty() : Quantities.number(text);
            if (!text.isEmpty() && (age.isEmpty() || !Limits.AGE.holds(age.getAsDouble()))) {
                add("age", Echo.quoted(text) + " is no age in years.", "Write the years: 31, or leave it empty.");
            }
            return age;
        }

        private Optional<Unit> unit() {
            return cell("unit").isEmpty() ? usual : BodyTable.unit(cell("unit"));
        }

        private Map<Measure, Double> measures() {
            Optional<Unit> unit = unit();
            if (!cell("unit").isEmpty() && unit.isEmpty()) {
                add("unit", Echo.quoted(cell("unit")) + " is no unit known here.", "Choose: mm, cm, in.");
            }
            Map<Measure, Double> given = new EnumMap<>(Measure.class);
            for (Measure measure : Measure.values()) {
                String text = cell(measure.term());
                if (text.isEmpty()) {
                    continue;
                }
                if (unit.isEmpty() && Quantities.number(text).isPresent()) {
                    add(measure.term(), Echo.quoted(text) + " has no unit.", "Name one: --unit cm, or a column unit.");
                    continue;
                }
                OptionalDouble mm = Quantities.length(text, unit.orElse(Unit.MM));
                if (mm.isEmpty() || !Limits.MEASUREMENT.holds(mm.getAsDouble())) {
                    add(
                            measure.term(),
                            Echo.quoted(text) + " is no measure of a body.",
                            "A length from 10 to 2750 mm is wanted, or an empty cell.");
                } else {
                    given.put(measure, mm.getAsDouble());
                }
            }
            return given;
        }

        private void add(String column, String problem, String remedy) {
            broken.add(new Broken(row.line(), column, problem, remedy));
        }
    }
}
