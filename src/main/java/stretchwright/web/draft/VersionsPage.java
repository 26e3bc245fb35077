package stretchwright.web.draft;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stretchwright.ground.Part;
import stretchwright.web.frame.Bench;
import stretchwright.web.frame.Frame;
import stretchwright.web.frame.Opened;
import stretchwright.workroom.Kept;
import stretchwright.workroom.store.Version;

/** The versions of a make that were kept, newest first, and what each changed. */
public record VersionsPage(Frame frame, Opened make, List<Row> rows) {
    public VersionsPage {
        rows = List.copyOf(rows);
    }

    /**
     * One version.
     *
     * @param title "Version 3"
     * @param what what it changed of the one before
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
        return new VersionsPage(Frame.of(make, Frame.Stop.DRAFT), make, rows);
    }

    public String say(String key) {
        return make.voice().say(Tell.said(key));
    }
}
