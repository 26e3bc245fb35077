package stretchwright.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import stretchwright.body.Measure;
import stretchwright.body.Measured;
import stretchwright.body.PoseLength;
import stretchwright.fabric.Fabric;
import stretchwright.fabric.FoldTest;
import stretchwright.fabric.WrapTest;

/**
 * How far the cloth stretches, in whichever way it was found: as a share, by the fold test, by the wrap test, or by the
 * lengths in a pose that it reached.
 */
final class StretchReader {
    static final List<String> KEYS = List.of("fold across", "fold along", "wrap hip", "wrap calf", "reaches pose");

    /** Two ways of finding the same share may differ by this much (two slips of the ruler, common practice). */
    static final double SAME = 0.05;

    /** Two places wrapped may differ by this much; after that one of them was pinned wrongly (common practice). */
    private static final double SAME_WRAP = 0.10;

    private static final String FOLD_EXAMPLE = "[100 mm, 160 mm, 102.5 mm]: relaxed, pulled, rested for a minute";

    /**
     * What was found.
     *
     * @param recovery the smaller of both directions
     */
    record Found(
            double across, double along, OptionalDouble recovery, OptionalDouble wrapped, Fabric.Assumed assumed) {}

    private final Section section;
    private final Optional<Measured> wearer;

    StretchReader(Section section, Optional<Measured> wearer) {
        this.section = section;
        this.wearer = wearer;
    }

    Optional<Found> read() {
        Optional<FoldTest> foldAcross = fold("fold across");
        Optional<FoldTest> foldAlong = fold("fold along");
        Optional<WrapTest> wrap = wrapped();
        OptionalDouble across = measured("stretch across", "fold across", "60 %", foldAcross, hasWrap());
        int before = section.problems();
        boolean reached = section.yes("reaches pose").orElse(false) && posed();
        OptionalDouble along =
                measured("stretch along", "fold along", "45 %", foldAlong, reached || section.problems() > before);
        OptionalDouble recovery = recovery(foldAcross, foldAlong);
        boolean acrossAssumed = across.isEmpty() && !tried("stretch across", "fold across") && wrap.isPresent();
        boolean alongAssumed = along.isEmpty() && !tried("stretch along", "fold along") && reached;
        if (acrossAssumed) {
            across = within("wrap test", wrap.orElseThrow().assumedStretch());
        }
        if (alongAssumed) {
            along = OptionalDouble.of(lengthens());
        }
        if (across.isPresent() && wrap.isPresent() && !acrossAssumed) {
            beyond(wrap.get(), across.getAsDouble());
        }
        if (across.isEmpty() || along.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Found(
                across.getAsDouble(),
                along.getAsDouble(),
                recovery,
                wrap.map(w -> OptionalDouble.of(w.reduction())).orElse(OptionalDouble.empty()),
                new Fabric.Assumed(acrossAssumed, alongAssumed)));
    }

    /** Comfortably pinned, the cloth cannot have been pulled further than it goes easily. */
    private void beyond(WrapTest wrap, double across) {
        if (wrap.strain() > across + SAME) {
            section.add(
                    section.has("wrap hip") ? "wrap hip" : "wrap calf",
                    text(
                            "the cloth would have been stretched by %.1f %% there, and across it has %.1f %%.",
                            100 * wrap.strain(), 100 * across),
                    "Measure between the pins again, or test the stretch again.");
        }
    }

    private boolean hasWrap() {
        return tried("wrap hip", "wrap calf");
    }

    private boolean tried(String one, String other) {
        return section.has(one) || section.has(other);
    }

    /** The share given, or that of the fold test; both where they agree, and then the fold test, which is the reading. */
    private OptionalDouble measured(
            String key, String foldKey, String example, Optional<FoldTest> fold, boolean otherWay) {
        if (!tried(key, foldKey) && !otherWay) {
            section.require(key, example);
        }
        OptionalDouble given = section.share(key, Limits.STRETCH);
        if (fold.isEmpty()) {
            return given;
        }
        double read = fold.get().stretch();
        differ(key, given, read, "the " + foldKey + " test");
        return within(foldKey, read);
    }

    private void differ(String key, OptionalDouble given, double read, String where) {
        if (given.isPresent() && Math.abs(given.getAsDouble() - read) > SAME) {
            section.add(
                    key,
                    text("is %.1f %%, but %s gives %.1f %%.", 100 * given.getAsDouble(), where, 100 * read),
                    "Test again, or leave one of them out.");
        }
    }

    private OptionalDouble within(String key, double stretch) {
        if (Limits.STRETCH.holds(stretch)) {
            return OptionalDouble.of(stretch);
        }
        section.add(
                section.has(key) ? key : "",
                text("a stretch of %.1f %% comes out, and no cloth worn on a leg has that.", 100 * stretch),
                text(
                        "Allowed is %.0f to %.0f %%. Test again.",
                        100 * Limits.STRETCH.least(), 100 * Limits.STRETCH.most()));
        return OptionalDouble.empty();
    }

    private Optional<FoldTest> fold(String key) {
        if (!section.has(key)) {
            return Optional.empty();
        }
        int before = section.problems();
        List<Double> mm = section.lengths(key, Limits.FOLD, 3);
        if (section.problems() > before) {
            return Optional.empty();
        }
        String wrong = mm.size() != 3 ? "needs three lengths." : impossible(mm.get(0), mm.get(1), mm.get(2));
        if (!wrong.isEmpty()) {
            section.add(key, wrong, "Write " + FOLD_EXAMPLE + ".");
            return Optional.empty();
        }
        return Optional.of(new FoldTest(mm.get(0), mm.get(1), mm.get(2)));
    }

    private String impossible(double relaxed, double pulled, double rested) {
        if (pulled <= relaxed) {
            return "did not get longer when pulled.";
        }
        if (rested < relaxed) {
            return "came out shorter after the rest (" + section.shownLength(rested) + ") than before the pull ("
                    + section.shownLength(relaxed) + ").";
        }
        return rested > pulled
                ? "is longer after the rest (" + section.shownLength(rested) + ") than pulled ("
                        + section.shownLength(pulled) + ")."
                : "";
    }

    private OptionalDouble recovery(Optional<FoldTest> across, Optional<FoldTest> along) {
        OptionalDouble given = section.share("recovery", Limits.RECOVERY);
        List<Double> read = new ArrayList<>();
        across.ifPresent(f -> read.add(f.recovery()));
        along.ifPresent(f -> read.add(f.recovery()));
        OptionalDouble least = read.stream().mapToDouble(r -> r).min();
        if (least.isEmpty()) {
            return given;
        }
        differ("recovery", given, least.getAsDouble(), "the fold test");
        if (!Limits.RECOVERY.holds(least.getAsDouble())) {
            section.add("", "after the fold test the cloth did not come back at all.", "Take another cloth.");
        }
        return least;
    }

    /** Of two places the one that held less: the careful one. */
    private Optional<WrapTest> wrapped() {
        Optional<WrapTest> hip = wrap("wrap hip", Measure.HIP_GIRTH);
        Optional<WrapTest> calf = wrap("wrap calf", Measure.CALF_GIRTH);
        if (hip.isEmpty() || calf.isEmpty()) {
            return hip.or(() -> calf);
        }
        double a = hip.get().reduction();
        double b = calf.get().reduction();
        if (Math.abs(a - b) > SAME_WRAP) {
            section.add(
                    "wrap calf",
                    text("the calf was wrapped %.1f %% tighter than its girth, the hip %.1f %%.", 100 * b, 100 * a),
                    "Pin again where it felt tight or slack, or leave one of them out.");
        }
        return a <= b ? hip : calf;
    }

    private Optional<WrapTest> wrap(String key, Measure measure) {
        OptionalDouble pinned = section.length(key, Limits.MEASUREMENT);
        if (pinned.isEmpty() || wearer.isEmpty()) {
            return Optional.empty();
        }
        Double girth = wearer.get().means().get(measure);
        if (girth == null) {
            section.add(
                    key,
                    "needs the wearer's " + measure.term() + ", measured.",
                    "Measure it where the cloth was wrapped, and give it under wearer.measurements.");
            return Optional.empty();
        }
        if (pinned.getAsDouble() >= girth) {
            section.add(
                    key,
                    section.shownLength(pinned.getAsDouble()) + " is not less than the " + measure.term() + " of "
                            + section.shownLength(girth) + ": nothing was stretched.",
                    "Wrap it until it holds comfortably, pin, take it off and measure it flat.");
            return Optional.empty();
        }
        return Optional.of(new WrapTest(girth, pinned.getAsDouble()));
    }

    private boolean posed() {
        if (lengthens() > 0 || wearer.isEmpty()) {
            return wearer.isPresent();
        }
        section.add(
                "reaches pose",
                "needs lengths that grow in a pose.",
                "Give wearer.pose lengths, such as: back waist to front waist: [70, 78].");
        return false;
    }

    /** What the cloth is known to give where it reached the pose: no more than the lengths say. */
    private double lengthens() {
        return wearer.map(Measured::poseLengths).orElse(List.of()).stream()
                .mapToDouble(PoseLength::lengthens)
                .max()
                .orElse(0);
    }

    private static String text(String format, Object... values) {
        return String.format(Locale.ROOT, format, values);
    }
}
