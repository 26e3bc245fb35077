package stretchwright.web.lay;

import java.util.List;
import java.util.OptionalDouble;
import stretchwright.ground.Part;
import stretchwright.ground.Said;
import stretchwright.ground.Unit;
import stretchwright.lay.Lay;
import stretchwright.lay.OnHand;
import stretchwright.print.cloth.ClothWords;
import stretchwright.web.frame.MayCut;
import stretchwright.workroom.jobs.Job;
import stretchwright.workroom.jobs.PieceSearch;

/** The one sentence on top, and what is told below it. */
final class Sentence {
    private final LayPage page;
    private final Table table;
    private final Lay lay;

    Sentence(LayPage page) {
        this.page = page;
        this.table = page.table();
        this.lay = page.shown().lay();
    }

    MayCut says() {
        if (!page.shown().troubles().isEmpty()) {
            return new MayCut(MayCut.Mark.STOP, page.troubles().get(0), page.say("lay.not-so"));
        }
        OptionalDouble spare = table.laid().spare(lay);
        boolean enough = spare.isEmpty() || spare.getAsDouble() >= 0;
        MayCut.Mark mark = page.looking() ? MayCut.Mark.WORKS : enough ? MayCut.Mark.HOLDS : MayCut.Mark.STOP;
        return new MayCut(mark, first(spare, enough), why(enough));
    }

    private String first(OptionalDouble spare, boolean enough) {
        if (spare.isEmpty()) {
            return say(Tell.said("lay.takes", Part.cloth(lay.length())));
        }
        boolean remnant = table.laid().fabric().roll().shape().outline().isPresent();
        double mm = spare.getAsDouble();
        return enough
                ? say(Tell.said(remnant ? "lay.fits-remnant" : "lay.fits-hand", down(mm)))
                : say(Tell.said(remnant ? "lay.short-remnant" : "lay.short-hand", up(-mm)));
    }

    private String why(boolean enough) {
        String search = search();
        return page.touched().placed().isPresent()
                ? byHand()
                : search + (enough || page.looking() ? "" : " " + helps());
    }

    private String byHand() {
        double more = lay.length() - table.standing().lay().length();
        Part length = length(lay.length());
        Said said = more > 0.5
                ? Tell.said("lay.by-hand-longer", length, up(more))
                : more < -0.5 ? Tell.said("lay.by-hand-shorter", length, up(-more)) : Tell.said("lay.by-hand", length);
        return say(said);
    }

    /** What alone would make it fit the cloth at hand. */
    private String helps() {
        Unit unit = page.make().session().make().unit();
        List<OnHand.Condition> all =
                table.standing().use().onHand().map(OnHand::conditions).orElse(List.of());
        if (all.isEmpty()) {
            return page.say("lay.nothing-helps");
        }
        List<Part> words = all.stream()
                .map(c -> (Part) Part.text(ClothWords.condition(c, unit)))
                .toList();
        return say(Tell.said("lay.helps", Part.listed(Part.Join.EITHER, words)));
    }

    /** What a search is doing, did, or could do. */
    private String search() {
        Part now = length(lay.length());
        if (lay.shortest()) {
            return say(Tell.said("lay.shortest", lay.method().said(), now));
        }
        if (page.search().isEmpty()) {
            return say(Tell.said("lay.could", lay.method().said(), now, least()));
        }
        PieceSearch search = page.search().get();
        if (!search.over()) {
            return under(search, now);
        }
        if (search.job().state() == Job.State.FAILED) {
            return say(Tell.said(
                    "lay.failed", Part.text(String.join(" ", search.job().told()))));
        }
        double shorter = table.usual().length() - lay.length();
        Said found = shorter > 0.5
                ? Tell.said("lay.found", now, up(shorter), least())
                : search.job().state() == Job.State.CANCELLED
                        ? Tell.said("lay.stopped-none", now, least())
                        : Tell.said("lay.found-none", now, least());
        return say(found);
    }

    private String under(PieceSearch search, Part now) {
        if (!search.of(page.make().text())) {
            return page.say("lay.changed-since");
        }
        Said on = Tell.said("lay.looking", now, least());
        return say(
                switch ((int) Math.min(4, search.before())) {
                    case 0 ->
                        search.job().state() == Job.State.QUEUED
                                ? Tell.said("lay.begins").and(on)
                                : on;
                    case 1 -> Tell.said("lay.second").and(Tell.said("lay.goes-on"));
                    case 2 -> Tell.said("lay.third").and(Tell.said("lay.goes-on"));
                    default ->
                        Tell.said("lay.in-line", Part.count(search.before())).and(Tell.said("lay.goes-on"));
                });
    }

    private Part length(double mm) {
        return new Part.Length(mm, Part.Told.WRITTEN, 1, false);
    }

    private Part least() {
        return new Part.Length(lay.floor(), Part.Told.WRITTEN, 1, false).atMost();
    }

    private static Part down(double mm) {
        return Part.length(mm).atMost();
    }

    private static Part up(double mm) {
        return Part.length(mm).atLeast();
    }

    private String say(Said said) {
        return page.say(said);
    }
}
