package stretchwright.web.club;

import java.util.List;
import java.util.Set;
import stretchwright.ground.Part;
import stretchwright.ground.Voice;
import stretchwright.web.form.Form;
import stretchwright.web.frame.Bench;
import stretchwright.web.frame.Frame;
import stretchwright.web.frame.MayCut;
import stretchwright.workroom.jobs.Job;
import stretchwright.workroom.jobs.Jobs;
import stretchwright.workroom.store.Kind;
import stretchwright.workroom.store.Place;
import stretchwright.workroom.store.Thing;

/**
 * Which makes are laid together.
 *
 * @param makes newest first
 * @param table its length as it was typed
 * @param before clubs that were laid, newest first
 * @param wrong why they cannot be laid so
 */
public record ClubPage(
        Frame frame, List<Row> makes, List<Row> cloths, String table, List<Before> before, List<String> wrong) {
    /** So many are offered. */
    static final int MOST = 200;

    private static final int MOST_BEFORE = 12;

    public ClubPage {
        makes = List.copyOf(makes);
        cloths = List.copyOf(cloths);
        before = List.copyOf(before);
        wrong = List.copyOf(wrong);
    }

    /** Something to choose. */
    public record Row(String id, String name, String about, boolean chosen) {}

    /** A club that was asked. */
    public record Before(String address, String name, String state) {}

    static ClubPage of(Bench bench, Jobs jobs, Form sent, List<String> wrong) {
        Set<String> ticked = Set.copyOf(sent.typed().getOrDefault("make", List.of()));
        List<Row> makes = bench.room().store().list(Kind.MAKE, Place.HERE, "", 0, MOST).stream()
                .map(m -> new Row(m.id(), m.name(), cloth(bench, m), ticked.contains(m.id())))
                .toList();
        List<Row> cloths = bench.room().store().list(Kind.FABRIC, Place.HERE, "", 0, MOST).stream()
                .map(c -> new Row(c.id(), c.name(), "", c.id().equals(sent.value("cloth"))))
                .toList();
        List<Before> before = jobs.list(MOST).stream()
                .filter(j -> j.kind() == Job.Kind.CLUB)
                .limit(MOST_BEFORE)
                .map(j -> new Before("/club/" + j.id(), j.name(), ClubJob.state(j)))
                .toList();
        return new ClubPage(
                Frame.plain("club", said("club.heading")), makes, cloths, sent.value("table"), before, wrong);
    }

    private static String cloth(Bench bench, Thing make) {
        return bench.room()
                .store()
                .thing(make.links().fabric())
                .map(Thing::name)
                .orElse("");
    }

    public MayCut says() {
        return new MayCut(
                wrong.isEmpty() ? MayCut.Mark.WORKS : MayCut.Mark.STOP,
                makes.isEmpty() ? said("start.nothing") : said("club.which"),
                said("club.about"));
    }

    public String say(String key) {
        return said(key);
    }

    static String said(String key, Part... parts) {
        return Voice.plain().say(Tell.said(key, parts));
    }
}
