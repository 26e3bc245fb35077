package stretchwright.workroom;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stretchwright.ground.BadInput;
import stretchwright.ground.Findings;
import stretchwright.ground.Part;
import stretchwright.ground.Said;
import stretchwright.intake.MakeFile;
import stretchwright.intake.Tree;
import stretchwright.make.Make;
import stretchwright.workroom.store.Edit;
import stretchwright.workroom.store.Kind;
import stretchwright.workroom.store.Links;
import stretchwright.workroom.store.Names;
import stretchwright.workroom.store.Place;
import stretchwright.workroom.store.Store;
import stretchwright.workroom.store.Thing;
import stretchwright.workroom.store.Version;

/**
 * A make file on its way into the workroom: the make itself, and its wearer, cloth, boot and style, each under its own name.
 *
 * <p>In: a text. Out first what would change, then, asked for, the change as one step. Promise: nothing that is there is
 * followed by another version unless that was asked for.
 */
public final class Incoming {
    /** What is to become of things that are there under the same name and say something else. */
    public enum Same {
        ASK,
        /** What is there stays; the make keeps its own text all the same. */
        KEEP,
        /** What is there stays; the file's come beside it, under the same name with a number. */
        BESIDE,
        /** The file's become the newest version. */
        REPLACE
    }

    /**
     * One thing of the file.
     *
     * @param there the one of that name, if any
     * @param differences from what it says now; none where it is new or says the same
     */
    public record Item(Kind kind, String name, String text, Optional<Thing> there, List<Said> differences) {
        public Item {
            differences = List.copyOf(differences);
        }

        public boolean differs() {
            return !differences.isEmpty();
        }
    }

    /** Letters for a number behind a name. */
    private static final int MOST_DIGITS = 8;

    private final Store store;
    private final List<Item> items;

    private Incoming(Store store, List<Item> items) {
        this.store = store;
        this.items = List.copyOf(items);
    }

    /** @throws BadInput where the text is no make file */
    static Incoming of(Store store, String file, byte[] bytes) {
        MakeFile make = Make.read(file, bytes);
        String text = new String(bytes, StandardCharsets.UTF_8);
        Tree.Keys tree = Parts.tree(text);
        List<Item> items = new ArrayList<>();
        for (Kind kind : Parts.KINDS) {
            if (kind != Kind.FABRIC || !make.cloth().usual().stretch()) { // cloth that nobody has is not in the stash
                Parts.of(tree, kind).ifPresent(part -> items.add(item(store, kind, name(kind, make), part)));
            }
        }
        items.add(item(store, Kind.MAKE, shortened(make.name()), text));
        return new Incoming(store, items);
    }

    private static Item item(Store store, Kind kind, String name, String text) {
        Optional<Thing> there = store.named(kind, name);
        List<Said> differences = there.flatMap(store::now)
                .map(Version::text)
                .filter(t -> !t.equals(text))
                .map(t -> differences(t, text))
                .orElse(List.of());
        return new Item(kind, name, text, there, differences);
    }

    /** Texts that say the same in other letters are other texts all the same. */
    private static List<Said> differences(String before, String after) {
        List<Said> keys = Differences.between(before, after);
        return keys.isEmpty() ? List.of(Tell.said("differs.letters")) : keys;
    }

    private static String name(Kind kind, MakeFile make) {
        String wearer = make.wearer().isBlank() ? make.name() : make.wearer();
        String name = switch (kind) {
            case WEARER -> wearer;
            case FABRIC ->
                make.cloth().roll().name().isBlank()
                        ? make.name()
                        : make.cloth().roll().name();
            case BOOT -> make.boot().map(b -> b.kind()).orElse("boot") + bootOf(wearer);
            default -> make.name();
        };
        return shortened(name);
    }

    /** How the names of a wearer's boots end. */
    static String bootOf(String wearer) {
        return ", " + wearer;
    }

    private static String shortened(String name) {
        String plain = name.codePoints()
                .filter(c -> !Character.isISOControl(c))
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString()
                .strip();
        return plain.length() <= Names.LONGEST
                ? plain
                : plain.substring(0, Names.LONGEST).strip();
    }

    public List<Item> items() {
        return items;
    }

    /** Whether something that is there would be followed by something else. */
    public boolean overwrites() {
        return items.stream().anyMatch(Item::differs);
    }

    /** Stores it as one step, or none where nothing is new; gives the make as it is now. */
    public Thing take(Same same) {
        if (same == Same.ASK && overwrites()) {
            throw refused();
        }
        List<Item> taken =
                same == Same.BESIDE ? items.stream().map(this::beside).toList() : items;
        Map<Kind, String> ids = new EnumMap<>(Kind.class);
        taken.forEach(i -> ids.put(i.kind(), i.there().map(Thing::id).orElseGet(Store::freshId)));
        List<Edit> edits = taken.stream()
                .filter(i -> i.there().isEmpty() || (i.differs() && same == Same.REPLACE))
                .map(i -> edit(id(ids, i.kind()), i, i.kind() == Kind.MAKE ? links(ids) : Links.NONE))
                .toList();
        if (!edits.isEmpty()) {
            Clashes.mustNot(store.save("import", edits));
        }
        return store.thing(id(ids, Kind.MAKE)).orElseThrow();
    }

    /** Under the first number that is free or says the same already; a make is not doubled. */
    private Item beside(Item item) {
        Item other = item;
        for (int i = 2; other.differs() && item.kind() != Kind.MAKE; i++) {
            int most = Math.min(item.name().length(), Names.LONGEST - MOST_DIGITS);
            String plain = item.name().substring(0, most).strip();
            other = item(store, item.kind(), plain + " " + i, item.text());
        }
        return other;
    }

    private static String id(Map<Kind, String> ids, Kind kind) {
        return ids.getOrDefault(kind, "");
    }

    private static Edit edit(String id, Item item, Links links) {
        return new Edit(
                id,
                item.kind(),
                item.there().map(Thing::now).orElse(0L),
                item.name(),
                item.text(),
                links,
                Optional.empty(),
                "",
                Place.HERE);
    }

    private static Links links(Map<Kind, String> ids) {
        return new Links("", id(ids, Kind.WEARER), id(ids, Kind.FABRIC), id(ids, Kind.BOOT), id(ids, Kind.STYLE));
    }

    private BadInput refused() {
        Findings findings = new Findings("workroom");
        items.stream()
                .filter(Item::differs)
                .forEach(i -> findings.add(
                        i.kind().word(),
                        Tell.said(
                                "import.differs",
                                Tell.quoted(i.name()),
                                Part.count(i.differences().size())),
                        Tell.said("import.choose")));
        return new BadInput(findings.all());
    }
}
