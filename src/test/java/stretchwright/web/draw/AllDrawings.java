package stretchwright.web.draw;

import java.util.LinkedHashMap;
import java.util.Map;
import stretchwright.body.Body;
import stretchwright.body.Figure;
import stretchwright.body.Measure;
import stretchwright.body.SampleBody;
import stretchwright.ground.Voice;

/** Every drawing of the room, by a name that can stand in an address. */
final class AllDrawings {
    static final Voice VOICE = Voice.plain();

    private AllDrawings() {}

    static Map<String, Drawing> all() {
        Map<String, Drawing> all = new LinkedHashMap<>();
        for (Figure figure : Figure.values()) {
            tapes(all, figure.word(), UsualFigure.of(figure));
        }
        tapes(all, "random", SampleBody.random(7));
        boots(all);
        return all;
    }

    private static void boots(Map<String, Drawing> all) {
        for (BootKind kind : BootKind.values()) {
            all.put("boot-" + kind, Boots.of(kind, VOICE));
            for (BootMeasure measure : BootMeasure.values()) {
                all.put("boot-" + kind + "-" + measure, Boots.of(measure, kind, VOICE));
            }
        }
    }

    private static void tapes(Map<String, Drawing> all, String who, Body body) {
        for (Measure measure : Measure.values()) {
            for (TapeFigure.Size size : TapeFigure.Size.values()) {
                all.put(
                        "tape-" + who + "-" + measure.name().toLowerCase(java.util.Locale.ROOT) + "-" + size.name(),
                        TapeFigure.of(measure, body, size, VOICE));
            }
        }
    }
}
