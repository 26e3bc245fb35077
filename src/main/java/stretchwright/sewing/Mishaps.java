package stretchwright.sewing;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import stretchwright.ground.Part;
import stretchwright.ground.Said;
import stretchwright.pattern.Stitch;

/** What often goes wrong at a step, and how to put it right. Common practice, no source. */
final class Mishaps {
    private static final Mishap AT_A_TEST = new Mishap(Tell.said("mistake.test"), Tell.said("undo.test"));

    private static final Map<StepKind, Mishap> ALL = new EnumMap<>(StepKind.class);

    static {
        legs();
        parts();
        rings();
        top();
        below();
    }

    private Mishaps() {}

    private static void legs() {
        unpicked(StepKind.SIDE_SEAMS, Tell.said("mistake.side-seams"));
        unpicked(StepKind.FRONT_RISE, Tell.said("mistake.front-rise"));
        unpicked(StepKind.BACK_RISE, Tell.said("mistake.back-rise"));
        put(StepKind.ROW_OVER_RISES, Tell.said("mistake.row-over-rises"), Tell.said("undo.row-over-rises"));
        put(StepKind.INSEAMS, Tell.said("mistake.inseams"), Tell.said("undo.inseams", Part.sewn(150)));
        put(StepKind.CROTCH_BAR, Tell.said("mistake.bar"), Tell.said("undo.bar"));
    }

    private static void parts() {
        unpicked(StepKind.PANELS, Tell.said("mistake.panels"));
        put(StepKind.GUSSET, Tell.said("mistake.gusset"), Tell.said("undo.gusset", Part.sewn(20)));
        unpicked(StepKind.PHONE_POCKET, Tell.said("mistake.phone-pocket"));
        unpicked(StepKind.HIP_POCKET, Tell.said("mistake.hip-pocket"));
        unpicked(StepKind.KNEE_POCKET, Tell.said("mistake.knee-pocket"));
        unpicked(StepKind.TAILBONE_POCKET, Tell.said("mistake.tailbone-pocket"));
    }

    private static void rings() {
        unpicked(StepKind.BAND_RING, Tell.said("mistake.band-ring"));
        unpicked(StepKind.BAND_RINGS, Tell.said("mistake.band-ring"));
        unpicked(StepKind.CUFF_RINGS, Tell.said("mistake.cuff-ring"));
        put(StepKind.BAND_FOLD, Tell.said("mistake.fold"), Tell.said("undo.fold"));
        put(StepKind.CUFF_FOLD, Tell.said("mistake.fold"), Tell.said("undo.fold"));
        put(StepKind.BAND_TURN, Tell.said("mistake.turn"), Tell.said("undo.turn"));
        put(StepKind.LEG_TOP_MARKS, Tell.said("mistake.marks"), Tell.said("undo.marks"));
        put(StepKind.LEG_END_MARKS, Tell.said("mistake.marks"), Tell.said("undo.marks"));
        put(StepKind.BAND_JOIN, Tell.said("mistake.band-join"), Tell.said("undo.band-join", Part.sewn(50)));
        put(StepKind.CUFF_JOIN, Tell.said("mistake.cuff-join"), Tell.said("undo.cuff-join", Part.sewn(50)));
    }

    private static void top() {
        put(StepKind.DARTS, Tell.said("mistake.darts"), Tell.said("undo.darts", Part.sewn(30)));
        unpicked(StepKind.KEY_POCKET_HEM, Tell.said("mistake.key-pocket-hem"));
        unpicked(StepKind.KEY_POCKET, Tell.said("mistake.key-pocket"));
        put(StepKind.EYELETS, Tell.said("mistake.eyelets"), Tell.said("undo.eyelets"));
        unpicked(StepKind.ELASTIC, Tell.said("mistake.elastic"));
        unpicked(StepKind.BAND_TOP, Tell.said("mistake.band-top"));
        unpicked(StepKind.BAND_ROW, Tell.said("mistake.band-row"));
        unpicked(StepKind.CASING, Tell.said("mistake.casing"));
        put(StepKind.CORD, Tell.said("mistake.cord"), Tell.said("undo.cord"));
    }

    private static void below() {
        put(StepKind.HEMS, Tell.said("mistake.hems"), Tell.said("undo.hems"));
        unpicked(StepKind.COVERS, Tell.said("mistake.covers"));
        unpicked(StepKind.COVER_JOIN, Tell.said("mistake.cover-join"));
        put(StepKind.STRAP_EDGES, Tell.said("mistake.strap-edges"), Tell.said("undo.strap-edges"));
        unpicked(StepKind.STRAP_ENDS, Tell.said("mistake.strap-ends"));
        put(StepKind.PRESS, Tell.said("mistake.press"), Tell.said("undo.press"));
        put(StepKind.TRY_ON, Tell.said("mistake.try-on"), Tell.said("undo.try-on"));
    }

    private static void put(StepKind step, Said mistake, Said undo) {
        ALL.put(step, new Mishap(mistake, undo));
    }

    /** The seam is taken out and sewn again. */
    private static void unpicked(StepKind step, Said mistake) {
        put(step, mistake, Said.NOTHING);
    }

    /** @param undo nothing where the seam is unpicked and sewn again */
    record Mishap(Said mistake, Said undo) {}

    static Optional<Mishap> at(Step step) {
        Mishap known = step.name() instanceof StepName.Test ? AT_A_TEST : ALL.get(step.name());
        return Optional.ofNullable(known).map(m -> m.undo.isNothing() ? new Mishap(m.mistake, unpicked(step)) : m);
    }

    private static Said unpicked(Step step) {
        return step.tool().map(t -> unpicked(t.stitch())).orElse(Said.NOTHING);
    }

    /** How a seam is taken out again. */
    private static Said unpicked(Stitch stitch) {
        return switch (stitch) {
            case OVERLOCK_3, OVERLOCK_4 -> Tell.said("undo.overlock", Part.sewn(20));
            case COVERSTITCH, CHAINSTITCH -> Tell.said("undo.cover");
            case LOCKSTITCH, ZIGZAG, BACKSTITCH_BY_HAND -> Tell.said("undo.straight");
        };
    }
}
