package stretchwright.many;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ForkJoinPool;
import java.util.function.LongSupplier;
import stretchwright.ground.BadInput;
import stretchwright.ground.Document;
import stretchwright.ground.Finding;
import stretchwright.ground.Findings;
import stretchwright.ground.Part;
import stretchwright.ground.Progress;
import stretchwright.ground.Voice;
import stretchwright.make.Lines;
import stretchwright.make.Make;
import stretchwright.print.sheets.LegSheet;

/**
 * Drafts every body of some tables in every case and counts how it went: the make room's answer to "does the draft hold for
 * everybody?". In: tables, make files (or none: three styles in two cloths), a clock for the times. Out: survey.json,
 * survey.md and a sheet of the worst cases. All but the times is the same every time.
 */
public final class SurveyRun {
    private static final int THREADS = 2;
    private static final int DRAWN = 7;

    /** Letters for how drafts went, and for how many. */
    private static final int COLUMN = 27;

    private static final int DIGITS = 7;

    private final SurveyResult result;

    private SurveyRun(SurveyResult result) {
        this.result = result;
    }

    /** A file as it was read. */
    public record Source(String file, byte[] bytes) {
        @Override
        public boolean equals(Object other) {
            return other instanceof Source s && file.equals(s.file) && java.util.Arrays.equals(bytes, s.bytes);
        }

        @Override
        public int hashCode() {
            return file.hashCode();
        }

        @Override
        public String toString() {
            return file;
        }
    }

    /** @throws BadInput where a table's header or a make file cannot be used: then nothing was drafted */
    public static SurveyRun of(List<Source> tables, List<Source> makes, LongSupplier nanos, Progress progress) {
        List<Finding> wrong = new ArrayList<>();
        List<SurveyCase> cases = cases(makes, wrong);
        List<BodyRows> read = new ArrayList<>();
        for (Source table : tables) {
            try {
                BodyRows rows = BodyRows.of(table.file(), table.bytes(), Optional.empty());
                if (rows.rows().isEmpty()) {
                    wrong.addAll(noBodies(table.file(), rows));
                }
                read.add(rows);
            } catch (BadInput e) {
                wrong.addAll(e.findings());
            }
        }
        if (!wrong.isEmpty()) {
            throw new BadInput(wrong);
        }
        List<SurveyResult.Table> counted = new ArrayList<>();
        List<SurveyResult.Person> persons = new ArrayList<>();
        ForkJoinPool pool = new ForkJoinPool(THREADS);
        try {
            for (int i = 0; i < read.size(); i++) {
                BodyRows rows = read.get(i);
                int table = i;
                counted.add(new SurveyResult.Table(
                        tables.get(i).file().replaceFirst(".*[/\\\\]", ""), rows.read(), rows.refused()));
                persons.addAll(pool.submit(() -> rows.rows().parallelStream()
                                .map(row -> person(table, row, cases, nanos))
                                .toList())
                        .join());
                progress.say(Voice.plain()
                        .say(Tell.said(
                                "survey.progress",
                                Part.text(tables.get(i).file()),
                                Part.count(rows.read()),
                                Part.count(rows.refused().size()),
                                Part.count(rows.rows().size() * (long) cases.size()))));
            }
        } finally {
            pool.shutdown();
        }
        return new SurveyRun(new SurveyResult(counted, cases, persons));
    }

    /** A table of which no row is a body surely has one fault in all rows: the first row tells it. */
    private static List<Finding> noBodies(String file, BodyRows rows) {
        BodyRows.Refused first = rows.refused().get(0);
        return first.problems().stream()
                .map(p -> new Finding(
                        file,
                        Tell.at(first.line(), p.column()),
                        0,
                        Tell.said("survey.none", Part.count(rows.read()), p.wrong()),
                        p.right(),
                        first.unit()))
                .toList();
    }

    private static List<SurveyCase> cases(List<Source> makes, List<Finding> wrong) {
        if (makes.isEmpty()) {
            return SurveyCase.usual();
        }
        List<SurveyCase> cases = new ArrayList<>();
        for (Source make : makes) {
            try {
                cases.add(SurveyCase.of(Make.read(make.file(), make.bytes())));
            } catch (BadInput e) {
                wrong.addAll(e.findings());
            }
        }
        return cases;
    }

    private static SurveyResult.Person person(int table, BodyRows.Row row, List<SurveyCase> cases, LongSupplier nanos) {
        return new SurveyResult.Person(
                table,
                row,
                cases.stream().map(c -> SurveyTrial.of(row.body(), c, nanos)).toList());
    }

    /** Whether a draft crashed or broke an invariant: that is the program's fault. */
    public boolean hasFaults() {
        return result.hasFaults();
    }

    public List<Document> documents() {
        return List.of(
                new Document("survey.json", "survey", 1, SurveyJson.of(result)),
                new Document(
                        "survey.md", "survey table", 1, SurveyPage.of(result).getBytes(StandardCharsets.UTF_8)),
                LegSheet.of("worst.svg", Voice.plain().say(Tell.said("survey.worst-title")), worst()));
    }

    private List<LegSheet.Leg> worst() {
        List<LegSheet.Leg> legs = new ArrayList<>();
        for (SurveyPage.Worst kind : SurveyPage.WORST) {
            for (SurveyResult.Draft d : result.worst(kind.what(), DRAWN)) {
                SurveyTrial.draft(d.person().body(), result.cases().get(d.of()), new Findings(""))
                        .ifPresent(p -> legs.add(new LegSheet.Leg(
                                List.of(
                                        Voice.plain().say(kind.words().apply(d.outcome())),
                                        result.who(d.person()),
                                        result.cases().get(d.of()).name()),
                                p.legs().get(0))));
            }
        }
        return legs;
    }

    /** The survey as JSON, as written. */
    public String json() {
        return new String(SurveyJson.of(result), StandardCharsets.UTF_8);
    }

    /** In a few lines. */
    public List<String> summary() {
        Lines lines = new Lines(Voice.plain(), COLUMN);
        lines.say(Tell.said(
                "survey.summary",
                Part.count(result.persons().size()),
                Part.count(result.persons().size() * (long) result.cases().size()),
                Part.text(Voice.fixed(result.milliseconds(0.5), 2)),
                Part.text(Voice.fixed(result.milliseconds(0.95), 2))));
        for (SurveyTrial.Kind kind : SurveyTrial.Kind.values()) {
            long drafts = SurveyResult.count(result.drafts(p -> true), kind);
            String count = Long.toString(drafts);
            lines.about(kind.said(), Part.text(" ".repeat(Math.max(0, DIGITS - count.length())) + count));
        }
        return lines.all();
    }
}
