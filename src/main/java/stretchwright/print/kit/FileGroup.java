package stretchwright.print.kit;

import java.util.Arrays;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** What a make may be put into, by the words of {@code print.files} and {@code --files}; and what is made where nothing is said. */
public enum FileGroup {
    /** The pattern on the paper that was asked for, and as a drawing. */
    PATTERN("pattern", true),
    /** The pattern on the other home paper as well: A4 and Letter. */
    OTHER_PAPERS("other papers", false),
    PROJECTOR("projector", false),
    /** Points to mark on gridded cloth. */
    TRACING("tracing", false),
    LAY("lay", true),
    /** The sewing plan as pages. */
    PLAN("plan", true),
    /** The same as a booklet, and two up to be folded. */
    BOOKLET("booklet", true),
    /** The same for a telephone. */
    CHECKLIST("checklist", true),
    /** A drawing of each step by itself. */
    STEPS("steps", false),
    FIT("fit", true),
    /** For other programs and machines. */
    EXCHANGE("exchange", false);

    /** Every group there is. */
    public static final String ALL = "all";

    private final String word;
    private final boolean usual;

    FileGroup(String word, boolean usual) {
        this.word = word;
        this.usual = usual;
    }

    public String word() {
        return word;
    }

    public static Optional<FileGroup> of(String word) {
        return Arrays.stream(values()).filter(g -> g.word.equals(word)).findFirst();
    }

    /** What is made where nothing else is asked for: all that is needed from paper to the finished pair, once. */
    public static Set<FileGroup> usual() {
        Set<FileGroup> usual = EnumSet.noneOf(FileGroup.class);
        Arrays.stream(values()).filter(g -> g.usual).forEach(usual::add);
        return Collections.unmodifiableSet(usual);
    }

    public static Set<FileGroup> all() {
        return Collections.unmodifiableSet(EnumSet.allOf(FileGroup.class));
    }

    /** As they are written, {@link #ALL} last. */
    public static List<String> words() {
        List<String> words = new java.util.ArrayList<>();
        Arrays.stream(values()).map(FileGroup::word).forEach(words::add);
        words.add(ALL);
        return List.copyOf(words);
    }
}
