package stretchwright.draft;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import stretchwright.body.Body;
import stretchwright.body.Figure;
import stretchwright.body.Measure;
import stretchwright.body.Measuring;
import stretchwright.body.SampleBody;
import stretchwright.fabric.SampleFabric;
import stretchwright.ground.Findings;
import stretchwright.ground.Path;
import stretchwright.ground.Point;
import stretchwright.pattern.Pattern;

/**
 * Front and back crotch curve of twelve bodies, sewn together at the inseam: one curve of one hand. Their picture is
 * docs/pictures/crotch-joined.svg; drawn anew by this test with -Dpictures.write=true.
 */
class JoinedCrotchTest {
    private static final java.nio.file.Path PICTURE = java.nio.file.Path.of("docs/pictures/crotch-joined.svg");
    private static final List<String> TABLES = List.of("woman", "man", "child");

    private static final double SCALE = 0.62;

    /** The nine percentile bodies of the pictures, and three of the random ones. */
    private static Map<String, Body> twelve() throws IOException {
        Map<String, Body> out = new TreeMap<>();
        for (String who : TABLES) {
            List<String> lines = Files.readAllLines(java.nio.file.Path.of("docs/pictures/percentiles-" + who + ".csv"));
            for (String line : lines.subList(1, lines.size())) {
                List<String> cells = List.of(line.split(",", -1));
                OptionalDouble age = cells.get(2).isEmpty()
                        ? OptionalDouble.empty()
                        : OptionalDouble.of(Double.parseDouble(cells.get(2)));
                Map<Measure, Double> mm = Map.of(
                        Measure.STATURE, Double.parseDouble(cells.get(4)),
                        Measure.WAIST_GIRTH, Double.parseDouble(cells.get(5)),
                        Measure.HIP_GIRTH, Double.parseDouble(cells.get(6)));
                Figure figure = Figure.valueOf(cells.get(1).toUpperCase(Locale.ROOT));
                Findings findings = new Findings(line);
                out.put(
                        who + ", " + cells.get(0).replaceFirst(" of 10.*", ""),
                        Measuring.body(figure, age, mm, findings).orElseThrow());
            }
        }
        for (int seed : new int[] {3, 8, 21}) {
            out.put("random " + seed, SampleBody.random(seed));
        }
        return out;
    }

    private static Path joined(Body body) {
        Pattern pattern = Draft.of(
                        body, SampleFabric.heavyKnit(), Optional.empty(), DraftTest.ANKLE, new Findings("twelve"))
                .orElseThrow();
        return Truth.joined(pattern.legs().get(0));
    }

    @Test
    void frontAndBackAreOneCurve() throws IOException {
        for (Map.Entry<String, Body> one : twelve().entrySet()) {
            Path seam = joined(one.getValue());
            assertThat(Smoothness.changes(seam, Double.NEGATIVE_INFINITY))
                    .as(one.getKey() + " changes its bend")
                    .isZero();
            double last = 0;
            double most = 0;
            for (double s = 10; s < seam.length() - 10; s += 5) {
                double turn = turn(seam, s);
                most = Math.max(most, Math.abs(turn - last));
                last = turn;
            }
            assertThat(most)
                    .as(one.getKey() + ": the curvature grows and falls, it does not jump")
                    .isLessThan(Math.toDegrees(10 / Rise.radius(one.getValue())) / 2);
        }
    }

    private static double turn(Path seam, double s) {
        Point a = seam.at(s).minus(seam.at(s - 10));
        Point b = seam.at(s + 10).minus(seam.at(s));
        return Math.toDegrees(StrictMath.atan2(a.cross(b), a.dot(b)));
    }

    @Test
    void thePictureIsThatOfTheDrafts() throws IOException {
        String drawn = picture(twelve());
        if (Boolean.getBoolean("pictures.write")) {
            Files.writeString(PICTURE, drawn, StandardCharsets.UTF_8);
        }
        assertThat(Files.readString(PICTURE))
                .as(PICTURE + ": run this test with -Dpictures.write=true")
                .isEqualTo(drawn);
    }

    /** Each seam from centre front waist to centre back waist, its crotch point marked; below it how much it turns. */
    private static String picture(Map<String, Body> bodies) {
        List<String> out = new ArrayList<>();
        out.add("<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 1240 1180\" width=\"1240\" height=\"1180\""
                + " font-family=\"Liberation Sans,Arial,sans-serif\" font-size=\"15\">");
        out.add("<rect width=\"100%\" height=\"100%\" fill=\"white\"/>");
        int i = 0;
        for (Map.Entry<String, Body> one : bodies.entrySet()) {
            double left = 20 + 305 * (i % 4);
            double top = 40 + 385 * (i / 4);
            i++;
            Path seam = joined(one.getValue());
            double crotch = crotch(one.getValue());
            Point at = seam.at(crotch);
            Point level = seam.directionAt(crotch);
            out.add(String.format(Locale.ROOT, "<text x=\"%.0f\" y=\"%.0f\">%s</text>", left, top - 14, one.getKey()));
            StringBuilder line = new StringBuilder();
            for (double s = 0; s <= seam.length(); s += 2) {
                Point q = seam.at(s).minus(at);
                Point p = new Point(-(q.x() * level.x() + q.y() * level.y()), -(q.y() * level.x() - q.x() * level.y()));
                line.append(String.format(
                        Locale.ROOT, "%.1f,%.1f ", left + 150 + SCALE * p.x(), top + 250 - SCALE * p.y()));
            }
            out.add("<polyline points=\"" + line.toString().strip()
                    + "\" fill=\"none\" stroke=\"#1b2a33\" stroke-width=\"1.6\"/>");
            out.add(String.format(
                    Locale.ROOT,
                    "<circle cx=\"%.1f\" cy=\"%.1f\" r=\"3.5\" fill=\"#b0463c\"/>",
                    left + 150,
                    top + 250));
            StringBuilder turns = new StringBuilder();
            for (double s = 10; s < seam.length() - 10; s += 5) {
                turns.append(String.format(
                        Locale.ROOT,
                        "%.1f,%.1f ",
                        left + 270 * s / seam.length(),
                        top + 330 - 2 * Math.abs(turn(seam, s))));
            }
            out.add("<polyline points=\"" + turns.toString().strip()
                    + "\" fill=\"none\" stroke=\"#5a7a8c\" stroke-width=\"1.2\"/>");
            out.add(String.format(
                    Locale.ROOT,
                    "<line x1=\"%.1f\" y1=\"%.1f\" x2=\"%.1f\" y2=\"%.1f\" stroke=\"#aaa\"/>",
                    left,
                    top + 330,
                    left + 270,
                    top + 330));
            out.add(String.format(
                    Locale.ROOT,
                    "<text x=\"%.0f\" y=\"%.0f\" fill=\"#5a7a8c\">at most %.0f degrees in 10 mm</text>",
                    left + 70,
                    top + 347,
                    Truth.turn(leg(one.getValue()))));
        }
        out.add("</svg>");
        return String.join("\n", out) + "\n";
    }

    private static stretchwright.pattern.Piece leg(Body body) {
        return Draft.of(body, SampleFabric.heavyKnit(), Optional.empty(), DraftTest.ANKLE, new Findings("twelve"))
                .orElseThrow()
                .legs()
                .get(0);
    }

    private static double crotch(Body body) {
        return leg(body).edge(stretchwright.pattern.EdgeName.FRONT_CROTCH).length();
    }
}
