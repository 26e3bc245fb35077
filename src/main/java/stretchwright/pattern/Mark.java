package stretchwright.pattern;

import stretchwright.ground.Path;

/** A line drawn inside a piece, not cut: a level ("knee"), a fold line. */
public record Mark(String name, Kind kind, Path line) {
    public enum Kind {
        LEVEL,
        FOLD
    }
}
