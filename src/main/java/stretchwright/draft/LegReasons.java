package stretchwright.draft;

import java.util.ArrayList;
import java.util.List;
import stretchwright.body.Body;
import stretchwright.body.Measure;
import stretchwright.pattern.Level;
import stretchwright.pattern.Piece;
import stretchwright.pattern.Reason;
import stretchwright.pattern.Reason.Input;

/** Why a drafted leg, still in one piece, is as wide and as long as it is. */
final class LegReasons {
    private static final String DOCS = "docs/maths/draft.md, ";

    /** Widths given way to the curve by less than this are not worth an input, mm. */
    private static final double SAME = 0.05;

    private final Leg leg;
    private final Piece piece;
    private final Order order;
    private final Body body;
    private final List<Reason> out = new ArrayList<>();

    private LegReasons(Leg leg, Piece piece) {
        this.leg = leg;
        this.piece = piece;
        this.order = leg.order();
        this.body = order.body();
    }

    /** @param frame whose hip and waist the leg shares with the other one */
    static List<Reason> of(Leg leg, Piece piece, Frame frame, List<Level> levels) {
        LegReasons reasons = new LegReasons(leg, piece);
        reasons.widths(levels, frame);
        reasons.heights();
        reasons.seams(frame);
        return reasons.out;
    }

    private void widths(List<Level> levels, Frame frame) {
        for (Level level : levels) {
            switch (level.name()) {
                case WAIST, HEM, BOOT_TOP, ANKLE -> {}
                case HIP ->
                    add(
                            "hip width, both legs",
                            level.width(),
                            "hip girth x (1 - reduction)",
                            "The frame",
                            measure(Measure.HIP_GIRTH),
                            across());
                case CROTCH -> crotchWidth(level, frame);
                case MID_THIGH -> girthWidth(level, Measure.MID_THIGH_GIRTH);
                case KNEE -> girthWidth(level, Measure.KNEE_GIRTH);
                case CALF -> girthWidth(level, Measure.CALF_GIRTH);
            }
        }
    }

    private void crotchWidth(Level level, Frame frame) {
        double wanted = frame.crotchWidth(order.holding().at(Level.Name.CROTCH).width());
        List<Input> inputs = inputs(measure(Measure.THIGH_GIRTH), across(Level.Name.CROTCH));
        ease(Level.Name.CROTCH, inputs);
        inputs.add(new Input("half the flat hip", frame.hip(), "mm", hipName()));
        evened(inputs, level.width() - wanted);
        add(
                "crotch width",
                level.width(),
                "the larger of thigh girth x (1 - reduction) and 1.12 x half the flat hip, so that the crotch hooks have room"
                        + given(level.width() - wanted),
                "The frame",
                inputs);
    }

    private void girthWidth(Level level, Measure girth) {
        double wanted = order.holding().at(level.name()).width();
        List<Input> inputs = inputs(measure(girth), across(level.name()));
        ease(level.name(), inputs);
        evened(inputs, level.width() - wanted);
        add(
                level.name().word() + " width",
                level.width(),
                girth.term() + " x (1 - reduction)" + given(level.width() - wanted),
                "The leg",
                inputs);
    }

    private static void evened(List<Input> inputs, double change) {
        if (Math.abs(change) > SAME) {
            inputs.add(new Input("evened out for a smooth inseam", change, "mm", "rule"));
        }
    }

    private static String given(double change) {
        return Math.abs(change) > SAME ? " + what the curve needs to stay smooth" : "";
    }

    private void heights() {
        add(
                "crotch height",
                piece.edge("front inseam").line().start().y(),
                "crotch height x (1 - reduction along)",
                "The leg",
                measure(Measure.CROTCH_HEIGHT),
                along());
        double hem = piece.edge("hem").line().start().y();
        Input cuff = new Input("finished cuff", order.style().cuffHeight().orElse(0), "mm", "style");
        add(
                "lower edge height",
                hem,
                "hem height + finished cuff; 0 is the floor of the bare foot",
                "Hems",
                new Input("hem height", leg.line().hemHeight(), "mm", name("hem height")),
                cuff);
    }

    private void seams(Frame frame) {
        double front = piece.edge("front crotch").length();
        double back = piece.edge("back crotch").length();
        double drop = order.style().dropBelowWaist();
        double along = front + back;
        double gusset = GussetCut.shortening(order.style());
        add(
                "crotch seam length",
                along,
                "(total crotch length - 2 x drop below the waist + front waist + back waist) x (1 - reduction along the crotch seam)"
                        + (gusset > 0 ? " + what the gusset is shorter than its hole" : "")
                        + (body.seated() ? " + 20 mm for who sits all day" : "")
                        + (order.body().legs().alike() ? "" : "; both legs are cut to the mean's"),
                "The top",
                measure(Measure.TOTAL_CROTCH_LENGTH),
                new Input("drop below the waist", drop, "mm", "style"),
                new Input("front waist", order.style().top().frontRaise(), "mm", "style"),
                new Input("back waist", order.style().top().backRaise(), "mm", "style"),
                new Input(ReductionReasons.CROTCH, 100 * order.reductions().crotch(), "%", ReductionReasons.CROTCH),
                new Input("gusset shorter than its hole", gusset, "mm", "style"));
        Input whole = new Input("crotch seam length", along, "mm", name("crotch seam length"));
        add(
                "front crotch length",
                front,
                "the front's part of the crotch seam: its curve hooks by the fullness that keeps the side at its height",
                "The top",
                whole,
                new Input("fullness", leg.top().fullness(), "", "rule"));
        add(
                "back crotch length",
                back,
                "crotch seam length - front crotch length",
                "The top",
                whole,
                new Input("front crotch length", front, "mm", name("front crotch length")));
        Input crotch = new Input("crotch height", leg.front().start().y(), "mm", name("crotch height"));
        Input end =
                new Input("lower edge height", piece.edge("hem").line().start().y(), "mm", name("lower edge height"));
        add(
                "front inseam length",
                piece.edge("front inseam").length(),
                "the curve through the widths of all levels, from the crotch height to the lower edge",
                "The leg",
                crotch,
                end);
        add(
                "back inseam length",
                piece.edge("back inseam").length(),
                "the front inseam's length: the back crotch point lies lower by as much as that takes",
                "The leg",
                new Input(
                        "front inseam length", piece.edge("front inseam").length(), "mm", name("front inseam length")),
                new Input(
                        "back crotch point lies lower by",
                        leg.front().start().y() - leg.back().start().y(),
                        "mm",
                        "rule"));
        add(
                "waist edge length",
                LegSet.of(piece).length("waist edge"),
                "half the flat hip, less what centre front and centre back lean in, as a curve square to both",
                "The frame",
                new Input("half the flat hip", frame.hip(), "mm", hipName()),
                new Input("centre front leans in", frame.slantFront(), "mm", "rule"),
                new Input("centre back leans in", frame.slantBack(), "mm", "rule"));
    }

    private void add(String what, double mm, String rule, String section, Input... inputs) {
        add(what, mm, rule, section, List.of(inputs));
    }

    private void add(String what, double mm, String rule, String section, List<Input> inputs) {
        out.add(new Reason(name(what), mm, rule, inputs, DOCS + section));
    }

    private String hipName() {
        return hipName(piece.name());
    }

    /** The hip goes round both legs and is told once, with the left one. */
    static String hipName(String leg) {
        return (leg + ": hip width, both legs").replaceFirst("^right ", "left ");
    }

    private String name(String what) {
        return piece.name() + ": " + what;
    }

    private static List<Input> inputs(Input... inputs) {
        return new ArrayList<>(List.of(inputs));
    }

    private Input measure(Measure measure) {
        Input input = measure(body, measure);
        double pads = Padded.bulge(measure, order.style().parts());
        return pads > 0 ? new Input(input.name() + " with pads", input.value(), "mm", input.from()) : input;
    }

    static Input measure(Body body, Measure measure) {
        return new Input(measure.term(), body.mm(measure), "mm", body.isGiven(measure) ? "measured" : "estimated");
    }

    private Input across() {
        return HoldReasons.input(Level.Name.HIP, order.holding(), "");
    }

    private Input across(Level.Name level) {
        return HoldReasons.input(level, order.holding(), piece.name());
    }

    private void ease(Level.Name level, List<Input> inputs) {
        double ease = order.style().ease().getOrDefault(level, 0.0);
        if (ease != 0) {
            inputs.add(new Input("ease at the " + level.word(), ease, "mm", "style"));
        }
    }

    private Input along() {
        return new Input(ReductionReasons.ALONG, 100 * order.reductions().along(), "%", ReductionReasons.ALONG);
    }
}
