package stretchwright.sewing;

import stretchwright.ground.Said;

/** The steps that a pattern can ask for. */
public enum StepKind implements StepName {
    PHONE_POCKET("phone pocket", Tell.said("step.phone-pocket")),
    HIP_POCKET("hip pad pocket", Tell.said("step.hip-pocket")),
    KNEE_POCKET("knee pad pocket", Tell.said("step.knee-pocket")),
    TAILBONE_POCKET("tailbone pad pocket", Tell.said("step.tailbone-pocket")),
    PANELS("panel seams", Tell.said("step.panels")),
    SIDE_SEAMS("side seams", Tell.said("step.side-seams")),
    FRONT_RISE("front rise", Tell.said("step.front-rise")),
    BACK_RISE("back rise", Tell.said("step.back-rise")),
    ROW_OVER_RISES("cover the rises", Tell.said("step.row-over-rises")),
    GUSSET("gusset", Tell.said("step.gusset")),
    INSEAMS("inseams", Tell.said("step.inseams")),
    CROTCH_BAR("crotch bar", Tell.said("step.crotch-bar")),
    DARTS("back darts", Tell.said("step.darts")),
    KEY_POCKET_HEM("hem the key pocket", Tell.said("step.key-pocket-hem")),
    KEY_POCKET("sew on the key pocket", Tell.said("step.key-pocket")),
    EYELETS("eyelets", Tell.said("step.eyelets")),
    ELASTIC("elastic ring", Tell.said("step.elastic")),
    BAND_RING("waistband ring", Tell.said("step.band-ring")),
    /** Of an outer layer and a facing. */
    BAND_RINGS("waistband rings", Tell.said("step.band-rings")),
    BAND_TOP("close the waistband's upper edge", Tell.said("step.band-top")),
    BAND_FOLD("fold and mark the waistband", Tell.said("step.band-fold")),
    BAND_TURN("turn and mark the waistband", Tell.said("step.band-turn")),
    LEG_TOP_MARKS("mark the leg top", Tell.said("step.leg-top-marks")),
    BAND_JOIN("join the waistband", Tell.said("step.band-join")),
    BAND_ROW("row in the waistband", Tell.said("step.band-row")),
    CASING("casing", Tell.said("step.casing")),
    CORD("cord", Tell.said("step.cord")),
    CUFF_RINGS("cuff rings", Tell.said("step.cuff-rings")),
    CUFF_FOLD("fold and mark the cuffs", Tell.said("step.cuff-fold")),
    LEG_END_MARKS("mark the leg ends", Tell.said("step.leg-end-marks")),
    CUFF_JOIN("join the cuffs", Tell.said("step.cuff-join")),
    COVERS("close the boot covers", Tell.said("step.covers")),
    COVER_JOIN("join the boot covers", Tell.said("step.cover-join")),
    STRAP_EDGES("straps", Tell.said("step.strap-edges")),
    STRAP_ENDS("sew on the straps", Tell.said("step.strap-ends")),
    HEMS("hems", Tell.said("step.hems")),
    PRESS("press and cool", Tell.said("step.press")),
    TRY_ON("try on", Tell.said("step.try-on"));

    private final String word;
    private final Said said;

    StepKind(String word, Said said) {
        this.word = word;
        this.said = said;
    }

    @Override
    public String word() {
        return word;
    }

    @Override
    public Said said() {
        return said;
    }
}
