package stretchwright.web;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import stretchwright.body.Measure;
import stretchwright.body.Value;
import stretchwright.fit.FitReport;
import stretchwright.ground.Part;
import stretchwright.ground.Said;
import stretchwright.ground.Voice;
import stretchwright.make.Made;
import stretchwright.make.Session;
import stretchwright.print.cloth.ClothWords;
import stretchwright.print.fit.FitTables;
import stretchwright.print.kit.Amounts;
import stretchwright.print.kit.FileGroup;
import stretchwright.report.Report;
import stretchwright.sewing.SewingPlan;

/** A make as the page shows it: numbers as texts, in the maker's unit. */
public record ResultPage(String id, Session session, Made made) {

    /** One verdict, its severity as a class and as told; the sign tells it apart without colour. */
    public record Verdict(String severity, String told, String sign, String about, String words, List<String> tried) {}

    public record File(String name, String kind) {}

    public String name() {
        return made.make().name();
    }

    public String wearer() {
        return made.make().wearer();
    }

    public boolean stops() {
        return made.stops();
    }

    public String lengthUnit() {
        return made.make().unit().symbol();
    }

    public List<Verdict> verdicts() {
        Voice voice = Voice.of(made.make().unit());
        return made.fit().verdicts().stream()
                .sorted(Comparator.comparing(FitReport.Verdict::severity))
                .map(v -> new Verdict(
                        v.severity().word(),
                        voice.say(v.severity().said()),
                        sign(v.severity()),
                        voice.say(v.about()),
                        voice.say(v.message().and(v.remedy())),
                        v.tried().stream().map(t -> FitTables.tried(t, voice)).toList()))
                .toList();
    }

    /** Also good to know: notes beyond the three. */
    public List<String> asides() {
        Voice voice = Voice.of(made.make().unit());
        return made.fit().asides().stream()
                .map(v -> voice.say(v.about()) + ": " + voice.say(v.message().and(v.remedy())))
                .toList();
    }

    private static String sign(FitReport.Severity severity) {
        return switch (severity) {
            case STOP -> "\u2716";
            case CAUTION -> "\u25B2";
            case NOTE -> "\u2022";
        };
    }

    /** The numbers of the fit check, those of the printed sheet. */
    public List<FitTables.Table> tables() {
        return FitTables.of(made.fit(), made.pattern(), made.make().unit());
    }

    /** What the signs in them mean. */
    public String signs() {
        return FitTables.signs(made.make().fabric(), made.make().unit());
    }

    /** Where there is more of it than the drawing, that too. */
    public String patternCaption() {
        boolean inTrueSize = Offered.of(session.make()).contains(FileGroup.PATTERN);
        return inTrueSize ? say("result.pattern-caption") : say("result.pattern-caption-alone");
    }

    public boolean plotted() {
        return session.printables().stream().anyMatch(p -> p.name().equals("fit.svg"));
    }

    /** Term, value, given or estimated, spread. */
    public List<List<String>> measures() {
        List<List<String>> rows = new ArrayList<>();
        for (Measure m : Measure.values()) {
            Value v = made.body().value(m);
            rows.add(List.of(
                    say(m.said()),
                    length(v.mm()),
                    v.origin() == Value.Origin.GIVEN ? say("result.given") : say("result.estimated"),
                    "\u00B1 " + length(v.spread())));
        }
        return rows;
    }

    public String say(String key) {
        return say(Tell.said(key));
    }

    /** In words, in the maker's unit. */
    public String say(Part part) {
        return Voice.of(made.make().unit()).say(part);
    }

    public List<SewingPlan.Operation> steps() {
        return made.sewing().operations();
    }

    public String work() {
        return say(Tell.said(
                "result.work",
                Part.count(steps().size()),
                Part.number(made.sewing().minutes(), 0),
                Part.count(made.sewing().changeovers())));
    }

    public List<String> toBuy() {
        List<Said> lines = new ArrayList<>();
        Part length = Part.cloth(made.lay().length());
        if (made.make().fabric().roll().shape().outline().isPresent()) {
            lines.add(Tell.said("buy.remnant", length));
        } else {
            lines.add(Tell.said(
                    "buy.fabric",
                    Part.text(Amounts.toBuy(made.use().buying())),
                    Part.length(made.make().fabric().roll().usableWidth()),
                    length));
            lines.add(Tell.said(
                    "buy.sum",
                    Part.text(ClothWords.sum(made.use().buying(), made.make().unit()))));
        }
        made.contrastWords().forEach(c -> lines.add(Tell.said("buy.and", c)));
        made.use()
                .onHand()
                .ifPresent(hand -> lines.add(Tell.said(
                        "buy.on-hand",
                        Part.length(hand.have()),
                        Part.text(ClothWords.onHand(hand, made.make().unit())))));
        double metres = made.use().buying().bought() / 1000;
        made.make()
                .fabric()
                .roll()
                .price()
                .ifPresent(p -> lines.add(Tell.said("buy.price", Part.text(Voice.fixed(p.perMetre() * metres, 2)))));
        made.sewing()
                .thread()
                .forEach((machine, m) ->
                        lines.add(Tell.said("buy.thread", machine.said(), Part.number(Math.ceil(m), 0))));
        return lines.stream().map(this::say).toList();
    }

    public String lay() {
        return say(Tell.said(
                "result.laid",
                made.lay().method().said(),
                Part.cloth(made.lay().length()),
                Part.share(made.lay().use())));
    }

    public List<File> files() {
        List<File> files = new ArrayList<>();
        Set<FileGroup> offered = Offered.of(session.make());
        session.printables().stream()
                .filter(p -> offered.contains(p.group()))
                .forEach(p -> files.add(new File(p.name(), say(kind(p.group())))));
        files.add(new File(Report.NAME, say("file.report")));
        return files;
    }

    private String length(double mm) {
        return say(Part.bare(mm));
    }

    private static Said kind(FileGroup group) {
        return switch (group) {
            case PATTERN -> Tell.said("file.pattern");
            case OTHER_PAPERS -> Tell.said("file.other-papers");
            case PROJECTOR -> Tell.said("file.projector");
            case TRACING -> Tell.said("file.tracing");
            case LAY -> Tell.said("file.lay");
            case PLAN -> Tell.said("file.plan");
            case BOOKLET -> Tell.said("file.booklet");
            case CHECKLIST -> Tell.said("file.checklist");
            case STEPS -> Tell.said("file.steps");
            case FIT -> Tell.said("file.fit");
            case EXCHANGE -> Tell.said("file.exchange");
        };
    }

    /** Where a step is done, and by which stitch. */
    public String place(SewingPlan.Operation o) {
        return o.stitch()
                .map(s -> say(Tell.said(
                        "result.place-stitch", o.place().said(), Part.text(Integer.toString(s.number())), s.said())))
                .orElseGet(() -> say(o.place().said()));
    }

    public String look(SewingPlan.Operation o) {
        return say(Tell.said("result.look", o.check()));
    }

    public String wearerLine() {
        return say(Tell.said("result.for", Part.text(wearer())));
    }

    public String measuresTitle() {
        return say(Tell.said("result.measures", Part.text(lengthUnit())));
    }

    public List<String> measuresHead() {
        return List.of(say("result.measure"), say("result.value"), say("result.origin"), say("result.spread"));
    }
}
