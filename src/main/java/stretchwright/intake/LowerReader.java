package stretchwright.intake;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import stretchwright.boot.Boot;
import stretchwright.pattern.LowerEnd;
import stretchwright.pattern.LowerEnd.Hem;
import stretchwright.pattern.Style;

/** Reads how the leg ends below: hem, cuff, strap, growth; ends that contradict each other are findings. */
final class LowerReader {
    /** Middle of the 30 to 60 mm by which the back of a hem over the heel is lower (common practice, no source). */
    static final double USUAL_DROP = 40;

    /** Straps: 20 to 25 mm of firm elastic over a boot; wider cloth on the bare foot (common practice, no source). */
    static final double USUAL_STRAP = 22;

    static final double USUAL_STIRRUP = 40;

    private final Section s;
    private final Style.Leg leg;
    private final Optional<Boot> boot;

    private LowerReader(Section s, Style.Leg leg, Optional<Boot> boot) {
        this.s = s;
        this.leg = leg;
        this.boot = boot;
    }

    static LowerEnd read(Section style, Style.Leg leg, Optional<Boot> boot) {
        return new LowerReader(style, leg, boot).read();
    }

    private LowerEnd read() {
        Hem hem = hem();
        OptionalDouble cuff = cuff();
        OptionalDouble strap = strap(hem);
        double growth = s.length("growth", Limits.GROWTH).orElse(0);
        cuffFits(hem, cuff);
        growthFits(hem, cuff, growth);
        return new LowerEnd(hem, cuff, strap, drop(hem), growth);
    }

    private boolean overBoot() {
        return leg == Style.Leg.OVER_BOOT;
    }

    private Hem hem() {
        Hem hem = s.choice("hem", List.of(Hem.values()), Hem::word).orElse(Hem.OVER_LACES);
        if (hem != Hem.OVER_LACES && !overBoot()) {
            s.add(
                    "hem",
                    "\"" + hem.word() + "\" is a place on a boot, and the leg is \"" + StyleReader.legWord(leg) + "\".",
                    "Choose leg: over boot, or leave hem out.");
        }
        boolean sole = boot.map(b -> b.sole().coverable()).orElse(true);
        if (hem == Hem.WHOLE_BOOT && overBoot() && !sole) {
            s.add(
                    "hem",
                    "\"whole boot\" ends at the sole, and the sole was not measured.",
                    "Measure and write boot.ankle to sole, boot.sole length and boot.sole width.");
        }
        return hem;
    }

    private double drop(Hem hem) {
        OptionalDouble drop = s.length("hem drop", Limits.HEM_DROP);
        if (s.has("hem drop") && hem != Hem.OVER_HEEL) {
            s.add(
                    "hem drop",
                    "slopes the hem, and a hem \"" + hem.word() + "\" is level.",
                    "Choose hem: over the heel, or leave hem drop out.");
        }
        return hem == Hem.OVER_HEEL ? drop.orElse(USUAL_DROP) : 0;
    }

    private OptionalDouble strap(Hem hem) {
        Optional<Section> section = s.section("strap", List.of("width"));
        if (section.isEmpty()) {
            return leg == Style.Leg.STIRRUP ? OptionalDouble.of(USUAL_STIRRUP) : OptionalDouble.empty();
        }
        Limits.Range range = overBoot() ? Limits.STRAP : Limits.STIRRUP;
        double width = section.get().length("width", range).orElse(overBoot() ? USUAL_STRAP : USUAL_STIRRUP);
        if (overBoot()) {
            strapUnderBoot(hem, section.get());
        } else if (leg != Style.Leg.STIRRUP) {
            s.add(
                    "strap",
                    "goes under the foot, and a leg \"" + StyleReader.legWord(leg) + "\" ends above it.",
                    "Choose leg: stirrup or over boot, or leave the strap out.");
        }
        return OptionalDouble.of(width);
    }

    private void strapUnderBoot(Hem hem, Section strap) {
        if (hem != Hem.OVER_LACES && hem != Hem.OVER_HEEL) {
            s.add(
                    "strap",
                    "would hang loose beside the boot, or lie inside it: the hem is \"" + hem.word() + "\".",
                    "Choose hem: over the laces or over the heel, or leave the strap out.");
        }
        boot.ifPresent(b -> {
            Boot.Sole sole = b.sole();
            if (sole.ankleToSole().isEmpty()
                    || sole.arch().isEmpty()
                    || sole.gap().isEmpty()) {
                strap.add(
                        "",
                        "cannot be placed: where the mounts under the boot leave room for it was not measured.",
                        "Measure and write boot.ankle to sole, boot.arch width and boot.gap between mounts.");
            }
        });
    }

    private void cuffFits(Hem hem, OptionalDouble cuff) {
        if (cuff.isPresent() && leg == Style.Leg.STIRRUP) {
            s.add(
                    "cuff",
                    "cannot hold the strap of leg \"stirrup\", which is sewn to a turned hem.",
                    "Leave the cuff out, or choose leg: ankle.");
        }
        if (cuff.isEmpty() || !overBoot()) {
            return;
        }
        String why = switch (hem) {
            case INSIDE_BOOT -> "would press inside the boot, where the hem is to end";
            case OVER_HEEL -> "is straight, and the hem \"over the heel\" slopes";
            case WHOLE_BOOT -> "would close the hem \"whole boot\", which stays open for blade or plate";
            case TO_COLLAR, OVER_LACES -> "";
        };
        if (!why.isEmpty()) {
            s.add("cuff", why + ".", "Leave the cuff out, or choose hem: over the laces or to the collar.");
        }
    }

    private void growthFits(Hem hem, OptionalDouble cuff, double growth) {
        if (growth == 0) {
            return;
        }
        String why = "";
        if (cuff.isPresent()) {
            why = "is kept in a turned hem, and the leg ends in a cuff";
        } else if (leg == Style.Leg.STIRRUP) {
            why = "is kept in a turned hem, and the strap of a stirrup is sewn to it";
        } else if (overBoot() && hem != Hem.OVER_LACES && hem != Hem.TO_COLLAR) {
            why = "is kept in a deep turned hem, and a hem \"" + hem.word() + "\" must be narrow";
        }
        if (!why.isEmpty()) {
            s.add("growth", why + ".", "Leave growth out, or choose a plain level hem without cuff.");
        }
    }

    private OptionalDouble cuff() {
        Optional<Section> section = s.section("cuff", List.of("height"));
        section.ifPresent(c -> c.require("height", "3.2"));
        OptionalDouble height =
                section.map(c -> c.length("height", Limits.CUFF_HEIGHT)).orElse(OptionalDouble.empty());
        if (height.isPresent() && overBoot() && boot.isPresent()) {
            double covered = boot.get().ankleToTop() + boot.get().ankleToHem();
            if (height.getAsDouble() > covered) {
                section.orElseThrow()
                        .add(
                                "height",
                                "is " + s.shownLength(height.getAsDouble())
                                        + ", more than the part of the boot that the leg covers ("
                                        + s.shownLength(covered) + ").",
                                "Make the cuff lower, or let the leg reach further down (boot.ankle to hem).");
            }
        }
        return height;
    }
}
