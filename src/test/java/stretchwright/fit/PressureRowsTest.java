package stretchwright.fit;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import stretchwright.balance.Motion;
import stretchwright.body.Comfort;
import stretchwright.body.GirthGrowth;
import stretchwright.body.SkinExtension;
import stretchwright.fabric.CurveSpread;
import stretchwright.fabric.Laplace;
import stretchwright.fabric.Layers;
import stretchwright.fabric.Likely;
import stretchwright.fabric.LoadCurve;
import stretchwright.fabric.PressureSpread;
import stretchwright.ground.Chance;
import stretchwright.settle.Constants;
import stretchwright.settle.Guess;

/** The published rows in one table of docs/maths/fit.md: ours is computed here, by the program's own functions, and held to it. */
class PressureRowsTest {
    private static final Path NOTES = Path.of("docs/maths/fit.md");
    private static final String HEAD = "| row | what | measured | ours (8 in 10) | inside | read where |";

    /** Half of the body's variance is common to all levels and cancels in a ratio of two (0.14 each is not), tape and sewing 0.065 twice. */
    private static final double RATIO = Math.hypot(0.20, 0.065 * Math.sqrt(2));

    /** A strip weighed three times and worn at 15 %, as garments that are made to measure. */
    private static final LoadCurve WEIGHED = LoadCurve.through(
            List.of(new LoadCurve.Reading(0.10, 20), new LoadCurve.Reading(0.20, 40), new LoadCurve.Reading(0.40, 80)));

    /** Mean posterior crotch length by the navel, ANSUR 1988, mm. */
    private static final double WOMEN = 306;

    private static final double MEN = 316;

    private record Ours(String told, String inside) {}

    private final Map<Integer, Ours> computed = new LinkedHashMap<>();

    private void row(int number, int decimals, double middle, double low, double high, double... measured) {
        boolean all = true;
        for (double m : measured) {
            all &= m >= low && m <= high;
        }
        String told = fixed(middle, decimals) + " (" + fixed(low, decimals) + " to " + fixed(high, decimals) + ")";
        computed.put(number, new Ours(told, all ? "yes" : "no"));
    }

    private void log(int number, int decimals, double middle, double spread, double... measured) {
        double off = Math.exp(Chance.EIGHT_IN_TEN * spread);
        row(number, decimals, middle, middle / off, middle * off, measured);
    }

    private static String fixed(double value, int decimals) {
        return String.format(Locale.ROOT, "%." + decimals + "f", value);
    }

    /** At equal tension. */
    private static double ratio(double one, double other) {
        return Laplace.kilopascals(50, one) / Laplace.kilopascals(50, other);
    }

    private Map<Integer, Ours> all() {
        double weighed = new PressureSpread(WEIGHED).total(0.15, PressureSpread.strain(0.15, 360, 5 / 2.8));
        log(3, 1, Laplace.toMmHg(Laplace.kilopascals(Laplace.tension(Laplace.fromMmHg(20), 360), 360)), weighed, 24);
        log(4, 2, 1, weighed, 0.579);
        row(5, 2, Layers.TWO, 1.5, 1.9, 1.65);
        row(6, 2, Layers.TWO, 1.5, 1.9, 1.70);
        row(7, 2, Layers.TWO, 1.5, 1.9, 1.29);
        LoadCurve straight =
                LoadCurve.through(List.of(new LoadCurve.Reading(0.5, 50), new LoadCurve.Reading(1.5, 150)));
        double tube = Laplace.kilopascals(straight.tension(360 / 175.0 - 1), 360)
                / Laplace.kilopascals(straight.tension(240 / 175.0 - 1), 240);
        log(8, 2, tube, RATIO, 1.21);
        LoadCurve shop = LoadCurve.assumed(0.80);
        double perTension = Laplace.kilopascals(1, 360);
        Likely leggings = new PressureSpread(shop).of(0.30, PressureSpread.strain(0.30, 360, 5 / 2.8), perTension);
        for (int n = 9; n <= 10; n++) {
            row(
                    n,
                    1,
                    Laplace.toMmHg(perTension * shop.tension(0.30)),
                    Laplace.toMmHg(leggings.pressureLow()),
                    Laplace.toMmHg(leggings.pressureHigh()),
                    n == 9 ? 13.83 : 18.25);
        }
        log(11, 2, ratio(520, 378), RATIO, 0.594);
        log(12, 2, ratio(500, 352), RATIO, 0.578);
        log(13, 2, ratio(596, 222), RATIO, 0.426);
        log(14, 2, ratio(596, 222), RATIO, 0.341);
        log(15, 2, ratio(596, 222), RATIO, 0.386);
        log(16, 2, ratio(596, 222), RATIO, 0.44);
        worn(17, 1, 0.683);
        worn(18, 1, 0.765);
        worn(19, 25, -1.4);
        computed.put(
                21,
                new Ours(
                        fixed(Comfort.band(OptionalDouble.of(25)), 1) + " / "
                                + fixed(Comfort.band(OptionalDouble.of(40)), 1) + " / "
                                + fixed(Comfort.band(OptionalDouble.of(65)), 1) + ", their own line",
                        "-"));
        SkinExtension sitting = SkinExtension.table().stream()
                .filter(e -> e.pose().equals("sitting") && e.region() == SkinExtension.Region.SEAT)
                .findFirst()
                .orElseThrow();
        double grows = 100 * GirthGrowth.of(sitting);
        double off = 100 * Chance.EIGHT_IN_TEN * GirthGrowth.spread(sitting);
        row(32, 1, grows, grows - off, grows + off, 12.2, 7.3);
        double within = Chance.below(Math.log(1.2), 0, weighed) - Chance.below(Math.log(0.8), 0, weighed);
        computed.put(34, new Ours(fixed(100 * within, 0) + ", centred", "-"));
        LoadCurve soft = LoadCurve.assumed(0.60);
        friction();
        step();
        log(35, 1, soft.tension(0.20), CurveSpread.of(soft).tension(0.20), 15 * 0.980665);
        return computed;
    }

    /** Friction as the balance takes it, of dry skin and of a boot; the rows of wet skin are not the program's. */
    private void friction() {
        double skin = Constants.logSpread(Guess::skin);
        log(22, 2, Guess.MIDDLE.skin(), skin, 0.3, 0.5);
        log(24, 2, Guess.MIDDLE.skin(), skin, 0.31);
        log(25, 2, Guess.MIDDLE.skin(), skin, 0.90);
        log(27, 2, Guess.MIDDLE.skin(), skin, 0.271, 0.861);
        log(28, 2, Guess.MIDDLE.boot(), Constants.logSpread(Guess::boot), 0.342, 0.639);
    }

    /** With one foot on a step: half of what the back rise grows in a squat. */
    private void step() {
        double half = Motion.SQUAT.riseBack() / 2;
        double off = Chance.EIGHT_IN_TEN * Constants.spread(g -> g.bend().riseBack()) / 2;
        row(30, 0, WOMEN * half, WOMEN * (half - off), WOMEN * (half + off), 36);
        row(31, 0, MEN * half, MEN * (half - off), MEN * (half + off), 40);
    }

    /** A ratio, or what is lost of so many mmHg. */
    private void worn(int number, double of, double measured) {
        double off = of == 1 ? 0 : of;
        row(
                number,
                2,
                CurveSpread.HOURS_LATER * of - off,
                CurveSpread.HOURS_LATER_LOW * of - off,
                CurveSpread.HOURS_LATER_HIGH * of - off,
                measured);
    }

    private static List<String[]> table() throws IOException {
        List<String[]> rows = new ArrayList<>();
        boolean in = false;
        for (String line : Files.readAllLines(NOTES)) {
            if (line.equals(HEAD)) {
                in = true;
            } else if (in && !line.startsWith("|")) {
                break;
            } else if (in && !line.startsWith("|---")) {
                rows.add(line.substring(2, line.length() - 2).split(" \\| ", -1));
            }
        }
        return rows;
    }

    @Test
    void oursIsWhatTheProgramComputes() throws IOException {
        List<String[]> rows = table();
        assertThat(rows).hasSize(38);
        Map<Integer, Ours> ours = all();
        for (String[] row : rows) {
            int number = Integer.parseInt(row[0]);
            if (ours.containsKey(number)) {
                assertThat(row[3])
                        .as("row " + number)
                        .isEqualTo(ours.get(number).told());
                assertThat(row[4])
                        .as("row " + number)
                        .isEqualTo(ours.get(number).inside());
            } else {
                assertThat(row[3]).as("row " + number).startsWith("not computed: ");
                assertThat(row[4]).as("row " + number).isEqualTo("-");
            }
        }
    }

    /** Each row at hand stands in the table, in its order, as it was measured and where it was read. */
    @Test
    void everyRowAtHandIsInTheTable() throws IOException {
        Path shared =
                Path.of(System.getProperty("stretchwright.shared", "../shared"), "reference", "pressure-rows.csv");
        Assumptions.assumeTrue(Files.exists(shared), "skipped: no rows at " + shared + " (set -Dstretchwright.shared)");
        List<String[]> rows = table();
        List<String> lines = Files.readAllLines(shared);
        assertThat(rows).hasSize(lines.size() - 1);
        for (int i = 1; i < lines.size(); i++) {
            List<String> cells = cells(lines.get(i));
            String[] row = rows.get(i - 1);
            String unit = cells.get(5).equals("-") || cells.get(5).equals("ratio") ? "" : " " + cells.get(5);
            assertThat(row[1]).isEqualTo(cells.get(1));
            assertThat(row[2]).isEqualTo(cells.get(4) + unit);
            assertThat(row[5]).startsWith(cells.get(0)).endsWith(cells.get(6));
        }
    }

    /** A line of comma-separated values; quotes hold commas together. */
    private static List<String> cells(String line) {
        List<String> out = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        boolean quoted = false;
        for (char c : line.toCharArray()) {
            if (c == '"') {
                quoted = !quoted;
            } else if (c == ',' && !quoted) {
                out.add(cell.toString());
                cell.setLength(0);
            } else {
                cell.append(c);
            }
        }
        out.add(cell.toString());
        return out;
    }

    /** For whoever writes the table anew: its computed cells. */
    public static void main(String[] none) {
        new PressureRowsTest().all().forEach((n, o) -> System.out.println(n + "\t" + o.told() + "\t" + o.inside()));
    }
}
