package stretchwright.web.start;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import stretchwright.ground.Said;
import stretchwright.ground.Voice;
import stretchwright.web.frame.Bench;
import stretchwright.web.frame.Frame;
import stretchwright.workroom.store.Kind;
import stretchwright.workroom.store.Place;
import stretchwright.workroom.store.Thing;

/**
 * Everything of a kind by its name, newest first, where there is more than rail and shelves hold.
 *
 * @param shelf address of all of them
 * @param sought words of their names, or of the wearer's or cloth's; empty for all
 * @param older address of those that come next; empty where there are none
 */
public record ListPage(Frame frame, String shelf, String sought, List<Row> rows, String older) {
    /** So many stand on one page. */
    static final int MOST = 50;

    public ListPage {
        rows = List.copyOf(rows);
    }

    /** One of them. */
    public record Row(String address, String name) {}

    /** @param from how many were shown before */
    static ListPage of(Bench bench, Kind kind, String sought, int from) {
        String shelf = shelf(kind);
        List<Thing> found = bench.room().store().list(kind, Place.HERE, sought, from, MOST + 1);
        String older = found.size() > MOST
                ? shelf + "?from=" + (from + MOST) + "&sought=" + URLEncoder.encode(sought, StandardCharsets.UTF_8)
                : "";
        List<Row> rows = found.stream()
                .limit(MOST)
                .map(t -> new Row(shelf + "/" + t.id(), t.name()))
                .toList();
        return new ListPage(Frame.plain("thing", Voice.plain().say(title(kind))), shelf, sought, rows, older);
    }

    /** Where everything of a kind is found. */
    static String shelf(Kind kind) {
        return switch (kind) {
            case MAKE -> "/makes";
            case WEARER -> "/wearers";
            case FABRIC -> "/cloths";
            case BOOT -> "/boots";
            case STYLE, NOTE -> throw new IllegalArgumentException("no shelf for a " + kind);
        };
    }

    private static Said title(Kind kind) {
        return switch (kind) {
            case MAKE -> Tell.said("start.makes");
            case WEARER -> Tell.said("start.wearers");
            case FABRIC -> Tell.said("start.cloths");
            case BOOT -> Tell.said("start.boots");
            case STYLE, NOTE -> throw new IllegalArgumentException("no shelf for a " + kind);
        };
    }

    public String say(String key) {
        return Voice.plain().say(Tell.said(key));
    }
}
