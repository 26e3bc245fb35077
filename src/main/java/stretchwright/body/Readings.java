package stretchwright.body;

import java.util.List;
import stretchwright.ground.Findings;
import stretchwright.ground.Part;

/** One measure as it was taken: one reading or several, mm. */
public record Readings(List<Double> mm) {
    public Readings {
        mm = List.copyOf(mm);
        if (mm.isEmpty()) {
            throw new IllegalArgumentException("a measure needs a reading");
        }
    }

    public static Readings of(double... mm) {
        return new Readings(java.util.Arrays.stream(mm).boxed().toList());
    }

    public double mean() {
        return mm.stream().mapToDouble(d -> d).average().orElseThrow();
    }

    public double least() {
        return mm.stream().mapToDouble(d -> d).min().orElseThrow();
    }

    public double most() {
        return mm.stream().mapToDouble(d -> d).max().orElseThrow();
    }

    /** Whether they lie no further apart than careful readings of such a measure do; else a finding. */
    public boolean agree(String key, Measure measure, Findings findings) {
        double limit = HandMeasuring.repeatLimit(measure);
        double difference = most() - least();
        if (!(difference > limit + 1e-9)) {
            return true;
        }
        findings.add(
                key,
                Tell.said("readings.differ", Tell.taken(least()), Tell.taken(most()), Tell.taken(difference)),
                Tell.said("readings.differ-help", Part.length(limit).atMost()));
        return false;
    }

    /** Of the mean of independent readings by hand: that of one reading, divided by the root of their number. */
    double spread(Measure measure) {
        return HandMeasuring.spread(measure) / Math.sqrt(mm.size());
    }
}
