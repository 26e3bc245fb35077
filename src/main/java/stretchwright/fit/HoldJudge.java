package stretchwright.fit;

import static stretchwright.fit.FitReport.Severity.CAUTION;
import static stretchwright.fit.FitReport.Severity.NOTE;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import stretchwright.fabric.Laplace;
import stretchwright.fit.FitReport.LevelFit;
import stretchwright.fit.FitReport.Severity;
import stretchwright.fit.FitReport.Verdict;
import stretchwright.ground.Part;
import stretchwright.ground.Said;
import stretchwright.pattern.Hold;
import stretchwright.pattern.Level;
import stretchwright.pattern.LevelHold;
import stretchwright.pattern.Style;

/**
 * Pressures that were wanted, by number or by the name of a hold, and are not reached: where, and by what. Told once, the level
 * furthest off first.
 */
final class HoldJudge {
    /** Middle over wanted outside of these is told: less hides in the spread of bodies; then it is another hold (our own limits). */
    private static final double SEEN = 4.0 / 3;

    private static final double ANOTHER = 2;

    /** And a pressure no further off than this is not felt, mmHg (our own limit, no source). */
    private static final double FELT = 1;

    /** Where a named hold holds; at the lower end what must pass decides, and is told there. */
    private static final Set<Level.Name> NAMED =
            Set.of(Level.Name.CROTCH, Level.Name.MID_THIGH, Level.Name.KNEE, Level.Name.CALF);

    private final List<LevelFit> levels;
    private final Worn worn;

    private HoldJudge(List<LevelFit> levels, Worn worn) {
        this.levels = levels;
        this.worn = worn;
    }

    /** @param off how many times the wanted pressure is missed, above or below: 1 is not at all */
    private record Missed(Severity severity, double off, Said said) {}

    static List<Verdict> of(List<LevelFit> levels, Worn worn) {
        HoldJudge judge = new HoldJudge(levels, worn);
        List<Verdict> out = new ArrayList<>();
        judge.missed().ifPresent(out::add);
        if (SameHold.of(worn)) {
            out.add(new Verdict(
                    NOTE, Tell.said("about.hold"), Tell.said("wanted.same"), Tell.said("wanted.same-help")));
        }
        return out;
    }

    private Optional<Verdict> missed() {
        List<Missed> all = new ArrayList<>();
        if (worn.style().hold() instanceof Hold.Profile own) {
            own.kilopascals().forEach((name, kPa) -> own(name, kPa).ifPresent(all::add));
        } else {
            worn.pattern().holds().stream()
                    .filter(h -> NAMED.contains(h.level()) && h.wanted().isPresent())
                    .forEach(h -> levels.stream()
                            .filter(l -> l.level() == h.level() && l.leg().meets(h.leg()))
                            .forEach(l ->
                                    at(h.level(), h.wanted().getAsDouble(), l).ifPresent(all::add)));
        }
        if (all.isEmpty()) {
            return Optional.empty();
        }
        all.sort(Comparator.comparing(Missed::severity)
                .thenComparing(Comparator.comparingDouble(Missed::off).reversed()));
        List<Said> told = all.stream().map(Missed::said).distinct().toList();
        return Optional.of(new Verdict(
                all.get(0).severity,
                Tell.said("about.hold"),
                Tell.said("wanted.missed", Part.listed(Part.Join.SEMICOLON, told)),
                Tell.said("wanted.missed-help")));
    }

    /** Of the legs the one that misses it by more. */
    private Optional<Missed> own(Level.Name name, double kPa) {
        Level.Name at = endsAtAnkle(name) ? Level.Name.HEM : name;
        Optional<LevelFit> worst = levels.stream()
                .filter(l -> l.level() == at)
                .max(Comparator.comparingDouble(l -> off(l.pressure(), kPa)));
        if (worst.isEmpty()) {
            return overBoot()
                    ? Optional.empty()
                    : Optional.of(new Missed(NOTE, ANOTHER, Tell.said("wanted.beyond-the-leg", Terms.of(name))));
        }
        return at(name, kPa, worst.get());
    }

    private Optional<Missed> at(Level.Name name, double kPa, LevelFit l) {
        double off = off(l.pressure(), kPa);
        if (off <= SEEN || Laplace.toMmHg(Math.abs(l.pressure() - kPa)) <= FELT) {
            return Optional.empty();
        }
        Part where = l.level() == name ? l.place() : Terms.of(name);
        Part reached = Told.of(l).said();
        Part asked = Part.fixed(Laplace.toMmHg(kPa), 1);
        Said said = bound(name)
                .map(by -> Tell.said("wanted.bound", where, reached, asked, Terms.of(by)))
                .orElseGet(() -> Tell.said("wanted.off", where, reached, asked));
        return Optional.of(new Missed(off > ANOTHER ? CAUTION : NOTE, off, said));
    }

    private static double off(double reached, double wanted) {
        return reached > 0 ? Math.max(reached / wanted, wanted / reached) : Double.MAX_VALUE;
    }

    /** The hem lies where the ankle was measured. */
    private boolean endsAtAnkle(Level.Name name) {
        return name == Level.Name.ANKLE
                && (worn.style().leg() == Style.Leg.ANKLE || worn.style().leg() == Style.Leg.STIRRUP);
    }

    /** Inside the boot's shaft the ankle is planned for and not listed. */
    private boolean overBoot() {
        return worn.style().leg() == Style.Leg.OVER_BOOT;
    }

    private Optional<LevelHold.Bound> bound(Level.Name name) {
        return worn.pattern().holds().stream()
                .filter(h -> h.level() == name && h.bound() != LevelHold.Bound.NONE)
                .findFirst()
                .map(LevelHold::bound);
    }
}
