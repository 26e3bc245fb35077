package stretchwright.web.things;

import stretchwright.body.Measure;
import stretchwright.workroom.store.Links;

/** From a make to what it is made for, of and over, and back: what is changed there, the make follows. */
public final class Way {
    private Way() {}

    /** @param make id of the make that asks */
    public static String toWearer(Links links, String make) {
        return to("/wearers/", links.wearer(), "", make);
    }

    public static String toMeasure(Links links, Measure measure, String make) {
        return to("/wearers/", links.wearer(), MeasurePage.path(measure), make);
    }

    public static String toCloth(Links links, String make) {
        return to("/cloths/", links.fabric(), "", make);
    }

    public static String toBoots(Links links, String make) {
        return to("/boots/", links.boot(), "", make);
    }

    /** Empty where the make has none. */
    private static String to(String shelf, String id, String path, String make) {
        return id.isEmpty() ? "" : shelf + id + path + "?for=" + make;
    }
}
