package stretchwright.web.ask;

import java.util.Arrays;
import java.util.List;
import stretchwright.body.Body;
import stretchwright.body.Figure;
import stretchwright.body.Measure;
import stretchwright.ground.Voice;
import stretchwright.pattern.Style;
import stretchwright.web.draw.BootKind;
import stretchwright.web.draw.BootMeasure;
import stretchwright.web.draw.Boots;
import stretchwright.web.draw.ClothHands;
import stretchwright.web.draw.TapeFigure;
import stretchwright.web.draw.UsualFigure;
import stretchwright.web.draw.WhereLegEnds;
import stretchwright.web.form.Form;
import stretchwright.web.form.Trial;

/** The picture beside a question: on the wearer as far as she is known. */
final class AskPictures {
    private AskPictures() {}

    static List<String> of(Question question, Form answers, Voice voice) {
        return question.measure().map(m -> tape(m, answers, voice)).orElseGet(() -> switch (question) {
            case CLOTH -> List.of(ClothHands.FOLD.drawing(voice).svg("picture", ""));
            case BOOT_TOP, BOOT_HEEL, BOOT_HEM, ANKLE_TO_HEM ->
                BootMeasure.of(question.keys().get(0))
                        .map(m -> Boots.of(m, boot(answers), voice).svg("picture", ""))
                        .stream()
                        .toList();
            case WHO, STATURE, WAIST, SEAT, INNER_LEG, THROUGH_THE_LEGS, CALF -> List.of();
        });
    }

    private static List<String> tape(Measure measure, Form answers, Voice voice) {
        Body body = Trial.body(answers).orElseGet(() -> UsualFigure.of(figure(answers)));
        return List.of(
                TapeFigure.of(measure, body, TapeFigure.Size.WIDE, voice).svg("picture", "wide"),
                TapeFigure.of(measure, body, TapeFigure.Size.NARROW, voice).svg("small", "narrow"));
    }

    private static Figure figure(Form answers) {
        return Arrays.stream(Figure.values())
                .filter(f -> f.word().equals(answers.value("wearer.figure")))
                .findFirst()
                .orElse(Figure.WOMAN);
    }

    private static BootKind boot(Form answers) {
        return BootKind.of(answers.value("boot.kind"));
    }

    /** A leg that ends there. */
    static String leg(Form answers, String word, Voice voice) {
        return Arrays.stream(Style.Leg.values())
                .filter(l -> l.name().replace('_', ' ').equalsIgnoreCase(word))
                .findFirst()
                .map(l -> WhereLegEnds.of(l, figure(answers), boot(answers), voice)
                        .svg("leg" + l.ordinal(), ""))
                .orElse("");
    }
}
