package stretchwright.draft;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import stretchwright.body.Body;
import stretchwright.body.Side;
import stretchwright.boot.Boot;
import stretchwright.fabric.Fabric;
import stretchwright.ground.Findings;
import stretchwright.pattern.Crosswise;
import stretchwright.pattern.Hold;
import stretchwright.pattern.Level;
import stretchwright.pattern.LevelHold;
import stretchwright.pattern.Machine;
import stretchwright.pattern.Notion;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Piece;
import stretchwright.pattern.Reason;
import stretchwright.pattern.Seam;
import stretchwright.pattern.Style;
import stretchwright.pattern.WhichLeg;

/**
 * Drafts the pattern of a pair of stretch leggings. Each leg is drafted in one piece (cut as a mirrored pair, or a left and a
 * right one where the legs differ), then cut into the parts that the style asks for; bands, hems, straps and pockets
 * are added. The method is docs/maths/draft.md.
 */
public final class Draft {
    private Draft() {}

    /** Sewn with an overlocker and a coverstitch. */
    public static Optional<Pattern> of(Body body, Fabric fabric, Optional<Boot> boot, Style style, Findings findings) {
        return of(body, fabric, boot, style, Set.of(Machine.OVERLOCKER, Machine.COVERSTITCH), findings);
    }

    /**
     * The pattern, on the 0.01 mm grid; empty where findings say which measures are at odds.
     *
     * @param machines what it will be sewn with: how far a ring of the garment may stretch depends on its stitch
     */
    public static Optional<Pattern> of(
            Body body, Fabric fabric, Optional<Boot> boot, Style style, Set<Machine> machines, Findings findings) {
        Optional<Boot> worn = boot.filter(b -> style.leg() == Style.Leg.OVER_BOOT);
        Body padded = Padded.of(body, style.parts());
        if (style.hold() instanceof Hold.Profile && fabric.test().loadAcross().isAssumed()) {
            findings.add("style.hold", Tell.said("hold.assumed"), Tell.said("hold.assumed-help"));
            return Optional.empty();
        }
        Order order = Order.of(padded, fabric, worn, style, machines, Stay.AS_USUAL);
        if (worn.isPresent()
                && !(BootCheck.pass(worn.get(), body, findings) && LowerCheck.pass(worn.get(), order, findings))) {
            return Optional.empty();
        }
        if (!MovesCheck.pass(order, findings) || !BandCheck.pass(order, findings)) {
            return Optional.empty();
        }
        Order bare = order.bare();
        Stay stay = drawn(bare, new Findings(""))
                .map(plain -> Staying.found(plain, bare))
                .orElse(Stay.AS_USUAL);
        Optional<Pattern> staying = stay.isUsual() ? Optional.empty() : drawn(order.with(stay), new Findings(""));
        return staying.isPresent() ? staying : drawn(order, findings);
    }

    private static Optional<Pattern> drawn(Order order, Findings findings) {
        Frame frame = Frame.of(order);
        Body body = order.body();
        if (body.legs().alike()) {
            return Leg.draft(order.on(body.leg(Side.LEFT), WhichLeg.BOTH), frame, findings)
                    .flatMap(leg -> pair(order, frame, leg, findings));
        }
        return Leg.draft(order, frame, findings).flatMap(mean -> different(order, frame, mean, findings));
    }

    private static Optional<Pattern> pair(Order order, Frame frame, Leg leg, Findings findings) {
        Piece piece = leg.piece(2, true);
        return assemble(order, frame, List.of(piece), List.of(leg), findings);
    }

    /** Two legs apart: each follows its own leg of the body, and both meet at the crotch seam of the body's mean. */
    private static Optional<Pattern> different(Order order, Frame frame, Leg mean, Findings findings) {
        List<Leg> legs = new ArrayList<>();
        List<Piece> pieces = new ArrayList<>();
        for (Side side : Side.values()) {
            Optional<Leg> leg = Leg.matching(
                    order.on(order.body().leg(side), side == Side.LEFT ? WhichLeg.LEFT : WhichLeg.RIGHT),
                    frame,
                    mean,
                    findings);
            if (leg.isEmpty()) {
                return Optional.empty();
            }
            legs.add(leg.get());
            Piece piece = leg.get().piece(1, false);
            pieces.add(pieces.isEmpty() ? piece : LegMarks.meeting(pieces.get(0), piece));
        }
        return assemble(order, frame, pieces, legs, findings);
    }

    /** @param drawn each leg in one piece, front to the left; a right leg is mirrored with its parts */
    private static Optional<Pattern> assemble(
            Order order, Frame frame, List<Piece> drawn, List<Leg> legs, Findings findings) {
        double wanted = Frame.band(order);
        return LegParts.of(order, legs, drawn, wanted, findings)
                .map(parts -> assemble(order, frame, drawn, parts, legs))
                .filter(pattern -> BandCheck.turnsDown(pattern, order, findings));
    }

    private static Pattern assemble(Order order, Frame frame, List<Piece> drawn, LegParts parts, List<Leg> legs) {
        Style style = order.style();
        TopFinish finish = TopFinish.of(order, parts.legs());
        List<Piece> pieces = new ArrayList<>();
        parts.legs().forEach(leg -> pieces.addAll(leg.pieces()));
        pieces.addAll(finish.pieces());
        Order given = legs.get(0).order();
        double above =
                Math.max(0, Math.min(order.stay().above(), legs.get(0).top().miss()));
        List<Reason> reasons = new ArrayList<>(given.reductionReasons());
        reasons.addAll(order.stay().reasons(above));
        style.cuffHeight().ifPresent(h -> {
            Reasoned<List<Piece>> cuffs = Bands.cuffs(parts.legs(), h, style);
            pieces.addAll(cuffs.drawn());
            reasons.addAll(cuffs.reasons());
        });
        parts.legs().forEach(leg -> reasons.addAll(leg.shares()));
        LowerParts lower = LowerParts.of(order, legs, drawn, pieces);
        pieces.addAll(lower.pieces());
        pieces.addAll(parts.added());
        List<Level> levels = new ArrayList<>();
        List<LevelHold> holds = new ArrayList<>();
        levels.add(new Level(
                Level.Name.WAIST,
                legs.stream().mapToDouble(l -> l.top().side()).average().orElse(0),
                finish.width()));
        for (int i = 0; i < legs.size(); i++) {
            List<Level> below = LegLevels.of(legs.get(i), drawn.get(i));
            levels.addAll(below);
            holds.addAll(legs.get(i).holds(frame, below));
            reasons.addAll(legs.get(i).order().holding().reasons(below));
            lower.hem(i, legs.get(i).order().leg()).ifPresent(levels::add);
            reasons.addAll(legs.get(i).reasons(drawn.get(i), frame, below));
        }
        reasons.addAll(finish.reasons());
        legs.forEach(leg -> reasons.addAll(leg.dartReasons()));
        reasons.addAll(lower.reasons());
        reasons.addAll(LengthPlan.reasons(legs.stream().map(Leg::order).toList(), levels));
        reasons.addAll(parts.reasons());
        List<Notion> notions = new ArrayList<>(finish.notions());
        notions.addAll(lower.notions());
        List<Seam> seams = new ArrayList<>(Joins.of(pieces, parts.legs(), style));
        seams.addAll(parts.seams());
        List<Piece> cut = style.lay().crosswise()
                ? pieces.stream().map(Crosswise::grained).toList()
                : pieces;
        double backOff = legs.get(0).top().backOff() / (1 - given.reductions().crotch());
        return new Pattern(
                cut,
                seams,
                levels,
                given.reductions(),
                reasons,
                notions,
                holds,
                order.moves().moved(),
                backOff,
                above);
    }
}
