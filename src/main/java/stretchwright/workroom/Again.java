package stretchwright.workroom;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stretchwright.ground.Progress;
import stretchwright.intake.MakeFile;
import stretchwright.intake.NameKind;
import stretchwright.make.Made;
import stretchwright.make.Make;
import stretchwright.many.Compare;
import stretchwright.report.Program;
import stretchwright.workroom.store.Edit;
import stretchwright.workroom.store.Kind;
import stretchwright.workroom.store.Links;
import stretchwright.workroom.store.Names;
import stretchwright.workroom.store.Place;
import stretchwright.workroom.store.Saved;
import stretchwright.workroom.store.Store;
import stretchwright.workroom.store.Thing;
import stretchwright.workroom.store.Version;

/**
 * The next make from an earlier one: for another wearer, from another cloth, over another boot; everything else as it was.
 * What wear taught of the cloth or the wearer goes with them: it is left behind where they are changed.
 */
public final class Again {
    private final Workroom room;
    private final Workroom.Stored before;
    private final Map<Kind, Thing> others = new EnumMap<>(Kind.class);

    public Again(Workroom room, Workroom.Stored before) {
        this.room = room;
        this.before = before;
    }

    /** With this one in its place. */
    public Again with(Thing other) {
        others.put(other.kind(), other);
        return this;
    }

    /**
     * What came of it.
     *
     * @param comparison with the make before, A that one and B this
     * @param due measures to take again; empty where they are young enough
     * @param lentBoot whether the boot is still that of the wearer before
     */
    public record Next(Thing make, Made made, Compare comparison, Optional<Due> due, boolean lentBoot) {}

    /**
     * Drafts, judges and lays both, and stores the new one.
     *
     * @param named empty for the name before with a number
     */
    public Next run(Optional<String> named, Progress progress) {
        boolean another = others.containsKey(Kind.WEARER) && !others.containsKey(Kind.BOOT);
        if (another) {
            ownBoot().ifPresent(this::with);
        }
        String name = named.orElseGet(this::freeName);
        String text = Parts.with(before.version().text(), name, texts());
        MakeFile next = Make.read(name, text.getBytes(StandardCharsets.UTF_8));
        Made was = Make.run(before.read(), Progress.silent());
        Made is = Make.run(next, progress);
        Edit edit = Edit.fresh(Kind.MAKE, name, text, links()).with(Figures.of(is), Program.VERSION);
        List<Saved> saved = room.store().save("again", List.of(edit));
        Thing make = ((Saved.Stored) saved.get(0)).thing();
        boolean lent = another && !others.containsKey(Kind.BOOT) && next.boot().isPresent();
        return new Next(make, is, Compare.of(was, is), Due.of(next, entered(text), room.today()), lent);
    }

    /** Of another wearer her own boot, as her newest make with one has it. A make without a boot stays without. */
    private Optional<Thing> ownBoot() {
        if (before.read().boot().isEmpty()) {
            return Optional.empty();
        }
        return room.store().ofWearer(links().wearer(), Kind.MAKE).stream()
                .map(m -> m.links().boot())
                .filter(id -> !id.isEmpty())
                .reduce((older, newer) -> newer)
                .flatMap(room.store()::thing)
                .filter(boot -> boot.place() == Place.HERE);
    }

    private Map<Kind, String> texts() {
        Map<Kind, String> texts = new EnumMap<>(Kind.class);
        others.forEach((kind, thing) -> texts.put(kind, room.standing(thing).text()));
        return texts;
    }

    private Links links() {
        Links was = before.version().links();
        return new Links(
                before.thing().id(),
                id(Kind.WEARER, was.wearer()),
                id(Kind.FABRIC, was.fabric()),
                id(Kind.BOOT, was.boot()),
                id(Kind.STYLE, was.style()));
    }

    /** When these measures came here: with the first version of their wearer that says so, or else with the make before. */
    private LocalDate entered(String text) {
        Optional<String> measures = measures(text);
        long at = room.store().versions(links().wearer()).stream()
                .filter(v -> measures(v.text()).equals(measures))
                .map(Version::at)
                .findFirst()
                .orElse(before.version().at());
        return room.day(at);
    }

    private static Optional<String> measures(String text) {
        return Parts.of(Parts.tree(text), Kind.WEARER).map(Parts::withoutUnit);
    }

    private String id(Kind kind, String was) {
        Thing other = others.get(kind);
        return other == null ? was : other.id();
    }

    private static String numbered(String plain, int number) {
        return Names.within(plain, NameKind.LONGEST, name -> name + " (" + number + ")");
    }

    private String freeName() {
        String plain = before.thing().name().replaceFirst(" \\([0-9]+\\)$", "");
        Store store = room.store();
        int number = 2;
        while (store.named(Kind.MAKE, numbered(plain, number)).isPresent()) {
            number++;
        }
        return numbered(plain, number);
    }
}
