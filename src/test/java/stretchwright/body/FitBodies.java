package stretchwright.body;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/**
 * Makes src/main/resources/stretchwright/body/*.txt out of the surveys under ../shared; run it from the project folder
 * with the date to write into the files. Method: docs/maths/body.md.
 */
final class FitBodies {
    private FitBodies() {}

    /** All the surveys, or some rows of them. */
    record Surveys(
            Rows women1988, Rows women2012, Rows men1988, Rows men2012, Rows children, Rows college, Rows civilians) {
        static Surveys read() {
            return new Surveys(
                    Rows.read("ansur1988_female.csv"),
                    Rows.read("ansur2_female.csv"),
                    Rows.read("ansur1988_male.csv"),
                    Rows.read("ansur2_male.csv"),
                    Rows.read("snyder1977_children.csv"),
                    Rows.read("slack1997_college_women.csv"),
                    Rows.read("nhanes2021_2023.csv"));
        }

        /** Without (or only) every so-manieth row, the fold. */
        Surveys fold(int fold, int of, boolean inside) {
            return new Surveys(
                    women1988.fold(fold, of, inside),
                    women2012.fold(fold, of, inside),
                    men1988.fold(fold, of, inside),
                    men2012.fold(fold, of, inside),
                    children.fold(fold, of, inside),
                    college,
                    civilians);
        }
    }

    public static void main(String[] args) throws IOException {
        Surveys surveys = Surveys.read();
        Path folder = Path.of("src/main/resources/stretchwright/body");
        Files.createDirectories(folder);
        for (Figure figure : Figure.values()) {
            List<String> lines = new ArrayList<>(header(figure, args[0]));
            lines.addAll(lines(figure, surveys));
            Files.write(folder.resolve(figure.word() + ".txt"), lines);
        }
    }

    private static List<String> header(Figure figure, String date) {
        String who = switch (figure) {
            case WOMAN -> "US Army women of 1987-88 (1762 rows) and 2010-12 (1595), both weighing the same";
            case MAN -> "US Army men of 1987-88 (1410 rows) and 2010-12 (3288), both weighing the same";
            case CHILD -> "US children of 1975-77 (Snyder and others, 3094 rows); what they lack from the Army surveys";
        };
        return List.of(
                "# Fitted coefficients of the figure \"" + figure.word() + "\": no personal data.",
                "# " + who + ";",
                "# mid-thigh girth: 148 US college women of 1997; ranges: also US civilians of 2021-23.",
                "# Made by the tool FitBodies (test sources) on " + date + "; method in docs/maths/body.md.",
                "# variable; name; mean of the log of the mm; its row of the covariance of the logs, lower triangle");
    }

    static Survey survey(Figure figure, Surveys surveys) {
        return SurveyText.parse(lines(figure, surveys));
    }

    static List<String> lines(Figure figure, Surveys s) {
        List<String> lines = new ArrayList<>();
        Joint joint = switch (figure) {
            case WOMAN -> FitAdults.fit(s.women1988, s.women2012, s.college);
            case MAN -> FitAdults.fit(s.men1988, s.men2012, s.college);
            case CHILD -> {
                Growth growth = growth(s.children);
                for (int i = 0; i < growth.ages().length; i++) {
                    lines.add(String.format(Locale.ROOT, "growth; %.1f; %.5f", growth.ages()[i], growth.logs()[i]));
                }
                yield FitChildren.fit(s.children, growth, s.women1988, s.men1988, s.college, s.women2012);
            }
        };
        lines.addAll(variables(joint));
        FitRanges.of(figure, joint, s)
                .forEach((m, r) ->
                        lines.add(String.format(Locale.ROOT, "range; %s; %.0f; %.0f", m.term(), r.low(), r.high())));
        return lines;
    }

    private static List<String> variables(Joint joint) {
        List<String> kept = joint.names().stream()
                .filter(n -> Measure.of(n).isPresent() || n.startsWith("navel ") || n.equals("growth"))
                .toList();
        List<String> lines = new ArrayList<>();
        for (int i = 0; i < kept.size(); i++) {
            StringBuilder line = new StringBuilder(String.format(
                    Locale.ROOT, "variable; %s; %.6f;", kept.get(i), joint.mean()[joint.at(kept.get(i))]));
            for (int j = 0; j <= i; j++) {
                line.append(String.format(
                        Locale.ROOT, " %.7e", joint.cov().getEntry(joint.at(kept.get(i)), joint.at(kept.get(j)))));
            }
            lines.add(line.toString());
        }
        return lines;
    }

    /** Mean log stature per year of age, boys and girls together, made not to fall. */
    static Growth growth(Rows children) {
        Map<Integer, List<Double>> byAge = new TreeMap<>();
        for (double[] row : children.rows()) {
            int age = (int) Math.round(children.cell(row, "age_years"));
            double log = Math.log(children.cell(row, "stature_mm"));
            if (Double.isFinite(log)) {
                byAge.computeIfAbsent(age, a -> new ArrayList<>()).add(log);
            }
        }
        List<double[]> points = new ArrayList<>();
        double highest = 0;
        for (Map.Entry<Integer, List<Double>> year : byAge.entrySet()) {
            double mean = year.getValue().stream().mapToDouble(d -> d).average().orElseThrow();
            highest = Math.max(highest + 1e-5, mean);
            points.add(new double[] {year.getKey(), highest});
        }
        return new Growth(
                points.stream().mapToDouble(p -> p[0]).toArray(),
                points.stream().mapToDouble(p -> p[1]).toArray());
    }
}
