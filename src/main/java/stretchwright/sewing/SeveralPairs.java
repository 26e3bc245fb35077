package stretchwright.sewing;

import java.util.List;

/**
 * Several pairs sewn together: in lots, each step for all pairs of a lot before the next step.
 *
 * @param pairs how many in all
 * @param lot pairs in work at a time; the last lot may be smaller
 * @param lots how many lots that makes
 * @param changeovers of all lots together
 * @param minutes for all pairs, changeovers and tests included
 * @param pairByPair the same with one pair finished before the next is begun
 * @param threads for all pairs
 */
public record SeveralPairs(
        int pairs,
        int lot,
        int lots,
        int changeovers,
        double minutes,
        double pairByPair,
        List<SewingPlan.Thread> threads) {
    public static final int MOST_PAIRS = 60;

    public SeveralPairs {
        threads = List.copyOf(threads);
    }
}
