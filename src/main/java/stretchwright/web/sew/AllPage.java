package stretchwright.web.sew;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import stretchwright.ground.Part;
import stretchwright.print.kit.Cautions;
import stretchwright.sewing.SewingPlan;
import stretchwright.sewing.SewingPlan.Operation;
import stretchwright.web.frame.Frame;
import stretchwright.web.frame.Opened;

/** The whole plan on one page, to be looked through and printed; also where the sewing ends. */
public record AllPage(Frame frame, Opened make, boolean ended, List<Row> rows) {
    public AllPage {
        rows = List.copyOf(rows);
    }

    /** A step, or a machine that is set up. */
    public record Row(
            String address,
            boolean done,
            String title,
            String action,
            List<String> watch,
            List<String> wrong,
            String check,
            String settings,
            Optional<SewPage.Drawing> drawing) {
        public Row {
            watch = List.copyOf(watch);
            wrong = List.copyOf(wrong);
        }
    }

    static AllPage of(Opened make, Place place) {
        int done = place.done();
        List<Row> rows = new ArrayList<>();
        for (int i = 0; i < place.stops().size(); i++) {
            rows.add(row(SewPage.of(make, place, i)));
        }
        String title = make.voice().say(Tell.said("sew.all"));
        return new AllPage(SewPage.frame(make, title), make, done == rows.size(), rows);
    }

    private static Row row(SewPage page) {
        return new Row(
                page.sewing() + "/" + page.key(),
                page.isDone(),
                page.now(),
                page.action(),
                page.watch(),
                page.wrong(),
                page.check(),
                page.settings().stream().map(l -> l.what() + ": " + l.how()).collect(Collectors.joining("; ")),
                page.drawing());
    }

    public String heading() {
        SewingPlan plan = make.session().sewing();
        Part steps = Part.count(plan.operations().size());
        long minutes = Math.round(
                plan.operations().stream().mapToDouble(Operation::minutes).sum());
        return say(
                ended
                        ? Tell.said("sew.all-done", steps)
                        : Tell.said("sew.all-to-do", steps, new Part.Minutes(minutes, 0)));
    }

    public String caution() {
        return Cautions.needleAndKnife();
    }

    public String sewing() {
        return make.address() + "/sew";
    }

    public String first() {
        return rows.get(0).address();
    }

    public String plan() {
        return Offline.plan(make);
    }

    public String keptAt() {
        return make.demo() ? "" : sewing();
    }

    public String say(String key) {
        return say(Tell.said(key));
    }

    private String say(Part part) {
        return make.voice().say(part);
    }
}
