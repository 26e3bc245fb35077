package stretchwright.intake;

import static stretchwright.intake.WearingSymptom.choice;
import static stretchwright.intake.WearingSymptom.one;
import static stretchwright.intake.WearingSymptom.step;

import java.util.List;
import stretchwright.intake.WearingSymptom.Cure;

/** What waist, seat and rise do when worn. Steps and limits are makers' common practice, no source. */
final class WearingTop {
    static final List<WearingSymptom> WAIST = List.of(
            one(
                    "band slides down",
                    "Either the band's cloth or elastic no longer comes back, or the legs are so tight that every bend drags"
                            + " the band. Give the thigh width first; then a second layer of firm net in the band, or an"
                            + " elastic of 25 to 32 mm.",
                    step(WearingKey.CROTCH, 10, 20)),
            one(
                    "band rolls over",
                    "The band is taller than the straight part of the waist, or wider than its elastic. A contoured band"
                            + " follows the body; a casing should be its elastic and 3 mm, stitched through at side, front"
                            + " and back.",
                    choice(WearingKey.BAND)),
            one(
                    "gape at back waist",
                    "The hip is much larger than the waist and the band is straight. The centre back takes in a wedge,"
                            + " nothing at the side.",
                    choice(WearingKey.BACK)),
            new WearingSymptom(
                    "folds below the back band",
                    "Pull the cloth down over the seat: do the folds vanish, and does it then feel tight?",
                    new Cure(
                            "It is too tight over the seat just below the waist, and the cloth climbs to a smaller place:"
                                    + " it needs width there and not less length.",
                            List.of(step(WearingKey.HIP, 10, 20))),
                    new Cure(
                            "The back is too long: lower the centre back, nothing at the side.",
                            List.of(step(WearingKey.BACK_WAIST, -6, -25)))),
            one(
                    "band drops at the back when sitting",
                    "The back rise is too short for the bend, or the cloth stretches too little along.",
                    step(WearingKey.BACK_WAIST, 15, 30)),
            one(
                    "waistband seam snaps",
                    "This is in the sewing: a knitted elastic, a stitch that stretches 100 % or more in the join, quarter"
                            + " marks on band and leg, and only the band stretched."),
            one(
                    "band will not pass the hips",
                    "This is in cloth and stitch: the fit check says how far both stretch. A higher band, a lower rise or an"
                            + " opening with a panel of net at the back helps."));

    static final List<WearingSymptom> RISE = List.of(
            new WearingSymptom(
                    "crotch hangs low",
                    "Is the leg at its limit at calf or thigh, so that the tights cannot be pulled up further?",
                    new Cure(
                            "The legs are too tight to be pulled up, so the crotch stays low: widen the leg, leave the rise.",
                            List.of(step(WearingKey.CROTCH, 10, 20), step(WearingKey.CALF, 10, 25))),
                    new Cure(
                            "The rise is too long: shorten it in front and behind. First pull the tights up as high as they"
                                    + " are cut for.",
                            List.of(step(WearingKey.FRONT_WAIST, -5, -15), step(WearingKey.BACK_WAIST, -5, -15)))),
            one(
                    "fold under the front band",
                    "The front rise is too long: lower the centre front, nothing at the side.",
                    step(WearingKey.FRONT_WAIST, -5, -15)),
            one(
                    "crease into the front centre",
                    "The front curve is too short or hooks too deep, or the cloth is thin. A gusset lets the seams pass.",
                    choice(WearingKey.GUSSET)),
            one(
                    "back seam cuts in",
                    "The back curve is too short. It follows the crotch lengths: measure the total crotch length and the back"
                            + " crotch length again, the tape snug; the pattern has no change for the curve alone."),
            one(
                    "sag below the seat",
                    "A flat seat, or the back too long between seat and knee.",
                    step(WearingKey.BACK_WAIST, -5, -15),
                    step(WearingKey.CROTCH, -5, -15)),
            one(
                    "drag lines from crotch to hip",
                    "A full seat or full thighs need width at the crotch and as much back rise.",
                    step(WearingKey.CROTCH, 5, 20),
                    step(WearingKey.BACK_WAIST, 5, 20)),
            one(
                    "pressure or sag in front",
                    "The front is too short or too flat: a longer front rise gives room, also for what is worn beneath.",
                    step(WearingKey.FRONT_WAIST, 10, 20)),
            one(
                    "crotch seam bursts",
                    "This is in the sewing: an overlock or stretch stitch, a triple straight stitch of 2.5 mm at the crotch,"
                            + " then pull the seam as hard as you can and loosen the top thread until nothing snaps."),
            one(
                    "no range in splits",
                    "Four seams meet at one point. A gusset gives range; it does not cure a wrong rise.",
                    choice(WearingKey.GUSSET)));

    private WearingTop() {}
}
