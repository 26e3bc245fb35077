package stretchwright.web.sew;

import java.util.List;
import stretchwright.ground.Part;
import stretchwright.sewing.SewingPlan;
import stretchwright.web.frame.Frame;
import stretchwright.web.frame.Opened;

/**
 * One step of the plan.
 *
 * @param number from 1
 */
public record SewPage(Frame frame, Opened make, int number, List<SewingPlan.Operation> all) {
    public SewPage {
        all = List.copyOf(all);
    }

    static SewPage of(Opened make, int number) {
        return new SewPage(
                Frame.of(make, Frame.Stop.SEW), make, number, make.session().sewing().operations());
    }

    private SewingPlan.Operation step() {
        return all.get(number - 1);
    }

    public String now() {
        return say(Tell.said("sew.now", Part.count(number), Part.count(all.size()), step().place().said()));
    }

    public String action() {
        return say(step().name().said());
    }

    public String instruction() {
        return say(step().instruction());
    }

    public String check() {
        return step().check().isNothing() ? "" : say(Tell.said("result.look", step().check()));
    }

    public boolean isLast() {
        return number == all.size();
    }

    public String address(int step) {
        return make.address() + "/sew/" + step;
    }

    public String say(String key) {
        return say(Tell.said(key));
    }

    private String say(Part part) {
        return make.voice().say(part);
    }
}
