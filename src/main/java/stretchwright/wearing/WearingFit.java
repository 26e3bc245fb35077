package stretchwright.wearing;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import stretchwright.advice.CompareVerdict;
import stretchwright.body.Body;
import stretchwright.fit.FitReport;
import stretchwright.ground.BadInput;
import stretchwright.ground.Findings;
import stretchwright.ground.Numbers;
import stretchwright.ground.Unit;
import stretchwright.ground.Voice;
import stretchwright.intake.MakeFile;
import stretchwright.intake.OwnUnit;
import stretchwright.make.Rooms;
import stretchwright.make.Stages;
import stretchwright.make.Verdicts;
import stretchwright.pattern.Level;
import stretchwright.pattern.Pattern;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** What a change after wearing does to pattern and fit, before anything is cut again. */
public final class WearingFit {
    private static final Stages ROOMS = new Rooms();

    private final Trial before;
    private final Trial after;

    private WearingFit(Trial before, Trial after) {
        this.before = before;
        this.after = after;
    }

    private record Trial(Pattern pattern, FitReport fit, Unit unit) {}

    /** @throws BadInput where one of them cannot be drafted */
    public static WearingFit of(MakeFile make, MakeFile changed) {
        return new WearingFit(trial(make), trial(changed));
    }

    private static Trial trial(MakeFile make) {
        Findings findings = new Findings(make.file());
        Optional<Body> body = ROOMS.body(make.measured(), findings);
        Optional<Pattern> pattern = body.flatMap(b -> ROOMS.draft(b, make, findings));
        if (pattern.isEmpty() || !findings.isEmpty()) {
            throw new BadInput(OwnUnit.findings(findings.all(), make.unit()));
        }
        FitReport fit = ROOMS.fit(pattern.get(), body.orElseThrow(), make);
        return new Trial(pattern.get(), fit, make.unit());
    }

    public boolean stops() {
        return after.fit.stops();
    }

    public List<String> lines() {
        List<String> lines = new ArrayList<>();
        lines.add("  pattern   " + (moved().isEmpty() ? "the widths stay" : String.join(", ", moved())));
        lines.add("  fit       " + Verdicts.count(after.fit) + " (before: " + Verdicts.count(before.fit) + ")");
        CompareVerdict.of(before.fit, after.fit).stream()
                .filter(v -> v.status() != CompareVerdict.Status.SAME)
                .filter(v -> v.said().severity() != FitReport.Severity.NOTE)
                .forEach(v -> lines.add("  " + v.line(Voice.of(after.unit))));
        return lines;
    }

    /** The same for other programs: what moves by how many mm, and what is said before and after. */
    void json(ObjectNode out) {
        ArrayNode list = out.putArray("pattern");
        moves().forEach(m -> list.addObject().put("what", m.what()).put("by", Numbers.mm(m.by())));
        ObjectNode fit = out.putObject("fit");
        counts(fit.putObject("before"), before.fit);
        counts(fit.putObject("after"), after.fit);
        ArrayNode said = fit.putArray("verdicts");
        Voice voice = Voice.of(after.unit);
        CompareVerdict.of(before.fit, after.fit).stream()
                .filter(v -> v.status() != CompareVerdict.Status.SAME)
                .forEach(v -> said.addObject()
                        .put("status", v.status().word())
                        .put("severity", v.said().severity().word())
                        .put("about", voice.say(v.said().about()))
                        .put("message", voice.say(v.said().message())));
    }

    private static void counts(ObjectNode out, FitReport fit) {
        for (FitReport.Severity s : FitReport.Severity.values()) {
            out.put(
                    s.word() + "s",
                    fit.verdicts().stream().filter(v -> v.severity() == s).count());
        }
    }

    private record Move(String what, double by) {}

    private List<String> moved() {
        return moves().stream()
                .map(m -> String.format(Locale.ROOT, "%s %+.0f mm", m.what(), m.by()))
                .toList();
    }

    /** Widths that change, and the rise seams. */
    private List<Move> moves() {
        List<Move> out = new ArrayList<>();
        for (Level level : before.pattern.levels()) {
            after.pattern.levels().stream()
                    .filter(l -> l.name() == level.name() && l.leg().equals(level.leg()))
                    .findFirst()
                    .ifPresent(l ->
                            say(out, (level.leg() + " " + level.name().word()).strip(), l.width() - level.width()));
        }
        before.pattern.seams().stream()
                .filter(s -> s.name().endsWith("rise"))
                .forEach(s -> after.pattern.seams().stream()
                        .filter(t -> t.name().equals(s.name()))
                        .findFirst()
                        .ifPresent(t -> say(out, s.name(), t.length() - s.length())));
        return out;
    }

    private static void say(List<Move> out, String what, double by) {
        if (Math.abs(by) >= 0.5) {
            out.add(new Move(what, by));
        }
    }
}
