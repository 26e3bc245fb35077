package stretchwright.fit;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import stretchwright.body.Body;
import stretchwright.body.Side;
import stretchwright.boot.Boot;
import stretchwright.fabric.Fabric;
import stretchwright.pattern.Machine;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Style;
import stretchwright.pattern.WhichLeg;

/** All that the fit check goes by: one pattern on one body in its cloth, boot and stitches. */
record Worn(Pattern pattern, Body body, Fabric fabric, Optional<Boot> boot, Style style, Set<Machine> machines) {
    Worn {
        boot = boot.filter(b -> style.leg() == Style.Leg.OVER_BOOT);
        Set<Machine> sorted = EnumSet.noneOf(Machine.class);
        sorted.addAll(machines);
        machines = sorted;
    }

    Worn on(Body other) {
        return new Worn(pattern, other, fabric, boot, style, machines);
    }

    /** One leg of the pattern on that leg of the body; where the legs are alike there is one view for both. */
    List<Worn> legs() {
        if (!pattern.legsDiffer()) {
            return List.of(this);
        }
        List<Worn> out = new ArrayList<>();
        for (Side side : Side.values()) {
            out.add(new Worn(
                    pattern.onlyLeg(WhichLeg.named(side.word())), body.leg(side), fabric, boot, style, machines));
        }
        return out;
    }

    /** Whether the lower end lies on a boot and not on the leg. */
    boolean hemOnBoot() {
        return boot.isPresent() && style.lower().outsideBoot();
    }
}
