package stretchwright.settle;

import java.util.EnumMap;
import java.util.Map;
import java.util.OptionalDouble;
import stretchwright.balance.Motion;
import stretchwright.fabric.Fabric;
import stretchwright.fabric.Hung;
import stretchwright.fabric.Layers;
import stretchwright.fabric.Learnt;
import stretchwright.fabric.Learnt.What;

/**
 * What nobody measured of a wearer in this cloth: middle values and spreads of docs/maths/balance.md, "Constants".
 *
 * @param skin friction of cloth on skin
 * @param boot friction of a cuff on a boot
 * @param layers two layers of a band on a body
 * @param narrowing width that a strip loses over length that it gains
 * @param seam so many times the cloth that shear lag lets go with the crotch seam
 * @param across so many times the load curve across
 * @param elastic so many times the pull that an elastic usually has
 * @param crotch so much longer is the body over the crotch than taken, mm
 * @param waist so much larger is the girth at the waist edge than taken, mm
 * @param bend how the body moves into a deep bend
 */
public record Guess(
        double skin,
        double boot,
        double layers,
        double narrowing,
        double seam,
        double across,
        double along,
        double elastic,
        double crotch,
        double waist,
        Motion bend) {
    public static final Guess MIDDLE = new Guess(0.4, 0.3, Layers.TWO, 0.3, 1, 1, 1, 1, 0, 0, Motion.SQUAT);

    /** With what was read of this cloth, and what a worn pair taught. */
    static Guess of(Fabric fabric) {
        OptionalDouble narrows = fabric.test().hung().across().narrowing();
        Guess read =
                narrows.isEmpty() ? MIDDLE : MIDDLE.cloth(1, 1, Math.min(Hung.MOST_NARROWING, narrows.getAsDouble()));
        return fabric.learnt().isNothing() ? read : read.taught(fabric.learnt());
    }

    private Guess taught(Learnt by) {
        return frictions(by.of(What.SKIN, skin), by.of(What.BOOT, boot))
                .cloth(across, along, by.of(What.NARROWING, narrowing))
                .sewn(by.of(What.LAYERS, layers), by.of(What.CROTCH_SEAM, seam), by.of(What.ELASTIC, elastic))
                .measured(by.of(What.OVER_CROTCH, crotch), by.of(What.ROUND_WAIST, waist))
                .bent(bend.withGirths(by.of(What.HIP_GROWTH, bend.hip()), by.of(What.KNEE_GROWTH, bend.knee()))
                        .withSkin(by.of(What.KNEE_ALONG, bend.kneeFront()), by.of(What.SEAT_ALONG, bend.seat()))
                        .withRiseBack(by.of(What.BACK_RISE, bend.riseBack())));
    }

    /** As it is kept for the next pair; pulls on top of those that were learnt of the cloth before. */
    public Learnt learnt(Learnt before) {
        Map<What, Double> all = new EnumMap<>(What.class);
        all.put(What.PULL_ACROSS, across * before.of(What.PULL_ACROSS, 1));
        all.put(What.PULL_ALONG, along * before.of(What.PULL_ALONG, 1));
        all.put(What.NARROWING, narrowing);
        all.put(What.LAYERS, layers);
        all.put(What.CROTCH_SEAM, seam);
        all.put(What.ELASTIC, elastic);
        all.put(What.HIP_GROWTH, bend.hip());
        all.put(What.KNEE_GROWTH, bend.knee());
        all.put(What.KNEE_ALONG, bend.kneeFront());
        all.put(What.SEAT_ALONG, bend.seat());
        all.put(What.BACK_RISE, bend.riseBack());
        all.put(What.OVER_CROTCH, crotch);
        all.put(What.ROUND_WAIST, waist);
        all.put(What.SKIN, skin);
        all.put(What.BOOT, boot);
        all.replaceAll((what, value) -> Math.max(what.least(), Math.min(what.most(), value)));
        return new Learnt(all);
    }

    Guess frictions(double onSkin, double onBoot) {
        return new Guess(onSkin, onBoot, layers, narrowing, seam, across, along, elastic, crotch, waist, bend);
    }

    Guess cloth(double timesAcross, double timesAlong, double narrows) {
        return new Guess(skin, boot, layers, narrows, seam, timesAcross, timesAlong, elastic, crotch, waist, bend);
    }

    Guess sewn(double layered, double withSeam, double pulls) {
        return new Guess(skin, boot, layered, narrowing, withSeam, across, along, pulls, crotch, waist, bend);
    }

    Guess measured(double overCrotch, double round) {
        return new Guess(skin, boot, layers, narrowing, seam, across, along, elastic, overCrotch, round, bend);
    }

    Guess bent(Motion other) {
        return new Guess(skin, boot, layers, narrowing, seam, across, along, elastic, crotch, waist, other);
    }
}
