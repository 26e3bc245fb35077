package stretchwright.many;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import stretchwright.ground.Part;
import stretchwright.ground.Said;
import stretchwright.ground.Voice;
import stretchwright.pattern.EdgeName;

/** A survey's result as a page of tables, in millimetres. */
final class SurveyPage {
    private static final int LISTED = 10;

    private static final Voice VOICE = Voice.plain();

    /** One way in which a draft can be bad: its measure, and the words for it. */
    record Worst(Said title, ToDoubleFunction<SurveyTrial.Outcome> what, Function<SurveyTrial.Outcome, Said> words) {}

    static final List<Worst> WORST = List.of(
            new Worst(
                    Tell.said("worst.waist"),
                    o -> Math.abs(o.correction()),
                    o -> Tell.said("worst.waist-by", Part.signed(o.correction()))),
            new Worst(
                    Tell.said("worst.curve"),
                    o -> 1 / o.bend().radius(),
                    o -> Tell.said(
                            "worst.curve-by",
                            Part.length(o.bend().radius()),
                            o.bend().edge().map(EdgeName::said).orElse(Said.NOTHING))),
            new Worst(
                    Tell.said("worst.width"),
                    SurveyTrial.Outcome::evened,
                    o -> Tell.said("worst.width-by", Part.share(o.evened(), 1))));

    private final SurveyResult result;
    private final List<String> lines = new ArrayList<>();

    private SurveyPage(SurveyResult result) {
        this.result = result;
    }

    static String of(SurveyResult result) {
        SurveyPage page = new SurveyPage(result);
        page.tables();
        page.cases();
        page.hold();
        page.truth();
        page.reasons(Tell.said("page.reasons-stopped"), SurveyTrial.Kind.STOPPED);
        page.reasons(Tell.said("page.reasons-at-odds"), SurveyTrial.Kind.AT_ODDS);
        page.reasons(Tell.said("page.reasons-broken"), SurveyTrial.Kind.BROKEN);
        page.reasons(Tell.said("page.reasons-crashed"), SurveyTrial.Kind.CRASHED);
        page.waist();
        page.worst();
        page.time();
        return String.join("\n", page.lines) + "\n";
    }

    /** A sentence by itself. */
    private void say(Said said) {
        lines.add("");
        lines.add(VOICE.say(said));
    }

    private void head(List<Said> cells) {
        lines.add("");
        row(cells);
        lines.add("|" + String.join("", Collections.nCopies(cells.size(), "---|")));
    }

    private void head(Said... cells) {
        head(List.of(cells));
    }

    private void row(List<? extends Part> cells) {
        lines.add(cells.stream().map(VOICE::say).collect(Collectors.joining(" | ", "| ", " |")));
    }

    private void row(Part... cells) {
        row(List.of(cells));
    }

    private void tables() {
        lines.add("# " + VOICE.say(Tell.said("page.title")));
        head(
                Tell.said("page.table"),
                Tell.said("page.rows"),
                Tell.said("page.no-bodies"),
                Tell.said("page.bodies"),
                Tell.said("page.why"));
        for (SurveyResult.Table t : result.tables()) {
            List<Said> why = new ArrayList<>();
            SurveyResult.refusals(t)
                    .forEach((about, c) -> why.add(Tell.said(
                            "survey.refused", Part.count(c.times()), Part.text(about), Part.text(c.example()))));
            int refused = t.refused().size();
            row(
                    Part.text(t.file()),
                    Part.count(t.read()),
                    Part.count(refused),
                    Part.count(t.read() - refused),
                    Part.listed(Part.Join.SEMICOLON, why));
        }
    }

    private Map<Said, Predicate<SurveyResult.Person>> groups() {
        Map<Said, Predicate<SurveyResult.Person>> groups = new LinkedHashMap<>();
        groups.put(Tell.said("page.adults"), p -> !p.isChild());
        groups.put(Tell.said("page.children"), SurveyResult.Person::isChild);
        groups.values().removeIf(g -> result.persons().stream().noneMatch(g));
        return groups;
    }

    private Part caseName(int index) {
        return Part.text(result.cases().get(index).name());
    }

    private void cases() {
        head(
                Tell.said("page.who"),
                Tell.said("page.in"),
                Tell.said("page.drafts"),
                Tell.said("page.fits"),
                Tell.said("page.stopped"),
                Tell.said("page.at-odds"),
                Tell.said("page.broken"),
                Tell.said("page.crashed"),
                Tell.said("page.far-off", Part.length(SurveyResult.FAR)));
        groups().forEach((name, group) -> {
            for (int i = 0; i < result.cases().size(); i++) {
                outcomes(name, group, i);
            }
        });
    }

    private void outcomes(Said name, Predicate<SurveyResult.Person> group, int in) {
        long all = result.drafts(group, in).count();
        Function<SurveyTrial.Kind, Long> n = k -> SurveyResult.count(result.drafts(group, in), k);
        long stopped = n.apply(SurveyTrial.Kind.STOPPED);
        row(
                name,
                caseName(in),
                Part.count(all),
                Part.count(n.apply(SurveyTrial.Kind.HELD)),
                Tell.said("page.part", Part.count(stopped), Part.share((double) stopped / Math.max(1, all), 2)),
                Part.count(n.apply(SurveyTrial.Kind.AT_ODDS)),
                Part.count(n.apply(SurveyTrial.Kind.BROKEN)),
                Part.count(n.apply(SurveyTrial.Kind.CRASHED)),
                Part.count(result.farOff(group, in)));
    }

    private void hold() {
        say(Tell.said("page.hold"));
        head(SurveyHold.head());
        groups().forEach((name, group) -> {
            for (int i = 0; i < result.cases().size(); i++) {
                row(SurveyHold.line(name, caseName(i), result.drafts(group, i).map(SurveyResult.Draft::outcome)));
            }
        });
    }

    private void truth() {
        say(Tell.said("page.truth"));
        head(SurveyTruth.head());
        groups().forEach((name, group) -> {
            for (int i = 0; i < result.cases().size(); i++) {
                for (SurveyTruth.Figure figure : SurveyTruth.FIGURES) {
                    List<Part> line = SurveyTruth.line(
                            name, caseName(i), figure, result.drafts(group, i).map(SurveyResult.Draft::outcome));
                    if (!line.isEmpty()) {
                        row(line);
                    }
                }
            }
        });
    }

    private void reasons(Said title, SurveyTrial.Kind kind) {
        if (result.drafts(p -> true).noneMatch(d -> d.outcome().kind() == kind)) {
            return;
        }
        say(title);
        head(
                Tell.said("page.who"),
                Tell.said("page.in"),
                Tell.said("page.about"),
                Tell.said("page.drafts"),
                Tell.said("page.first"));
        groups().forEach((name, group) -> {
            for (int i = 0; i < result.cases().size(); i++) {
                Part in = caseName(i);
                result.reasons(result.drafts(group, i), kind)
                        .forEach((about, c) ->
                                row(name, in, Part.text(about), Part.count(c.times()), Part.text(c.example())));
            }
        });
    }

    private void waist() {
        long bodies = result.waistOverHip();
        long drafted = result.drafts(SurveyResult.Person::isWaistOverHip)
                .filter(d -> d.outcome().isDrafted())
                .count();
        say(Tell.said(
                "page.waist",
                Part.count(bodies),
                Part.count(bodies * result.cases().size()),
                Part.count(drafted)));
    }

    private void worst() {
        for (Worst kind : WORST) {
            say(Tell.said("page.worst", kind.title()));
            head(Tell.said("page.who"), Tell.said("page.in"), Tell.said("page.how-much"), Tell.said("page.outcome"));
            for (SurveyResult.Draft d : result.worst(kind.what(), LISTED)) {
                row(
                        Part.text(result.who(d.person())),
                        caseName(d.of()),
                        kind.words().apply(d.outcome()),
                        d.outcome().kind().said());
            }
        }
    }

    private void time() {
        say(Tell.said(
                "page.time",
                Part.text(Voice.fixed(result.milliseconds(0.5), 2)),
                Part.text(Voice.fixed(result.milliseconds(0.95), 2))));
    }
}
