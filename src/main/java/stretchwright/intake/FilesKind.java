package stretchwright.intake;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import stretchwright.ground.Part;
import stretchwright.ground.Said;
import stretchwright.print.kit.FileGroup;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** Which groups of files are made: one or a list, or all of them by one word. */
record FilesKind() implements Kind<Set<FileGroup>> {
    private static final ChoiceKind<String> WORD = ChoiceKind.of(FileGroup.words(), w -> w);
    private static final WordsKind<String> WORDS = new WordsKind<>(WORD);

    static Said isNot(String word) {
        return Tell.said("files.is-not", Tell.quoted(word));
    }

    static Said namesNothing() {
        return Tell.said("files.none");
    }

    static Said choose(String word) {
        return WORD.choose(word);
    }

    @Override
    public Optional<Set<FileGroup>> read(Spot at) {
        Optional<Set<String>> words = WORDS.read(at);
        if (words.isPresent() && words.get().isEmpty() && !at.isText()) {
            at.add(namesNothing(), at.likeThis());
            return Optional.empty();
        }
        return words.map(FilesKind::groups);
    }

    private static Set<FileGroup> groups(Set<String> words) {
        Set<FileGroup> groups = EnumSet.noneOf(FileGroup.class);
        words.forEach(w -> FileGroup.of(w).ifPresentOrElse(groups::add, () -> groups.addAll(FileGroup.all())));
        return groups;
    }

    @Override
    public ObjectNode schema() {
        return WORDS.schema();
    }

    @Override
    public Said allowed() {
        return WORDS.allowed();
    }

    @Override
    public JsonNode json(Set<FileGroup> groups) {
        return WORDS.json(words(groups));
    }

    @Override
    public Part shown(Set<FileGroup> groups) {
        return WORDS.shown(words(groups));
    }

    /** In their own order, whatever that of the set. */
    private static Set<String> words(Set<FileGroup> groups) {
        Set<String> words = new java.util.LinkedHashSet<>();
        Arrays.stream(FileGroup.values()).filter(groups::contains).forEach(g -> words.add(g.word()));
        return words;
    }

    @Override
    public List<String> words() {
        return WORDS.words();
    }

    @Override
    public Input input() {
        return Input.MANY;
    }
}
