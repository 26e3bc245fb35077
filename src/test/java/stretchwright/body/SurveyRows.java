package stretchwright.body;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/** Survey rows as wearers: the measures that one row has, under our terms. */
final class SurveyRows {
    /** One person. */
    record Person(Figure figure, OptionalDouble age, Map<Measure, Double> mm) {}

    enum Group {
        WOMEN_1988,
        MEN_1988,
        WOMEN_2012,
        MEN_2012,
        CHILDREN
    }

    private SurveyRows() {}

    static Rows rows(Group group, FitBodies.Surveys s) {
        return switch (group) {
            case WOMEN_1988 -> s.women1988();
            case MEN_1988 -> s.men1988();
            case WOMEN_2012 -> s.women2012();
            case MEN_2012 -> s.men2012();
            case CHILDREN -> s.children();
        };
    }

    static Figure figure(Group group) {
        return switch (group) {
            case WOMEN_1988, WOMEN_2012 -> Figure.WOMAN;
            case MEN_1988, MEN_2012 -> Figure.MAN;
            case CHILDREN -> Figure.CHILD;
        };
    }

    /** Columns by measure; the surveys without a natural waist give the one at the navel. */
    static Map<Measure, String> columns(Group group) {
        Map<Measure, String> map = new EnumMap<>(Measure.class);
        if (group == Group.CHILDREN) {
            map.put(Measure.STATURE, "stature_mm");
            map.put(Measure.WAIST_GIRTH, "waist_girth_mm");
            map.put(Measure.HIP_GIRTH, "hip_girth_mm");
            map.put(Measure.THIGH_GIRTH, "upper_thigh_girth_mm");
            map.put(Measure.CALF_GIRTH, "calf_girth_mm");
            map.put(Measure.FOOT_LENGTH, "foot_length_mm");
            map.put(Measure.WAIST_HEIGHT, "waist_height_mm");
            map.put(Measure.HIP_HEIGHT, "hip_height_at_buttocks_mm");
            map.put(Measure.CALF_HEIGHT, "calf_height_mm");
            map.put(Measure.ANKLE_GIRTH, "ankle_girth_mm");
            return map;
        }
        boolean older = group == Group.WOMEN_1988 || group == Group.MEN_1988;
        FitAdults.BOTH.forEach((name, column) ->
                Measure.of(older ? name : name.replace("navel ", "")).ifPresent(m -> map.put(m, column)));
        if (older) {
            FitAdults.ONLY_1988.forEach((name, column) -> Measure.of(name).ifPresent(m -> map.put(m, column)));
        }
        return map;
    }

    static List<Person> people(Group group, FitBodies.Surveys s) {
        Rows rows = rows(group, s);
        List<Person> people = new ArrayList<>();
        for (double[] row : rows.rows()) {
            Map<Measure, Double> mm = new EnumMap<>(Measure.class);
            columns(group).forEach((measure, column) -> {
                double value = rows.cell(row, column);
                if (Double.isFinite(value)) {
                    mm.put(measure, value);
                }
            });
            double age = rows.cell(row, "age_years");
            if (!mm.isEmpty()) {
                people.add(new Person(
                        figure(group), group == Group.CHILDREN ? OptionalDouble.of(age) : OptionalDouble.empty(), mm));
            }
        }
        return people;
    }
}
