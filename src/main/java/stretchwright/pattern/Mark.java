package stretchwright.pattern;

import stretchwright.ground.Path;

/** A line drawn inside a piece, not cut: a level ("knee"), a fold line, the outline of what is sewn on there. */
public record Mark(String name, Kind kind, Path line) {
    public enum Kind {
        LEVEL,
        FOLD,
        PLACEMENT
    }
}
