package stretchwright.many;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import stretchwright.body.Body;
import stretchwright.body.Figure;
import stretchwright.body.Measure;
import stretchwright.body.Measured;
import stretchwright.body.Measuring;
import stretchwright.ground.BadInput;
import stretchwright.ground.Findings;
import stretchwright.ground.Quantities;
import stretchwright.ground.Unit;
import stretchwright.ground.Voice;
import stretchwright.intake.Echo;
import stretchwright.intake.Nearest;
import stretchwright.intake.NameKind;
import stretchwright.intake.WearerKeys;
import stretchwright.make.Make;

/**
 * The rows of a table as bodies. In: CSV with a header of our terms, or of a public survey (SurveyColumns). Out: the good
 * rows, estimated where not measured; findings by row and column of the others. Pure.
 *
 * @param read how many rows were looked at
 */
record BodyRows(List<Row> rows, int read, List<Refused> refused) {
    static final List<String> OTHER = List.of("name", "figure", "age", "unit");

    /**
     * A good row.
     *
     * @param line in the file, from 1
     * @param name may be empty
     * @param age as written, a decimal comma as a point; may be empty
     */
    record Row(int line, String name, String age, Body body) {
        /** How people find it again: its name, or else its line. */
        String label() {
            return name.isEmpty() ? "row " + line : name;
        }
    }

    /** A broken row: what is wrong with it, in order of the columns. */
    record Refused(int line, List<Problem> problems) {}

    /** One thing wrong; column is empty where it is about the whole row. */
    record Problem(String column, String problem, String remedy) {}

    BodyRows {
        rows = List.copyOf(rows);
        refused = List.copyOf(refused);
    }

    /**
     * Reads and estimates.
     *
     * @param unit of bare numbers where the row names none; empty: a row or cell must. A survey's are in mm.
     * @throws BadInput where the header cannot be used: then no row was looked at
     */
    static BodyRows of(String fileName, byte[] bytes, Optional<String> unit) {
        Findings findings = new Findings(fileName);
        Optional<Unit> usual = unit.flatMap(BodyRows::unit);
        if (unit.isPresent() && usual.isEmpty()) {
            findings.add("--unit", Echo.quoted(unit.get()) + " is no unit known here.", "Choose: mm, cm, in.");
        }
        String text = Make.utf8(bytes, findings).orElse("");
        List<CsvLines.Row> lines = CsvLines.rows(text, CsvLines.separator(text));
        findings.throwIfAny();
        if (lines.size() < 2) {
            findings.add(
                    "", "holds no row under a header.", "Begin with a row of terms: name,figure,stature,hip girth");
            findings.throwIfAny();
        }
        List<String> names = lines.get(0).cells();
        List<String> header = names;
        boolean survey = SurveyColumns.is(header);
        if (survey) {
            header = SurveyColumns.inOurWords(header);
            usual = Optional.of(Unit.MM);
        } else {
            terms(header, findings);
        }
        if (findings.isEmpty() && !SurveyColumns.hasMeasure(header)) {
            findings.add(
                    "header", "no column holds a measure that is known here.", "One is enough: stature, hip girth.");
        }
        findings.throwIfAny();
        return read(names, header, lines.subList(1, lines.size()), usual);
    }

    private static BodyRows read(
            List<String> names, List<String> header, List<CsvLines.Row> lines, Optional<Unit> usual) {
        List<Row> good = new ArrayList<>();
        List<Refused> refused = new ArrayList<>();
        for (CsvLines.Row line : lines) {
            Reading reading = new Reading(names, header, line, usual);
            reading.row().ifPresent(good::add);
            if (!reading.problems.isEmpty()) {
                refused.add(new Refused(line.line(), List.copyOf(reading.problems)));
            }
        }
        return new BodyRows(good, lines.size(), refused);
    }

    /** Everything wrong with the rows, under "row 7, column hip girth". */
    void findings(Findings findings) {
        for (Refused row : refused) {
            for (Problem p : row.problems) {
                String key = "row " + row.line + (p.column.isEmpty() ? "" : ", column " + p.column);
                findings.add(key, p.problem, p.remedy);
            }
        }
    }

    private static void terms(List<String> header, Findings findings) {
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

    private static Optional<Unit> unit(String word) {
        return Unit.of(word).filter(u -> u == Unit.MM || u == Unit.CM || u == Unit.IN);
    }

    /** One row on its way to a body; names are the columns as the file has them, header the same in our words. */
    private static final class Reading {
        private final List<String> names;
        private final List<String> header;
        private final CsvLines.Row row;
        private final Optional<Unit> usual;
        private final List<Problem> problems = new ArrayList<>();

        Reading(List<String> names, List<String> header, CsvLines.Row row, Optional<Unit> usual) {
            this.names = names;
            this.header = header;
            this.row = row;
            this.usual = usual;
        }

        Optional<Row> row() {
            if (row.cells().size() > header.size()) {
                add("", "has " + row.cells().size() + " cells; the header has " + header.size() + ".", "");
                return Optional.empty();
            }
            if (!NameKind.isName(cell("name"))) {
                add("name", Voice.plain().say(NameKind.isNot()), Voice.plain().say(NameKind.write()));
            }
            OptionalDouble age = age();
            Optional<Figure> figure = names.equals(header) ? figure() : sex(age);
            Map<Measure, Double> given = measures();
            if (!problems.isEmpty()) {
                return Optional.empty();
            }
            Findings aboutBody = new Findings("");
            Optional<Body> body = Measuring.body(Measured.of(figure.orElseThrow(), age, given), aboutBody);
            aboutBody
                    .all()
                    .forEach(f ->
                            add(f.key().replaceFirst("^wearer\\.(measurements\\.?)?", ""), f.problem(), f.remedy()));
            return body.map(b -> new Row(row.line(), cell("name"), cell("age").replace(',', '.'), b));
        }

        private Optional<Figure> figure() {
            Optional<Figure> figure = Arrays.stream(Figure.values())
                    .filter(f -> f.word().equals(cell("figure")))
                    .findFirst();
            if (figure.isEmpty()) {
                add("figure", Echo.quoted(cell("figure")) + " is no figure.", "Choose: woman, man, child.");
            }
            return figure;
        }

        /** A survey says F or M; the age decides whether that is a child. */
        private Optional<Figure> sex(OptionalDouble age) {
            String sex = cell("figure");
            if (!sex.equals("F") && !sex.equals("M")) {
                add("figure", Echo.quoted(sex) + " is neither F nor M.", "Write F or M.");
                return Optional.empty();
            }
            if (age.isPresent() && age.getAsDouble() < SurveyColumns.ADULT) {
                return Optional.of(Figure.CHILD);
            }
            return Optional.of(sex.equals("F") ? Figure.WOMAN : Figure.MAN);
        }

        private String cell(String column) {
            int at = header.indexOf(column);
            return at < 0 || at >= row.cells().size() ? "" : row.cells().get(at);
        }

        private OptionalDouble age() {
            String text = cell("age");
            OptionalDouble age = text.isEmpty() ? OptionalDouble.empty() : Quantities.number(text);
            if (!text.isEmpty() && (age.isEmpty() || !WearerKeys.AGE.range().holds(age.getAsDouble()))) {
                add("age", Echo.quoted(text) + " is no age in years.", "Write the years: 31, or leave it empty.");
            }
            return age;
        }

        private Map<Measure, Double> measures() {
            Optional<Unit> unit = cell("unit").isEmpty() ? usual : unit(cell("unit"));
            if (!cell("unit").isEmpty() && unit.isEmpty()) {
                add("unit", Echo.quoted(cell("unit")) + " is no unit known here.", "Choose: mm, cm, in.");
            }
            Map<Measure, Double> given = new EnumMap<>(Measure.class);
            for (Measure measure : Measure.values()) {
                String text = cell(measure.term());
                if (!text.isEmpty()) {
                    measure(measure, text, unit).ifPresent(mm -> given.put(measure, mm));
                }
            }
            return given;
        }

        private Optional<Double> measure(Measure measure, String text, Optional<Unit> unit) {
            if (unit.isEmpty() && Quantities.number(text).isPresent()) {
                add(
                        measure.term(),
                        Echo.quoted(text) + " has no unit.",
                        "Write it with its unit (74 cm), add a column unit, or, where the command has it, --unit cm.");
                return Optional.empty();
            }
            OptionalDouble mm = Quantities.length(text, unit.orElse(Unit.MM));
            if (mm.isEmpty() || !WearerKeys.measure(measure).range().holds(mm.getAsDouble())) {
                add(
                        measure.term(),
                        Echo.quoted(text) + " is no measure of a body.",
                        "A length from 10 to 2750 mm is wanted, or an empty cell.");
                return Optional.empty();
            }
            return Optional.of(mm.getAsDouble());
        }

        private void add(String column, String problem, String remedy) {
            int at = header.indexOf(column);
            problems.add(new Problem(at < 0 ? column : names.get(at), problem, remedy));
        }
    }
}
