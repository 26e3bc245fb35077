package stretchwright.sewing;

import stretchwright.ground.Part;
import stretchwright.ground.Said;
import stretchwright.pattern.Machine;
import stretchwright.pattern.Stitch;

/** What this room says, by key: its sentences stand in words.properties. Names of other rooms become parts here only. */
final class Tell {
    private Tell() {}

    static Said said(String key, Part... parts) {
        return Said.of("sewing", key, parts);
    }

    /** What the sewer wrote, as it is. */
    static Said own(String words) {
        return words.isBlank() ? Said.NOTHING : Tell.said("own", Part.text(words));
    }

    static Part stitch(Stitch stitch) {
        return stitch.said();
    }

    static Part machine(Machine machine) {
        return machine.said();
    }

    /** A length to be sewn or cut by, in whole millimetres. */
    static Part mm(double length) {
        return Part.sewn(Math.round(length));
    }
}
