package stretchwright.web.draw;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import stretchwright.body.Body;
import stretchwright.body.Figure;
import stretchwright.body.Measure;
import stretchwright.body.SampleBody;
import stretchwright.boot.Boot;
import stretchwright.ground.Voice;
import stretchwright.intake.WearingSymptom;
import stretchwright.pattern.Style.Leg;

/** Every drawing of the room, by a name that can stand in an address. */
final class AllDrawings {
    static final Voice VOICE = Voice.plain();

    private AllDrawings() {}

    static Map<String, Drawing> all() {
        Map<String, Drawing> all = new LinkedHashMap<>();
        for (Figure figure : Figure.values()) {
            tapes(all, figure.word(), UsualFigure.of(figure));
        }
        for (int seed = 0; seed < 6; seed++) {
            tapes(all, "invented" + seed, SampleBody.random(seed));
        }
        boots(all);
        for (ClothHands hands : ClothHands.values()) {
            all.put("hands-" + hands, hands.drawing(VOICE));
        }
        worn(all);
        for (Leg leg : Leg.values()) {
            all.put("ends-" + leg, WhereLegEnds.of(leg, Figure.WOMAN, BootKind.FIGURE, VOICE));
            all.put("ends-child-" + leg, WhereLegEnds.of(leg, Figure.CHILD, BootKind.ROLLER, VOICE));
        }
        for (WearingSymptom symptom : WearingSymptom.values()) {
            all.put("symptom-" + symptom, WornPlaces.of(symptom, VOICE));
        }
        return all;
    }

    private static void worn(Map<String, Drawing> all) {
        for (Figure figure : Figure.values()) {
            Body body = UsualFigure.of(figure);
            double waist = body.mm(Measure.WAIST_HEIGHT);
            double ankle = body.mm(Measure.ANKLE_HEIGHT);
            double bone = body.mm(Measure.ANKLE_BONE_HEIGHT);
            all.put(
                    "worn-" + figure.word(),
                    WornView.of(body, Optional.empty(), new WornEdges(waist + 10, waist + 30, ankle, ankle), 0.55)
                            .drawing(VOICE));
            for (BootKind kind : BootKind.values()) {
                Boot boot = BootShape.usual(kind).scaled(figure == Figure.CHILD ? 0.8 : 1);
                double hem = bone - boot.ankleToHem();
                all.put(
                        "worn-" + figure.word() + "-" + kind,
                        WornView.of(
                                        body,
                                        Optional.of(boot),
                                        new WornEdges(waist - 5, waist + 20, hem + 15, hem - 5),
                                        0.55)
                                .drawing(VOICE));
            }
        }
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
                all.put("tape-" + who + "-" + measure + "-" + size.name(), TapeFigure.of(measure, body, size, VOICE));
            }
        }
    }
}
