package stretchwright.pattern;

import java.util.Locale;
import stretchwright.ground.Said;

/** Which seams there are, apart from the turned edges of pockets. */
public enum SeamKind {
    FRONT_RISE(Tell.said("seam.front-rise")),
    BACK_RISE(Tell.said("seam.back-rise")),
    INSEAM(Tell.said("seam.inseam")),
    SIDE_SEAM(Tell.said("seam.side-seam")),
    FRONT_PANEL_SEAM(Tell.said("seam.front-panel-seam")),
    BACK_PANEL_SEAM(Tell.said("seam.back-panel-seam")),
    BACK_DART(Tell.said("seam.back-dart")),
    GUSSET_LEFT_FRONT(Tell.said("seam.gusset-left-front")),
    GUSSET_LEFT_BACK(Tell.said("seam.gusset-left-back")),
    GUSSET_RIGHT_FRONT(Tell.said("seam.gusset-right-front")),
    GUSSET_RIGHT_BACK(Tell.said("seam.gusset-right-back")),
    CASING(Tell.said("seam.casing")),
    WAISTBAND_ENDS(Tell.said("seam.waistband-ends")),
    WAISTBAND_FACING_ENDS(Tell.said("seam.waistband-facing-ends")),
    WAISTBAND_TOP(Tell.said("seam.waistband-top")),
    WAISTBAND_JOIN(Tell.said("seam.waistband-join")),
    KEY_POCKET_HEM(Tell.said("seam.key-pocket-hem")),
    KEY_POCKET_LEFT_SIDE(Tell.said("seam.key-pocket-left-side")),
    KEY_POCKET_RIGHT_SIDE(Tell.said("seam.key-pocket-right-side")),
    HEM(Tell.said("seam.hem")),
    CUFF_ENDS(Tell.said("seam.cuff-ends")),
    CUFF_JOIN(Tell.said("seam.cuff-join")),
    COVER_FRONT(Tell.said("seam.cover-front")),
    COVER_BACK(Tell.said("seam.cover-back")),
    COVER_JOIN(Tell.said("seam.cover-join")),
    STRAP_EDGES(Tell.said("seam.strap-edges")),
    STRAP_ENDS(Tell.said("seam.strap-ends"));

    private final String word;
    private final Said said;

    SeamKind(Said said) {
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
}
