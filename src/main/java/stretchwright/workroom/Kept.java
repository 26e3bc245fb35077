package stretchwright.workroom;

import java.util.Comparator;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import stretchwright.workroom.store.Edit;
import stretchwright.workroom.store.Kind;
import stretchwright.workroom.store.Links;
import stretchwright.workroom.store.Store;
import stretchwright.workroom.store.Thing;
import stretchwright.workroom.store.Version;

/**
 * The versions of a make that its maker kept, numbered 1, 2, 3 as they were kept: the first one that was ever entered, and those of
 * which a note says so. What is saved while drawing is between them and has no number here.
 *
 * @param versions in that order
 */
public record Kept(List<Version> versions) {
    /** Heading of the note that says it. */
    public static final String KEPT = "kept";

    public Kept {
        versions = List.copyOf(versions);
    }

    public static Kept of(Store store, Thing make) {
        List<Version> notes = store.from(make.id(), Kind.NOTE).stream()
                .filter(Kept::isMark)
                .flatMap(n -> store.now(n).stream())
                .sorted(Comparator.comparingLong(Version::at).thenComparingLong(Kept::named))
                .toList();
        return new Kept(LongStream.concat(LongStream.of(1), notes.stream().mapToLong(Kept::named))
                .distinct()
                .boxed()
                .flatMap(number -> store.version(make.id(), number).stream())
                .toList());
    }

    /** The version that stands is kept, as one step; it is none where it was kept before. */
    public static Kept keep(Store store, Thing make) {
        Kept before = of(store, make);
        if (before.number(make.now()).isPresent()) {
            return before;
        }
        store.save(KEPT, List.of(Edit.fresh(Kind.NOTE, KEPT, Long.toString(make.now()), Links.from(make.id()))));
        return of(store, make);
    }

    /** Whether a note is there to say that something was kept, and tells people nothing. */
    public static boolean isMark(Thing note) {
        return note.kind() == Kind.NOTE && note.name().equals(KEPT);
    }

    /** 0, which no version has, where the note says something else. */
    private static long named(Version note) {
        return note.text().matches("[0-9]{1,15}") ? Long.parseLong(note.text()) : 0;
    }

    /** Under which number it was kept, from 1; empty where it was not. */
    public OptionalInt number(long version) {
        return Stream.iterate(0, i -> i < versions.size(), i -> i + 1)
                .filter(i -> versions.get(i).number() == version)
                .mapToInt(i -> i + 1)
                .findFirst();
    }

    /** The number that one more would be kept under. */
    public int next() {
        return versions.size() + 1;
    }

    /** The one that was kept last. */
    public Version last() {
        return versions.get(versions.size() - 1);
    }
}
