package stretchwright.wearing;

/** What hem and cuff do when worn: their cures are in measuring, cloth and sewing. Makers' common practice, no source. */
final class HemCures {
    private HemCures() {}

    static Cure willNotPass() {
        return Cure.of(Tell.said("hem.will-not-pass"));
    }

    static Cure ridesUp() {
        return Cure.of(Tell.said("hem.rides-up"));
    }

    static Cure looseLeg() {
        return Cure.of(Tell.said("hem.loose"));
    }

    static Cure laces() {
        return Cure.of(Tell.said("hem.laces"));
    }

    static Cure wavy() {
        return Cure.of(Tell.said("hem.wavy"));
    }
}
