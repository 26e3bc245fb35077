package stretchwright.draft;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Files;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import stretchwright.body.Body;
import stretchwright.body.Figure;
import stretchwright.body.SurveyBodies;
import stretchwright.fabric.SampleFabric;
import stretchwright.ground.Findings;
import stretchwright.ground.Path;
import stretchwright.ground.Point;
import stretchwright.pattern.EdgeName;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Piece;
import stretchwright.pattern.PieceKind;
import stretchwright.pattern.PieceName;

/** The crotch curve and the top edge over the shared survey, ankle legs in cloth of 60/45 %: no corner, and at its place. */
@Tag("long")
class TopSurveyTest {
    /** Chords of this length, mm, tell the radius: shorter ones tell the grid. */
    private static final double CHORD = 8;

    /** A chord of 8 mm at a radius of 18 mm tells it so much too small or large. */
    private static final double TOLD = 0.05;

    @Test
    void theCrotchHasNoCornerAndTheTopEdgeStandsAtItsPlace() {
        assumeTrue(
                Files.isDirectory(java.nio.file.Path.of(
                        System.getProperty("stretchwright.shared", "../shared"), "data", "bodies")),
                "skipped: the survey data are not there");
        List<SurveyBodies.Named> bodies = SurveyBodies.all(new ArrayList<>());
        List<Double> adults = Collections.synchronizedList(new ArrayList<>());
        List<Double> children = Collections.synchronizedList(new ArrayList<>());
        List<Double> missed = Collections.synchronizedList(new ArrayList<>());
        bodies.parallelStream().forEach(named -> {
            Body body = named.body();
            Optional<Pattern> pattern = Draft.of(
                    body, SampleFabric.heavyKnit(), Optional.empty(), DraftTest.ANKLE, new Findings(named.name()));
            pattern.ifPresent(p -> {
                (body.figure() == Figure.CHILD ? children : adults).add(least(p));
                missed.add(Math.abs(DraftCheck.correction(body, DraftTest.ANKLE, p)));
            });
        });
        tell("least radius of the crotch, adults", adults);
        tell("least radius of the crotch, children", children);
        tell("waist edge off its place", missed);
        assertThat(Collections.min(adults)).isGreaterThan(25 * (1 - TOLD));
        assertThat(Collections.min(children)).isGreaterThan(18 * (1 - TOLD));
        assertThat(missed.get((int) (0.95 * missed.size()))).isLessThan(10);
    }

    private static void tell(String what, List<Double> values) {
        Collections.sort(values);
        int n = values.size();
        System.out.printf(
                "%s: %d drafts, least %.1f, 5 %% %.1f, median %.1f, 95 %% %.1f, most %.1f mm%n",
                what,
                n,
                values.get(0),
                values.get(n / 20),
                values.get(n / 2),
                values.get((int) (0.95 * n)),
                values.get(n - 1));
    }

    /** Second opinion: circles through three points of each half, its crotch point left out, where the inseam is sewn. */
    private static double least(Pattern pattern) {
        Piece leg = pattern.piece(PieceName.of(PieceKind.LEG));
        double least = Double.POSITIVE_INFINITY;
        for (EdgeName name : List.of(EdgeName.FRONT_CROTCH, EdgeName.BACK_CROTCH)) {
            Path line = leg.edge(name).line();
            for (double s = CHORD; s < line.length() - CHORD; s += 1) {
                least = Math.min(least, radius(line.at(s - CHORD), line.at(s), line.at(s + CHORD)));
            }
        }
        return least;
    }

    private static double radius(Point a, Point b, Point c) {
        double area = Math.abs(b.minus(a).cross(c.minus(a))) / 2;
        return area < 1e-9 ? Double.POSITIVE_INFINITY : a.distance(b) * b.distance(c) * a.distance(c) / (4 * area);
    }
}
