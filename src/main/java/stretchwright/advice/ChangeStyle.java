package stretchwright.advice;

import static stretchwright.advice.ChangeLever.choice;

import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import stretchwright.advice.ChangeLever.Way;
import stretchwright.boot.Boot;
import stretchwright.ground.Part;
import stretchwright.ground.Said;
import stretchwright.intake.HoldKeys;
import stretchwright.intake.MakeFile;
import stretchwright.intake.TopKeys;
import stretchwright.pattern.Hold;
import stretchwright.pattern.Level;
import stretchwright.pattern.Machine;
import stretchwright.pattern.Parts;
import stretchwright.pattern.Style;
import stretchwright.pattern.TopEnd;

/** Changes of style, hold, dressing and machine; each empty where the make has it already or could not have it. */
final class ChangeStyle {
    /** Lowering the rise further makes another garment (common practice, no source). */
    private static final int LOWEST_RISE = 120;

    private final MakeFile make;
    private final Style s;
    private final ChangeSteps steps;

    ChangeStyle(MakeFile make) {
        this.make = make;
        this.s = make.style();
        this.steps = new ChangeSteps(make.unit());
    }

    Optional<ChangeLever> lightHold() {
        return s.hold() == Hold.Named.LIGHT
                ? Optional.empty()
                : Optional.of(
                        choice(Tell.said("style.light-hold"), 1, Optional.of(make.with(s.with(Hold.Named.LIGHT)))));
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
                        from,
                        Tell.said("style.no-share"),
                        n -> 1.1 + n / 5.0,
                        n -> Tell.said("style.share", Part.share((from - n) / 100.0), Part.share(now)),
                        n -> Optional.of(make.with(s.with(new Hold.Fixed((from - n) / 100.0))))));
    }

    /** More flat width at a level; takes up to the reader's limit of what the wearer may add there. */
    ChangeLever wider(Level.Name level) {
        return wider(level, level.said());
    }

    /** The same where the thigh presses: the crotch's width is the thigh's. */
    ChangeLever widerThigh(Level.Name level) {
        return wider(level, level == Level.Name.CROTCH ? Tell.said("style.thigh") : level.said());
    }

    private ChangeLever wider(Level.Name level, Part place) {
        double already = s.ease().getOrDefault(level, 0.0);
        int most = steps.within(HoldKeys.EASE_RANGE.most() - already);
        return new ChangeLever(
                        most,
                        Tell.said("style.widest", Part.length(steps.mm(most)), place),
                        n -> 0.6 + steps.mm(n) / 20,
                        n -> Tell.said(
                                "style.wider",
                                Part.length(steps.mm(n)),
                                place,
                                Part.text("{"),
                                Part.text(level.word()),
                                ChangeSteps.told(steps.onTape(already + steps.mm(n))),
                                Part.text("}")),
                        n -> already + steps.mm(n) > HoldKeys.EASE_RANGE.most()
                                ? Optional.empty()
                                : Optional.of(eased(level, steps.onTape(already + steps.mm(n)))))
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
                steps.within(LOWEST_RISE),
                Tell.said("style.lowest-rise", Part.length(LOWEST_RISE)),
                n -> 1 + steps.mm(n) / 30,
                n -> Tell.said(
                        "style.lower-rise", Part.length(steps.mm(n)), Part.length(steps.onTape(now + steps.mm(n)))),
                n -> now + steps.mm(n) > TopKeys.RISE.range().most()
                        ? Optional.empty()
                        : Optional.of(make.with(s.with(s.top().dropped(steps.onTape(now + steps.mm(n)))))));
    }

    /** A contoured band needs a rise below the waist, and neither elastic nor cord. */
    Optional<ChangeLever> contoured() {
        boolean lower = s.dropBelowWaist() == 0;
        Said words =
                lower ? Tell.said("style.contoured-lower", Part.length(s.bandHeight())) : Tell.said("style.contoured");
        return s.top().contoured().map(top -> choice(words, 2, Optional.of(make.with(s.with(top)))));
    }

    Optional<ChangeLever> back(TopEnd.BackShape shape) {
        if (s.top().back() != TopEnd.BackShape.PLAIN || s.parts().sideSeam() == Parts.SideSeam.SHAPED) {
            return Optional.empty();
        }
        boolean darts = shape == TopEnd.BackShape.DARTS;
        return Optional.of(choice(
                darts ? Tell.said("style.darts") : Tell.said("style.shaped-seam"),
                darts ? 1.2 : 1.1,
                Optional.of(make.with(s.with(s.top().with(shape))))));
    }

    /** More length over the bent knee; a leg in one piece is cut along its side for it. */
    Optional<ChangeLever> kneeShaping() {
        if (s.parts().kneeShaping() || s.top().back() != TopEnd.BackShape.PLAIN) {
            return Optional.empty();
        }
        boolean cut = s.parts().cutAtSide();
        Parts parts = (cut ? s.parts() : s.parts().with(Parts.SideSeam.SHAPED)).withKneeShaping();
        return Optional.of(choice(
                cut ? Tell.said("style.knee") : Tell.said("style.knee-and-side-seam"),
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
        Part word = Part.text(machine.word());
        Said words = machine == Machine.OVERLOCKER
                ? Tell.said("style.overlock", word)
                : Tell.said("style.coverstitch", word);
        return Optional.of(choice(words, 4, Optional.of(make.with(more))));
    }

    Optional<ChangeLever> legFirst() {
        return make.boot()
                .filter(Boot::overLaced)
                .map(b -> choice(
                        Tell.said("style.leg-first"),
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
        return make.boot()
                .map(b -> new ChangeLever(
                        steps.within(b.ankleToHem()),
                        Tell.said("style.highest-hem"),
                        n -> 0.8 + steps.mm(n) / 30,
                        n -> Tell.said(
                                "style.higher-hem",
                                Part.length(steps.mm(n)),
                                Part.length(steps.onTape(b.ankleToHem() - steps.mm(n)))),
                        n -> higher(b, steps.onTape(b.ankleToHem() - steps.mm(n)))));
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
