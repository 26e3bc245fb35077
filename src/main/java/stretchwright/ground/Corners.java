package stretchwright.ground;

import java.util.List;

/** The corners of a line or an outline as plain numbers, in mm: for those who ask thousands of times what lies where. */
public final class Corners {
    private final double[] x;
    private final double[] y;

    private Corners(double[] x, double[] y) {
        this.x = x;
        this.y = y;
    }

    public static Corners of(List<Point> points) {
        int n = points.size();
        double[] x = new double[n];
        double[] y = new double[n];
        for (int i = 0; i < n; i++) {
            Point p = points.get(i);
            x[i] = p.x();
            y[i] = p.y();
        }
        return new Corners(x, y);
    }

    public Corners moved(double right, double up) {
        double[] movedX = new double[x.length];
        double[] movedY = new double[x.length];
        for (int i = 0; i < x.length; i++) {
            movedX[i] = x[i] + right;
            movedY[i] = y[i] + up;
        }
        return new Corners(movedX, movedY);
    }

    public int count() {
        return x.length;
    }

    public double x(int i) {
        return x[i];
    }

    public double y(int i) {
        return y[i];
    }

    /** Whether a point lies inside or on the outline (even-odd rule). */
    public boolean contains(double px, double py) {
        boolean inside = false;
        double ax = x[x.length - 1];
        double ay = y[x.length - 1];
        for (int i = 0; i < x.length; i++) {
            double bx = x[i];
            double by = y[i];
            if (onSegment(px, py, ax, ay, bx, by)) {
                return true;
            }
            if ((ay > py) != (by > py) && px < (bx - ax) * (py - ay) / (by - ay) + ax) {
                inside = !inside;
            }
            ax = bx;
            ay = by;
        }
        return inside;
    }

    private static boolean onSegment(double px, double py, double ax, double ay, double bx, double by) {
        return (bx - ax) * (py - ay) - (by - ay) * (px - ax) == 0 && (px - ax) * (px - bx) + (py - ay) * (py - by) <= 0;
    }
}
