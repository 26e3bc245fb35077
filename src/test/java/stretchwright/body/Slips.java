package stretchwright.body;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import stretchwright.ground.Findings;
import stretchwright.ground.RandomStream;

/** Injects one slip into clean rows and counts what is found. */
final class Slips {
    enum Kind {
        TWO_DIGITS_SWAPPED,
        INCHES_AS_CENTIMETRES,
        HUNDRED_OFF,
        HALF_THE_GIRTH,
        TWO_EXCHANGED
    }

    /** Of so many slips so many were refused, with the right measure named in some, and doubted at least in others. */
    record Count(int slips, int refused, int named, int doubted) {
        Count and(Count other) {
            return new Count(
                    slips + other.slips, refused + other.refused, named + other.named, doubted + other.doubted);
        }

        double share() {
            return refused / (double) slips;
        }
    }

    private Slips() {}

    static Count inject(Kind kind, List<SurveyRows.Person> people, long seed) {
        RandomStream random = RandomStream.of(seed, kind.name());
        Count all = new Count(0, 0, 0, 0);
        for (SurveyRows.Person person : people) {
            Map<Measure, Double> slipped = new EnumMap<>(person.mm());
            List<Measure> touched = slip(kind, slipped, random);
            if (!touched.isEmpty()) {
                all = all.and(judge(person, slipped, touched));
            }
        }
        return all;
    }

    private static Count judge(SurveyRows.Person person, Map<Measure, Double> slipped, List<Measure> touched) {
        Findings findings = new Findings("slip");
        var body = Measuring.body(person.figure(), person.age(), slipped, findings);
        boolean named = findings.all().stream()
                .anyMatch(f -> touched.stream().anyMatch(m -> f.key().endsWith("." + m.term())));
        boolean doubted =
                body.isPresent() && Measuring.doubts(body.get()).stream().anyMatch(d -> touched.contains(d.measure()));
        return new Count(1, body.isEmpty() ? 1 : 0, named ? 1 : 0, doubted ? 1 : 0);
    }

    /** Slips one measure of those that can have this slip; empty when none can. */
    private static List<Measure> slip(Kind kind, Map<Measure, Double> mm, RandomStream random) {
        List<Measure> can = new ArrayList<>(mm.keySet());
        can.removeIf(m -> kind == Kind.HALF_THE_GIRTH && !m.term().endsWith("girth"));
        if (can.isEmpty()) {
            return List.of();
        }
        Measure one = can.get(random.below(can.size()));
        double value = java.util.Objects.requireNonNull(mm.get(one));
        switch (kind) {
            case TWO_DIGITS_SWAPPED -> {
                double swapped = swapped(value, random);
                if (swapped == value) {
                    return List.of();
                }
                mm.put(one, swapped);
            }
            case INCHES_AS_CENTIMETRES -> mm.put(one, value / 2.54);
            case HUNDRED_OFF -> mm.put(one, random.below(2) == 0 ? value + 100 : Math.max(1, value - 100));
            case HALF_THE_GIRTH -> mm.put(one, value / 2);
            case TWO_EXCHANGED -> {
                Measure other = can.get(random.below(can.size()));
                double second = java.util.Objects.requireNonNull(mm.get(other));
                if (other == one || second == value) {
                    return List.of();
                }
                mm.put(one, second);
                mm.put(other, value);
                return List.of(one, other);
            }
        }
        return List.of(one);
    }

    private static double swapped(double value, RandomStream random) {
        char[] digits = Long.toString(Math.round(value)).toCharArray();
        int at = random.below(digits.length - 1);
        char first = digits[at];
        digits[at] = digits[at + 1];
        digits[at + 1] = first;
        return Math.max(1, Double.parseDouble(new String(digits)));
    }
}
