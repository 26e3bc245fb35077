package stretchwright.intake;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import stretchwright.body.Measure;
import stretchwright.boot.Boot;
import stretchwright.fabric.Laplace;
import stretchwright.ground.Part;
import stretchwright.pattern.Hold;
import stretchwright.pattern.LayTerms;
import stretchwright.pattern.Level;
import stretchwright.pattern.LowerEnd;
import stretchwright.pattern.Machine;
import stretchwright.pattern.Parts;
import stretchwright.pattern.Parts.Pocket;
import stretchwright.pattern.Seam;
import stretchwright.pattern.Stitch;
import stretchwright.pattern.Style;
import stretchwright.pattern.TopEnd;

/** The style from what was given; what is left out takes the usual value of its row. */
final class StyleReader {
    private final Given given;
    private final Optional<WearerReader.Wearer> wearer;
    private final Optional<Boot> boot;
    private final Set<Machine> machines;

    StyleReader(Given given, Optional<WearerReader.Wearer> wearer, Optional<Boot> boot, Set<Machine> machines) {
        this.given = given;
        this.wearer = wearer;
        this.boot = boot;
        this.machines = machines;
    }

    Style read() {
        Style.Leg leg = leg();
        Parts parts = parts();
        TopEnd topEnd = top(parts);
        LowerEnd lower = new LowerReader(given, leg, boot).read();
        Map<Seam.Role, Double> allowances = new EnumMap<>(Seam.Role.class);
        if (lower.cuffHeight().isEmpty()) {
            allowances.put(Seam.Role.HEM, lower.turnUp());
        }
        allowances.putAll(SeamKeys.exceptions(given));
        double usual = Machine.forSeam(machines) == Stitch.OVERLOCK_4 ? SeamKeys.OVERLOCKED : SeamKeys.OTHERWISE;
        double allowance = given.get(SeamKeys.ALLOWANCE).orElse(usual);
        return new Style(
                leg, lower, topEnd, parts, hold(), allowance, allowances, lay(), ease(), ShiftKeys.read(given));
    }

    private Style.Leg leg() {
        Style.Leg leg =
                given.get(LegKeys.LEG).orElseGet(() -> boot.isPresent() ? Style.Leg.OVER_BOOT : Style.Leg.ANKLE);
        if (leg == Style.Leg.OVER_BOOT && !given.has(BootKeys.BOOT)) {
            given.add(LegKeys.LEG, Tell.said("leg.no-boot"), Tell.said("leg.measure-boot"));
        }
        return leg;
    }

    private TopEnd top(Parts parts) {
        double drop = rise();
        TopEnd.BackShape back = given.orUsual(TopKeys.BACK);
        if (back != TopEnd.BackShape.PLAIN && parts.sideSeam() == Parts.SideSeam.SHAPED) {
            given.add(
                    TopKeys.BACK,
                    Tell.said("back.side-seam", Tell.quoted(ChoiceKind.lower(back))),
                    Tell.said("back.choose"));
        }
        return new TopEnd(
                drop,
                given.orUsual(TopKeys.FRONT_WAIST),
                given.orUsual(TopKeys.BACK_WAIST),
                new BandReader(given, wearer, drop).read(),
                back);
    }

    /**
     * The top of the hips is halfway from the waist to the fullest part (the usual top-hip level lies 75 to 100 mm below
     * the waist), where both heights were measured; an estimate would decide the whole top edge.
     */
    private double rise() {
        Rise rise = given.orUsual(TopKeys.RISE);
        if (rise.mm().isPresent()) {
            return rise.mm().get();
        }
        Map<Measure, Double> means = wearer.map(w -> w.measured().means()).orElse(Map.of());
        Double waist = means.get(Measure.WAIST_HEIGHT);
        Double hip = means.get(Measure.HIP_HEIGHT);
        if (waist == null || hip == null) {
            given.add(TopKeys.RISE, Tell.said("rise.heights"), Tell.said("rise.give", Part.written(100)));
            return 0;
        }
        return Math.max(0, (waist - hip) / 2);
    }

    private Parts parts() {
        Optional<Double> length = given.get(PartKeys.GUSSET_LENGTH);
        Optional<Double> width = given.get(PartKeys.GUSSET_WIDTH);
        Optional<Parts.Gusset> gusset = length.isPresent() && width.isPresent()
                ? Optional.of(new Parts.Gusset(length.get(), width.get()))
                : Optional.empty();
        return new Parts(
                given.orUsual(PartKeys.SIDE_SEAM),
                Row.unboxed(given.get(PartKeys.PANEL_WIDTH)),
                gusset,
                given.orUsual(PartKeys.KNEE_SHAPING),
                pockets());
    }

    private List<Pocket> pockets() {
        List<Pocket> out = new ArrayList<>();
        for (Given one : given.each(PartKeys.POCKETS)) {
            pocket(one).ifPresent(p -> {
                if (out.stream().anyMatch(other -> other.kind() == p.kind())) {
                    one.add(
                            PartKeys.POCKET_KIND,
                            Tell.said("pocket.twice", Part.text(p.kind().word())),
                            Tell.said("words.once"));
                } else {
                    out.add(p);
                }
            });
        }
        return out;
    }

    private static Optional<Pocket> pocket(Given one) {
        Optional<Pocket.Kind> kind = one.get(PartKeys.POCKET_KIND);
        Optional<Double> width = one.get(PartKeys.POCKET_WIDTH);
        Optional<Double> height = one.get(PartKeys.POCKET_HEIGHT);
        if (kind.isPresent() && kind.get() != Pocket.Kind.PHONE && !one.has(PartKeys.POCKET_THICKNESS)) {
            one.missing(PartKeys.POCKET_THICKNESS);
        }
        double thick = one.get(PartKeys.POCKET_THICKNESS).orElse(0.0);
        return kind.isPresent() && width.isPresent() && height.isPresent()
                ? Optional.of(new Pocket(kind.get(), width.get(), height.get(), thick))
                : Optional.empty();
    }

    private Hold hold() {
        Map<Level.Name, Double> pressures = new EnumMap<>(Level.Name.class);
        for (Level.Name level : HoldKeys.LEVELS) {
            given.get(HoldKeys.hold(level)).ifPresent(mmHg -> pressures.put(level, Laplace.fromMmHg(mmHg)));
        }
        return pressures.isEmpty() ? given.orUsual(HoldKeys.HOLD) : new Hold.Profile(pressures);
    }

    /** What is to be added to or taken off the flat width, by level. */
    private Map<Level.Name, Double> ease() {
        Map<Level.Name, Double> out = new EnumMap<>(Level.Name.class);
        for (Level.Name level : HoldKeys.EASED) {
            given.get(HoldKeys.ease(level)).ifPresent(mm -> out.put(level, mm));
        }
        return out;
    }

    private LayTerms lay() {
        return new LayTerms(
                given.orUsual(LayKeys.WAY),
                given.get(LayKeys.GAP).orElse(0.0),
                given.get(LayKeys.TILT).orElse(0.0),
                given.get(LayKeys.MATCH_AT).filter(n -> !n.isEmpty()),
                given.orUsual(LayKeys.CROSSWISE));
    }
}
