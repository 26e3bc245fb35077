package stretchwright.web.draft;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import stretchwright.ground.Part;
import stretchwright.web.frame.Bench;
import stretchwright.web.frame.Frame;
import stretchwright.web.frame.Opened;
import stretchwright.workroom.Kept;
import stretchwright.workroom.store.Version;

/**
 * The versions of a make that were kept, newest first, and what each changed.
 *
 * @param saved what was saved last without a number, such as that of another window
 */
public record VersionsPage(Frame frame, Opened make, List<Row> rows, List<Row> saved) {
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("d.M. HH:mm");

    /** So many of those; what is older is led to by undoing. */
    private static final int MOST = 12;

    public VersionsPage {
        rows = List.copyOf(rows);
        saved = List.copyOf(saved);
    }

    /**
     * One version.
     *
     * @param title "Version 3", or when it was saved
     * @param what what it changed of the one before, or how it differs from the one on the table
     * @param stands whether it is the one that is open
     */
    public record Row(String title, String what, long number, boolean stands) {}

    static VersionsPage of(Bench bench, Opened make) {
        List<Version> kept = make.demo()
                ? List.of(make.stored().version())
                : Kept.of(bench.room().store(), make.stored().thing()).versions();
        List<Row> rows = new ArrayList<>();
        Optional<Version> before = Optional.empty();
        int number = 0;
        for (Version v : kept) {
            number++;
            String what = before.map(b -> Difference.said(b.text(), v.text(), make.voice()))
                    .orElseGet(() -> make.voice().say(Tell.said("versions.first")));
            String title = make.voice().say(Tell.said("versions.number", Part.count(number)));
            rows.add(0, new Row(title, what, v.number(), v.number() == make.seen()));
            before = Optional.of(v);
        }
        return new VersionsPage(Frame.of(make, Frame.Stop.DRAFT), make, rows, saved(bench, make, kept));
    }

    private static List<Row> saved(Bench bench, Opened make, List<Version> kept) {
        if (make.demo()) {
            return List.of();
        }
        return bench.room().store().versions(make.id()).stream()
                .filter(v -> v.number() != make.seen() && kept.stream().noneMatch(k -> k.number() == v.number()))
                .sorted(Comparator.comparingLong(Version::number).reversed())
                .limit(MOST)
                .map(v -> new Row(
                        CLOCK.format(Instant.ofEpochMilli(v.at()).atZone(ZoneId.systemDefault())),
                        Difference.said(make.text(), v.text(), make.voice()),
                        v.number(),
                        false))
                .toList();
    }

    public String say(String key) {
        return make.voice().say(Tell.said(key));
    }
}
