package stretchwright.many;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import stretchwright.body.Body;
import stretchwright.body.Figure;
import stretchwright.body.Measure;
import stretchwright.body.Measured;
import stretchwright.body.Measuring;
import stretchwright.ground.BadInput;
import stretchwright.ground.Findings;
import stretchwright.ground.Part;
import stretchwright.ground.Quantities;
import stretchwright.ground.Said;
import stretchwright.ground.Unit;
import stretchwright.intake.NameKind;
import stretchwright.intake.Range;
import stretchwright.intake.WearerKeys;
import stretchwright.make.Make;

/**
 * The rows of a table as bodies. In: CSV with a header of our terms, or of a public survey (SurveyColumns). Out: the good
 * rows, estimated where not measured; findings by row and column of the others. Pure.
 *
 * @param read how many rows were looked at
 */
record BodyRows(List<Row> rows, int read, List<Refused> refused) {
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
            return name.isEmpty() ? Tell.at(line, "") : name;
        }
    }

    /** A broken row: what is wrong with it, in order of the columns. */
    record Refused(int line, Unit unit, List<Problem> problems) {}

    /** One thing wrong; column is empty where it is about the whole row. */
    record Problem(String column, Said wrong, Said right) {}

    BodyRows {
        rows = List.copyOf(rows);
        refused = List.copyOf(refused);
    }

    /**
     * Reads and estimates.
     *
     * @param unit of bare numbers where the row names none, checked before; empty: a row or cell must. A survey's are in mm
     * @throws BadInput where the header cannot be used: then no row was looked at
     */
    static BodyRows of(String fileName, byte[] bytes, Optional<String> unit) {
        Findings findings = new Findings(fileName);
        Optional<Unit> usual = unit.flatMap(BodyRows::unit);
        String text = Make.utf8(bytes, findings).orElse("");
        List<CsvLines.Row> lines = CsvLines.rows(text, CsvLines.separator(text));
        findings.throwIfAny();
        if (lines.size() < 2) {
            findings.add("", Tell.said("table.empty"), Tell.said("table.begin"));
            findings.throwIfAny();
        }
        List<String> names = lines.get(0).cells();
        List<String> header = names;
        boolean survey = SurveyColumns.is(header);
        if (survey) {
            header = SurveyColumns.inOurWords(header);
            usual = Optional.of(Unit.MM);
        } else {
            header = BodyColumns.terms(header, findings);
        }
        if (findings.isEmpty() && !SurveyColumns.hasMeasure(header)) {
            findings.add(BodyColumns.place(), Tell.said("table.no-measure"), Tell.said("table.one-measure"));
        }
        findings.throwIfAny();
        return read(new Header(names, header, survey), lines.subList(1, lines.size()), usual);
    }

    private static BodyRows read(Header header, List<CsvLines.Row> lines, Optional<Unit> usual) {
        List<Row> good = new ArrayList<>();
        List<Refused> refused = new ArrayList<>();
        for (CsvLines.Row line : lines) {
            Reading reading = new Reading(header, line, usual);
            reading.row().ifPresent(good::add);
            if (!reading.problems.isEmpty()) {
                refused.add(new Refused(line.line(), reading.told(), List.copyOf(reading.problems)));
            }
        }
        return new BodyRows(good, lines.size(), refused);
    }

    /** Everything wrong with the rows, under "row 7, column hip girth". */
    void findings(Findings findings) {
        for (Refused row : refused) {
            Findings told = findings.in(row.unit);
            for (Problem p : row.problems) {
                told.add(Tell.at(row.line, p.column), p.wrong, p.right);
            }
            findings.addAll(told.all());
        }
    }

    /** The unit a word means, of those that bodies are measured in. */
    static Optional<Unit> unit(String word) {
        return Unit.of(word).filter(u -> u == Unit.MM || u == Unit.CM || u == Unit.IN);
    }

    /** The columns as the file has them, the same in our words, and whether it is a public survey that has them. */
    private record Header(List<String> names, List<String> terms, boolean survey) {}

    /** One row on its way to a body. */
    private static final class Reading {
        private final Header header;
        private final CsvLines.Row row;
        private final Optional<Unit> usual;
        private final List<Problem> problems = new ArrayList<>();

        Reading(Header header, CsvLines.Row row, Optional<Unit> usual) {
            this.header = header;
            this.row = row;
            this.usual = usual;
        }

        Optional<Row> row() {
            if (row.cells().size() > header.terms.size()) {
                add(
                        "",
                        Tell.said("cells.many", Part.count(row.cells().size()), Part.count(header.terms.size())),
                        Said.NOTHING);
                return Optional.empty();
            }
            if (!NameKind.isName(cell("name"))) {
                add("name", NameKind.isNot(), NameKind.write());
            }
            OptionalDouble age = age();
            Optional<Figure> figure = header.survey ? sex(age) : figure();
            Map<Measure, Double> given = measures();
            if (!problems.isEmpty()) {
                return Optional.empty();
            }
            Findings aboutBody = new Findings("", told());
            Optional<Body> body = Measuring.body(Measured.of(figure.orElseThrow(), age, given), aboutBody);
            aboutBody
                    .all()
                    .forEach(f -> add(f.key().replaceFirst("^wearer\\.(measurements\\.?)?", ""), f.wrong(), f.right()));
            return body.map(b -> new Row(row.line(), cell("name"), cell("age").replace(',', '.'), b));
        }

        /** In which lengths are told: in mm where the row says nothing that is known. */
        Unit told() {
            return unit(cell("unit")).or(() -> usual).orElse(Unit.MM);
        }

        private Optional<Figure> figure() {
            Optional<Figure> figure = WearerKeys.figure(cell(BodyColumns.FIGURE));
            if (figure.isEmpty()) {
                String word = cell(BodyColumns.FIGURE);
                add(BodyColumns.FIGURE, Tell.said("figure.is-not", Tell.quoted(word)), WearerKeys.chooseFigure(word));
            }
            return figure;
        }

        /** A survey says F or M; the age decides whether that is a child. */
        private Optional<Figure> sex(OptionalDouble age) {
            String sex = cell("figure");
            if (!sex.equals("F") && !sex.equals("M")) {
                add("figure", Tell.said("sex.is-not", Tell.quoted(sex)), Tell.said("sex.write"));
                return Optional.empty();
            }
            if (age.isPresent() && age.getAsDouble() < SurveyColumns.ADULT) {
                return Optional.of(Figure.CHILD);
            }
            return Optional.of(sex.equals("F") ? Figure.WOMAN : Figure.MAN);
        }

        private String cell(String column) {
            int at = header.terms.indexOf(column);
            return at < 0 || at >= row.cells().size() ? "" : row.cells().get(at);
        }

        private OptionalDouble age() {
            String text = cell("age");
            OptionalDouble age = text.isEmpty() ? OptionalDouble.empty() : Quantities.number(text);
            if (!text.isEmpty() && (age.isEmpty() || !WearerKeys.AGE.range().holds(age.getAsDouble()))) {
                add("age", Tell.said("age.is-not", Tell.quoted(text)), Tell.said("age.write"));
            }
            return age;
        }

        private Map<Measure, Double> measures() {
            Optional<Unit> unit = cell("unit").isEmpty() ? usual : unit(cell("unit"));
            if (!cell("unit").isEmpty() && unit.isEmpty()) {
                add("unit", Tell.said("unit.unknown", Tell.quoted(cell("unit"))), Tell.said("unit.choose"));
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
                add(measure.term(), Tell.said("unit.missing", Tell.quoted(text)), Tell.said("unit.write"));
                return Optional.empty();
            }
            Range range = WearerKeys.measure(measure).range();
            OptionalDouble mm = Quantities.length(text, unit.orElse(Unit.MM));
            if (mm.isEmpty() || !range.holds(mm.getAsDouble())) {
                add(
                        measure.term(),
                        Tell.said("measure.is-not", Tell.quoted(text)),
                        Tell.said("measure.write", Part.length(range.least()), Part.length(range.most())));
                return Optional.empty();
            }
            return Optional.of(mm.getAsDouble());
        }

        private void add(String column, Said wrong, Said right) {
            int at = header.terms.indexOf(column);
            problems.add(new Problem(at < 0 ? column : header.names.get(at), wrong, right));
        }
    }
}
