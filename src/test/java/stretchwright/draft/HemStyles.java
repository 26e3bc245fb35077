package stretchwright.draft;

import java.util.Optional;
import stretchwright.body.Body;
import stretchwright.body.Measure;
import stretchwright.body.SampleBody;
import stretchwright.boot.Boot;
import stretchwright.boot.SampleBoot;
import stretchwright.fabric.SampleFabric;
import stretchwright.ground.Point;
import stretchwright.pattern.LowerEnd;
import stretchwright.pattern.LowerEnd.Hem;
import stretchwright.pattern.Notch;
import stretchwright.pattern.NotchName;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Piece;
import stretchwright.pattern.Style;

/** Styles with each hem, drawn for a small adult and an invented boot, and what is read of them. */
abstract class HemStyles {
    static final double DROP = 40;

    static Style style(Hem hem) {
        return Style.usual(Style.Leg.OVER_BOOT).with(LowerEnd.hem(hem, hem == Hem.OVER_HEEL ? DROP : 0));
    }

    static Boot boot(Body body, Boot.Dressing dressing) {
        return SampleBoot.withSole(body.mm(Measure.HEEL_GIRTH) / 305, dressing);
    }

    static Pattern small(Style style) {
        Boot boot = SampleBoot.withSole(1, Boot.Dressing.LEG_FIRST);
        return DraftTest.draft(SampleBody.smallAdult(), SampleFabric.heavyKnit(), Optional.of(boot), style);
    }

    static double why(Pattern pattern, String dimension) {
        return pattern.reasons().stream()
                .filter(r -> r.dimension().word().equals(dimension))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no reason for " + dimension))
                .mm();
    }

    static Point notch(Piece piece, NotchName name) {
        return piece.notches().stream()
                .filter(n -> n.name() == name)
                .map(Notch::at)
                .findFirst()
                .orElseThrow();
    }
}
