package stretchwright.pattern;

import stretchwright.ground.Path;

/** A line drawn inside a piece, not cut: a level ("knee"), a fold line, where something is sewn on or set in. */
public record Mark(MarkName name, Kind kind, Path line) {
    public enum Kind {
        LEVEL,
        FOLD,
        /** Outline of what is sewn on here, or the row that holds it. */
        PLACEMENT,
        /** A hole for a cord, as a short line across it. */
        EYELET
    }
}
