package stretchwright.body;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * Reads the fitted coefficients that ship with the program: lines "variable; name; log mean; row of the lower triangle
 * of the covariance", "range; measure; low mm; high mm" and "growth; age; mean log stature"; # starts a comment.
 */
final class SurveyText {
    private final List<String> names = new ArrayList<>();
    private final List<Double> means = new ArrayList<>();
    private final List<double[]> triangle = new ArrayList<>();
    private final Map<Measure, Survey.Range> ranges = new EnumMap<>(Measure.class);
    private final List<double[]> growth = new ArrayList<>();

    private SurveyText() {}

    static Survey read(String resource) {
        try (InputStream in = SurveyText.class.getResourceAsStream(resource)) {
            if (in == null) {
                throw new IllegalStateException("the program lacks its " + resource);
            }
            return parse(new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))
                    .lines()
                    .toList());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Survey parse(List<String> lines) {
        SurveyText text = new SurveyText();
        lines.stream().filter(l -> !l.isBlank() && !l.startsWith("#")).forEach(text::line);
        return text.survey();
    }

    private void line(String line) {
        String[] parts = line.split(";", -1);
        switch (parts[0].strip()) {
            case "variable" -> {
                names.add(parts[1].strip());
                means.add(Double.parseDouble(parts[2].strip()));
                triangle.add(numbers(parts[3]));
            }
            case "range" -> {
                double[] range = {Double.parseDouble(parts[2].strip()), Double.parseDouble(parts[3].strip())};
                ranges.put(Measure.of(parts[1].strip()).orElseThrow(), new Survey.Range(range[0], range[1]));
            }
            case "growth" ->
                growth.add(new double[] {Double.parseDouble(parts[1].strip()), Double.parseDouble(parts[2].strip())});
            default -> throw new IllegalStateException("not a line of a survey: " + line);
        }
    }

    private static double[] numbers(String text) {
        String[] words = text.strip().split("\\s+");
        double[] numbers = new double[words.length];
        for (int i = 0; i < words.length; i++) {
            numbers[i] = Double.parseDouble(words[i]);
        }
        return numbers;
    }

    private Survey survey() {
        boolean child = names.contains("growth");
        List<JointNormal> levels = child ? List.of(level(0)) : List.of(level(0), level(0.5), level(1));
        Growth curve = new Growth(
                growth.stream().mapToDouble(g -> g[0]).toArray(),
                growth.stream().mapToDouble(g -> g[1]).toArray());
        return new Survey(levels, ranges, curve);
    }

    /** The joint normal with the waist at some share of the way from the natural waist to the navel. */
    private JointNormal level(double towardsNavel) {
        int size = Survey.GROWTH + (names.contains("growth") ? 1 : 0);
        double[][] pick = new double[size][names.size()];
        for (Measure measure : Measure.values()) {
            int navel = names.indexOf("navel " + measure.term());
            double share = navel < 0 ? 0 : towardsNavel;
            pick[measure.ordinal()][names.indexOf(measure.term())] = 1 - share;
            if (navel >= 0) {
                pick[measure.ordinal()][navel] = share;
            }
        }
        if (size > Survey.GROWTH) {
            pick[Survey.GROWTH][names.indexOf("growth")] = 1;
        }
        return combine(pick);
    }

    private JointNormal combine(double[][] pick) {
        int k = pick.length;
        double[] mean = new double[k];
        double[][] covariance = new double[k][k];
        for (int i = 0; i < k; i++) {
            for (int a = 0; a < names.size(); a++) {
                mean[i] += pick[i][a] * means.get(a);
                for (int j = 0; j < k; j++) {
                    for (int b = 0; b < names.size() && pick[i][a] != 0; b++) {
                        covariance[i][j] += pick[i][a] * pick[j][b] * entry(a, b);
                    }
                }
            }
        }
        return new JointNormal(mean, covariance);
    }

    private double entry(int a, int b) {
        return triangle.get(Math.max(a, b))[Math.min(a, b)];
    }
}
