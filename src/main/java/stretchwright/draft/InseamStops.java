package stretchwright.draft;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/** At which heights an inseam is drawn: every node, and evenly between, the closer the more it may bend. */
final class InseamStops {
    /** Chords of the inseam; at a radius of 500 mm a chord of 6 mm leaves the curve by 0.01 mm. */
    private static final double STEP = 6;

    /** In the flare, which may bend with 60 mm. */
    private static final double FLARE_STEP = 3;

    /** And down from its upper end, where it bends most. */
    private static final double FINE = 1.5;

    private static final double FINE_BELOW = 12;

    private final LegLine line;
    private final double[] level;
    private final double end;
    private final double untouched;

    /**
     * @param level heights of the leg's levels, from the top down
     * @param most by which a crotch point is lowered at most, mm
     */
    InseamStops(LegLine line, double[] level, double most) {
        this.line = line;
        this.level = level;
        this.end = line.flare().orElse(line.narrow()).height();
        this.untouched = untouched(Math.min(level[1], line.crotch() - most - FINE_BELOW));
    }

    /** The highest level at or below a height; below all there are, where none is. */
    private double untouched(double low) {
        double found = Double.NEGATIVE_INFINITY;
        for (double h : level) {
            found = h <= low ? Math.max(found, h) : found;
        }
        return found;
    }

    /** From here down all is the same, however far the upper end is lowered. */
    double untouched() {
        return untouched;
    }

    double lastLevel() {
        return level[level.length - 1];
    }

    double narrow() {
        return line.narrow().height();
    }

    /** From the top down, from so far below the crotch line. */
    List<Double> from(double below) {
        double top = line.crotch() - below;
        List<Double> out = new ArrayList<>();
        Double above = null;
        for (double stop : nodes(top).descendingSet()) {
            if (above != null) {
                boolean bends = above > Math.min(level[0], top - FINE_BELOW);
                boolean flares = line.flare().isPresent() && above <= narrow();
                int parts = (int) Math.ceil((above - stop) / (bends ? FINE : flares ? FLARE_STEP : STEP));
                for (int i = 1; i < parts; i++) {
                    out.add(above + (stop - above) * i / parts);
                }
            }
            out.add(stop);
            above = stop;
        }
        return out;
    }

    private TreeSet<Double> nodes(double top) {
        TreeSet<Double> nodes = new TreeSet<>();
        for (double h : level) {
            nodes.add(h);
        }
        nodes.add(narrow());
        nodes.add(end + (line.flare().isPresent() ? LegCurves.LEVEL_END : LegCurves.SQUARE_END));
        nodes.add(end);
        nodes.removeIf(h -> h > top - FINE / 2);
        nodes.add(top);
        if (level[0] > top - FINE_BELOW) {
            nodes.add(top - FINE_BELOW);
        }
        return nodes;
    }
}
