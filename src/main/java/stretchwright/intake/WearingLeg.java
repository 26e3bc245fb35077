package stretchwright.intake;

import static stretchwright.intake.WearingSymptom.one;
import static stretchwright.intake.WearingSymptom.step;

import java.util.List;

/** What leg, hem and cuff do when worn. Steps and limits are makers' common practice, no source. */
final class WearingLeg {
    static final List<WearingSymptom> LEG = List.of(
            one(
                    "too tight at the calf",
                    "The calf is often not measured, or at the wrong height: measure its girth and height again; where both"
                            + " hold, it wants more width there.",
                    step(WearingKey.CALF, 10, 25)),
            one(
                    "baggy knees",
                    "This is in the cloth: it does not come back, or heat has hurt it. Take cloth that recovers 90 % or more;"
                            + " wash cold and dry in the air."),
            one(
                    "folds behind the knee",
                    "The tights are not pulled high enough, or the knee is too wide. A leg that is too long is taken up at the"
                            + " line marked for it, 5 to 15 mm for each fold, between crotch and knee.",
                    step(WearingKey.KNEE, -5, -10)),
            one(
                    "hem creeps up",
                    "The bent knee takes about 80 mm, and the hem gives it unless it is held: a cuff on the boot or a strap"
                            + " (style.cuff, style.strap), or more length with that. Nothing in the width helps."),
            one(
                    "legs too short",
                    "The cloth shrank, stretches little along, or the wearer grew: wash it first, and keep length in the hem.",
                    step(WearingKey.GROWTH, 30, 50)),
            one(
                    "leg twists",
                    "This is in the cutting: true the cloth until its fold hangs flat, lay the grain within 8 mm on 900 mm,"
                            + " cut in a single layer, match the notches at knee and calf."),
            one(
                    "see-through when bent",
                    "First of all this is in the cloth: denser, dyed through, or lined at the seat. Taking 3 % less off at"
                            + " seat and thigh stretches it less: about 25 mm of a flat hip of 850 mm.",
                    step(WearingKey.HIP, 20, 40),
                    step(WearingKey.CROTCH, 10, 20)));

    static final List<WearingSymptom> HEM = List.of(
            one(
                    "hem will not pass heel or boot",
                    "Measure the heel girth again, on the boot where it is pulled over one; the fit check says what passes. A"
                            + " stitch that breaks is in the sewing: stretch thread below, coverstitch or zigzag."),
            one(
                    "hem rides up over the boot",
                    "The hem has nothing to hold on to: a strap or a hem over the heel (style.strap, style.hem), and the hem"
                            + " girth measured again where it sits."),
            one(
                    "loose leg caught by the blade",
                    "Do not skate in it. No loose cloth may come near the blade: a firmer hold and a hem that lies close; the"
                            + " rink's or club's rules come first."),
            one("laces come loose or catch", "Let the leg cover them (style.hem: over the laces), the ends tucked in."),
            one(
                    "hem wavy",
                    "This is in the sewing: it was stretched. Hem flat before the leg is closed, with starch or a fusible"
                            + " strip, differential feed 1.3 to 2."));

    private WearingLeg() {}
}
