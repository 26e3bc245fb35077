package stretchwright.many;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import stretchwright.draft.Truth;
import stretchwright.ground.Part;
import stretchwright.ground.Said;

/** How true the drafts of a survey are to their bodies: each figure as a distribution. */
final class SurveyTruth {
    /** A figure of each draft; its word in survey.json, and on the page. */
    record Figure(String word, Said said, ToDoubleFunction<Truth> of, int decimals) {}

    static final List<Figure> FIGURES = List.of(
            new Figure("turn", Tell.said("truth.turn"), Truth::turn, 1),
            new Figure("radius", Tell.said("truth.radius"), Truth::radius, 1),
            new Figure("waistOffPlace", Tell.said("truth.miss"), t -> Math.abs(t.miss()), 1),
            new Figure("strainTold", Tell.said("truth.strain"), Truth::strain, 2),
            new Figure("notchGap", Tell.said("truth.notches"), Truth::notches, 1),
            new Figure("backCrotchLengthOff", Tell.said("truth.split"), t -> Math.abs(t.split()), 1));

    private SurveyTruth() {}

    static Said[] head() {
        return new Said[] {
            Tell.said("page.who"),
            Tell.said("page.in"),
            Tell.said("truth.figure"),
            Tell.said("truth.least"),
            Tell.said("truth.low"),
            Tell.said("truth.median"),
            Tell.said("truth.high"),
            Tell.said("truth.most")
        };
    }

    /** Least, 5 %, median, 95 %, most; empty without drafts. */
    static double[] spread(Figure figure, Stream<SurveyTrial.Outcome> outcomes) {
        double[] sorted = outcomes.flatMap(o -> o.truth().stream())
                .mapToDouble(figure.of)
                .sorted()
                .toArray();
        return sorted.length == 0
                ? sorted
                : DoubleStream.of(0, 0.05, 0.5, 0.95, 1)
                        .map(share -> sorted[(int) Math.round(share * (sorted.length - 1))])
                        .toArray();
    }

    /** A row of the table; without drafts an empty one. */
    static List<Part> line(Said who, Part in, Figure figure, Stream<SurveyTrial.Outcome> outcomes) {
        double[] spread = spread(figure, outcomes);
        List<Part> line = new ArrayList<>(List.of(who, in, figure.said));
        for (double value : spread) {
            line.add(Part.number(value, figure.decimals));
        }
        return spread.length == 0 ? List.of() : line;
    }
}
