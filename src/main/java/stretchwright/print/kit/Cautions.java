package stretchwright.print.kit;

import java.util.List;
import java.util.stream.Stream;
import stretchwright.print.kit.Column.Para;

/** What to take care of; on every sheet that is read before the garment is worn. */
public final class Cautions {
    private Cautions() {}

    /** Of whatever machine sews; in full wherever it is said. */
    public static String needleAndKnife() {
        return Phrases.of("caution.needle-knife");
    }

    public static List<Para> of(double size) {
        return Stream.of(
                        needleAndKnife(),
                        Phrases.of("caution.needles"),
                        Phrases.of("caution.children"),
                        Phrases.of("caution.ice"),
                        Phrases.of("caution.medical"),
                        Phrases.of("caution.common"))
                .map(words -> new Para(size, 0, 1, words))
                .toList();
    }
}
