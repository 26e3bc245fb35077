package stretchwright.draft;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import stretchwright.ground.Findings;
import stretchwright.ground.Part;
import stretchwright.pattern.Dimension;
import stretchwright.pattern.EdgeName;
import stretchwright.pattern.Parts;
import stretchwright.pattern.Piece;
import stretchwright.pattern.PieceKind;
import stretchwright.pattern.PieceName;
import stretchwright.pattern.Reason;
import stretchwright.pattern.Seam;
import stretchwright.pattern.SeamKind;
import stretchwright.pattern.SeamName;
import stretchwright.pattern.Style;
import stretchwright.pattern.WhichLeg;

/**
 * The drafted legs cut into parts, and what is added to them.
 *
 * <p>In: each leg drafted in one piece, front to the left. Out: the pieces of each leg (those of a right leg mirrored), the
 * gusset, the pockets, the seams between all these, the reasons; or findings. Order: gusset, side, knee, pockets.
 *
 * @param legs left and right, or one set that is cut twice
 * @param added gusset and pockets
 */
record LegParts(List<LegSet> legs, List<Piece> added, List<Seam> seams, List<Reason> reasons) {
    /**
     * @param legs as drafted
     * @param drawn their pieces, a right one not yet mirrored
     * @param band length the waistband is to have, mm
     */
    static Optional<LegParts> of(Order order, List<Leg> legs, List<Piece> drawn, double band, Findings findings) {
        Style style = order.style();
        Parts parts = style.parts();
        List<Piece> whole = new ArrayList<>();
        List<Reason> reasons = new ArrayList<>();
        for (int i = 0; i < drawn.size(); i++) {
            if (!PartsCheck.pass(legs.get(i), drawn.get(i), parts, findings)) {
                return Optional.empty();
            }
        }
        parts.gusset().ifPresent(g -> reasons.addAll(GussetCut.reasons(g)));
        for (Piece leg : drawn) {
            Optional<Piece> cut = withoutCorners(leg, style, findings, reasons);
            if (cut.isEmpty()) {
                return Optional.empty();
            }
            whole.add(cut.get());
        }
        Optional<Ruled> side = SideTake.perEdge(order, legs, drawn, band);
        double taken = side.map(Ruled::value).orElse(0.0);
        if (!PartsCheck.panelKeepsItsWidth(parts, taken, findings)) {
            return Optional.empty();
        }
        side.ifPresent(s ->
                reasons.add(s.reason(Dimension.of(PieceName.of(PieceKind.FRONT_LEG), Dimension.What.SIDE_TAKE_IN))));
        parts.panelWidth().ifPresent(w -> reasons.add(SideCut.panel(w)));
        Pockets pockets = new Pockets(order, findings);
        List<LegSet> sets = new ArrayList<>();
        for (int i = 0; i < drawn.size(); i++) {
            List<Piece> pieces = parts.cutAtSide()
                    ? SideCut.withSideNotch(
                            SideCut.of(whole.get(i), style, legs.get(i).top().hipHeight(), taken))
                    : List.of(whole.get(i));
            pieces = pockets.placed(legs.get(i), drawn.get(i), pieces);
            if (parts.kneeShaping()) {
                pieces = KneeEase.of(pieces, KneeEase.zone(legs.get(i).order()));
            }
            WhichLeg which = drawn.get(i).name().leg();
            sets.add(new LegSet(
                    which,
                    drawn.get(i).cut(),
                    which == WhichLeg.RIGHT ? pieces.stream().map(Mirror::of).toList() : pieces));
        }
        if (parts.kneeShaping()) {
            reasons.add(KneeEase.reason(legs.get(0).order()));
        }
        if (!findings.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(joined(style, sets, whole, pockets, reasons));
    }

    private static Optional<Piece> withoutCorners(Piece leg, Style style, Findings findings, List<Reason> reasons) {
        if (style.parts().gusset().isEmpty()) {
            return Optional.of(leg);
        }
        Parts.Gusset g = style.parts().gusset().get();
        OptionalDouble taken = GussetCut.taken(leg, g);
        if (taken.isEmpty()) {
            findings.add(
                    "style.gusset.length",
                    Tell.said("gusset.no-cut", Part.length(g.length()), Part.length(g.width())),
                    Tell.said("gusset.no-cut-help"));
            return Optional.empty();
        }
        reasons.addAll(GussetCut.reasons(leg.name(), g, taken.getAsDouble()));
        return Optional.of(GussetCut.leg(leg, g, taken.getAsDouble(), style));
    }

    private static LegParts joined(
            Style style, List<LegSet> sets, List<Piece> whole, Pockets pockets, List<Reason> reasons) {
        List<Piece> added = new ArrayList<>();
        List<Seam> seams = new ArrayList<>();
        for (LegSet leg : sets) {
            seams.addAll(sideSeams(leg, style));
        }
        LegSet left = sets.get(0);
        LegSet right = sets.get(sets.size() - 1);
        style.parts().gusset().ifPresent(g -> {
            Piece gusset = GussetCut.gusset(whole.get(0), whole.get(whole.size() - 1), g, style);
            added.add(gusset);
            seams.addAll(GussetCut.seams(left, right, gusset, style));
        });
        added.addAll(pockets.pieces());
        seams.addAll(pockets.seams());
        reasons.addAll(pockets.reasons());
        return new LegParts(sets, added, seams, reasons);
    }

    private static List<Seam> sideSeams(LegSet leg, Style style) {
        if (leg.pieces().size() == 1) {
            return List.of();
        }
        Piece front = leg.pieces().get(0);
        Piece back = leg.pieces().get(leg.pieces().size() - 1);
        if (leg.pieces().size() == 2) {
            return List.of(seam(
                    style,
                    Seam.Role.SIDE_SEAM,
                    leg,
                    SeamKind.SIDE_SEAM,
                    front,
                    EdgeName.SIDE_EDGE,
                    back,
                    EdgeName.SIDE_EDGE));
        }
        Piece panel = leg.pieces().get(1);
        return List.of(
                seam(
                        style,
                        Seam.Role.PANEL,
                        leg,
                        SeamKind.FRONT_PANEL_SEAM,
                        front,
                        EdgeName.SIDE_EDGE,
                        panel,
                        EdgeName.FRONT_EDGE),
                seam(
                        style,
                        Seam.Role.PANEL,
                        leg,
                        SeamKind.BACK_PANEL_SEAM,
                        back,
                        EdgeName.SIDE_EDGE,
                        panel,
                        EdgeName.BACK_EDGE));
    }

    private static Seam seam(
            Style style, Seam.Role role, LegSet leg, SeamKind kind, Piece a, EdgeName edge, Piece b, EdgeName other) {
        double one = a.edge(edge).length();
        double two = b.edge(other).length();
        return new Seam(
                role,
                SeamName.of(kind, leg.which()),
                List.of(new Seam.Side(a.name(), edge, one), new Seam.Side(b.name(), other, two)),
                two - one,
                style.allowance(role),
                leg.cut());
    }
}
