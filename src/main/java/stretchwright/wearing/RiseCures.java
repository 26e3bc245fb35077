package stretchwright.wearing;

import static stretchwright.wearing.Cure.choice;
import static stretchwright.wearing.Cure.step;

import stretchwright.ground.Part;
import stretchwright.intake.WearingKey;

/** What seat and rise do when worn. Steps and limits are makers' common practice, no source. */
final class RiseCures {
    private RiseCures() {}

    static Cure legsTooTight() {
        return Cure.of(Tell.said("crotch.low-tight"), step(WearingKey.CROTCH, 10, 20), step(WearingKey.CALF, 10, 25));
    }

    static Cure riseTooLong() {
        return Cure.of(
                Tell.said("crotch.low-long"),
                step(WearingKey.FRONT_WAIST, -5, -15),
                step(WearingKey.BACK_WAIST, -5, -15));
    }

    static Cure frontTooLong() {
        return Cure.of(Tell.said("rise.front-too-long"), step(WearingKey.FRONT_WAIST, -5, -15));
    }

    static Cure frontCurve() {
        return Cure.of(Tell.said("rise.front-curve"), choice(WearingKey.GUSSET))
                .or(step(WearingKey.FRONT_CROTCH_POINT, 5, 15));
    }

    static Cure backCurve() {
        return Cure.of(Tell.said("rise.back-curve"), step(WearingKey.BACK_CROTCH_POINT, 5, 15));
    }

    static Cure flatSeat() {
        return Cure.of(
                Tell.said("seat.flat"),
                step(WearingKey.BACK_CROTCH_POINT, -5, -15),
                step(WearingKey.BACK_WAIST, -5, -15));
    }

    static Cure fullSeat() {
        return Cure.of(
                Tell.said("seat.full"), step(WearingKey.BACK_CROTCH_POINT, 5, 20), step(WearingKey.BACK_WAIST, 5, 20));
    }

    static Cure frontTooShort() {
        return Cure.of(Tell.said("rise.front-too-short"), step(WearingKey.FRONT_WAIST, 10, 20));
    }

    static Cure bursts() {
        return Cure.of(Tell.said("crotch.bursts", Part.millimetres(2.5, 1)));
    }

    static Cure splits() {
        return Cure.of(Tell.said("crotch.splits"), choice(WearingKey.GUSSET));
    }
}
