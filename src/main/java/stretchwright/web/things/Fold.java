package stretchwright.web.things;

import java.util.List;

/** What is folded away until it is wanted. */
public record Fold(String title, List<String> lines, List<Blank> blanks, boolean open) {
    public Fold {
        lines = List.copyOf(lines);
        blanks = List.copyOf(blanks);
    }

    static Fold of(String title, String... lines) {
        return new Fold(title, List.of(lines).stream().filter(l -> !l.isBlank()).toList(), List.of(), false);
    }
}
