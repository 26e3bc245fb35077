package stretchwright.make;

import java.math.BigDecimal;
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

/**
 * Many bodies at once. In: a table with a header row of terms, one body a row. Out: every measure of the good rows with
 * its spread as another table, and findings by row and column of the broken ones. Pure.
 *
 * @param bodies how many good rows
 */
public record BodyTable(Document document, int bodies, List<Finding> findings) {
    /** How a table written here begins. */
    public static final String FIRST_WORDS = "row,name,figure,age,unit,stature,stature origin,stature spread";

    /** 100,000 rows of all measures have about 12 MB. */
    public static final int LARGEST = 64 * 1024 * 1024;

    private static final List<String> OTHER = List.of("name", "figure", "age", "unit");

    public BodyTable {
        findings = List.copyOf(findings);
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
            findings.add("--unit", Section.quoted(unit.get()) + " is no unit known here.", "Choose: mm, cm, in.");
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
        StringBuilder out = new StringBuilder(heading()).append('\n');
        int good = 0;
        for (CsvLines.Row row : rows.subList(1, rows.size())) {
            Findings aboutRow = new Findings(fileName);
            Optional<String> line = new Reading(header, row, usual, aboutRow).line();
            line.ifPresent(l -> out.append(l).append('\n'));
            good += line.isPresent() ? 1 : 0;
            aboutRow.all().forEach(f -> findings.add(f.key(), f.problem(), f.remedy()));
        }
        byte[] csv = out.toString().getBytes(StandardCharsets.UTF_8);
        return new BodyTable(new Document("bodies.csv", "bodies", 1, csv), good, findings.all());
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
                findings.add("header", Section.quoted(word) + " is not a column that is known here.", remedy);
            } else if (!seen.add(word)) {
                findings.add("header", Section.quoted(word) + " stands twice.", "Keep one of them.");
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
        private final Findings findings;

        Reading(List<String> header, CsvLines.Row row, Optional<Unit> usual, Findings findings) {
            this.header = header;
            this.row = row;
            this.usual = usual;
            this.findings = findings;
        }

        Optional<String> line() {
            if (row.cells().size() > header.size()) {
                add("", "has " + row.cells().size() + " cells; the header has " + header.size() + ".", "");
                return Optional.empty();
            }
            Optional<Figure> figure = Arrays.stream(Figure.values())
                    .filter(f -> f.word().equals(cell("figure")))
                    .findFirst();
            if (figure.isEmpty()) {
                add("figure", Section.quoted(cell("figure")) + " is no figure.", "Choose: woman, man, child.");
            }
            OptionalDouble age = age();
            Map<Measure, Double> given = measures();
            if (!findings.isEmpty()) {
                return Optional.empty();
            }
            Findings aboutBody = new Findings("");
            Optional<Body> body = Measuring.body(Measured.of(figure.orElseThrow(), age, given), aboutBody);
            aboutBody
                    .all()
                    .forEach(f ->
                            add(f.key().replaceFirst("^wearer\\.(measurements\\.?)?", ""), f.problem(), f.remedy()));
            return body.map(this::line);
        }

        private String cell(String column) {
            int at = header.indexOf(column);
            return at < 0 || at >= row.cells().size() ? "" : row.cells().get(at);
        }

        private OptionalDouble age() {
            String text = cell("age");
            OptionalDouble age = text.isEmpty() ? OptionalDouble.empty() : Quantities.number(text);
            if (!text.isEmpty() && (age.isEmpty() || !Limits.AGE.holds(age.getAsDouble()))) {
                add("age", Section.quoted(text) + " is no age in years.", "Write the years: 31, or leave it empty.");
            }
            return age;
        }

        private Map<Measure, Double> measures() {
            Optional<Unit> unit = cell("unit").isEmpty() ? usual : unit(cell("unit"));
            if (!cell("unit").isEmpty() && unit.isEmpty()) {
                add("unit", Section.quoted(cell("unit")) + " is no unit known here.", "Choose: mm, cm, in.");
            }
            Map<Measure, Double> given = new EnumMap<>(Measure.class);
            for (Measure measure : Measure.values()) {
                String text = cell(measure.term());
                if (text.isEmpty()) {
                    continue;
                }
                if (unit.isEmpty() && Quantities.number(text).isPresent()) {
                    add(
                            measure.term(),
                            Section.quoted(text) + " has no unit.",
                            "Name one: --unit cm, or a column unit.");
                    continue;
                }
                OptionalDouble mm = Quantities.length(text, unit.orElse(Unit.MM));
                if (mm.isEmpty() || !Limits.MEASUREMENT.holds(mm.getAsDouble())) {
                    add(
                            measure.term(),
                            Section.quoted(text) + " is no measure of a body.",
                            "A length from 10 to 2750 mm is wanted, or an empty cell.");
                } else {
                    given.put(measure, mm.getAsDouble());
                }
            }
            return given;
        }

        private void add(String column, String problem, String remedy) {
            String key = "row " + row.line() + (column.isEmpty() ? "" : ", column " + column);
            findings.add(key, problem, remedy);
        }

        private String line(Body body) {
            StringBuilder line = new StringBuilder();
            line.append(row.line())
                    .append(',')
                    .append(CsvLines.cell(cell("name")))
                    .append(',');
            line.append(body.figure().word())
                    .append(',')
                    .append(cell("age").replace(',', '.'))
                    .append(",mm");
            for (Measure measure : Measure.values()) {
                Value value = body.value(measure);
                line.append(',').append(plain(value.mm()));
                line.append(value.origin() == Value.Origin.GIVEN ? ",given," : ",estimated,");
                line.append(plain(value.spread()));
            }
            return line.toString();
        }

        private static String plain(double mm) {
            BigDecimal short_ = Numbers.rounded(mm, 1);
            return short_.toPlainString();
        }
    }
}
