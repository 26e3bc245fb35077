package stretchwright.many;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;

/** A survey's result as a page of tables. */
final class SurveyPage {
    private static final int LISTED = 10;

    /** One way in which a draft can be bad: its measure, and the words for it. */
    record Worst(
            String title, ToDoubleFunction<SurveyTrial.Outcome> what, Function<SurveyTrial.Outcome, String> words) {}

    static final List<Worst> WORST = List.of(
            new Worst(
                    "waist edge furthest from its measured place",
                    o -> Math.abs(o.correction()),
                    o -> text("waist edge %+.0f mm", o.correction())),
            new Worst(
                    "tightest curve",
                    o -> 1 / o.bend().radius(),
                    o -> text("radius %.0f mm, %s", o.bend().radius(), o.bend().edge())),
            new Worst(
                    "width most changed for a smooth inseam",
                    SurveyTrial.Outcome::evened,
                    o -> text("width changed by %.1f %%", 100 * o.evened())));

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
        page.reasons("Stopped by the fit check", SurveyTrial.Kind.STOPPED);
        page.reasons("Measures at odds", SurveyTrial.Kind.AT_ODDS);
        page.reasons("Broken invariants", SurveyTrial.Kind.BROKEN);
        page.reasons("Crashes", SurveyTrial.Kind.CRASHED);
        page.waist();
        page.worst();
        page.time();
        return String.join("\n", page.lines) + "\n";
    }

    private static String text(String format, Object... values) {
        return String.format(Locale.ROOT, format, values);
    }

    private void add(String format, Object... values) {
        lines.add(text(format, values));
    }

    private void tables() {
        add("# Survey of drafts");
        add("");
        add("| table | rows | no bodies | bodies | why no bodies (first of each) |");
        add("|---|---|---|---|---|");
        for (SurveyResult.Table t : result.tables()) {
            List<String> why = new ArrayList<>();
            SurveyResult.refusals(t).forEach((about, c) -> why.add(c.times() + " " + about + " (" + c.example() + ")"));
            int refused = t.refused().size();
            add("| %s | %d | %d | %d | %s |", t.file(), t.read(), refused, t.read() - refused, String.join("; ", why));
        }
    }

    private Map<String, Predicate<SurveyResult.Person>> groups() {
        Map<String, Predicate<SurveyResult.Person>> groups = new LinkedHashMap<>();
        groups.put("adults", p -> !p.isChild());
        groups.put("children", SurveyResult.Person::isChild);
        groups.values().removeIf(g -> result.persons().stream().noneMatch(g));
        return groups;
    }

    private void cases() {
        add("");
        add(
                "| who | in | drafts | drafted, fits | stopped by the fit check | measures at odds | broken invariant | crashed |"
                        + " waist edge over 40 mm off |");
        add("|---|---|---|---|---|---|---|---|---|");
        groups().forEach((name, group) -> {
            for (int i = 0; i < result.cases().size(); i++) {
                int in = i;
                long all = result.drafts(group, i).count();
                Function<SurveyTrial.Kind, Long> n = k -> SurveyResult.count(result.drafts(group, in), k);
                long stopped = n.apply(SurveyTrial.Kind.STOPPED);
                add(
                        "| %s | %s | %d | %d | %d (%.2f %%) | %d | %d | %d | %d |",
                        name,
                        result.cases().get(i).name(),
                        all,
                        n.apply(SurveyTrial.Kind.HELD),
                        stopped,
                        100.0 * stopped / Math.max(1, all),
                        n.apply(SurveyTrial.Kind.AT_ODDS),
                        n.apply(SurveyTrial.Kind.BROKEN),
                        n.apply(SurveyTrial.Kind.CRASHED),
                        result.farOff(group, in));
            }
        });
    }

    private void hold() {
        add("");
        add("How the fit check judges, its worst word for each draft, and the hold:");
        add("");
        lines.add(SurveyHold.HEADER);
        add("|---|---|---|---|---|---|---|---|---|---|");
        groups().forEach((name, group) -> {
            for (int i = 0; i < result.cases().size(); i++) {
                lines.add(SurveyHold.line(
                        name,
                        result.cases().get(i).name(),
                        result.drafts(group, i).map(SurveyResult.Draft::outcome)));
            }
        });
    }

    private void reasons(String title, SurveyTrial.Kind kind) {
        if (result.drafts(p -> true).noneMatch(d -> d.outcome().kind() == kind)) {
            return;
        }
        add("");
        add("%s; one draft may have several reasons:", title);
        add("");
        add("| who | in | about | drafts | first |");
        add("|---|---|---|---|---|");
        groups().forEach((name, group) -> {
            for (int i = 0; i < result.cases().size(); i++) {
                String in = result.cases().get(i).name();
                result.reasons(result.drafts(group, i), kind)
                        .forEach((about, c) ->
                                add("| %s | %s | %s | %d | %s |", name, in, about, c.times(), c.example()));
            }
        });
    }

    private void waist() {
        long bodies = result.waistOverHip();
        long drafted = result.drafts(SurveyResult.Person::isWaistOverHip)
                .filter(d -> d.outcome().isDrafted())
                .count();
        add("");
        add(
                "Waist larger than the hip: %d bodies, %d drafts, %d of them drafted with a band that holds (shorter than the"
                        + " waist, no longer than the leg tops).",
                bodies, bodies * result.cases().size(), drafted);
    }

    private void worst() {
        for (Worst kind : WORST) {
            add("");
            add("Worst cases, %s:", kind.title());
            add("");
            add("| who | in | how much | outcome |");
            add("|---|---|---|---|");
            for (SurveyResult.Draft d : result.worst(kind.what(), LISTED)) {
                add(
                        "| %s | %s | %s | %s |",
                        result.who(d.person()),
                        result.cases().get(d.of()).name(),
                        kind.words().apply(d.outcome()),
                        d.outcome().kind().word());
            }
        }
    }

    private void time() {
        add("");
        add(
                "Computing time of one draft: median %.2f ms, 95th percentile %.2f ms.",
                result.milliseconds(0.5), result.milliseconds(0.95));
    }
}
