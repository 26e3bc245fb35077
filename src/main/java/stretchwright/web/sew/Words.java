package stretchwright.web.sew;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import stretchwright.ground.Part;
import stretchwright.ground.Said;
import stretchwright.ground.Voice;
import stretchwright.pattern.Stitch;
import stretchwright.sewing.Setting;
import stretchwright.sewing.SewingPlan;
import stretchwright.sewing.SewingPlan.Operation;

/** What the screens say of a plan, in the maker's unit. */
public record Words(Voice voice) {
    /** A line of a list: what, and how it is. */
    public record Line(String what, String how) {}

    String say(Part part) {
        return voice.say(part);
    }

    /** What to do, first; the name where the sewer wrote no more than that. */
    String action(Operation o) {
        return o.instruction().isNothing()
                ? say(new Part.Capital(o.name().said()))
                : say(o.instruction().first());
    }

    /** What to watch: the other sentences, and which side is stretched to the other. */
    List<String> watch(Operation o) {
        List<String> all = new ArrayList<>();
        String rest = say(o.instruction().then().stream().reduce(Said.NOTHING, Said::and));
        if (!rest.isBlank()) {
            all.add(rest);
        }
        o.help().spread().forEach(s -> all.add(sentence(say(new Part.Capital(s)))));
        return all;
    }

    String minutes(Operation o) {
        return say(Tell.said("sew.minutes", Part.count((long) Math.max(1, Math.rint(o.minutes())))));
    }

    /** How the machine is set and what the seam is. */
    List<Line> settings(Operation o) {
        List<Line> all = new ArrayList<>();
        all.add(line(Tell.said("sew.place"), o.place().said()));
        o.stitch().ifPresent(s -> all.add(stitch(s)));
        o.help().setting().ifPresent(s -> all.addAll(setting(s)));
        if (!o.seam().isBlank()) {
            all.add(line(Tell.said("sew.seam"), Part.text(o.seam())));
        }
        if (!o.help().allowances().isEmpty()) {
            List<Part> widths = o.help().allowances().stream()
                    .distinct()
                    .<Part>map(Part::sewn)
                    .toList();
            all.add(line(Tell.said("sew.allowance"), Part.listed(Part.Join.COMMA, widths)));
        }
        if (o.length() > 0) {
            all.add(line(Tell.said("sew.length"), Part.length(o.length())));
        }
        o.help()
                .demand()
                .ifPresent(d -> all.add(line(
                        Tell.said("sew.worst-pose"),
                        Tell.said(
                                d.breaks() ? "sew.demand-breaks" : "sew.demand",
                                d.pose(),
                                share(d.needed()),
                                share(d.stands())))));
        return all;
    }

    /** What there is to do at a machine before its first step. */
    List<Line> settingUp(Operation o) {
        List<Line> all = new ArrayList<>();
        o.stitch().ifPresent(s -> all.add(stitch(s)));
        o.help().setting().ifPresent(s -> all.addAll(setting(s)));
        return all;
    }

    private static Part share(double share) {
        return new Part.Share(share, 0, false);
    }

    Line stitch(Stitch stitch) {
        return line(Tell.said("sew.stitch"), Tell.said("sew.stitch-is", stitch.said(), Part.count(stitch.number())));
    }

    List<Line> setting(Setting s) {
        List<Line> all = new ArrayList<>();
        all.add(line(Tell.said("sew.stitch-length"), Tell.said("sew.mm", new Part.Number(s.stitchLength(), 2))));
        all.add(line(Tell.said("sew.needle"), s.needle()));
        all.add(line(Tell.said("sew.thread"), s.thread()));
        s.feed().ifPresent(f -> all.add(line(Tell.said("sew.feed"), new Part.Number(f, 2))));
        all.add(line(Tell.said("sew.note"), s.note()));
        return all.stream().filter(l -> !l.how().isBlank()).toList();
    }

    /** What a machine is threaded with: each thread's length and how many cones or spools that takes. */
    List<Line> threads(SewingPlan plan, Operation at) {
        return plan.threads().stream()
                .filter(t -> t.machine() == at.place())
                .map(t -> line(
                        new Part.Capital(t.position().said()),
                        Tell.said(
                                "sew.spools",
                                new Part.Number(t.metres(), 0),
                                Part.count(t.count()),
                                new Part.Number(t.length(), 0))))
                .toList();
    }

    private Line line(Part what, Part how) {
        return new Line(say(what), say(how));
    }

    /** What often goes wrong, and how it is put right. */
    List<String> wrong(Operation o) {
        List<String> all = new ArrayList<>();
        if (!o.help().mistake().isNothing()) {
            all.add(say(o.help().mistake()));
        }
        if (!o.help().undo().isNothing()) {
            all.add(say(o.help().undo()));
        }
        return all;
    }

    /** Why it is done here and not elsewhere; steps that come before for one reason are named together. */
    List<String> why(Operation o) {
        Map<Said, List<Part>> reasons = new LinkedHashMap<>();
        o.help().why().stream()
                .filter(r -> !r.because().isNothing())
                .forEach(r -> reasons.computeIfAbsent(r.because(), b -> new ArrayList<>())
                        .add(Part.count(r.step())));
        return reasons.entrySet().stream()
                .map(e -> say(Tell.said("sew.after", Part.listed(Part.Join.AND, e.getValue()), e.getKey())))
                .collect(Collectors.toList());
    }

    private static String sentence(String words) {
        return words.matches(".*[.!?)]") ? words : words + ".";
    }
}
