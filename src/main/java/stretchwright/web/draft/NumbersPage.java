package stretchwright.web.draft;

import java.util.ArrayList;
import java.util.List;
import stretchwright.body.Measure;
import stretchwright.body.Value;
import stretchwright.ground.Part;
import stretchwright.print.fit.FitTables;
import stretchwright.web.frame.Frame;
import stretchwright.web.frame.Opened;

/** Fit and measures of a make in numbers, those of the printed sheet. */
public record NumbersPage(Frame frame, Opened make) {
    static NumbersPage of(Opened make) {
        return new NumbersPage(Frame.of(make, Frame.Stop.DRAFT), make);
    }

    public String address() {
        return make.address();
    }

    public List<FitTables.Table> tables() {
        return FitTables.of(
                make.session().fit(),
                make.session().pattern(),
                make.session().make().unit());
    }

    /** What the signs in them mean. */
    public String signs() {
        return FitTables.signs(
                make.session().make().fabric(), make.session().make().unit());
    }

    /** Whether there is a plot of the course along the leg. */
    public boolean plotted() {
        return !make.session().fit().course().isEmpty();
    }

    /** Term, value, given or estimated, spread. */
    public List<List<String>> measures() {
        List<List<String>> rows = new ArrayList<>();
        for (Measure m : Measure.values()) {
            Value v = make.session().body().value(m);
            rows.add(List.of(
                    make.voice().say(m.said()),
                    length(v.mm()),
                    v.origin() == Value.Origin.GIVEN ? say("result.given") : say("result.estimated"),
                    "\u00B1 " + length(v.spread())));
        }
        return rows;
    }

    private String length(double mm) {
        return make.voice().say(Part.bare(mm));
    }

    public String say(String key) {
        return make.voice().say(Tell.said(key));
    }

    public String measuresTitle() {
        return make.voice()
                .say(Tell.said(
                        "result.measures",
                        Part.text(make.session().make().unit().symbol())));
    }

    public List<String> measuresHead() {
        return List.of(say("result.measure"), say("result.value"), say("result.origin"), say("result.spread"));
    }
}
