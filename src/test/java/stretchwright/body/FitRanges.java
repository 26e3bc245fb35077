package stretchwright.body;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * The range of each measure that people have: smallest to largest of the surveys, widened by a tenth at both ends; girths
 * of soldiers also by how far the hips of civilians exceed theirs. Measures derived by ratios: five spreads.
 */
final class FitRanges {
    private static final double MARGIN = 0.10;
    private static final Map<Measure, List<String>> ARMY = army();
    private static final Map<Measure, List<String>> CHILDREN = children();

    private FitRanges() {}

    private static Map<Measure, List<String>> army() {
        Map<Measure, List<String>> map = new EnumMap<>(Measure.class);
        for (Map<String, String> part : List.of(FitAdults.BOTH, FitAdults.ONLY_1988)) {
            part.forEach((name, column) -> Measure.of(name.replace("navel ", ""))
                    .ifPresent(
                            m -> map.computeIfAbsent(m, k -> new ArrayList<>()).add(column)));
        }
        return map;
    }

    private static Map<Measure, List<String>> children() {
        Map<Measure, List<String>> map = new EnumMap<>(Measure.class);
        map.put(Measure.STATURE, List.of("stature_mm"));
        map.put(Measure.WAIST_GIRTH, List.of("waist_girth_mm", "waist_natural_girth_mm"));
        map.put(Measure.HIP_GIRTH, List.of("hip_girth_mm"));
        map.put(Measure.THIGH_GIRTH, List.of("upper_thigh_girth_mm"));
        map.put(Measure.CALF_GIRTH, List.of("calf_girth_mm"));
        map.put(Measure.ANKLE_GIRTH, List.of("ankle_girth_mm"));
        map.put(Measure.WAIST_HEIGHT, List.of("waist_height_mm"));
        map.put(Measure.HIP_HEIGHT, List.of("hip_height_at_buttocks_mm"));
        map.put(Measure.CROTCH_HEIGHT, List.of("gluteal_furrow_height_mm"));
        map.put(Measure.KNEE_HEIGHT, List.of("tibiale_height_mm"));
        map.put(Measure.CALF_HEIGHT, List.of("calf_height_mm"));
        map.put(Measure.FOOT_LENGTH, List.of("foot_length_mm"));
        return map;
    }

    static Map<Measure, Survey.Range> of(Figure figure, Joint joint, FitBodies.Surveys s) {
        Map<Measure, Survey.Range> ranges = new EnumMap<>(Measure.class);
        double heavier = largest(List.of(s.civilians()), List.of("hip_girth_mm"))
                / largest(List.of(s.women2012(), s.men2012()), List.of("buttock_girth_mm"));
        for (Measure measure : Measure.values()) {
            double mean = joint.mean()[joint.at(measure.term())];
            double spread = Math.sqrt(
                    joint.cov(List.of(measure.term()), List.of(measure.term())).getEntry(0, 0));
            double low = Math.exp(mean - 5 * spread);
            double high = Math.exp(mean + 5 * spread);
            List<Rows> small = switch (figure) {
                case WOMAN -> List.of(s.women1988(), s.women2012());
                case MAN -> List.of(s.men1988(), s.men2012());
                case CHILD -> List.of(s.children());
            };
            List<Rows> large = figure == Figure.CHILD
                    ? List.of(s.children(), s.women2012(), s.women1988(), s.men1988(), s.men2012())
                    : small;
            List<String> smallColumns = (figure == Figure.CHILD ? CHILDREN : ARMY).getOrDefault(measure, List.of());
            List<String> largeColumns = new ArrayList<>(smallColumns);
            largeColumns.addAll(ARMY.getOrDefault(measure, List.of()));
            if (!smallColumns.isEmpty()) {
                low = -largest(small, smallColumns, -1);
            }
            if (!largeColumns.isEmpty()) {
                boolean fat = measure.term().endsWith("girth") && measure != Measure.HEEL_GIRTH;
                high = largest(large, largeColumns) * (fat ? heavier : 1);
            }
            ranges.put(
                    measure,
                    new Survey.Range(
                            civil(measure, figure, s, low, -1) * (1 - MARGIN),
                            civil(measure, figure, s, high, 1) * (1 + MARGIN)));
        }
        return ranges;
    }

    /** Widens by the civilians where they were measured. */
    private static double civil(Measure measure, Figure figure, FitBodies.Surveys s, double limit, int sign) {
        List<String> columns = switch (measure) {
            case STATURE -> List.of("stature_mm");
            case WAIST_GIRTH -> List.of("waist_iliac_crest_girth_mm");
            case HIP_GIRTH -> List.of("hip_girth_mm");
            default -> List.of();
        };
        if (columns.isEmpty()) {
            return limit;
        }
        Rows of = s.civilians()
                .where(r -> (figure == Figure.CHILD) == (s.civilians().cell(r, "age_years") < 18)
                        && (figure == Figure.CHILD
                                || (figure == Figure.MAN) == (s.civilians().cell(r, "sex") == 1)));
        return sign * Math.max(sign * limit, largest(List.of(of), columns, sign));
    }

    private static double largest(List<Rows> surveys, List<String> columns) {
        return largest(surveys, columns, 1);
    }

    private static double largest(List<Rows> surveys, List<String> columns, int sign) {
        double most = Double.NEGATIVE_INFINITY;
        for (Rows rows : surveys) {
            for (double[] row : rows.rows()) {
                for (String column : columns) {
                    double value = rows.cell(row, column);
                    most = Double.isFinite(value) ? Math.max(most, sign * value) : most;
                }
            }
        }
        return most;
    }
}
