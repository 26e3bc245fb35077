package stretchwright.pattern;

import java.util.stream.Stream;

/** Names of pieces as the report writes them, for tests that are easier to read with words. */
public final class Names {
    private Names() {}

    /** "left leg", "cuff"; anything else is a name of its own. */
    public static PieceName piece(String word) {
        return Stream.of(WhichLeg.values())
                .flatMap(leg -> Stream.of(PieceKind.values()).map(kind -> PieceName.of(kind, leg)))
                .filter(name -> name.word().equals(word))
                .findFirst()
                .orElseGet(() -> PieceName.own(word));
    }
}
