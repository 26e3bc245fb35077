package stretchwright.draft;

import java.util.ArrayList;
import java.util.List;
import stretchwright.body.Measure;
import stretchwright.body.TrunkProfile;
import stretchwright.pattern.Hold;
import stretchwright.pattern.Mark;
import stretchwright.pattern.Notion;
import stretchwright.pattern.Piece;
import stretchwright.pattern.Reason;
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

    static TopFinish of(Order order, List<LegSet> legs) {
        double topEdge = LegSet.around(legs, "waist edge");
        TopFinish plain = switch (order.style().top().band().shape()) {
            case STRAIGHT -> straight(order, topEdge);
            case CONTOURED -> contoured(order, topEdge);
            case CASING -> new TopFinish(List.of(), topEdge, List.of(), TopReasons.casing(order, legs));
        };
        return plain.with(order, legs);
    }

    private static TopFinish straight(Order order, double topEdge) {
        double length = Math.min(Frame.band(order), topEdge);
        return new TopFinish(
                List.of(Bands.waistband(length, order.style())),
                length,
                List.of(),
                BandReasons.straight(order, length, topEdge));
    }

    private static TopFinish contoured(Order order, double topEdge) {
        Style style = order.style();
        Contour contour = contour(order, topEdge);
        List<Mark> inside = style.top().band().keyPocket().isPresent()
                ? List.of(KeyPocket.place(contour, contour.lower() / 2, style))
                : List.of();
        List<Reason> reasons = new ArrayList<>(TopReasons.contoured(order, contour, topEdge));
        reasons.add(BandReasons.facing(contour.lower()));
        List<Piece> pieces =
                List.of(contour.piece("waistband", style, List.of()), contour.piece("waistband facing", style, inside));
        return new TopFinish(pieces, contour.upper(), List.of(), reasons);
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
        String piece = pieces.isEmpty() ? legs.get(0).with("waist edge").name() : "waistband";
        String edge = pieces.isEmpty() ? "waist edge" : "upper edge";
        if (band.keyPocket().isPresent()) {
            all.add(KeyPocket.piece(order.style()));
            why.addAll(TopReasons.keyPocket(band));
        }
        double girth = Frame.topGirth(order.body(), order.style());
        if (band.elastic().isPresent()) {
            double passes = order.body().mm(Measure.HIP_GIRTH) / (1 + Reducing.PASSING_SHARE * ELASTIC_STRETCH);
            double ring = Math.min(Math.max(elasticShare(order.style().hold().named()) * girth, passes), width);
            bought.add(
                    new Notion("waist elastic", 1, band.elastic().getAsDouble(), ring + LAP, girth, LAP, piece, edge));
            why.add(TopReasons.elastic(order, ring, width));
        }
        if (band.drawstring()) {
            bought.add(new Notion("cord", 1, CORD_WIDTH, girth + 2 * CORD_END, girth, CORD_END, piece, edge));
            why.add(TopReasons.cord(girth, CORD_END));
        }
        return new TopFinish(all, width, bought, why);
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
