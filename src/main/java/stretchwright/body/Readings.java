package stretchwright.body;

import java.util.List;

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

    /** Of the mean of independent readings by hand: that of one reading, divided by the root of their number. */
    double spread(Measure measure) {
        return HandMeasuring.spread(measure) / Math.sqrt(mm.size());
    }
}
