package stretchwright.print.cards;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import stretchwright.fabric.Usual;
import stretchwright.ground.Unit;
import stretchwright.lay.ClothWidths;
import stretchwright.print.kit.Phrases;

/**
 * What a cloth must do, for the card to take to the shop. Shares, not percent.
 *
 * @param source where the numbers come from, in a few words
 * @param areal how much the cloth grows in area standing, 0 if none
 * @param lengths how much to buy of cloths of several widths; empty for no one in particular
 */
public record ShopNeeds(
        String forWhom,
        String source,
        Step across,
        Step along,
        double areal,
        List<String> because,
        Optional<Lengths> lengths) {
    public ShopNeeds {
        because = List.copyOf(because);
    }

    /** What to buy per width, as lays were made on each, and the unit it is written in. */
    public record Lengths(ClothWidths widths, Unit unit) {}

    /** From the larger on: yes; from the smaller on: with changes; empty where no cloth that was tried is enough. */
    public record Step(OptionalDouble yes, OptionalDouble changes) {
        public static Step of(double yes, double changes) {
            return new Step(OptionalDouble.of(yes), OptionalDouble.of(changes));
        }
    }

    /**
     * For no one in particular: 30 to 50 % and more is what a thread maker's leaflet on elastic cloth calls functional;
     * the rest is common practice, no source.
     */
    public static ShopNeeds usual() {
        return new ShopNeeds(
                Phrases.of("shop.any-wearer"),
                Phrases.of("shop.usual"),
                Step.of(Usual.ACROSS, 0.35),
                Step.of(Usual.ALONG, 0.20),
                0.43,
                List.of(Phrases.of("shop.with-make")),
                Optional.empty());
    }
}
