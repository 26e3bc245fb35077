package stretchwright.draft;

import java.util.ArrayList;
import java.util.List;
import stretchwright.body.Measure;
import stretchwright.body.TrunkProfile;
import stretchwright.ground.Part;
import stretchwright.pattern.Dimension;
import stretchwright.pattern.Dimension.What;
import stretchwright.pattern.EdgeName;
import stretchwright.pattern.Hold;
import stretchwright.pattern.Mark;
import stretchwright.pattern.Notion;
import stretchwright.pattern.NotionName;
import stretchwright.pattern.Piece;
import stretchwright.pattern.PieceKind;
import stretchwright.pattern.PieceName;
import stretchwright.pattern.Reason;
import stretchwright.pattern.Reason.Input;
import stretchwright.pattern.Style;
import stretchwright.pattern.TopEnd;

/**
 * What finishes the legs' top edge: the pieces of the band, what is bought for it, its width and its reasons.
 *
 * @param pieces the band and what belongs to it; empty for a casing
 * @param width flat width at the waist, all round, where it is narrowest, mm
 */
record TopFinish(List<Piece> pieces, double width, List<Notion> notions, List<Reason> reasons) {
    /** Ends of an elastic laid over each other, mm: 13 to 25 (trade values section 5, [S25b]). */
    static final double LAP = 20;

    /** What a knitted waist elastic stretches, as a share of its length (common practice, no source). */
    static final double ELASTIC_STRETCH = 1.0;

    /** Width of a cord, mm, and of each end that is tied (common practice, no source). */
    private static final double CORD_WIDTH = 6;

    private static final double CORD_END = 200;

    private static final PieceName BAND = PieceName.of(PieceKind.WAISTBAND);
    private static final PieceName FACING = PieceName.of(PieceKind.WAISTBAND_FACING);

    static TopFinish of(Order order, List<LegSet> legs) {
        double topEdge = LegSet.around(legs, EdgeName.WAIST_EDGE);
        TopFinish plain = switch (order.style().top().band().shape()) {
            case STRAIGHT -> straight(order, topEdge);
            case CONTOURED -> contoured(order, topEdge);
            case CASING -> new TopFinish(List.of(), topEdge, List.of(), Casing.reasons(legs, order.style()));
        };
        return plain.with(order, legs);
    }

    private static TopFinish straight(Order order, double topEdge) {
        double length = Math.min(Frame.band(order), topEdge);
        Ruled ruled = Ruled.of(
                length,
                Tell.said(
                        "rule.band-length",
                        Part.number(Reducing.PASSING_SHARE, 2),
                        Part.number(Reducing.STILL_HOLDS, 2)),
                Bands.SOURCE,
                Frame.topGirthInput(order),
                Inputs.share(
                        Dimension.of(What.REDUCTION_OF_THE_WAISTBAND),
                        order.reductions().waistband()),
                Inputs.measure(order.body(), Measure.WAIST_GIRTH),
                Inputs.measure(order.body(), Measure.HIP_GIRTH),
                Inputs.stretchAcross(order.fabric()),
                Inputs.rule(Tell.said("input.top-edge-round"), topEdge));
        Ruled eased = Frame.easeInput(order.style()).map(ruled::with).orElse(ruled);
        return new TopFinish(
                List.of(Bands.waistband(length, order.style())),
                length,
                List.of(),
                List.of(
                        eased.reason(Dimension.of(BAND, What.LENGTH)),
                        Bands.folded(BAND, order.style().bandHeight())));
    }

    private static TopFinish contoured(Order order, double topEdge) {
        Style style = order.style();
        Contour contour = contour(order, topEdge);
        List<Mark> inside = style.top().band().keyPocket().isPresent()
                ? List.of(KeyPocket.place(contour, contour.lower() / 2, style))
                : List.of();
        List<Piece> pieces = List.of(
                contour.piece(PieceName.of(PieceKind.WAISTBAND), style, List.of()),
                contour.piece(PieceName.of(PieceKind.WAISTBAND_FACING), style, inside));
        return new TopFinish(pieces, contour.upper(), List.of(), reasons(order, contour, topEdge));
    }

    private static List<Reason> reasons(Order order, Contour contour, double topEdge) {
        Input taken = new Input(
                Tell.said("input.waistband-reduction"),
                100 * order.reductions().waistband(),
                "%",
                Reason.Origin.FABRIC);
        List<Input> lower = new ArrayList<>(body(order));
        lower.add(Frame.topGirthInput(order));
        lower.add(taken);
        lower.add(Inputs.rule(Tell.said("input.top-edge"), topEdge));
        Frame.easeInput(order.style()).ifPresent(lower::add);
        List<Input> upper = new ArrayList<>(body(order));
        upper.add(Inputs.rule(Tell.said("input.girth-at-upper"), upperGirth(order)));
        upper.add(taken);
        Dimension below = Dimension.of(BAND, What.LOWER_EDGE_ALL_ROUND);
        upper.add(new Input(Tell.said("input.lower-edge"), contour.lower(), "mm", below));
        return List.of(
                new Ruled(contour.lower(), Tell.said("rule.contour-lower"), lower, Bands.SOURCE).reason(below),
                new Ruled(contour.upper(), Tell.said("rule.contour-upper"), upper, Bands.SOURCE)
                        .reason(Dimension.of(BAND, What.UPPER_EDGE_ALL_ROUND)),
                Ruled.of(
                                contour.height(),
                                Tell.said("rule.contour-height"),
                                Bands.SOURCE,
                                Inputs.style(Tell.said("input.band-height"), contour.height()))
                        .reason(Dimension.of(BAND, What.HEIGHT)),
                Ruled.of(
                                contour.lower(),
                                Tell.said("rule.facing"),
                                Bands.SOURCE,
                                new Input(Tell.said("input.waistband"), contour.lower(), "mm", below))
                        .reason(Dimension.of(FACING, What.LOWER_EDGE_ALL_ROUND)));
    }

    private static List<Input> body(Order order) {
        List<Input> inputs = new ArrayList<>();
        for (Measure m : List.of(Measure.WAIST_GIRTH, Measure.HIP_GIRTH, Measure.WAIST_HEIGHT, Measure.HIP_HEIGHT)) {
            inputs.add(Inputs.measure(order.body(), m));
        }
        inputs.add(
                Inputs.style(Tell.said("input.rise-below-waist"), order.style().dropBelowWaist()));
        inputs.add(Inputs.style(Tell.said("input.band-height"), order.style().bandHeight()));
        return inputs;
    }

    /** The frustum between the girths where its edges sit, both reduced alike; never longer than the legs' top edge. */
    static Contour contour(Order order, double topEdge) {
        Style style = order.style();
        double below = Frame.band(order);
        double lower = Math.min(below, topEdge);
        double girth = Frame.topGirth(order.body(), style);
        return new Contour(lower, upperGirth(order) * lower / girth, style.bandHeight());
    }

    /** Girth of the body where the band's upper edge sits; above the waist nothing is measured and the waist stands. */
    static double upperGirth(Order order) {
        Style style = order.style();
        return TrunkProfile.of(order.body()).girthBelowWaist(style.dropBelowWaist() - style.bandHeight());
    }

    /** Key pocket, elastic and cord, which each kind of band may have. */
    private TopFinish with(Order order, List<LegSet> legs) {
        TopEnd.Band band = order.style().top().band();
        List<Piece> all = new ArrayList<>(pieces);
        List<Notion> bought = new ArrayList<>(notions);
        List<Reason> why = new ArrayList<>(reasons);
        PieceName piece =
                pieces.isEmpty() ? legs.get(0).with(EdgeName.WAIST_EDGE).name() : BAND;
        EdgeName edge = pieces.isEmpty() ? EdgeName.WAIST_EDGE : EdgeName.UPPER_EDGE;
        if (band.keyPocket().isPresent()) {
            all.add(KeyPocket.piece(order.style()));
            why.addAll(KeyPocket.reasons(band));
        }
        double girth = Frame.topGirth(order.body(), order.style());
        if (band.elastic().isPresent()) {
            Ruled cut = elastic(order);
            bought.add(new Notion(
                    NotionName.WAIST_ELASTIC,
                    1,
                    band.elastic().getAsDouble(),
                    cut.value(),
                    girth,
                    LAP,
                    0,
                    piece,
                    edge));
            why.add(cut.reason(Dimension.of(What.WAIST_ELASTIC_CUT_LENGTH)));
        }
        if (band.drawstring()) {
            Ruled cut = Ruled.of(
                    girth + 2 * CORD_END,
                    Tell.said("rule.cord", Part.length(CORD_END)),
                    Tell.said("source.bands-practice"),
                    Frame.topGirthInput(order));
            bought.add(new Notion(NotionName.CORD, 1, CORD_WIDTH, cut.value(), girth, CORD_END, 0, piece, edge));
            why.add(cut.reason(Dimension.of(What.CORD_CUT_LENGTH)));
        }
        return new TopFinish(all, width, bought, why);
    }

    /** An elastic's length all round as sewn: it grips, lets the hips pass, and is no longer than the cloth that it lies in. */
    static double ring(Order order, double cloth) {
        double girth = Frame.topGirth(order.body(), order.style());
        double share = elasticShare(order.style().hold().named());
        double passes = order.body().mm(Measure.HIP_GIRTH) / (1 + Reducing.PASSING_SHARE * ELASTIC_STRETCH);
        return Math.min(Math.max(share * girth, passes) + Frame.ease(order.style()), cloth);
    }

    /** Length to cut, its ends laid over each other. */
    private Ruled elastic(Order order) {
        double girth = Frame.topGirth(order.body(), order.style());
        double share = elasticShare(order.style().hold().named());
        double ring = ring(order, width);
        Ruled plain = Ruled.of(
                ring + LAP,
                Tell.said(
                        "rule.elastic", Part.number(1 + Reducing.PASSING_SHARE * ELASTIC_STRETCH, 2), Part.length(LAP)),
                Tell.said("source.elastic"),
                Frame.topGirthInput(order),
                new Input(Tell.said("input.share-for-hold"), 100 * share, "%", Reason.Origin.STYLE),
                Inputs.measure(order.body(), Measure.HIP_GIRTH),
                Inputs.rule(Tell.said("input.cloth-at-waist"), width));
        return Frame.easeInput(order.style()).map(plain::with).orElse(plain);
    }

    /** Ring of an elastic per girth: 90 % soft, 80 to 85 % active (trade values section 5, [S25b] and common practice). */
    static double elasticShare(Hold.Named hold) {
        return switch (hold) {
            case LIGHT -> 0.90;
            case MEDIUM -> 0.85;
            case FIRM -> 0.80;
        };
    }
}
