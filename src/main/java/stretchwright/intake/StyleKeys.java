package stretchwright.intake;

import java.util.ArrayList;
import java.util.List;

/** Rows of the style, in the order in which they are asked for. */
final class StyleKeys {
    static final Key<Boolean> STYLE = Row.section("style", "{leg: ankle, hold: medium}");

    private StyleKeys() {}

    static List<Key<?>> rows() {
        List<Key<?>> rows = new ArrayList<>();
        rows.add(STYLE);
        rows.addAll(LegKeys.rows());
        rows.addAll(TopKeys.rows());
        rows.addAll(PartKeys.rows());
        rows.addAll(HoldKeys.rows());
        rows.addAll(ShiftKeys.rows());
        rows.addAll(SeamKeys.rows());
        rows.addAll(LayKeys.rows());
        return rows;
    }
}
