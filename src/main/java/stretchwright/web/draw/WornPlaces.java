package stretchwright.web.draw;

import static stretchwright.web.draw.WornScene.p;

import stretchwright.ground.Said;
import stretchwright.ground.Voice;
import stretchwright.intake.WearingSymptom;
import stretchwright.web.draw.WornScene.From;

/** What a worn pair does, one small picture for each symptom, its place ringed. */
public final class WornPlaces {
    /** Height of the band, mm. */
    private static final double BAND = 45;

    private WornPlaces() {}

    public static Drawing of(WearingSymptom symptom, Voice voice) {
        String title = voice.say(WornWords.title(symptom));
        Said place = WornWords.place(symptom);
        return scene(symptom).drawing(title, voice.say(Tell.said("place.ringed", place)));
    }

    private static WornScene scene(WearingSymptom symptom) {
        return switch (symptom) {
            case BAND_SLIDES_DOWN, BAND_ROLLS_OVER, WAIST_TOO_HIGH, WAIST_TOO_LOW, BAND_WILL_NOT_PASS -> band(symptom);
            case WAIST_TOO_TIGHT, WAISTBAND_SEAM_SNAPS, FOLD_UNDER_FRONT_BAND -> waist(symptom);
            case GAPE_AT_BACK_WAIST, FOLDS_BELOW_BACK_BAND, BAND_DROPS_SITTING -> behind(symptom);
            case CROTCH_HANGS_LOW, CREASE_INTO_FRONT, DRAG_LINES, CROTCH_SEAM_BURSTS, NO_RANGE_IN_SPLITS ->
                crotch(symptom);
            case BACK_SEAM_CUTS_IN, SEE_THROUGH, SAG_BELOW_SEAT, PRESSURE_IN_FRONT -> seat(symptom);
            case TIGHT_CALF, BAGGY_KNEES, FOLDS_BEHIND_KNEE, LEG_TWISTS -> leg(symptom);
            case HEM_CREEPS_UP, LEGS_TOO_SHORT, LEGS_TOO_LONG, HEM_WAVY -> hem(symptom);
            case HEM_WILL_NOT_PASS, HEM_RIDES_UP, LOOSE_LEG, LACES -> boot(symptom);
        };
    }

    private static WornScene at(From from, double top) {
        return new WornScene(from, top, 0, 0);
    }

    private static WornScene band(WearingSymptom symptom) {
        WornScene front = at(From.FRONT, symptom == WearingSymptom.WAIST_TOO_HIGH ? 55 : 0);
        double w = front.waist();
        double h = front.hip();
        double out = front.outer(w);
        return switch (symptom) {
            case BAND_SLIDES_DOWN ->
                at(From.FRONT, -95)
                        .band(w - 135)
                        .arrow(p(out + 70, w + 10), p(out + 70, w - 120))
                        .ring(p(0, w - 110), 205, 62);
            case BAND_ROLLS_OVER ->
                front.band(w - 62)
                        .line(Look.TICK, p(-out, w - 4), p(0, w - 26), p(out, w - 4))
                        .line(Look.TICK, p(-out, w - 24), p(0, w - 46), p(out, w - 24))
                        .ring(p(0, w - 22), 175, 58);
            case WAIST_TOO_HIGH ->
                front.band(w + 10)
                        .arrow(p(out + 60, w - 40), p(out + 60, w + 60))
                        .ring(p(0, w + 34), 170, 50);
            case WAIST_TOO_LOW ->
                at(From.FRONT, -85)
                        .band(w - 130)
                        .line(Look.PENCILLED, p(-out, w), p(0, w - 6), p(out, w))
                        .ring(p(0, w - 84), 185, 72);
            default ->
                at(From.FRONT, h + 30 - w)
                        .band(h - 10)
                        .tight(-front.outer(h), front.outer(h), h + 12)
                        .ring(p(0, h + 10), 225, 56);
        };
    }

    private static WornScene waist(WearingSymptom symptom) {
        WornScene front = at(From.FRONT, 0);
        double w = front.waist();
        double out = front.outer(w);
        front.band(w - BAND);
        return switch (symptom) {
            case WAIST_TOO_TIGHT -> front.tight(-out, out, w - 20).ring(p(0, w - 22), 168, 56);
            case WAISTBAND_SEAM_SNAPS -> front.burst(p(0, w - 48), 60, false).ring(p(0, w - 48), 112, 58);
            default -> front.folds(p(0, w - 88), 80, 2, 30).ring(p(0, w - 84), 130, 56);
        };
    }

    private static WornScene behind(WearingSymptom symptom) {
        if (symptom == WearingSymptom.GAPE_AT_BACK_WAIST) {
            WornScene side = at(From.SIDE, -8);
            double w = side.waist();
            double b = side.back(w);
            return side.band(w - 48)
                    .line(Look.RIBBON, p(b + 8, w - 130), p(b + 40, w - 60), p(b + 48, w - 6))
                    .ring(p(b + 22, w - 40), 68, 88);
        }
        WornScene back = at(From.BACK, 0);
        double w = back.waist();
        double out = back.outer(w);
        back.band(w - BAND);
        return symptom == WearingSymptom.FOLDS_BELOW_BACK_BAND
                ? back.folds(p(0, w - 92), 78, 3, 26).ring(p(0, w - 92), 125, 66)
                : back.line(
                                Look.RIBBON,
                                p(-out, w),
                                p(-0.5 * out, w - 62),
                                p(0, w - 84),
                                p(0.5 * out, w - 62),
                                p(out, w))
                        .arrow(p(0, w + 30), p(0, w - 76))
                        .ring(p(0, w - 48), 150, 76);
    }

    private static WornScene crotch(WearingSymptom symptom) {
        boolean splits = symptom == WearingSymptom.NO_RANGE_IN_SPLITS;
        WornScene front = new WornScene(From.FRONT, 0, 0, splits ? 190 : 0);
        double c = front.crotch();
        front.band(front.waist() - BAND);
        return switch (symptom) {
            case CROTCH_HANGS_LOW ->
                front.line(Look.RIBBON, p(-70, c - 16), p(0, c - 84), p(70, c - 16))
                        .arrow(p(0, c + 70), p(0, c - 40))
                        .ring(p(0, c - 30), 112, 88);
            case CREASE_INTO_FRONT ->
                front.line(Look.RIBBON, p(0, c + 4), p(3, c + 50), p(0, c + 108))
                        .ring(p(0, c + 52), 66, 88);
            case DRAG_LINES ->
                front.both(p(8, c + 6), p(70, c + 42), p(150, c + 96))
                        .both(p(12, c - 16), p(80, c + 8), p(160, c + 48))
                        .ring(p(0, c + 36), 205, 96);
            case CROTCH_SEAM_BURSTS -> front.burst(p(0, c + 34), 56, true).ring(p(0, c + 30), 76, 90);
            default -> front.both(p(10, c + 30), p(70, c - 10), p(150, c - 120)).ring(p(0, c), 150, 92);
        };
    }

    private static WornScene seat(WearingSymptom symptom) {
        if (symptom == WearingSymptom.SAG_BELOW_SEAT || symptom == WearingSymptom.PRESSURE_IN_FRONT) {
            return sideSeat(symptom);
        }
        WornScene back = at(From.BACK, 0);
        double c = back.crotch();
        double h = back.hip();
        back.band(back.waist() - BAND);
        if (symptom == WearingSymptom.BACK_SEAM_CUTS_IN) {
            return back.both(p(48, c + 120), p(10, c + 96), p(4, c + 40)).ring(p(0, c + 74), 86, 112);
        }
        for (int i = -4; i <= 4; i++) {
            back.line(Look.PENCILLED, p(i * 28, h + 56), p(i * 28, h - 56));
        }
        return back.ring(p(0, h), 165, 84);
    }

    private static WornScene sideSeat(WearingSymptom symptom) {
        WornScene side = at(From.SIDE, 0);
        double c = side.crotch();
        side.band(side.waist() - BAND);
        if (symptom == WearingSymptom.SAG_BELOW_SEAT) {
            double b = side.back(c - 60);
            return side.folds(p(b - 42, c - 56), 44, 3, 30).ring(p(b - 24, c - 54), 86, 80);
        }
        double f = side.face(c + 60);
        return side.folds(p(f + 42, c + 62), 36, 2, 28).ring(p(f + 30, c + 62), 78, 82);
    }

    private static WornScene leg(WearingSymptom symptom) {
        WornScene side = at(From.SIDE, 0);
        double k = side.knee();
        double c = side.calf();
        return switch (symptom) {
            case TIGHT_CALF -> side.tight(side.face(c) - 4, side.back(c) + 4, c).ring(p(10, c), 92, 70);
            case BAGGY_KNEES ->
                side.line(
                                Look.RIBBON,
                                p(side.face(k + 90) - 12, k + 90),
                                p(side.face(k) - 34, k + 20),
                                p(side.face(k) - 30, k - 22),
                                p(side.face(k - 90) - 12, k - 90))
                        .folds(p(side.face(k) + 30, k - 14), 30, 2, 30)
                        .ring(p(side.face(k) + 6, k), 84, 100);
            case FOLDS_BEHIND_KNEE ->
                side.folds(p(side.back(k) - 34, k), 34, 4, 26).ring(p(side.back(k) - 20, k), 76, 84);
            default -> {
                WornScene front = at(From.FRONT, 0);
                double x = (front.inner(k) + front.outer(k)) / 2;
                yield front.line(
                                Look.RIBBON,
                                p(front.inner(c + 260) + 4, c + 260),
                                p(x - 18, c + 150),
                                p(x + 16, c + 40),
                                p(front.outer(c - 90) - 6, c - 110))
                        .arrow(p(front.outer(k) + 90, k + 60), p(front.outer(k) + 26, k - 30))
                        .ring(p(x, k), 104, 150);
            }
        };
    }

    private static WornScene hem(WearingSymptom symptom) {
        double up = switch (symptom) {
            case HEM_CREEPS_UP -> 60;
            case LEGS_TOO_SHORT -> 110;
            case LEGS_TOO_LONG -> -12;
            default -> 0;
        };
        WornScene side = new WornScene(From.SIDE, 0, up, 0);
        double e = side.hem();
        double x = side.back(e + up) + 62;
        if (up > 0) {
            side.line(Look.PENCILLED, p(side.face(e) - 12, e), p(side.back(e) + 12, e));
        }
        return switch (symptom) {
            case HEM_CREEPS_UP -> side.arrow(p(x, e - 10), p(x, e + up + 40)).ring(p(2, e + 30), 84, 70);
            case LEGS_TOO_SHORT -> side.ring(p(2, e + 55), 84, 95);
            case LEGS_TOO_LONG -> side.folds(p(0, e + 52), 40, 4, 28).ring(p(0, e + 40), 84, 92);
            default ->
                side.line(
                                Look.RIBBON,
                                p(-52, e + 4),
                                p(-34, e - 14),
                                p(-12, e + 8),
                                p(12, e - 14),
                                p(34, e + 8),
                                p(54, e - 8))
                        .ring(p(0, e), 90, 56);
        };
    }

    private static WornScene boot(WearingSymptom symptom) {
        WornScene boot = new WornScene(From.BOOT, 0, symptom == WearingSymptom.HEM_RIDES_UP ? 78 : 0, 0);
        return switch (symptom) {
            case HEM_WILL_NOT_PASS ->
                boot.line(Look.RIBBON, p(-78, 88), p(-10, 10), p(70, -20)).ring(p(-6, 30), 112, 86);
            case HEM_RIDES_UP -> boot.arrow(p(104, 20), p(104, 140)).ring(p(0, 104), 98, 66);
            case LOOSE_LEG ->
                boot.line(Look.RIBBON, p(62, 190), p(104, 90), p(134, -58), p(70, -80), p(30, -50))
                        .ring(p(84, -30), 84, 92);
            default ->
                boot.line(Look.RIBBON, p(-112, 20), p(-150, 46), p(-170, 26), p(-128, 12), p(-112, 20))
                        .line(Look.RIBBON, p(-112, 20), p(-168, 4), p(-186, -40))
                        .ring(p(-140, 6), 76, 78);
        };
    }
}
