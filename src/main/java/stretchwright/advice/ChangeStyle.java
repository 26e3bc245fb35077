package stretchwright.advice;

import static stretchwright.advice.ChangeLever.choice;

import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import stretchwright.advice.ChangeLever.Way;
import stretchwright.boot.Boot;
import stretchwright.ground.Numbers;
import stretchwright.intake.HoldKeys;
import stretchwright.intake.TopKeys;
import stretchwright.intake.MakeFile;
import stretchwright.pattern.Hold;
import stretchwright.pattern.Level;
import stretchwright.pattern.Machine;
import stretchwright.pattern.Parts;
import stretchwright.pattern.Style;
import stretchwright.pattern.TopEnd;
import stretchwright.pattern.TopEnd.Band.Shape;

/** Changes of style, hold, dressing and machine; each empty where the make has it already or could not have it. */
final class ChangeStyle {
    /** Lowering the rise further makes another garment (common practice, no source). */
    private static final int LOWEST_RISE = 120;

    private final MakeFile make;
    private final Style s;

    ChangeStyle(MakeFile make) {
        this.make = make;
        this.s = make.style();
    }

    Optional<ChangeLever> lightHold() {
        return s.hold() == Hold.Named.LIGHT
                ? Optional.empty()
                : Optional.of(
                        choice("a lighter hold (hold: light)", 1, Optional.of(make.with(s.with(Hold.Named.LIGHT)))));
    }

    /**
     * A share off every girth, smaller than now.
     *
     * @param now the share that is taken off now
     */
    Optional<ChangeLever> smallerShare(double now) {
        int from = (int) Math.ceil(100 * now - 1e-9);
        return from < 1
                ? Optional.empty()
                : Optional.of(new ChangeLever(
                        "a smaller share off every girth",
                        from,
                        "down to nothing off the girths",
                        n -> 1.1 + n / 5.0,
                        n -> String.format(
                                Locale.ROOT,
                                "%d %% off every girth (hold: %d %%; now %.0f %%)",
                                from - n,
                                from - n,
                                100 * now),
                        n -> Optional.of(make.with(s.with(new Hold.Fixed((from - n) / 100.0))))));
    }

    /** More flat width at a level; takes up to the reader's limit of what the wearer may add there. */
    ChangeLever wider(Level.Name level, String place) {
        double already = s.ease().getOrDefault(level, 0.0);
        int most = (int) Math.floor(HoldKeys.EASE_RANGE.most() - already);
        return new ChangeLever(
                        "more width at the " + place,
                        Math.max(1, most),
                        "up to " + Math.max(1, most) + " mm more width at the " + place,
                        n -> 0.6 + n / 20.0,
                        n -> n + " mm more width at the " + place + " (ease: {" + level.word() + ": "
                                + Numbers.plain(already + n) + " mm})",
                        n -> already + n > HoldKeys.EASE_RANGE.most()
                                ? Optional.empty()
                                : Optional.of(eased(level, already + n)))
                .by(Way.WIDER);
    }

    private MakeFile eased(Level.Name level, double mm) {
        Map<Level.Name, Double> ease = new EnumMap<>(Level.Name.class);
        ease.putAll(s.ease());
        ease.put(level, mm);
        return make.with(s.withEase(ease));
    }

    ChangeLever lowerRise() {
        double now = s.dropBelowWaist();
        return new ChangeLever(
                "a lower rise",
                LOWEST_RISE,
                "a rise up to " + LOWEST_RISE + " mm lower",
                n -> 1 + n / 30.0,
                n -> String.format(Locale.ROOT, "a rise %d mm lower (rise: %.0f mm)", n, now + n),
                n -> now + n > TopKeys.RISE.range().most()
                        ? Optional.empty()
                        : Optional.of(make.with(s.with(s.top().dropped(now + n)))));
    }

    /** A contoured band needs a rise below the waist, and neither elastic nor cord. */
    Optional<ChangeLever> contoured() {
        boolean lower = s.dropBelowWaist() == 0;
        String words = "a contoured band"
                + (lower ? String.format(Locale.ROOT, ", joined %.0f mm below the waist", s.bandHeight()) : "");
        return s.top().contoured().map(top -> choice(words, 2, Optional.of(make.with(s.with(top)))));
    }

    Optional<ChangeLever> back(TopEnd.BackShape shape) {
        if (s.top().back() != TopEnd.BackShape.PLAIN || s.parts().sideSeam() == Parts.SideSeam.SHAPED) {
            return Optional.empty();
        }
        boolean darts = shape == TopEnd.BackShape.DARTS;
        return Optional.of(choice(
                darts ? "a dart in each half of the back (back: darts)" : "a shaped centre back (back: shaped seam)",
                darts ? 1.2 : 1.1,
                Optional.of(make.with(s.with(s.top().with(shape))))));
    }

    ChangeLever lowerBand() {
        double now = s.bandHeight();
        int most = (int) Math.floor(now - TopKeys.BAND_HEIGHT.range().least());
        return new ChangeLever(
                        "a lower band",
                        Math.max(1, most),
                        "a band down to " + Numbers.plain(TopKeys.BAND_HEIGHT.range().least()) + " mm",
                        n -> 0.8 + n / 40.0,
                        n -> String.format(Locale.ROOT, "a band of %.0f mm", Math.floor(now) - n),
                        n -> lowBand(Math.floor(now) - n))
                .by(Way.LOWER_BAND);
    }

    private Optional<MakeFile> lowBand(double height) {
        TopEnd.Band b = s.top().band();
        boolean room = b.shape() == Shape.STRAIGHT
                && b.channel() <= height
                && b.keyPocket().isEmpty();
        return height < TopKeys.BAND_HEIGHT.range().least() || !room
                ? Optional.empty()
                : Optional.of(make.with(s.with(
                        s.top().with(new TopEnd.Band(b.shape(), height, b.elastic(), b.drawstring(), b.keyPocket())))));
    }

    ChangeLever higherBack() {
        double now = s.top().backRaise();
        int most = (int) Math.floor(TopKeys.BACK_WAIST.range().most() - now);
        return new ChangeLever(
                "a longer back rise",
                Math.max(1, most),
                "up to " + Math.max(1, most) + " mm more back rise",
                n -> 0.9 + n / 30.0,
                n -> String.format(Locale.ROOT, "%d mm more back rise (back waist: %.0f mm)", n, now + n),
                n -> now + n > TopKeys.BACK_WAIST.range().most()
                        ? Optional.empty()
                        : Optional.of(make.with(s.with(s.top().raised(s.top().frontRaise(), now + n)))));
    }

    /** More length over the bent knee; a leg in one piece is cut along its side for it. */
    Optional<ChangeLever> kneeShaping() {
        if (s.parts().kneeShaping() || s.top().back() != TopEnd.BackShape.PLAIN) {
            return Optional.empty();
        }
        boolean cut = s.parts().cutAtSide();
        Parts parts = (cut ? s.parts() : s.parts().with(Parts.SideSeam.SHAPED)).withKneeShaping();
        return Optional.of(choice(
                "room for the bent knee (knee shaping: true" + (cut ? ")" : ", side seam: shaped)"),
                2.2,
                Optional.of(make.with(s.with(parts)))));
    }

    /** The stitch of another machine, where the seam and not the cloth is the limit. */
    Optional<ChangeLever> machine(Machine machine) {
        if (make.machines().contains(machine) || make.machines().contains(Machine.COMBINED)) {
            return Optional.empty();
        }
        Set<Machine> more = new LinkedHashSet<>(make.machines());
        more.add(machine);
        String stitch = machine == Machine.OVERLOCKER ? "four-thread overlock" : "coverstitch";
        return Optional.of(choice(
                "sewn in " + stitch + " (" + machine.word() + " among the machines)", 4, Optional.of(make.with(more))));
    }

    Optional<ChangeLever> legFirst() {
        return make.boot()
                .filter(Boot::overLaced)
                .map(b -> choice(
                        "the legs put on first and rolled down over the boot (boot.dressing: leg first)",
                        0.9,
                        Optional.of(make.with(new Boot(
                                b.kind(),
                                b.topGirth(),
                                b.heelGirth(),
                                b.hemGirth(),
                                b.ankleToHem(),
                                b.ankleToTop(),
                                b.topEstimated(),
                                Boot.Dressing.LEG_FIRST,
                                b.guardGirth(),
                                b.sole())))));
    }

    /** The hem higher on the boot. */
    Optional<ChangeLever> higherHem() {
        return make.boot().map(b -> {
            int most = (int) Math.floor(b.ankleToHem());
            return new ChangeLever(
                    "a higher hem",
                    Math.max(1, most),
                    "a hem at the ankle bone",
                    n -> 0.8 + n / 30.0,
                    n -> String.format(
                            Locale.ROOT, "the hem %d mm higher (boot.ankle to hem: %.0f mm)", n, b.ankleToHem() - n),
                    n -> higher(b, b.ankleToHem() - n));
        });
    }

    private Optional<MakeFile> higher(Boot b, double ankleToHem) {
        OptionalDouble cuff = s.cuffHeight();
        boolean covered = cuff.isEmpty() || cuff.getAsDouble() <= b.ankleToTop() + ankleToHem;
        return ankleToHem < 0 || !covered
                ? Optional.empty()
                : Optional.of(make.with(new Boot(
                        b.kind(),
                        b.topGirth(),
                        b.heelGirth(),
                        b.hemGirth(),
                        ankleToHem,
                        b.ankleToTop(),
                        b.topEstimated(),
                        b.dressing(),
                        b.guardGirth(),
                        b.sole())));
    }
}
