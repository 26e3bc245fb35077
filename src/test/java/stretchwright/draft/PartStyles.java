package stretchwright.draft;

import java.util.List;
import stretchwright.body.Body;
import stretchwright.body.SampleBody;
import stretchwright.pattern.Parts;
import stretchwright.pattern.Parts.Pocket;

/** Parts of the leg for an invented adult. */
abstract class PartStyles {
    static final Body ADULT = SampleBody.smallAdult();
    static final Parts SEAM = Parts.PLAIN.with(Parts.SideSeam.SHAPED);

    static Parts with(Parts parts, Pocket.Kind kind, double width, double height, double thickness) {
        return parts.with(List.of(new Pocket(kind, width, height, thickness)));
    }
}
