package stretchwright.wearing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stretchwright.advice.CompareVerdict;
import stretchwright.body.Body;
import stretchwright.fit.FitReport;
import stretchwright.ground.BadInput;
import stretchwright.ground.Findings;
import stretchwright.ground.Numbers;
import stretchwright.ground.Part;
import stretchwright.ground.Unit;
import stretchwright.ground.Voice;
import stretchwright.intake.MakeFile;
import stretchwright.make.Rooms;
import stretchwright.make.Stages;
import stretchwright.pattern.Level;
import stretchwright.pattern.Notion;
import stretchwright.pattern.NotionName;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Seam;
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
        Findings findings = new Findings(make.file(), make.unit());
        Optional<Body> body = ROOMS.body(make.measured(), findings);
        Optional<Pattern> pattern = body.flatMap(b -> ROOMS.draft(b, make, findings));
        if (pattern.isEmpty() || !findings.isEmpty()) {
            throw new BadInput(findings.all());
        }
        FitReport fit = ROOMS.fit(pattern.get(), body.orElseThrow(), make);
        return new Trial(pattern.get(), fit, make.unit());
    }

    public boolean stops() {
        return after.fit.stops();
    }

    FitReport before() {
        return before.fit;
    }

    FitReport after() {
        return after.fit;
    }

    /** What is said otherwise after the change. */
    List<CompareVerdict> verdicts() {
        return CompareVerdict.of(before.fit, after.fit).stream()
                .filter(v -> v.status() != CompareVerdict.Status.SAME)
                .toList();
    }

    /** The same for other programs: what moves by how many mm, and what is said before and after. */
    void json(ObjectNode out) {
        ArrayNode list = out.putArray("pattern");
        Voice voice = Voice.of(after.unit);
        moves().forEach(m -> list.addObject().put("what", voice.say(m.what())).put("by", Numbers.mm(m.by())));
        ObjectNode fit = out.putObject("fit");
        counts(fit.putObject("before"), before.fit);
        counts(fit.putObject("after"), after.fit);
        ArrayNode said = fit.putArray("verdicts");
        verdicts()
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

    /** Something of the pattern, and by how many mm it changes. */
    record Move(Part what, double by) {}

    /** Widths that change, the rise seams, the elastic, and the length of the leg. */
    List<Move> moves() {
        List<Move> out = new ArrayList<>();
        for (Level level : before.pattern.levels()) {
            after.pattern.levels().stream()
                    .filter(l -> l.name() == level.name() && l.leg().equals(level.leg()))
                    .forEach(l -> say(out, ofLeg(level), l.width() - level.width()));
        }
        before.pattern.seams().stream()
                .filter(s -> s.role() == Seam.Role.FRONT_RISE || s.role() == Seam.Role.BACK_RISE)
                .forEach(s -> after.pattern.seams().stream()
                        .filter(t -> t.name().equals(s.name()))
                        .findFirst()
                        .ifPresent(t -> say(out, s.name().said(), t.length() - s.length())));
        say(out, Tell.said("moved.elastic"), elastic(after.pattern) - elastic(before.pattern));
        say(out, Tell.said("moved.leg-length"), legLength(after.pattern) - legLength(before.pattern));
        return out;
    }

    private static Part ofLeg(Level level) {
        return switch (level.leg()) {
            case LEFT -> Tell.said("moved.left", level.name().said());
            case RIGHT -> Tell.said("moved.right", level.name().said());
            default -> level.name().said();
        };
    }

    private static double elastic(Pattern pattern) {
        return pattern.notions().stream()
                .filter(n -> n.name() == NotionName.WAIST_ELASTIC)
                .mapToDouble(Notion::cut)
                .sum();
    }

    /** From the crotch line down to where the leg ends, as it is cut. */
    private static double legLength(Pattern pattern) {
        double crotch = pattern.crotchLine();
        double lowest =
                pattern.levels().stream().mapToDouble(Level::height).min().orElseThrow();
        return crotch - lowest;
    }

    private static void say(List<Move> out, Part what, double by) {
        if (Math.abs(by) >= 0.5) {
            out.add(new Move(what, by));
        }
    }
}
