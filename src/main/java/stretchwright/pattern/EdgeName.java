package stretchwright.pattern;

import java.util.Locale;
import stretchwright.ground.Said;

/** What the edges of pieces are called; unique within a piece. */
public enum EdgeName {
    HEM(Tell.said("edge.hem")),
    BACK_INSEAM(Tell.said("edge.back-inseam")),
    BACK_CROTCH(Tell.said("edge.back-crotch")),
    WAIST_EDGE(Tell.said("edge.waist-edge")),
    FRONT_CROTCH(Tell.said("edge.front-crotch")),
    FRONT_INSEAM(Tell.said("edge.front-inseam")),
    /** What lies behind the dart of a waist edge. */
    BACK_WAIST_EDGE(Tell.said("edge.back-waist-edge")),
    DART_BACK_LEG(Tell.said("edge.dart-back-leg")),
    DART_FRONT_LEG(Tell.said("edge.dart-front-leg")),
    MOUTH_OF_THE_DART(Tell.said("edge.mouth-of-the-dart")),
    FRONT_GUSSET_EDGE(Tell.said("edge.front-gusset-edge")),
    BACK_GUSSET_EDGE(Tell.said("edge.back-gusset-edge")),
    SIDE_EDGE(Tell.said("edge.side-edge")),
    FRONT_EDGE(Tell.said("edge.front-edge")),
    BACK_EDGE(Tell.said("edge.back-edge")),
    LOWER_EDGE(Tell.said("edge.lower-edge")),
    UPPER_EDGE(Tell.said("edge.upper-edge")),
    LEFT_EDGE(Tell.said("edge.left-edge")),
    RIGHT_EDGE(Tell.said("edge.right-edge")),
    LEFT_SIDE(Tell.said("edge.left-side")),
    RIGHT_SIDE(Tell.said("edge.right-side")),
    LEFT_END(Tell.said("edge.left-end")),
    RIGHT_END(Tell.said("edge.right-end")),
    CENTRE_BACK_END(Tell.said("edge.centre-back-end")),
    FOLD(Tell.said("edge.fold")),
    LEFT_BACK_EDGE(Tell.said("edge.left-back-edge")),
    LEFT_FRONT_EDGE(Tell.said("edge.left-front-edge")),
    RIGHT_FRONT_EDGE(Tell.said("edge.right-front-edge")),
    RIGHT_BACK_EDGE(Tell.said("edge.right-back-edge"));

    private final String word;
    private final Said said;

    EdgeName(Said said) {
        this.word = name().toLowerCase(Locale.ROOT).replace('_', ' ');
        this.said = said;
    }

    /** As written in the report. */
    public String word() {
        return word;
    }

    public Said said() {
        return said;
    }

    /** Whether the legs' top, or a part of it, ends here. */
    public boolean isWaist() {
        return this == WAIST_EDGE || this == BACK_WAIST_EDGE;
    }

    @Override
    public String toString() {
        return word;
    }
}
