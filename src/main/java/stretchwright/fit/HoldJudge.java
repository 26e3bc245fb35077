package stretchwright.fit;

import static stretchwright.fit.FitReport.Severity.NOTE;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stretchwright.fabric.Laplace;
import stretchwright.fit.FitReport.LevelFit;
import stretchwright.fit.FitReport.Verdict;
import stretchwright.ground.Part;
import stretchwright.ground.Said;
import stretchwright.pattern.Hold;
import stretchwright.pattern.Level;
import stretchwright.pattern.LevelHold;
import stretchwright.pattern.Style;

/** Pressures that the wearer named and does not get: who asks for a number is told where it is missed, and by what. */
final class HoldJudge {
    /** A pressure this far off is another pressure, mmHg: readings at home are no finer (our own limit, no source). */
    private static final double OFF = 1.5;

    private HoldJudge() {}

    static List<Verdict> of(List<LevelFit> levels, Worn worn) {
        if (!(worn.style().hold() instanceof Hold.Profile own)) {
            return List.of();
        }
        Map<Level.Name, Said> missed = new EnumMap<>(Level.Name.class);
        own.kilopascals().forEach((name, kPa) -> missed(name, kPa, levels, worn, missed));
        if (missed.isEmpty()) {
            return List.of();
        }
        return List.of(new Verdict(
                NOTE,
                Tell.said("about.hold"),
                Tell.said("wanted.missed", Part.listed(Part.Join.SEMICOLON, List.copyOf(missed.values()))),
                Tell.said("wanted.missed-help")));
    }

    private static void missed(
            Level.Name name, double kPa, List<LevelFit> levels, Worn worn, Map<Level.Name, Said> out) {
        double wanted = Laplace.toMmHg(kPa);
        Level.Name at = endsAtAnkle(name, worn) ? Level.Name.HEM : name;
        double worst = levels.stream()
                .filter(l -> l.level() == at)
                .mapToDouble(l -> Laplace.toMmHg(l.pressure()))
                .reduce((a, b) -> Math.abs(a - wanted) >= Math.abs(b - wanted) ? a : b)
                .orElse(Double.NaN);
        if (Double.isNaN(worst)) {
            if (!overBoot(worn)) {
                out.put(name, Tell.said("wanted.beyond-the-leg", Terms.of(name)));
            }
        } else if (Math.abs(worst - wanted) > OFF) {
            Part reached = new Part.Pressure(Laplace.fromMmHg(worst), 1);
            Part asked = Part.fixed(wanted, 1);
            out.put(
                    name,
                    bound(name, worn)
                            .map(by -> Tell.said("wanted.bound", Terms.of(name), reached, asked, Terms.of(by)))
                            .orElseGet(() -> Tell.said("wanted.off", Terms.of(name), reached, asked)));
        }
    }

    /** The hem lies where the ankle was measured. */
    private static boolean endsAtAnkle(Level.Name name, Worn worn) {
        return name == Level.Name.ANKLE
                && (worn.style().leg() == Style.Leg.ANKLE || worn.style().leg() == Style.Leg.STIRRUP);
    }

    /** Inside the boot's shaft the ankle is planned for and not listed. */
    private static boolean overBoot(Worn worn) {
        return worn.style().leg() == Style.Leg.OVER_BOOT;
    }

    private static Optional<LevelHold.Bound> bound(Level.Name name, Worn worn) {
        return worn.pattern().holds().stream()
                .filter(h -> h.level() == name && h.bound() != LevelHold.Bound.NONE)
                .findFirst()
                .map(LevelHold::bound);
    }
}
