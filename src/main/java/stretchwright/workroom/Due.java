package stretchwright.workroom;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.Period;
import java.util.List;
import java.util.Optional;
import stretchwright.body.Figure;
import stretchwright.body.Measure;
import stretchwright.ground.Part;
import stretchwright.ground.Said;
import stretchwright.intake.MakeFile;
import stretchwright.intake.WearerKeys;

/**
 * Whether measures are too old to cut good cloth by: a child's after 3 months, an adult's after a year (common practice, no
 * source).
 *
 * @param day on which they were taken, or else entered
 * @param taken whether it is the former
 */
public record Due(LocalDate day, boolean taken, Period after, List<Measure> measures) {
    private static final Period CHILD = Period.ofMonths(3);
    private static final Period ADULT = Period.ofYears(1);

    public Due {
        measures = List.copyOf(measures);
    }

    /**
     * Empty where the measures of a make are young enough today.
     *
     * @param entered the day they came into the workroom: they cannot have been taken later
     */
    public static Optional<Due> of(MakeFile make, LocalDate entered, LocalDate today) {
        Optional<LocalDate> taken = WearerKeys.MEASURED_ON.of(make.answers()).flatMap(Due::day);
        LocalDate day = taken.orElse(entered);
        Period after = after(make.figure());
        return day.plus(after).isBefore(today)
                ? Optional.of(new Due(
                        day, taken.isPresent(), after, List.copyOf(make.given().keySet())))
                : Optional.empty();
    }

    /** How long measures of such a wearer hold. */
    public static Period after(Figure figure) {
        return figure == Figure.CHILD ? CHILD : ADULT;
    }

    static Optional<LocalDate> day(String written) {
        try {
            return Optional.of(LocalDate.parse(written));
        } catch (DateTimeException e) {
            return Optional.empty(); // a day that no calendar has
        }
    }

    /** What to measure again, and why. */
    public Said said() {
        Part which = Part.listed(
                Part.Join.COMMA, measures.stream().<Part>map(Measure::said).toList());
        Part usual = Part.count(after.toTotalMonths());
        Part since = Part.text(day.toString());
        return taken ? Tell.said("due.taken", since, usual, which) : Tell.said("due.entered", since, usual, which);
    }
}
