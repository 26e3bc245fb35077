package stretchwright.print.fit;

import java.util.List;
import stretchwright.ground.Unit;
import stretchwright.print.kit.Amounts;
import stretchwright.print.kit.Phrases;
import stretchwright.settle.SettleRange;
import stretchwright.settle.Settles;

/** Where edges come to lie, line by line. */
final class SettleRows {
    private SettleRows() {}

    static List<List<String>> of(SettleRange range, Unit unit) {
        Settles s = range.middle();
        String waist = Phrases.of("fit.edge.waist");
        String back = Phrases.of("fit.edge.back");
        String grip = newtons(s.grip());
        return List.of(
                List.of(
                        waist,
                        Phrases.of("fit.pose.standing"),
                        down(s.waist(), range.waistSpread(), unit),
                        newtons(s.pullStanding()),
                        grip),
                List.of(
                        back,
                        Phrases.of("fit.pose.bend"),
                        down(s.back(), range.backSpread(), unit),
                        newtons(s.pull()),
                        grip),
                List.of(
                        back,
                        Phrases.of("fit.pose.after"),
                        Phrases.of("fit.down", Amounts.bare(s.backAfter(), unit)),
                        "",
                        ""),
                List.of(
                        back,
                        Phrases.of("fit.pose.spin"),
                        Phrases.of("fit.down", Amounts.bare(s.backSpin(), unit)),
                        "",
                        ""),
                List.of(
                        Phrases.of("fit.edge.hem"),
                        Phrases.of("fit.pose.bend"),
                        Phrases.of("fit.up", ends(s.hemUp(), range.hemSpread(), unit)),
                        newtons(s.hemPull()),
                        newtons(s.hemGrip())));
    }

    private static String newtons(double n) {
        return String.valueOf(Math.round(Math.max(0, n)));
    }

    private static String down(double middle, double spread, Unit unit) {
        return Phrases.of("fit.down", ends(middle, spread, unit));
    }

    private static String ends(double middle, double spread, Unit unit) {
        return Amounts.bare(SettleRange.low(middle, spread), unit) + " - "
                + Amounts.bare(SettleRange.high(middle, spread), unit) + " (" + Amounts.bare(Math.max(0, middle), unit)
                + ")";
    }
}
