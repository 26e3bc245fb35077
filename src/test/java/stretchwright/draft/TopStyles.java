package stretchwright.draft;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import stretchwright.body.SampleBody;
import stretchwright.fabric.SampleFabric;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Style;
import stretchwright.pattern.TopEnd;
import stretchwright.pattern.TopEnd.BackShape;
import stretchwright.pattern.TopEnd.Band;

/** Every way of ending above, by a name to say where a test failed. */
public final class TopStyles {
    private TopStyles() {}

    /** Drafted on the small adult in the heavy knit, to the ankle. */
    public static Map<String, Pattern> drafted() {
        Map<String, Pattern> drafted = new LinkedHashMap<>();
        all().forEach((name, top) -> drafted.put(
                name,
                DraftTest.draft(SampleBody.smallAdult(), SampleFabric.heavyKnit(), Optional.empty(), ankle(top))));
        return drafted;
    }

    public static Map<String, TopEnd> all() {
        Map<String, TopEnd> all = new LinkedHashMap<>();
        all.put("straight", TopEnd.band(45));
        all.put(
                "straight with elastic, cord and pocket",
                top(Band.straight(90).withElastic(20).withCord().withKeyPocket(45)));
        all.put("contoured", top(Band.straight(40).shaped(Band.Shape.CONTOURED)).dropped(40));
        all.put(
                "contoured, partly above the waist",
                top(Band.straight(60).shaped(Band.Shape.CONTOURED)).dropped(25));
        all.put("casing", top(Band.casing(25)));
        all.put("casing with cord", top(Band.casing(30).withCord()).dropped(20));
        all.put("darts", TopEnd.band(45).with(BackShape.DARTS));
        all.put("darts, low rise", TopEnd.band(45).dropped(40).with(BackShape.DARTS));
        all.put("shaped seam", TopEnd.band(45).with(BackShape.SHAPED_SEAM));
        all.put("shaped seam, low rise", TopEnd.band(45).dropped(40).with(BackShape.SHAPED_SEAM));
        all.put("raised", TopEnd.band(45).raised(10, 25));
        all.put("lowered in front", TopEnd.band(45).raised(-15, 10));
        all.put(
                "darts under a contoured band",
                top(Band.straight(40).shaped(Band.Shape.CONTOURED)).dropped(40).with(BackShape.DARTS));
        all.put(
                "darts in a casing, raised behind",
                top(Band.casing(25)).with(BackShape.DARTS).raised(0, 20));
        return all;
    }

    public static TopEnd named(String name) {
        return Objects.requireNonNull(all().get(name), name);
    }

    static TopEnd top(Band band) {
        return TopEnd.band(band.height()).with(band);
    }

    public static Style ankle(TopEnd top) {
        return Style.usual(Style.Leg.ANKLE).with(top);
    }
}
