package stretchwright.draft;

import java.util.OptionalDouble;
import stretchwright.ground.Part;
import stretchwright.pattern.Style;

/**
 * What is drawn beside the measures so that top and hem stay where they were asked for: {@link Staying} finds it.
 *
 * @param above how far the flat waist edge is drawn above its place, because it settles, mm
 * @param firm whether the band is taken in as far as is comfortable
 * @param elastic width of one that the draft puts into the band, mm
 * @param along share of the usual reduction along the leg that is kept
 */
record Stay(double above, boolean firm, OptionalDouble elastic, double along) {
    static final Stay AS_USUAL = new Stay(0, false, OptionalDouble.empty(), 1);

    Stay above(double mm) {
        return new Stay(mm, firm, elastic, along);
    }

    Stay firmer() {
        return new Stay(above, true, elastic, along);
    }

    Stay with(OptionalDouble width) {
        return new Stay(above, firm, width, along);
    }

    Stay along(double share) {
        return new Stay(above, firm, elastic, share);
    }

    Style in(Style asked) {
        return elastic.isEmpty()
                ? asked
                : asked.with(asked.top().with(asked.top().band().withElastic(elastic.getAsDouble())));
    }

    Ruled eased(Ruled usual) {
        return along == 1 ? usual : usual.with(along * usual.value()).with(Tell.said("rule.along-eased", usual.rule(), Part.share(along)));
    }
}
