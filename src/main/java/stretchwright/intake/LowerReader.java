package stretchwright.intake;

import java.util.Optional;
import java.util.OptionalDouble;
import stretchwright.boot.Boot;
import stretchwright.ground.Part;
import stretchwright.ground.Said;
import stretchwright.pattern.LowerEnd;
import stretchwright.pattern.LowerEnd.Hem;
import stretchwright.pattern.Style;

/** How the leg ends below, from what was given: hem, cuff, strap, growth; ends that contradict each other are findings. */
final class LowerReader {
    /** Middle of the 30 to 60 mm by which the back of a hem over the heel is lower (common practice, no source). */
    private static final double USUAL_DROP = 40;

    private final Given given;
    private final Style.Leg leg;
    private final Optional<Boot> boot;

    LowerReader(Given given, Style.Leg leg, Optional<Boot> boot) {
        this.given = given;
        this.leg = leg;
        this.boot = boot;
    }

    LowerEnd read() {
        Hem hem = hem();
        OptionalDouble cuff = cuff();
        OptionalDouble strap = strap(hem);
        double growth = given.get(LegKeys.GROWTH).orElse(0.0);
        cuffFits(hem, cuff);
        growthFits(hem, cuff, growth);
        return new LowerEnd(hem, cuff, strap, drop(hem), growth);
    }

    private boolean overBoot() {
        return leg == Style.Leg.OVER_BOOT;
    }

    private Part legWord() {
        return Tell.quoted(ChoiceKind.lower(leg));
    }

    private Hem hem() {
        Hem hem = given.orUsual(LegKeys.HEM);
        if (hem != Hem.OVER_LACES && !overBoot()) {
            given.add(LegKeys.HEM, Tell.said("hem.place", Tell.quoted(hem.word()), legWord()), Tell.said("hem.leg"));
        }
        boolean sole = boot.map(b -> b.sole().coverable()).orElse(true);
        if (hem == Hem.WHOLE_BOOT && overBoot() && !sole) {
            given.add(LegKeys.HEM, Tell.said("hem.sole"), Tell.said("hem.measure-sole"));
        }
        return hem;
    }

    private double drop(Hem hem) {
        if (given.has(LegKeys.HEM_DROP) && hem != Hem.OVER_HEEL) {
            given.add(LegKeys.HEM_DROP, Tell.said("drop.level", Tell.quoted(hem.word())), Tell.said("drop.hem"));
        }
        return hem == Hem.OVER_HEEL ? given.get(LegKeys.HEM_DROP).orElse(USUAL_DROP) : 0;
    }

    private OptionalDouble strap(Hem hem) {
        if (!given.has(LegKeys.STRAP)) {
            return leg == Style.Leg.STIRRUP ? OptionalDouble.of(LegKeys.USUAL_STIRRUP) : OptionalDouble.empty();
        }
        Optional<Double> width = given.get(LegKeys.STRAP_WIDTH);
        if (overBoot()) {
            strapUnderBoot(hem, width);
        } else if (leg != Style.Leg.STIRRUP) {
            given.add(LegKeys.STRAP, Tell.said("strap.above", legWord()), Tell.said("strap.leg"));
        }
        return OptionalDouble.of(width.orElse(overBoot() ? LegKeys.USUAL_STRAP : LegKeys.USUAL_STIRRUP));
    }

    private void strapUnderBoot(Hem hem, Optional<Double> width) {
        Range range = LegKeys.UNDER_BOOT;
        width.filter(mm -> !range.holds(mm))
                .ifPresent(mm -> given.add(
                        LegKeys.STRAP_WIDTH,
                        Tell.said("amount.out", Part.written(mm)),
                        Tell.said(
                                "amount.allowed",
                                Part.written(range.least()).atLeast(),
                                Part.written(range.most()).atMost(),
                                range.reason())));
        if (hem != Hem.OVER_LACES && hem != Hem.OVER_HEEL) {
            given.add(LegKeys.STRAP, Tell.said("strap.loose", Tell.quoted(hem.word())), Tell.said("strap.hem"));
        }
        boolean placed = boot.map(Boot::sole)
                .map(s -> s.ankleToSole().isPresent()
                        && s.arch().isPresent()
                        && s.gap().isPresent())
                .orElse(true);
        if (!placed) {
            given.add(LegKeys.STRAP, Tell.said("strap.place"), Tell.said("strap.measure"));
        }
    }

    private void cuffFits(Hem hem, OptionalDouble cuff) {
        if (cuff.isPresent() && leg == Style.Leg.STIRRUP) {
            given.add(LegKeys.CUFF, Tell.said("cuff.stirrup"), Tell.said("cuff.ankle"));
        }
        if (cuff.isEmpty() || !overBoot()) {
            return;
        }
        Said why = switch (hem) {
            case INSIDE_BOOT -> Tell.said("cuff.inside");
            case OVER_HEEL -> Tell.said("cuff.slopes");
            case WHOLE_BOOT -> Tell.said("cuff.cover");
            case TO_COLLAR, OVER_LACES -> Said.NOTHING;
        };
        if (!why.isNothing()) {
            given.add(LegKeys.CUFF, why, Tell.said("cuff.hem"));
        }
    }

    private void growthFits(Hem hem, OptionalDouble cuff, double growth) {
        if (growth == 0) {
            return;
        }
        Said why = Said.NOTHING;
        if (cuff.isPresent()) {
            why = Tell.said("growth.cuff");
        } else if (leg == Style.Leg.STIRRUP) {
            why = Tell.said("growth.stirrup");
        } else if (overBoot() && hem != Hem.OVER_LACES && hem != Hem.TO_COLLAR) {
            why = Tell.said("growth.narrow", Tell.quoted(hem.word()));
        }
        if (!why.isNothing()) {
            given.add(LegKeys.GROWTH, why, Tell.said("growth.out"));
        }
    }

    private OptionalDouble cuff() {
        OptionalDouble height = Row.unboxed(given.get(LegKeys.CUFF_HEIGHT));
        if (height.isPresent() && overBoot() && boot.isPresent()) {
            double covered = boot.get().ankleToTop() + boot.get().ankleToHem();
            if (height.getAsDouble() > covered) {
                given.add(
                        LegKeys.CUFF_HEIGHT,
                        Tell.said("cuff.high", Part.written(height.getAsDouble()), Part.written(covered)),
                        Tell.said("cuff.lower"));
            }
        }
        return height;
    }
}
