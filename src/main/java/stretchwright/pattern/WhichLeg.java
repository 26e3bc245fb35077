package stretchwright.pattern;

import java.util.Locale;
import java.util.stream.Stream;
import stretchwright.ground.Said;

/** Of which leg something is told: of both, where they are alike, or of one of them. */
public enum WhichLeg {
    BOTH,
    LEFT,
    RIGHT;

    /** As written in the report: empty for both. */
    public String word() {
        return this == BOTH ? "" : name().toLowerCase(Locale.ROOT);
    }

    /** "left leg", or "leg" where both are alike: as written in the report. */
    public String of(String word) {
        return this == BOTH ? word : word() + " " + word;
    }

    public Said of(Said said) {
        return switch (this) {
            case BOTH -> said;
            case LEFT -> Tell.said("leg.left", said);
            case RIGHT -> Tell.said("leg.right", said);
        };
    }

    /** Whether what is told of this leg holds for the other one too: where either means both. */
    public boolean meets(WhichLeg other) {
        return this == BOTH || other == BOTH || this == other;
    }

    /** As written in the report. */
    public static WhichLeg named(String word) {
        return Stream.of(values())
                .filter(w -> w.word().equals(word))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("there is no leg " + word));
    }

    @Override
    public String toString() {
        return word();
    }
}
