package stretchwright.pattern;

import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Optional;

/**
 * The pieces, how they are sewn together, the levels at which they are checked, and the reductions they carry.
 *
 * @param pieces in the order in which people speak of them: legs, waistband, cuff
 * @param levels from the top down
 * @param reductions what was taken off the body's measures
 * @param reasons why each dimension is what it is
 * @param notions what is bought and sewn on, such as an elastic
 * @param holds what decided the width at each level
 * @param moved what moved points of it beside the measures
 * @param backOff by how much the back crotch length is drawn longer than it was measured, mm on the body
 * @param above how far the top edge is drawn above its place because worn it settles, mm on the flat piece
 */
public record Pattern(
        List<Piece> pieces,
        List<Seam> seams,
        List<Level> levels,
        Reductions reductions,
        List<Reason> reasons,
        List<Notion> notions,
        List<LevelHold> holds,
        List<Moved> moved,
        double backOff,
        double above) {

    /** Without a word on how the widths were found. */
    public Pattern(
            List<Piece> pieces,
            List<Seam> seams,
            List<Level> levels,
            Reductions reductions,
            List<Reason> reasons,
            List<Notion> notions) {
        this(pieces, seams, levels, reductions, reasons, notions, List.of(), List.of(), 0, 0);
    }

    /** Nothing to buy but the cloth. */
    public Pattern(
            List<Piece> pieces, List<Seam> seams, List<Level> levels, Reductions reductions, List<Reason> reasons) {
        this(pieces, seams, levels, reductions, reasons, List.of());
    }

    /** Without reasons: drawn and not drafted. */
    public Pattern(List<Piece> pieces, List<Seam> seams, List<Level> levels, Reductions reductions) {
        this(pieces, seams, levels, reductions, List.of());
    }

    /**
     * Shares taken off the body's lengths: flat = body x (1 - share).
     *
     * @param across off girths, before shaping evens it out level by level
     * @param along off leg lengths
     * @param rise off the rise, from the crotch line up to the top edge
     * @param crotch off the crotch seam
     * @param waistband off the waist girth for the band
     * @param hem off the girth at the hem
     */
    public record Reductions(double across, double along, double rise, double crotch, double waistband, double hem) {
        /** With as much off the rise as off the leg. */
        public Reductions(double across, double along, double crotch, double waistband, double hem) {
            this(across, along, along, crotch, waistband, hem);
        }

        public Reductions given(double offRise, double offCrotch) {
            return new Reductions(across, along, offRise, offCrotch, waistband, hem);
        }
    }

    public Pattern {
        pieces = List.copyOf(pieces);
        seams = List.copyOf(seams);
        levels = List.copyOf(levels);
        reasons = List.copyOf(reasons);
        notions = List.copyOf(notions);
        holds = List.copyOf(holds);
        moved = List.copyOf(moved);
    }

    /** Shares taken off the girths of the leg, level by level; the band and the hem stand apart. */
    public DoubleSummaryStatistics reductionsAcross() {
        return holds.stream()
                .filter(h -> h.level() != Level.Name.WAIST && h.level() != Level.Name.HEM)
                .mapToDouble(LevelHold::reduction)
                .summaryStatistics();
    }

    /** How far a point was moved beside the measures, mm. */
    public double shift(Shift point) {
        return moved.stream().mapToDouble(m -> m.shifts().at(point)).sum();
    }

    public Piece piece(PieceName name) {
        return pieces.stream()
                .filter(p -> p.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("there is no piece " + name));
    }

    public Optional<Level> level(Level.Name name) {
        return levels.stream().filter(l -> l.name() == name).findFirst();
    }

    /** The leg pieces: one that is cut as a mirrored pair, or its parts; or those of the left and of the right leg. */
    public List<Piece> legs() {
        return pieces.stream().filter(p -> p.name().kind().isLeg()).toList();
    }

    /** Height of the crotch line on the flat piece, mm; of a gusset's upper tip where one is set in. */
    public double crotchLine() {
        return legs().stream()
                .filter(p -> p.has(EdgeName.FRONT_INSEAM))
                .findFirst()
                .orElseThrow()
                .edge(EdgeName.FRONT_INSEAM)
                .line()
                .start()
                .y();
    }

    /** Where a height of the flat piece lies on the body, mm above the floor: the rise may be reduced otherwise than the leg. */
    public double onBody(double flat) {
        return onBody(flat, crotchLine());
    }

    /** The same for who knows the crotch line already. */
    public double onBody(double flat, double crotch) {
        return flat <= crotch
                ? flat / (1 - reductions.along())
                : crotch / (1 - reductions.along()) + (flat - crotch) / (1 - reductions.rise());
    }

    /** Whether the legs were measured apart and have pieces of their own. */
    public boolean legsDiffer() {
        return legs().stream().anyMatch(p -> p.name().leg() == WhichLeg.LEFT);
    }

    /** The pieces of one leg that carry an edge of this name: a waist edge or hem runs over front, panel and back. */
    public List<Piece> carrying(Seam.Side side) {
        PieceName name = side.piece();
        return pieces.stream()
                .filter(p -> p.name().equals(name)
                        || (name.kind().isOfLeg()
                                && p.name().kind().isOfLeg()
                                && (name.leg() == WhichLeg.BOTH || p.name().leg() == name.leg())
                                && p.has(side.edge())))
                .toList();
    }

    /** The same pattern with the levels of one leg only, and those of the whole garment. */
    public Pattern onlyLeg(WhichLeg leg) {
        return new Pattern(
                pieces,
                seams,
                levels.stream()
                        .filter(l -> l.leg() == WhichLeg.BOTH || l.leg() == leg)
                        .toList(),
                reductions,
                reasons,
                notions,
                holds.stream()
                        .filter(h -> h.leg() == WhichLeg.BOTH || h.leg() == leg)
                        .toList(),
                moved,
                backOff,
                above);
    }

    /** Whether the lower end is a folded cuff and not a turned hem. */
    public boolean hasCuff() {
        return seam(Seam.Role.CUFF_JOIN).isPresent();
    }

    public Optional<Seam> seam(Seam.Role role) {
        return seams.stream().filter(s -> s.role() == role).findFirst();
    }
}
