package stretchwright.intake;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stretchwright.body.Measured;
import stretchwright.ground.Findings;
import stretchwright.ground.Numbers;
import stretchwright.pattern.Level;
import stretchwright.pattern.LowerEnd;
import stretchwright.pattern.Parts;
import stretchwright.pattern.Style;
import stretchwright.pattern.TopEnd;

/** The style once all changes after wearing are made; together they stay within their bounds, or a finding says to measure again. */
public final class WearingApplied {
    private static final String KEY = WearingReader.SECTION + ".change";

    private final Findings findings;
    private MakeFile make;

    private WearingApplied(MakeFile make, Findings findings) {
        this.make = make;
        this.findings = findings;
    }

    /** @return the make with its history; empty where findings say why not */
    public static Optional<MakeFile> on(MakeFile plain, List<WearingEntry> history, Findings findings) {
        WearingApplied applied = new WearingApplied(plain, findings);
        sums(history).forEach(applied::apply);
        return findings.isEmpty() ? Optional.of(applied.make.worn(applied.make.style(), history)) : Optional.empty();
    }

    /** What all entries together change. */
    public static Map<WearingKey, Double> sums(List<WearingEntry> history) {
        Map<WearingKey, Double> sums = new EnumMap<>(WearingKey.class);
        history.forEach(e -> e.change().forEach((key, mm) -> sums.merge(key, mm, Double::sum)));
        return sums;
    }

    private void apply(WearingKey key, double sum) {
        if (!key.isChoice() && !key.range().holds(sum)) {
            add(
                    key,
                    "the changes add up to " + key.shown(sum) + "; makers go from "
                            + key.shown(key.range().least()) + " to "
                            + key.shown(key.range().most()) + ".",
                    "Measure again instead, and write the new measures with this section left out.");
            return;
        }
        Style s = make.style();
        switch (key) {
            case FRONT_WAIST -> raised(key, s.top().frontRaise() + sum, s.top().backRaise());
            case BACK_WAIST -> raised(key, s.top().frontRaise(), s.top().backRaise() + sum);
            case RISE -> lowered(sum);
            case WAIST, HIP, CROTCH, KNEE, CALF -> wider(key, sum);
            case LEG_LENGTH -> longer(sum);
            case GROWTH -> growth(sum);
            case BACK -> back();
            case BAND -> band();
            case GUSSET -> gusset();
        }
    }

    private void add(WearingKey key, String problem, String remedy) {
        findings.add(KEY + "." + key.word(), problem, remedy);
    }

    private void raised(WearingKey key, double front, double back) {
        double changed = key == WearingKey.FRONT_WAIST ? front : back;
        if (!Limits.RAISE.holds(changed)) {
            add(
                    key,
                    "makes style." + key.word() + " " + key.shown(changed) + ", beyond what can be drafted.",
                    "Measure again instead.");
            return;
        }
        make = make.with(make.style().with(make.style().top().raised(front, back)));
    }

    private void lowered(double sum) {
        TopEnd top = make.style().top();
        double drop = top.dropBelowWaist() + sum;
        boolean contoured = top.band().shape() == TopEnd.Band.Shape.CONTOURED;
        if (!Limits.DROP.holds(drop) || (contoured && drop == 0)) {
            add(
                    WearingKey.RISE,
                    "makes the top edge stand " + Numbers.plain(drop) + " mm below the waist, which is not drafted.",
                    "Measure again instead.");
            return;
        }
        make = make.with(make.style().with(top.dropped(drop)));
    }

    private void longer(double sum) {
        Optional<Measured> longer = LongerLegs.of(make.measured(), sum);
        if (longer.isEmpty()) {
            add(
                    WearingKey.LEG_LENGTH,
                    "is added to the crotch height, which was not measured.",
                    "Measure the crotch height.");
        }
        make = longer.map(make::with).orElse(make);
    }

    private void wider(WearingKey key, double sum) {
        Level.Name level = key.level().orElseThrow();
        Map<Level.Name, Double> ease = new EnumMap<>(Level.Name.class);
        ease.putAll(make.style().ease());
        double mm = ease.getOrDefault(level, 0.0) + sum;
        if (!Limits.EASE.holds(mm)) {
            add(
                    key,
                    "and style.ease together are " + key.shown(mm) + ", more than is drafted.",
                    "Measure again instead.");
            return;
        }
        ease.put(level, mm);
        make = make.with(make.style().withEase(ease));
    }

    private void growth(double sum) {
        Style s = make.style();
        LowerEnd lower = s.lower();
        if (lower.cuffHeight().isPresent() || s.leg() == Style.Leg.STIRRUP || lower.turnUp() < LowerEnd.TURN_UP) {
            add(
                    WearingKey.GROWTH,
                    "is kept in a plain level hem, and this leg ends otherwise.",
                    "Measure the leg again (crotch height), or write a plain level hem.");
            return;
        }
        if (lower.growth() + sum > Limits.GROWTH.most()) {
            add(
                    WearingKey.GROWTH,
                    "and style.growth together are more than a hem holds.",
                    "Measure the leg again instead.");
            return;
        }
        make = make.with(s.with(lower.growing(lower.growth() + sum)));
    }

    private void back() {
        Style s = make.style();
        if (s.parts().sideSeam() == Parts.SideSeam.SHAPED || s.top().back() == TopEnd.BackShape.DARTS) {
            add(
                    WearingKey.BACK,
                    "is at odds with a side seam or darts that take in the same surplus.",
                    "Measure waist and hip again instead.");
            return;
        }
        make = make.with(s.with(s.top().with(TopEnd.BackShape.SHAPED_SEAM)));
    }

    private void band() {
        Style s = make.style();
        Optional<TopEnd> changed = s.top().contoured();
        if (changed.isEmpty() && s.top().band().shape() != TopEnd.Band.Shape.CONTOURED) {
            add(
                    WearingKey.BAND,
                    "is at odds with an elastic, a cord or a casing.",
                    "Leave those out, or keep the band as it is.");
        }
        make = changed.map(top -> make.with(s.with(top))).orElse(make);
    }

    private void gusset() {
        Style s = make.style();
        if (s.parts().gusset().isEmpty()) {
            make = make.with(s.with(s.parts().with(new Parts.Gusset(75, 50))));
        }
    }
}
