package stretchwright.wearing;

import static stretchwright.wearing.Cure.step;

import stretchwright.ground.Part;
import stretchwright.intake.WearingKey;

/** What the leg does when worn. Steps and limits are makers' common practice, no source. */
final class LegCures {
    private LegCures() {}

    static Cure tightCalf() {
        return Cure.of(Tell.said("calf.tight"), step(WearingKey.CALF, 10, 25));
    }

    static Cure baggyKnees() {
        return Cure.of(Tell.said("knee.baggy", Part.share(0.9)));
    }

    static Cure foldsBehindKnee() {
        return Cure.of(Tell.said("knee.folds", Part.span(5, 15)), step(WearingKey.KNEE, -5, -10));
    }

    static Cure hemCreepsUp() {
        return Cure.of(Tell.said("hem.creeps-up", Part.length(80)));
    }

    /** Kept in the hem where there is a plain one; any other leg is made longer. */
    static Cure tooShort() {
        return Cure.of(Tell.said("leg.too-short"), step(WearingKey.GROWTH, 30, 50))
                .or(step(WearingKey.LEG_LENGTH, 10, 30));
    }

    static Cure tooLong() {
        return Cure.of(Tell.said("leg.too-long"), step(WearingKey.LEG_LENGTH, -10, -30));
    }

    static Cure twists() {
        return Cure.of(Tell.said("leg.twists", Part.length(8), Part.length(900)));
    }

    static Cure seeThrough() {
        return Cure.of(
                Tell.said("cloth.see-through", Part.share(0.03), Part.length(25), Part.length(850)),
                step(WearingKey.HIP, 20, 40),
                step(WearingKey.CROTCH, 10, 20));
    }
}
