package stretchwright.sewing;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * Why a combined machine cannot be converted less often: the longest chain of its steps in which each must wait for the
 * one before and is sewn in the other setup. Every valid order converts at least once between two neighbours of the chain.
 */
final class Alternation {
    private final List<OrderOfWork.Job> jobs;
    private final int[] before;
    private final int[] length;
    private final int[] previous;

    private Alternation(List<OrderOfWork.Job> jobs) {
        this.jobs = jobs;
        before = closed(jobs);
        length = new int[jobs.size()];
        previous = new int[jobs.size()];
    }

    /** Numbers of the chain's jobs, first to last; with fewer than two of them no conversion is forced by waiting. */
    static List<Integer> longest(List<OrderOfWork.Job> jobs) {
        Alternation a = new Alternation(jobs);
        int last = -1;
        for (int j = 0; j < jobs.size(); j++) {
            if (a.converted(j) && a.lengthTo(j) > (last < 0 ? 0 : a.lengthTo(last))) {
                last = j;
            }
        }
        List<Integer> chain = new ArrayList<>();
        for (int j = last; j >= 0; j = a.previous[j]) {
            chain.add(j);
        }
        Collections.reverse(chain);
        return chain;
    }

    private boolean converted(int job) {
        return jobs.get(job).tool().flatMap(Bench::setup).isPresent();
    }

    /** Of the longest chain that ends with this job; worked out once. */
    private int lengthTo(int job) {
        if (length[job] == 0) {
            length[job] = 1;
            previous[job] = -1;
            for (int k = 0; k < jobs.size(); k++) {
                boolean other = (before[job] >> k & 1) == 1 && converted(k) && !setup(k).equals(setup(job));
                // of chains alike in length the one whose steps come later in the custom: seams rather than tests of
                // stitches
                if (other && lengthTo(k) + 1 >= length[job]) {
                    length[job] = lengthTo(k) + 1;
                    previous[job] = k;
                }
            }
        }
        return length[job];
    }

    private Bench.Setup setup(int job) {
        return jobs.get(job).tool().flatMap(Bench::setup).orElseThrow();
    }

    /** All that must come before each job, also through others. */
    private static int[] closed(List<OrderOfWork.Job> jobs) {
        int[] before = jobs.stream().mapToInt(OrderOfWork.Job::after).toArray();
        boolean grown = true;
        while (grown) {
            grown = false;
            for (int j = 0; j < before.length; j++) {
                int all = before[j];
                for (int k = 0; k < before.length; k++) {
                    all |= (before[j] >> k & 1) == 1 ? before[k] : 0;
                }
                grown |= all != before[j];
                before[j] = all;
            }
        }
        return before;
    }
}
