package stretchwright.draft;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import stretchwright.ground.Path;
import stretchwright.ground.Point;
import stretchwright.pattern.Edge;
import stretchwright.pattern.EdgeName;
import stretchwright.pattern.Level;
import stretchwright.pattern.Mark;
import stretchwright.pattern.MarkName;
import stretchwright.pattern.Notch;
import stretchwright.pattern.NotchName;
import stretchwright.pattern.Piece;

/**
 * What is marked on a leg for the hands that cut and sew it: its levels, three lines to lengthen or shorten at, and notches by
 * which the long seams are walked together. Notches of one name sit equally far from the same end of both edges.
 */
final class LegMarks {
    /** The crotch notches sit at this share of the front curve's length from the crotch point (common practice). */
    private static final double CROTCH_NOTCH_SHARE = 0.35;

    /** The first notch of an inseam is so far below the crotch point, mm: where both edges run straight again. */
    private static final double BELOW_CROTCH = 100;

    /** A line to lengthen or shorten at keeps this far from what it lies between, mm (common practice). */
    private static final double CHANGE_ROOM = 40;

    /** The rise is shorter than a leg: its line keeps so far from hip line and crotch, mm (same). */
    private static final double RISE_ROOM = 20;

    /** And so far from any level line, whose words it would run into, mm. */
    private static final double CLEAR_OF_LEVELS = 15;

    private final Leg leg;
    private final List<Edge> edges;
    private final Edge frontCrotch;
    private final Edge backCrotch;
    private final Edge frontInseam;
    private final Edge backInseam;
    private final double end;
    private final List<LegLevels.At> levels;
    private final List<Mark> marks = new ArrayList<>();
    private final List<Notch> notches = new ArrayList<>();

    private LegMarks(Leg leg, List<Edge> edges) {
        this.leg = leg;
        this.edges = edges;
        frontCrotch = Outline.edge(edges, EdgeName.FRONT_CROTCH);
        backCrotch = Outline.edge(edges, EdgeName.BACK_CROTCH);
        frontInseam = Outline.edge(edges, EdgeName.FRONT_INSEAM);
        backInseam = Outline.edge(edges, EdgeName.BACK_INSEAM);
        end = leg.curves().endHeight();
        levels = LegLevels.heights(leg).stream().filter(this::isMarked).toList();
    }

    /** The levels and the notches of a leg in one piece; those of its foot are not among them. */
    static LegMarks of(Leg leg, List<Edge> edges) {
        LegMarks drawn = new LegMarks(leg, edges);
        drawn.levels.forEach(l -> drawn.line(mark(l.name()), l.height()));
        drawn.changes();
        drawn.rises();
        drawn.waistAndHem();
        drawn.inseams();
        return drawn;
    }

    List<Mark> marks() {
        return marks;
    }

    List<Notch> notches() {
        return notches;
    }

    /** A level beside the lower edge is not marked; a boot's top is wherever the leg lies over it. */
    private boolean isMarked(LegLevels.At level) {
        return level.name() == Level.Name.BOOT_TOP
                ? leg.line().bootTop().isPresent()
                : level.height() > end + Walk.ROOM;
    }

    private OptionalDouble height(Level.Name name) {
        return levels.stream()
                .filter(l -> l.name() == name)
                .mapToDouble(LegLevels.At::height)
                .findFirst();
    }

    private void line(MarkName name, double height) {
        boolean rise = name == MarkName.HIP || name == MarkName.LENGTHEN_OR_SHORTEN_RISE;
        Path front = (rise ? frontCrotch : frontInseam).line();
        Path back = (rise ? backCrotch : backInseam).line();
        Point a = front.at(front.alongAtHeight(height));
        Point b = back.at(back.alongAtHeight(height));
        marks.add(new Mark(name, Mark.Kind.LEVEL, Path.of(a, b).onGrid()));
    }

    private static MarkName mark(Level.Name level) {
        return MarkName.valueOf(level.name());
    }

    /** What a notch at a level is called. */
    static NotchName notch(Level.Name level) {
        return NotchName.valueOf(level.name());
    }

    /** Where the leg is cut through to be made longer or shorter; a short leg has those that there is room for. */
    private void changes() {
        double hip = leg.top().hipHeight();
        double point =
                Math.max(frontInseam.line().start().y(), backInseam.line().end().y());
        double waist =
                Math.min(frontCrotch.line().start().y(), backCrotch.line().end().y());
        // above the hip line both centre seams run straight: moved apart there they stay in line
        between(waist, hip, RISE_ROOM)
                .or(() -> between(hip, point, RISE_ROOM))
                .ifPresent(h -> line(MarkName.LENGTHEN_OR_SHORTEN_RISE, h));
        double crotch = height(Level.Name.CROTCH).orElse(point);
        OptionalDouble knee = height(Level.Name.KNEE);
        between(crotch, knee.orElse(end), CHANGE_ROOM).ifPresent(h -> line(MarkName.LENGTHEN_OR_SHORTEN_THIGH, h));
        if (knee.isPresent()) {
            between(knee.getAsDouble(), leg.line().bootTop().orElse(end), CHANGE_ROOM)
                    .ifPresent(h -> line(MarkName.LENGTHEN_OR_SHORTEN_CALF, h));
        }
    }

    /** Midway, moved aside where a level lies there; empty where there is no room. */
    private Optional<Double> between(double high, double low, double room) {
        double middle = (high + low) / 2;
        if (high - low <= 2 * room) {
            return Optional.empty();
        }
        return levels.stream()
                .map(LegLevels.At::height)
                .filter(h -> Math.abs(h - middle) < CLEAR_OF_LEVELS)
                .findFirst()
                .map(h -> h - CLEAR_OF_LEVELS)
                .or(() -> Optional.of(middle));
    }

    /** Front single, back double; the crotch notches keep clear of those at the hip line. */
    private void rises() {
        double hip = leg.top().hipHeight();
        double front = frontCrotch.length() - frontCrotch.line().alongAtHeight(hip);
        double back = backCrotch.line().alongAtHeight(hip);
        double fromPoint = Walk.besideHip(CROTCH_NOTCH_SHARE * frontCrotch.length(), front, back);
        notches.addAll(Walk.rise(frontCrotch, OptionalDouble.of(front), fromPoint));
        notches.addAll(Walk.rise(backCrotch, OptionalDouble.of(back), fromPoint));
    }

    private void waistAndHem() {
        for (EdgeName name : List.of(EdgeName.WAIST_EDGE, EdgeName.HEM)) {
            Edge edge = Outline.edge(edges, name);
            NotchName middle = name == EdgeName.HEM ? NotchName.CENTRE : NotchName.SIDE;
            notches.add(Outline.notch(middle, edge, edge.length() / 2, Notch.Mark.SINGLE));
        }
    }

    /** At the same distance from the hem on both inseams, so that the notches meet. */
    private void inseams() {
        double length = frontInseam.length();
        for (Walk.Stop stop : Walk.filled(stops(length), length)) {
            notches.add(Outline.notch(stop.name(), frontInseam, stop.down(), Notch.Mark.SINGLE));
            notches.add(Outline.notch(stop.name(), backInseam, length - stop.down(), Notch.Mark.SINGLE));
        }
    }

    /** The knee and the boot's top stand; the others where they keep clear of them. */
    private List<Walk.Stop> stops(double length) {
        List<Walk.Stop> out = new ArrayList<>();
        for (Level.Name name : List.of(
                Level.Name.KNEE, Level.Name.BOOT_TOP, Level.Name.MID_THIGH, Level.Name.CALF, Level.Name.ANKLE)) {
            OptionalDouble height = height(name);
            if (height.isPresent()) {
                double down = frontInseam.line().alongAtHeight(height.getAsDouble());
                boolean stands = name == Level.Name.KNEE || name == Level.Name.BOOT_TOP;
                if (stands || Walk.isClear(down, out, Walk.APART)) {
                    out.add(new Walk.Stop(notch(name), down));
                }
            }
        }
        double first = out.stream().mapToDouble(Walk.Stop::down).min().orElse(length - Walk.ROOM);
        if (BELOW_CROTCH <= Math.min(first - Walk.APART, length - Walk.ROOM)) {
            out.add(new Walk.Stop(NotchName.BELOW_CROTCH, BELOW_CROTCH));
        }
        return out;
    }

    /** Of two legs drawn apart: the second with the notches of its rises as far from the waist as those of the first. */
    static Piece meeting(Piece leg, Piece other) {
        List<Notch> out = new ArrayList<>();
        other.notches().stream().filter(n -> !isOfRise(n)).forEach(out::add);
        leg.notches().stream().filter(LegMarks::isOfRise).forEach(n -> {
            Edge edge = other.edge(n.edge());
            double fromEnd = leg.edge(n.edge()).length() - n.along();
            double along = n.edge() == EdgeName.FRONT_CROTCH ? n.along() : edge.length() - fromEnd;
            out.add(Outline.notch(n.name(), edge, along, n.mark()));
        });
        return other.with(out, other.marks());
    }

    private static boolean isOfRise(Notch n) {
        return n.edge() == EdgeName.FRONT_CROTCH || n.edge() == EdgeName.BACK_CROTCH;
    }
}
