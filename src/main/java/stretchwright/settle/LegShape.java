package stretchwright.settle;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stretchwright.body.Body;
import stretchwright.body.GirthProfile;
import stretchwright.body.Measure;
import stretchwright.body.TrunkProfile;
import stretchwright.boot.Boot;
import stretchwright.fabric.Layers;
import stretchwright.ground.Point;
import stretchwright.pattern.EdgeName;
import stretchwright.pattern.Level;
import stretchwright.pattern.LowerEnd;
import stretchwright.pattern.Notch;
import stretchwright.pattern.NotchName;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Piece;
import stretchwright.pattern.PieceKind;
import stretchwright.pattern.Style;
import stretchwright.pattern.TopEnd;
import stretchwright.pattern.WhichLeg;

/**
 * One leg's flat widths beside the girths they lie on, at its levels and anywhere between crotch and hem.
 *
 * <p>Width: the sew line's extent across, summed over the parts of the leg. Girth: the leg's profile, near the crotch no
 * more than the thigh girth, as at the level; over a boot the boot's; pads added.
 */
public final class LegShape {
    /** The ends of the leg's sides may lie a hair off the level. */
    private static final double HAIR = 0.02;

    /** The first ring below the tips of the inseams, mm. */
    private static final double CLEAR = 1;

    /**
     * One height of the leg: above the bare foot's floor, and what lies there, mm.
     *
     * @param along strain along, standing
     * @param layers as they count on a body
     */
    public record Place(double height, double girth, double width, double along, double layers) {}

    private final Pattern pattern;
    private final Body body;
    private final Optional<Boot> boot;
    private final Optional<Boot> hemOn;
    private final Style style;
    private final WhichLeg leg;
    private final GirthProfile profile;
    private final List<FlatWidths> outlines;
    private final double crotchLine;
    private final double kneeShare;

    /** Lowest spot of the leg's own outline, mm on the flat piece. */
    private final double foot;

    private final double lowestTop;
    private final double bootTop;

    /** @param pattern of one leg, or of two that are alike; @param boot as worn with this style */
    public LegShape(Pattern pattern, Body body, Optional<Boot> boot, Style style) {
        this.pattern = pattern;
        this.body = body;
        this.boot = boot;
        this.hemOn = boot.filter(b -> hemOver(b, style.lower().hem()).isPresent());
        this.style = style;
        leg = pattern.levels().stream()
                .map(Level::leg)
                .filter(l -> l != WhichLeg.BOTH)
                .findFirst()
                .orElse(WhichLeg.BOTH);
        profile = GirthProfile.of(body);
        outlines = pattern.pieces().stream()
                .filter(p -> p.name().kind().isOfLeg())
                .filter(p -> leg == WhichLeg.BOTH || p.name().leg() == leg)
                .map(Piece::sewLine)
                .map(line -> new FlatWidths(line.points()))
                .toList();
        crotchLine = pattern.crotchLine();
        kneeShare = kneeShare(pattern);
        foot = outlines.stream().mapToDouble(FlatWidths::foot).min().orElseThrow();
        lowestTop = lowestTop(pattern);
        bootTop = hemOn.map(b -> onBody(
                        pattern.level(Level.Name.BOOT_TOP).map(Level::height).orElse(0.0)))
                .orElse(-1.0);
    }

    public WhichLeg leg() {
        return leg;
    }

    /** What the garment lies on at a level, mm: round the body, one leg or the boot, with pads. */
    public double girth(Level level) {
        double bare = switch (level.name()) {
            case WAIST -> TrunkProfile.of(body).girthBelowWaist(waistDrop());
            case HIP -> body.mm(Measure.HIP_GIRTH);
            case CROTCH -> body.mm(Measure.THIGH_GIRTH);
            case MID_THIGH -> body.mm(Measure.MID_THIGH_GIRTH);
            case KNEE -> body.mm(Measure.KNEE_GIRTH);
            case CALF -> body.mm(Measure.CALF_GIRTH);
            case ANKLE -> body.mm(Measure.ANKLE_GIRTH);
            case BOOT_TOP -> boot.orElseThrow().topGirth();
            case HEM ->
                boot.flatMap(b -> hemOver(b, style.lower().hem()))
                        .orElseGet(() -> profile.girthAt(
                                level.height() / (1 - pattern.reductions().along())));
        };
        return bare + style.parts().bulge(level.name());
    }

    /** Girth of the boot where the hem lies; empty where it lies on the leg inside. */
    public static Optional<Double> hemOver(Boot boot, LowerEnd.Hem hem) {
        return switch (hem) {
            case INSIDE_BOOT -> Optional.empty();
            case TO_COLLAR -> Optional.of(boot.girthBelowTop(LowerEnd.LUNGE));
            case OVER_LACES, OVER_HEEL -> Optional.of(boot.hemGirth());
            case WHOLE_BOOT -> Optional.of(boot.sole().around());
        };
    }

    /** A contoured band is narrowest at its upper edge and is compared there; every other band where it is joined. */
    private double waistDrop() {
        return style.dropBelowWaist()
                - (style.top().band().shape() == TopEnd.Band.Shape.CONTOURED ? style.bandHeight() : 0);
    }

    /** A band of two layers holds with both, folded, faced or turned down. */
    public double layers(Level.Name level) {
        return isDouble(level) ? Layers.TWO : 1;
    }

    private boolean isDouble(Level.Name level) {
        return level == Level.Name.WAIST
                || (level == Level.Name.HEM && style.cuffHeight().isPresent());
    }

    /** Strain along, standing: a band is as high as it was cut, only the leg is pulled along. */
    public double along(Level.Name level) {
        if (isDouble(level)) {
            return 0;
        }
        double more = level == Level.Name.KNEE ? kneeShare : 0;
        double taken = level == Level.Name.HIP
                ? pattern.reductions().rise()
                : pattern.reductions().along();
        return 1 / ((1 - taken) * (1 + more)) - 1;
    }

    /** By which share the front over the knee is longer than drafted without shaping; 0 where it is not shaped. */
    private static double kneeShare(Pattern pattern) {
        double front = 0;
        double back = 0;
        for (Piece piece : pattern.legs()) {
            double zone = zone(piece);
            front = piece.name().is(PieceKind.FRONT_LEG) ? zone : front;
            back = piece.name().is(PieceKind.BACK_LEG) ? zone : back;
        }
        return front > 0 && back > 0 ? (front - back) / (front + back) : 0;
    }

    private static double zone(Piece piece) {
        double low = Double.NaN;
        double high = Double.NaN;
        for (Notch n : piece.notches()) {
            if (n.edge() == EdgeName.SIDE_EDGE) {
                low = n.name() == NotchName.BELOW_KNEE ? n.along() : low;
                high = n.name() == NotchName.ABOVE_KNEE ? n.along() : high;
            }
        }
        return Double.isNaN(low) || Double.isNaN(high) ? 0 : Math.abs(high - low);
    }

    /** From the crotch down to the hem, at most so far apart on the flat piece, mm. */
    public List<Place> places(double apart) {
        List<Place> out = new ArrayList<>();
        double top = Math.min(
                tip(), pattern.level(Level.Name.CROTCH).map(Level::height).orElse(Double.MAX_VALUE));
        int steps = (int) Math.max(1, Math.ceil((top - foot) / apart));
        for (int i = 0; i < steps; i++) {
            // the lower edge may be curved: the last ring is the hem's own
            double y = top - CLEAR - i * (top - foot) / steps;
            if (width(y) > 0) {
                out.add(at(y));
            }
        }
        if (!hangsOnLeg()) {
            pattern.level(Level.Name.HEM)
                    .ifPresent(hem -> out.add(new Place(
                            onBody(foot), girth(hem), hem.width(), along(Level.Name.HEM), layers(Level.Name.HEM))));
        }
        return out;
    }

    /** The lower of the inseams' upper ends: the back's lies below the front's, and above it no level line goes round. */
    private double tip() {
        return pattern.pieces().stream()
                .flatMap(p -> p.edges().stream())
                .filter(e -> e.name() == EdgeName.FRONT_INSEAM || e.name() == EdgeName.BACK_INSEAM)
                .mapToDouble(e -> Math.max(e.line().start().y(), e.line().end().y()))
                .min()
                .orElse(0);
    }

    /** A cover hangs below the leg's own lower edge. */
    private boolean hangsOnLeg() {
        return pattern.pieces().stream().anyMatch(p -> p.name().is(PieceKind.BOOT_COVER));
    }

    /** At a height of the flat leg, between crotch and hem. */
    public Place at(double y) {
        double height = onBody(y);
        return new Place(height, girthAt(height) + between(y, true), width(y), between(y, false), 1);
    }

    public double onBody(double flat) {
        return pattern.onBody(flat, crotchLine);
    }

    /** Height of the boot's top edge above the floor, mm; below the floor where none counts. */
    double bootTop() {
        return bootTop;
    }

    private double girthAt(double height) {
        if (height <= bootTop + HAIR) {
            return hemOn.orElseThrow().girthBelowTop(bootTop - height);
        }
        boolean thigh = height > (body.mm(Measure.CROTCH_HEIGHT) + body.mm(Measure.KNEE_HEIGHT)) / 2;
        return thigh
                ? Math.min(
                        profile.girthAt(height),
                        Math.max(body.mm(Measure.THIGH_GIRTH), body.mm(Measure.MID_THIGH_GIRTH)))
                : profile.girthAt(height);
    }

    /** From the calf to the top of a boot the cloth runs straight over the hollow between them; 0 elsewhere. */
    public double spanned(double height) {
        Optional<Level> top = pattern.level(Level.Name.BOOT_TOP);
        if (top.isEmpty()) {
            return 0;
        }
        double low = onBody(top.get().height());
        double up = (height - low) / (body.mm(Measure.CALF_HEIGHT) - low);
        double below = girth(top.get());
        return up < 0 || up > 1 ? 0 : below + up * (body.mm(Measure.CALF_GIRTH) - below);
    }

    /** What pads add to the girth, or the strain along, in proportion between the leg's levels. */
    private double between(double y, boolean bulge) {
        double value = 0;
        double aboveAt = Double.NaN;
        for (Level level : pattern.levels()) {
            boolean cuff = level.name() == Level.Name.HEM && style.cuffHeight().isPresent();
            if (level.name().wholeBody() || cuff) {
                continue;
            }
            double here = bulge ? style.parts().bulge(level.name()) : along(level.name());
            if (Double.isNaN(aboveAt) || y >= aboveAt) {
                value = here;
                aboveAt = level.height();
            } else if (y >= level.height()) {
                double share = (aboveAt - y) / Math.max(HAIR, aboveAt - level.height());
                return value + share * (here - value);
            } else {
                value = here;
                aboveAt = level.height();
            }
        }
        return value;
    }

    /** The flat height of the lowest spot of the leg's top edge. */
    double lowestTop() {
        return lowestTop;
    }

    private static double lowestTop(Pattern pattern) {
        return pattern.legs().stream()
                .flatMap(p -> p.edges().stream())
                .filter(e -> e.name() == EdgeName.WAIST_EDGE)
                .flatMap(e -> e.line().points().stream())
                .mapToDouble(Point::y)
                .min()
                .orElseThrow();
    }

    /** Of the flat leg at a height: from its first to its last crossing with the sew line, over all parts. */
    double width(double y) {
        double sum = 0;
        for (FlatWidths outline : outlines) {
            sum += outline.at(y);
        }
        return sum;
    }
}
