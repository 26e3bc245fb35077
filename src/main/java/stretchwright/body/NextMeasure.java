package stretchwright.body;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import stretchwright.ground.Part;
import stretchwright.ground.Said;

/**
 * The one missing measurement that would narrow the fit most (docs/maths/body.md, section 7).
 *
 * @param why for the wearer
 * @param narrows share by which the summed relative variance of the measures that decide the draft would fall
 */
public record NextMeasure(Measure measure, Said why, double narrows) {
    /** The measures that decide widths and the crotch of the draft. */
    static final Set<Measure> DECISIVE = EnumSet.of(
            Measure.WAIST_GIRTH,
            Measure.HIP_GIRTH,
            Measure.THIGH_GIRTH,
            Measure.MID_THIGH_GIRTH,
            Measure.KNEE_GIRTH,
            Measure.CALF_GIRTH,
            Measure.TOTAL_CROTCH_LENGTH,
            Measure.CROTCH_HEIGHT,
            Measure.HEEL_GIRTH);

    static Optional<NextMeasure> of(Body body) {
        Known known = Known.of(body.figure(), body.age(), Companions.soft(body));
        JointNormal people = known.people();
        JointNormal.Expected now = people.expect(known.logs());
        double left = sum(now.spreads(), body);
        return body.values().keySet().stream()
                .filter(m -> !body.isGiven(m))
                .map(m -> of(m, people, known, now, left, body))
                .filter(n -> n.narrows > 1e-9)
                .max(Comparator.comparingDouble(NextMeasure::narrows));
    }

    private static NextMeasure of(
            Measure measure, JointNormal people, Known known, JointNormal.Expected now, double left, Body body) {
        double[] logs = known.logs().clone();
        logs[measure.ordinal()] = now.logs()[measure.ordinal()];
        double[] then = people.expect(logs).spreads();
        then[measure.ordinal()] = 0;
        return new NextMeasure(measure, why(measure, now.spreads(), then, body), 1 - sum(then, body) / left);
    }

    /** Summed variance, each as a share of its value, of the deciding measures that are estimated. */
    private static double sum(double[] spreads, Body body) {
        return DECISIVE.stream()
                .filter(m -> !body.isGiven(m))
                .mapToDouble(m -> spreads[m.ordinal()] * spreads[m.ordinal()])
                .sum();
    }

    private static Said why(Measure measure, double[] now, double[] then, Body body) {
        Value value = body.value(measure);
        List<Part> others = new ArrayList<>();
        Arrays.stream(Measure.values())
                .filter(m ->
                        m != measure && DECISIVE.contains(m) && body.values().containsKey(m) && !body.isGiven(m))
                .filter(m -> then[m.ordinal()] < 0.9 * now[m.ordinal()])
                .forEach(m -> others.add(Tell.said(
                        "next.other",
                        m.said(),
                        Part.length(body.mm(m) * now[m.ordinal()]),
                        Part.length(body.mm(m) * then[m.ordinal()]))));
        Part[] own = {measure.said(), Part.length(value.mm()), Part.length(value.spread())};
        return others.isEmpty()
                ? Tell.said("next.alone", own)
                : Tell.said("next.with-others", own[0], own[1], own[2], Part.listed(Part.Join.COMMA, others));
    }
}
