package stretchwright.cli;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import stretchwright.ground.BadInput;
import stretchwright.ground.Findings;
import stretchwright.ground.Part;
import stretchwright.workroom.Workroom;
import stretchwright.workroom.store.Kind;
import stretchwright.workroom.store.Place;
import stretchwright.workroom.store.Thing;

/** How a thing is named: by its name, and by its kind where several are called so. */
final class RoomThing {
    /** A name that nobody has to look through. */
    private static final int MOST = 200;

    @Option(names = "--kind", paramLabel = "KIND", descriptionKey = "kind")
    private @Nullable String kind;

    /** The kinds that are meant; a finding where the word means none. */
    static List<Kind> kinds(@Nullable String word) {
        List<Kind> all = Arrays.stream(Kind.values()).filter(Kind::named).toList();
        if (word == null) {
            return all;
        }
        String one = word.endsWith("s") ? word.substring(0, word.length() - 1) : word;
        Optional<Kind> kind = Kind.of(one.equals("cloth") ? Kind.FABRIC.word() : one);
        return List.of(kind.orElseThrow(() -> wrong(
                "--kind",
                Tell.said("room.no-kind", Tell.quoted(word)),
                Tell.said("room.kinds", Tell.words(all.stream().map(Kind::word).toList())))));
    }

    /** The one thing of that name that is here, or in the bin. */
    Thing need(Workroom room, String name, Place place) {
        return need(room, name, List.of(place));
    }

    /** The one thing of that name that is at one of these places. */
    Thing need(Workroom room, String name, List<Place> places) {
        List<Thing> found = new ArrayList<>();
        for (Kind k : kinds(kind)) {
            places.stream()
                    .flatMap(place -> called(room, k, name, place).stream())
                    .findFirst()
                    .ifPresent(found::add);
        }
        if (found.size() == 1) {
            return found.get(0);
        }
        Optional<Thing> make = found.stream().filter(t -> t.kind() == Kind.MAKE).findFirst();
        if (make.isPresent()) {
            return make.get(); // a style is called as the make that it came with
        }
        throw found.isEmpty()
                ? wrong("NAME", Tell.said("room.none", Tell.quoted(name)), Tell.said("room.look"))
                : wrong("NAME", Tell.said("room.several", Tell.quoted(name), words(found)), Tell.said("room.say-kind"));
    }

    private static Optional<Thing> called(Workroom room, Kind kind, String name, Place place) {
        return place == Place.HERE
                ? room.store().named(kind, name)
                : room.store().list(kind, place, name, 0, MOST).stream()
                        .filter(t -> t.name().equalsIgnoreCase(name.strip()))
                        .findFirst();
    }

    private static Part words(List<Thing> found) {
        return Tell.words(found.stream().map(t -> t.kind().word()).collect(Collectors.toList()));
    }

    static BadInput wrong(String key, stretchwright.ground.Said wrong, stretchwright.ground.Said right) {
        Findings findings = new Findings("workroom");
        findings.add(key, wrong, right);
        return new BadInput(findings.all());
    }
}
