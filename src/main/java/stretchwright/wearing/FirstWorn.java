package stretchwright.wearing;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stretchwright.body.Body;
import stretchwright.fabric.Fabric;
import stretchwright.fabric.Hung;
import stretchwright.fabric.Learnt;
import stretchwright.fabric.Learnt.What;
import stretchwright.ground.BadInput;
import stretchwright.ground.Findings;
import stretchwright.ground.Part;
import stretchwright.ground.Quantities;
import stretchwright.ground.Said;
import stretchwright.intake.FirstPairKeys;
import stretchwright.intake.Key;
import stretchwright.intake.MakeFile;
import stretchwright.make.Rooms;
import stretchwright.make.Stages;
import stretchwright.pattern.Pattern;
import stretchwright.settle.FirstPair;
import stretchwright.settle.Mark;

/** What the marks on a first pair teach of its cloth, its wearer and the friction between them. */
public final class FirstWorn {
    private static final Stages ROOMS = new Rooms();

    /** Marks were so far apart on the unworn pair, on the band on rods twice that, mm. */
    private static final double APART = 50;

    private static final double BAND_APART = Hung.MARKS;

    /** Pull of 2 kg on the lower rod, N; the band hangs in two sides, of two layers each. */
    private static final double ROD = 2000 * Quantities.NEWTONS_PER_GRAM;

    private static final double SIDES = 2;
    private static final double LAYERS = 2;

    /** One mark read twice may differ by this much, mm; an edge by that much. */
    private static final double SAME = 4;

    private static final double SAME_EDGE = 20;

    /** So many standard deviations from what was expected are no reading of this pair. */
    private static final double ANOTHER = 4;

    /** So many errors of reading from what all marks say together contradict the others. */
    private static final double CONTRADICTS = 3;

    private static final Map<Mark, Key<List<Double>>> KEYS = new EnumMap<>(Map.of(
            Mark.BACK_RISE, FirstPairKeys.CENTRE_BACK,
            Mark.KNEE_ALONG, FirstPairKeys.KNEE_ALONG,
            Mark.KNEE_ACROSS, FirstPairKeys.KNEE_ACROSS,
            Mark.THIGH_ALONG, FirstPairKeys.THIGH_ALONG,
            Mark.BACK_EDGE, FirstPairKeys.BACK_DROP,
            Mark.BAND, FirstPairKeys.BAND_LENGTH,
            Mark.HEM_RISE, FirstPairKeys.HEM_RISE));

    private final MakeFile make;
    private final Map<Mark, Double> read;
    private final FirstPair pair;
    private final Learnt learnt;

    private FirstWorn(MakeFile make, Map<Mark, Double> read, FirstPair pair) {
        this.make = make;
        this.read = read;
        this.pair = pair;
        Fabric cloth = make.fabric();
        Learnt fresh = pair.learnt().learnt(worn(cloth.learnt()));
        this.learnt = worn(fresh);
    }

    /** Pulls are kept as the cloth lies on the table; learnt they are as it is worn. */
    private Learnt worn(Learnt one) {
        if (!make.style().lay().crosswise() || one.isNothing()) {
            return one;
        }
        Map<What, Double> turned = new EnumMap<>(What.class);
        turned.putAll(one.values());
        turned.put(What.PULL_ACROSS, one.of(What.PULL_ALONG, 1));
        turned.put(What.PULL_ALONG, one.of(What.PULL_ACROSS, 1));
        return new Learnt(turned);
    }

    /** Empty, with at least one finding, where the marks are none of this pair. */
    public static Optional<FirstWorn> of(MakeFile make, Findings findings) {
        Map<Mark, Double> read = readings(make, findings);
        if (read.isEmpty() && findings.isEmpty()) {
            findings.add(FirstPairKeys.FIRST_PAIR.path(), Tell.said("marks.none"), Tell.said("marks.give"));
        }
        if (!findings.isEmpty()) {
            return Optional.empty();
        }
        Findings own = new Findings(make.file(), make.unit());
        Optional<Body> body = ROOMS.body(make.measured(), own);
        Optional<Pattern> pattern = body.flatMap(b -> ROOMS.draft(b, make, own));
        if (pattern.isEmpty() || !own.isEmpty()) {
            throw new BadInput(own.all());
        }
        double height = FirstPairKeys.BAND_HEIGHT
                .of(make.answers())
                .orElseGet(() -> make.style().bandHeight());
        double pull = ROD / (SIDES * height / 1000) / LAYERS;
        FirstPair pair =
                FirstPair.of(pattern.get(), body.orElseThrow(), make.fabric(), make.boot(), make.style(), read, pull);
        judged(pair, read, findings);
        return findings.isEmpty() ? Optional.of(new FirstWorn(make, read, pair)) : Optional.empty();
    }

    private static Map<Mark, Double> readings(MakeFile make, Findings findings) {
        Map<Mark, Double> read = new EnumMap<>(Mark.class);
        KEYS.forEach((mark, key) -> key.of(make.answers()).ifPresent(all -> {
            double least = all.stream().mapToDouble(v -> v).min().orElseThrow();
            double most = all.stream().mapToDouble(v -> v).max().orElseThrow();
            if (most - least > (mark.isStrain() ? SAME : SAME_EDGE)) {
                findings.add(
                        key.path(),
                        Tell.said("marks.differ", Part.written(least), Part.written(most)),
                        Tell.said("marks.again"));
            }
            double mean = all.stream().mapToDouble(v -> v).average().orElseThrow();
            double apart = mark == Mark.BAND ? BAND_APART : APART;
            read.put(mark, mark.isStrain() ? mean / apart - 1 : mean);
        }));
        return read;
    }

    private static void judged(FirstPair pair, Map<Mark, Double> read, Findings findings) {
        read.forEach((mark, value) -> {
            if (Math.abs(pair.surprise(mark, value)) > ANOTHER) {
                Part expected = told(mark, pair.before().getOrDefault(mark, value));
                findings.add(
                        path(mark),
                        Tell.said("marks.another", told(mark, value), expected),
                        Tell.said("marks.once-more"));
            } else if (Math.abs(pair.contradicts(mark, value)) > CONTRADICTS) {
                Part others = told(mark, pair.after().getOrDefault(mark, value));
                findings.add(
                        path(mark),
                        Tell.said("marks.contradict", told(mark, value), others),
                        Tell.said("marks.once-more"));
            }
        });
    }

    private static String path(Mark mark) {
        return Optional.ofNullable(KEYS.get(mark)).orElseThrow().path();
    }

    private static Part told(Mark mark, double value) {
        return mark.isStrain()
                ? Part.length((mark == Mark.BAND ? BAND_APART : APART) * (1 + value))
                : Part.length(value);
    }

    /** What was learnt, as it goes into the make file. */
    public Learnt learnt() {
        return learnt;
    }

    FirstPair pair() {
        return pair;
    }

    /** Each mark: read, expected, and what the next make reckons with. */
    List<Said> marks() {
        return read.entrySet().stream()
                .map(e -> Tell.said(
                        "marks.line",
                        Optional.ofNullable(KEYS.get(e.getKey())).orElseThrow().label(),
                        told(e.getKey(), e.getValue()),
                        told(e.getKey(), pair.before().getOrDefault(e.getKey(), 0.0)),
                        told(e.getKey(), pair.after().getOrDefault(e.getKey(), 0.0))))
                .toList();
    }

    /** The make file's text with what was learnt in place of what stood there. */
    public Optional<String> written(String text, Findings findings) {
        return LearntText.with(text, learnt, make, findings);
    }
}
