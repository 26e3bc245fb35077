package stretchwright.make;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import stretchwright.fit.FitReport.Verdict;
import stretchwright.pattern.Level;
import stretchwright.pattern.Machine;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.TopEnd;

/** Which changes are worth trying for which verdict, the smallest effort first. */
final class RemediesLevers {
    private final ChangeStyle style;
    private final ChangeCloth cloth;
    private final double share;
    private final List<ChangeLever> out = new ArrayList<>();

    private RemediesLevers(MakeFile make, Pattern pattern) {
        this.style = new ChangeStyle(make);
        this.cloth = new ChangeCloth(make);
        this.share = pattern.reductions().across();
    }

    /** What a verdict is about. */
    enum Topic {
        OPENING_BAND,
        OPENING_HEM,
        OPENING_LEG,
        STRAIN,
        PRESSURE,
        RISING_PRESSURE,
        ACROSS,
        ALONG,
        TAKEN_IN,
        HIGH_BAND,
        GROUND,
        SHOWS,
        SHRINKS,
        RECOVERS,
        SEAM,
        LENGTH,
        /** Nothing that a change of style, hold or cloth could turn: measures, health, blades, cords. */
        NONE;

        /** What the program cannot compute and still must be said. */
        String kept() {
            return switch (this) {
                case RISING_PRESSURE -> "Check the thigh and calf girths. ";
                case TAKEN_IN -> "Stretch the band evenly between the quarter marks. ";
                default -> "";
            };
        }
    }

    static Topic topic(Verdict v) {
        String about = v.about();
        String says = v.message().toLowerCase(Locale.ROOT);
        return switch (about) {
            case "waistband over hips" -> Topic.OPENING_BAND;
            case "hem over heel" -> says.contains("not measured") ? Topic.NONE : Topic.OPENING_HEM;
            case "leg over calf" -> Topic.OPENING_LEG;
            case "waistband" ->
                says.contains("takes in")
                        ? Topic.TAKEN_IN
                        : says.contains("would reach") ? Topic.HIGH_BAND : Topic.NONE;
            case "hem" -> says.contains("would end") ? Topic.GROUND : Topic.NONE;
            case "shrinkage" -> Topic.SHRINKS;
            case "recovery" -> Topic.RECOVERS;
            case "show-through" -> Topic.SHOWS;
            case "leg length" -> Topic.LENGTH;
            default -> {
                if (about.startsWith("stretch ")) {
                    yield Topic.NONE; // assumed and not measured: a test of the cloth turns it, not a change
                }
                if (about.endsWith(" seam")) {
                    yield Topic.SEAM;
                }
                if (about.endsWith(" across")) {
                    yield Topic.ACROSS;
                }
                if (about.endsWith(" along")) {
                    yield Topic.ALONG;
                }
                if (level(about).isEmpty()) {
                    yield Topic.NONE;
                }
                yield says.contains("pressure rises")
                        ? Topic.RISING_PRESSURE
                        : says.contains("pressure")
                                ? Topic.PRESSURE
                                : says.contains("stretch") || says.contains("uses") ? Topic.STRAIN : Topic.NONE;
            }
        };
    }

    /** The level that a verdict about "left knee" or "knee across" means. */
    static Optional<Level.Name> level(String about) {
        String place = about.replaceFirst("^(left|right) ", "").replaceFirst(" (across|along)$", "");
        if (place.equals("seat")) {
            return Optional.of(Level.Name.HIP);
        }
        return Arrays.stream(Level.Name.values())
                .filter(l -> l.word().equals(place))
                .findFirst();
    }

    static List<ChangeLever> of(Verdict verdict, MakeFile make, Pattern pattern) {
        RemediesLevers levers = new RemediesLevers(make, pattern);
        levers.collect(topic(verdict), RemediesKey.place(verdict));
        levers.out.sort(Comparator.comparingDouble(l -> l.effort().applyAsDouble(1)));
        return List.copyOf(levers.out);
    }

    private void collect(Topic topic, String place) {
        switch (topic) {
            case OPENING_BAND -> {
                out.add(style.wider(Level.Name.WAIST, "waist"));
                style.contoured().ifPresent(out::add);
                out.add(style.lowerRise());
                style.machine(Machine.OVERLOCKER).ifPresent(out::add);
                clothAcross();
            }
            case OPENING_HEM -> {
                out.add(style.wider(Level.Name.HEM, "hem"));
                style.legFirst().ifPresent(out::add);
                hold();
                style.machine(Machine.COVERSTITCH).ifPresent(out::add);
                style.machine(Machine.OVERLOCKER).ifPresent(out::add);
                clothAcross();
            }
            case OPENING_LEG -> {
                out.add(style.wider(Level.Name.ANKLE, "ankle"));
                out.add(style.wider(Level.Name.CALF, "calf"));
                hold();
                style.legFirst().ifPresent(out::add);
                clothAcross();
            }
            case STRAIN, ACROSS -> {
                level(place).ifPresent(l -> out.add(style.wider(l, l.word())));
                hold();
                clothAcross();
            }
            case PRESSURE -> {
                level(place).ifPresent(l -> out.add(style.wider(l, l.word())));
                hold();
                cloth.softer().ifPresent(out::add);
                clothAcross();
            }
            case RISING_PRESSURE -> {
                level(place).ifPresent(l -> out.add(style.wider(l, place(l))));
                hold();
                cloth.softer().ifPresent(out::add);
                clothAcross();
            }
            case ALONG -> along(place);
            case SEAM -> {
                style.machine(Machine.OVERLOCKER).ifPresent(out::add);
                style.machine(Machine.COVERSTITCH).ifPresent(out::add);
                hold();
                out.add(style.higherBack());
                out.add(cloth.turned());
                out.add(cloth.moreAlong());
            }
            case TAKEN_IN -> {
                style.back(TopEnd.BackShape.SHAPED_SEAM).ifPresent(out::add);
                style.back(TopEnd.BackShape.DARTS).ifPresent(out::add);
                out.add(style.lowerRise());
                style.contoured().ifPresent(out::add);
            }
            case HIGH_BAND -> {
                out.add(style.lowerBand());
                out.add(style.lowerRise());
            }
            case GROUND -> style.higherHem().ifPresent(out::add);
            case SHOWS -> {
                hold();
                out.add(style.wider(Level.Name.HIP, "hip"));
                out.add(cloth.turned());
                out.add(cloth.denser());
            }
            case SHRINKS -> out.add(cloth.washed());
            case RECOVERS -> out.add(cloth.recovering());
            case LENGTH -> {
                style.growth().ifPresent(out::add);
                out.add(cloth.washed());
            }
            case NONE -> {}
        }
    }

    private static String place(Level.Name level) {
        return level == Level.Name.CROTCH ? "thigh, at the crotch" : level.word();
    }

    private void along(String place) {
        if (place.startsWith("knee")) {
            style.kneeShaping().ifPresent(out::add);
        } else {
            out.add(style.higherBack());
        }
        out.add(cloth.turned());
        out.add(cloth.moreAlong());
    }

    private void hold() {
        style.lightHold().ifPresent(out::add);
        style.smallerShare(share).ifPresent(out::add);
    }

    private void clothAcross() {
        out.add(cloth.turned());
        out.add(cloth.moreAcross());
    }
}
