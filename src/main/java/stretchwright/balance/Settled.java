package stretchwright.balance;

import java.util.List;

/**
 * Where a tube settles in one pose; slides in mm along the standing skin from where it was placed, down is positive.
 * Forces are those of one half of the garment, N.
 *
 * @param front slide of each ring's front, waist edge first; on the leg the same as back
 * @param passed cloth that went through between the legs from front to back, mm
 * @param waist of the waist edge, side, front and back
 * @param hem of the hem
 * @param residual sum of the forces left over, N
 */
public record Settled(
        List<Double> front,
        List<Double> back,
        double passed,
        Edge waist,
        Edge hem,
        Outcome outcome,
        int iterations,
        double residual) {
    /** How the search ended. */
    public enum Outcome {
        /** All forces balance. */
        SETTLED,
        /** Nothing holds it: it slides by more than its own length. */
        FALLS,
        /** No balance was found; what is told is the best state seen. */
        UNFINISHED
    }

    /**
     * One end of the tube.
     *
     * @param pull grip that would be needed to hold the edge where it was placed, N, down is positive
     * @param grip that its band or cuff has there, N
     */
    public record Edge(double side, double front, double back, double pull, double grip) {}

    public Settled {
        front = List.copyOf(front);
        back = List.copyOf(back);
    }

    public boolean isSettled() {
        return outcome == Outcome.SETTLED;
    }
}
