package stretchwright.web.draw;

import java.util.List;
import java.util.Optional;
import stretchwright.body.Body;
import stretchwright.body.Figure;
import stretchwright.body.Measure;
import stretchwright.ground.Point;
import stretchwright.ground.Said;
import stretchwright.ground.Voice;
import stretchwright.pattern.Style.Leg;

/** Where a leg may end: a small picture of each, to press. */
public final class WhereLegEnds {
    private static final double SCALE = 0.2;

    private WhereLegEnds() {}

    public static Drawing of(Leg leg, Figure figure, BootKind kind, Voice voice) {
        Body body = UsualFigure.of(figure);
        double size = body.mm(Measure.FOOT_LENGTH) / 245;
        double waist = body.mm(Measure.WAIST_HEIGHT);
        double hem = hem(leg, body);
        boolean boot = leg == Leg.OVER_BOOT;
        WornEdges edges = new WornEdges(waist, waist, hem + (boot ? 15 : 0), hem);
        WornView view = WornView.of(
                body, boot ? Optional.of(BootShape.usual(kind).scaled(size)) : Optional.empty(), edges, SCALE);
        view.draw();
        if (leg == Leg.STIRRUP) {
            strap(view);
        }
        return new Drawing(
                voice.say(title(leg)),
                voice.say(described(leg)),
                view.width(),
                view.height(),
                view.pen().drawn());
    }

    private static double hem(Leg leg, Body body) {
        double knee = body.mm(Measure.KNEE_HEIGHT);
        return switch (leg) {
            case OVER_BOOT -> body.mm(Measure.ANKLE_BONE_HEIGHT) - 50;
            case ANKLE -> body.mm(Measure.ANKLE_HEIGHT);
            case STIRRUP -> body.mm(Measure.ANKLE_BONE_HEIGHT);
            case CALF -> body.mm(Measure.CALF_HEIGHT) - 40;
            case KNEE -> knee + 60;
            case SHORT -> (body.mm(Measure.CROTCH_HEIGHT) + knee) / 2;
        };
    }

    /** From the hem on both sides of the ankle bone down under the arch. */
    private static void strap(WornView view) {
        SideFoot foot = view.figure().foot();
        double bone = foot.bone();
        view.pen()
                .runs(
                        Look.WORN,
                        List.of(
                                List.of(new Point(foot.frontAt(bone) - 10, bone), new Point(-62, 2)),
                                List.of(new Point(-22, 2), new Point(0, bone))));
    }

    private static Said title(Leg leg) {
        return switch (leg) {
            case OVER_BOOT -> Tell.said("ends.over-boot");
            case ANKLE -> Tell.said("ends.ankle");
            case STIRRUP -> Tell.said("ends.stirrup");
            case CALF -> Tell.said("ends.calf");
            case KNEE -> Tell.said("ends.knee");
            case SHORT -> Tell.said("ends.short");
        };
    }

    private static Said described(Leg leg) {
        return switch (leg) {
            case OVER_BOOT -> Tell.said("ends.over-boot.drawn");
            case ANKLE -> Tell.said("ends.ankle.drawn");
            case STIRRUP -> Tell.said("ends.stirrup.drawn");
            case CALF -> Tell.said("ends.calf.drawn");
            case KNEE -> Tell.said("ends.knee.drawn");
            case SHORT -> Tell.said("ends.short.drawn");
        };
    }
}
