package stretchwright.cli;

import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import stretchwright.ground.Part;
import stretchwright.report.Report;
import stretchwright.workroom.Workroom;
import stretchwright.workroom.store.Kind;
import stretchwright.workroom.store.Place;
import stretchwright.workroom.store.Thing;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** What there is, newest first. */
@Command(name = "list")
final class RoomList extends Task {
    private static final int MOST = 10_000;

    @Parameters(paramLabel = "WORD", arity = "0..*", descriptionKey = "word")
    private List<String> words = List.of();

    @Option(names = "--kind", paramLabel = "KIND", descriptionKey = "kind")
    private @Nullable String kind;

    @Option(names = "--bin")
    private boolean bin;

    @Option(names = "--most", paramLabel = "N", defaultValue = "50")
    private int most;

    RoomList(Desk desk) {
        super(desk);
    }

    @Override
    public Integer call() {
        if (most < 1 || most > MOST) {
            throw RoomThing.wrong("--most", Tell.said("room.most"), Tell.said("room.most-give", Part.count(MOST)));
        }
        Console console = console();
        Workroom room = named().room();
        Place place = bin ? Place.BIN : Place.HERE;
        List<Kind> kinds = new ArrayList<>(RoomThing.kinds(kind));
        String sought = String.join(" ", words);
        if (words.size() > 0 && kind == null && isKind(words.get(0))) {
            kinds = RoomThing.kinds(words.get(0));
            sought = String.join(" ", words.subList(1, words.size()));
        }
        ObjectNode out = Report.node();
        boolean any = false;
        for (Kind k : kinds) {
            List<Thing> some = room.store().list(k, place, sought, 0, most + 1);
            List<Thing> found = some.subList(0, Math.min(most, some.size()));
            any |= !found.isEmpty();
            told(found, console);
            ArrayNode list = out.putArray(k.word() + "s");
            found.forEach(t -> list.addObject()
                    .put("name", t.name())
                    .put("id", t.id())
                    .put("version", t.now())
                    .put("changed", Instant.ofEpochMilli(t.changed()).toString()));
            if (some.size() > most) {
                more(room.store().count(k, place) - most, sought, k, console);
            }
        }
        if (!any) {
            console.tell(bin ? Tell.said("room.bin-empty") : Tell.said("room.empty", Part.text(where(room))));
        }
        if (console.json()) {
            console.print(Report.text(out));
        }
        return Exit.DONE;
    }

    private static boolean isKind(String word) {
        try {
            RoomThing.kinds(word);
            return true;
        } catch (stretchwright.ground.BadInput e) {
            return false;
        }
    }

    private static String where(Workroom room) {
        return room.store().database().at().told();
    }

    private static void told(List<Thing> found, Console console) {
        for (Thing t : found) {
            console.tell(String.format(
                    Locale.ROOT,
                    "%-8s %-10s %s%s",
                    t.kind().word(),
                    day(t.changed()),
                    t.name(),
                    t.now() > 1 ? "  (" + t.now() + ")" : ""));
        }
    }

    private static void more(long others, String sought, Kind k, Console console) {
        Part which = Part.text(k.word() + "s");
        console.tell(
                sought.isEmpty()
                        ? Tell.said("room.more", Part.count(others), which)
                        : Tell.said("room.more-found", which));
    }

    static String day(long millis) {
        return Instant.ofEpochMilli(millis)
                .atZone(ZoneId.systemDefault())
                .toLocalDate()
                .toString();
    }
}
