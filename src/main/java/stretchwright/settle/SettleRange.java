package stretchwright.settle;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import stretchwright.balance.Settled;
import stretchwright.body.Body;
import stretchwright.boot.Boot;
import stretchwright.fabric.Fabric;
import stretchwright.ground.Chance;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Style;

/**
 * Where edges come to lie, with how far that may be off: one standard deviation each, mm, from every guess taken too low and too high
 * by its own.
 *
 * @param middle by the middle guess
 */
public record SettleRange(Settles middle, double waistSpread, double backSpread, double hemSpread) {
    /** Beside the guesses: what the model itself leaves open, mm (no worn garment was compared: no source). */
    private static final double MODEL = 3;

    /** With pulls, ten deep bends and a sit spin. */
    public static SettleRange of(Pattern pattern, Body body, Fabric fabric, Optional<Boot> boot, Style style) {
        HalfGarment half = new HalfGarment(pattern, body, fabric, boot, style, HalfGarment.COARSE);
        return quick(half, body, fabric).with(Settles.of(half));
    }

    /** Standing and in one deep bend only, as {@link Settles#slides}: half the work, and the same said of them. */
    public static SettleRange quick(Pattern pattern, Body body, Fabric fabric, Optional<Boot> boot, Style style) {
        return quick(new HalfGarment(pattern, body, fabric, boot, style, HalfGarment.COARSE), body, fabric);
    }

    private static SettleRange quick(HalfGarment half, Body body, Fabric fabric) {
        List<Settled> near = Settles.states(half, half.guess(), half.top(), List.of());
        List<Settles[]> pairs = Unsure.about(half.guess(), body, fabric).stream()
                .map(pair -> new Settles[] {by(half, pair[0], near), by(half, pair[1], near)})
                .toList();
        return new SettleRange(
                Settles.of(near),
                spread(pairs, Settles::waist),
                spread(pairs, Settles::back),
                spread(pairs, Settles::hemUp));
    }

    private SettleRange with(Settles other) {
        return new SettleRange(other, waistSpread, backSpread, hemSpread);
    }

    /** Of two legs the back of the one that has it harder, and the hem of the one that rises more. */
    public SettleRange orHarder(SettleRange other) {
        SettleRange back = other.middle.back() > middle.back() ? other : this;
        SettleRange hem = other.middle.hemUp() > middle.hemUp() ? other : this;
        return new SettleRange(back.middle.withHemOf(hem.middle), back.waistSpread, back.backSpread, hem.hemSpread);
    }

    private static Settles by(HalfGarment half, Guess guess, List<Settled> near) {
        return Settles.of(Settles.states(half, guess, half.top(), near));
    }

    private static double spread(List<Settles[]> pairs, ToDoubleFunction<Settles> what) {
        double square = MODEL * MODEL;
        for (Settles[] pair : pairs) {
            double half = (what.applyAsDouble(pair[1]) - what.applyAsDouble(pair[0])) / 2;
            square += half * half;
        }
        return Math.sqrt(square);
    }

    /** Lower end of what 8 in 10 garments do; no edge slips by less than nothing. */
    public static double low(double middle, double spread) {
        return Math.max(0, middle - Chance.EIGHT_IN_TEN * spread);
    }

    public static double high(double middle, double spread) {
        return middle + Chance.EIGHT_IN_TEN * spread;
    }
}
