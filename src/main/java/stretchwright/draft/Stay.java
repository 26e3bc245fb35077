package stretchwright.draft;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import stretchwright.ground.Part;
import stretchwright.ground.Said;
import stretchwright.pattern.Dimension;
import stretchwright.pattern.Dimension.What;
import stretchwright.pattern.Reason;
import stretchwright.pattern.Reason.Input;
import stretchwright.pattern.Style;

/**
 * What is drawn beside the measures so that top and hem stay where they were asked for: {@link Staying} finds it.
 *
 * @param above how far the flat waist edge is drawn above its place, because it settles, mm
 * @param firm share of the way from the usual band to one that is taken in as far as is comfortable
 * @param elastic width of one that the draft puts into the band, mm
 * @param along share of the usual reduction along the leg that is kept
 * @param waist how far the waist edge would settle as usually drawn, mm
 * @param back how far its back would slip in a deep bend
 */
record Stay(double above, double firm, OptionalDouble elastic, double along, double waist, double back) {
    static final Stay AS_USUAL = new Stay(0, 0, OptionalDouble.empty(), 1, 0, 0);

    Stay above(double mm) {
        return new Stay(mm, firm, elastic, along, waist, back);
    }

    Stay firm(double share) {
        return new Stay(above, share, elastic, along, waist, back);
    }

    Stay with(OptionalDouble width) {
        return new Stay(above, firm, width, along, waist, back);
    }

    Stay along(double share) {
        return new Stay(above, firm, elastic, share, waist, back);
    }

    Stay seen(double waistSettles, double backSlips) {
        return new Stay(above, firm, elastic, along, waistSettles, backSlips);
    }

    /** Whether nothing is drawn otherwise. */
    boolean isUsual() {
        return above == 0 && firm == 0 && elastic.isEmpty() && along == 1;
    }

    /** Why the edge is drawn so far above its place, and why there is an elastic. */
    List<Reason> reasons(double drawn) {
        Input settles = Inputs.rule(Tell.said("input.waist-settles"), waist);
        Input slips = Inputs.rule(Tell.said("input.back-settles"), back);
        Said source = Tell.said("source.staying");
        List<Reason> out = new ArrayList<>();
        if (drawn > 0) {
            out.add(Ruled.of(drawn, Tell.said("rule.settles"), source, settles, slips)
                    .reason(Dimension.of(What.WAIST_EDGE_ABOVE_ITS_PLACE)));
        }
        elastic.ifPresent(width -> out.add(Ruled.of(width, Tell.said("rule.holds-elastic"), source, settles, slips)
                .reason(Dimension.of(What.WAIST_ELASTIC_WIDTH))));
        return out;
    }

    Style in(Style asked) {
        return elastic.isEmpty()
                ? asked
                : asked.with(asked.top().with(asked.top().band().withElastic(elastic.getAsDouble())));
    }

    Ruled eased(Ruled usual) {
        return along == 1
                ? usual
                : usual.with(along * usual.value())
                        .with(Tell.said("rule.along-eased", usual.rule(), Part.share(along)));
    }
}
