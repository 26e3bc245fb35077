package stretchwright.many;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import stretchwright.body.Body;
import stretchwright.body.Companion;
import stretchwright.body.Doubt;
import stretchwright.body.MeasureGuide;
import stretchwright.body.Measuring;
import stretchwright.body.NextMeasure;
import stretchwright.body.Side;
import stretchwright.body.Value;
import stretchwright.ground.BadInput;
import stretchwright.ground.Document;
import stretchwright.ground.Finding;
import stretchwright.ground.Findings;
import stretchwright.ground.Numbers;
import stretchwright.ground.Part;
import stretchwright.ground.Said;
import stretchwright.ground.Voice;
import stretchwright.intake.BootGuide;
import stretchwright.intake.MakeFile;
import stretchwright.intake.MakeReader;
import stretchwright.intake.YamlTree;
import stretchwright.make.Make;
import stretchwright.print.cards.BodySvg;
import stretchwright.report.Report;
import stretchwright.report.ReportWearer;
import tools.jackson.databind.node.ObjectNode;

/**
 * One wearer's measures, judged: the make room's answer to "is this body right?" before anything is drafted.
 *
 * <p>In: a make file, of which only unit and wearer are looked at. Out: a table for people, the same as JSON, a drawing
 * to scale where the measures go together, and the findings where they do not. Pure.
 */
public final class BodyCheck {
    private final MakeReader.WearerFile wearer;
    private final List<Finding> findings;
    private final Voice voice;
    private final Optional<Body> body;
    private final List<Companion> companions;
    private final List<Doubt> doubts;
    private final Optional<NextMeasure> next;

    private BodyCheck(MakeReader.WearerFile wearer, Findings findings) {
        this.wearer = wearer;
        this.body = Measuring.body(wearer.measured(), findings);
        this.findings = findings.all();
        this.voice = Voice.of(wearer.unit());
        this.companions = Measuring.companions(wearer.measured());
        this.doubts = body.map(Measuring::doubts).orElse(List.of());
        this.next = body.flatMap(Measuring::next);
    }

    /** @throws BadInput where the file cannot be read as far as the table needs */
    public static BodyCheck of(String fileName, byte[] bytes) {
        Findings findings = new Findings(fileName);
        Optional<MakeReader.WearerFile> wearer = Make.text(bytes, findings)
                .flatMap(text -> YamlTree.read(text, findings))
                .flatMap(keys -> MakeReader.wearer(keys, findings));
        findings.throwIfAny();
        MakeReader.WearerFile read = wearer.orElseThrow();
        return new BodyCheck(read, new Findings(fileName, read.unit()));
    }

    /** How to take every measure of a wearer and of a laced boot, as docs/measuring.md has it. */
    public static String guide() {
        return MeasureGuide.text(Voice.plain()) + BootGuide.text(Voice.plain());
    }

    /** Where the measures do not go together; then there is no drawing. */
    public List<Finding> findings() {
        return findings;
    }

    /** The table, line by line. */
    public List<String> table() {
        List<String> lines = new ArrayList<>();
        lines.add(voice.say(title()));
        lines.add(line(
                voice.say(Tell.said("body.measure")),
                voice.say(Tell.said("body.value")),
                "",
                voice.say(Tell.said("body.spread")),
                voice.say(Tell.said("body.expected")),
                voice.say(Tell.said("body.remark"))));
        Map<String, String> remarks = remarks();
        for (Companion c : companions) {
            String expected = c.expected().isEmpty()
                    ? ""
                    : shown(c.expected()) + " +- " + shown(c.expectedSpread().orElse(0));
            String term = voice.say(c.measure().said());
            String remark = remarks.getOrDefault(c.measure().term(), "");
            lines.add(line(term, shown(c.mm()), told(c.origin()), "+- " + shown(c.spread()), expected, remark));
            body.ifPresent(b -> sides(c, b, lines));
        }
        next.ifPresent(
                n -> lines.add(voice.say(Tell.said("body.next", n.measure().said(), n.why()))));
        return lines;
    }

    private void sides(Companion c, Body b, List<String> lines) {
        for (Side side : Side.values()) {
            Value value = b.legs().own(side).get(c.measure());
            boolean hard = b.legs().hard(side).contains(c.measure());
            if (value != null || hard) {
                Value v = value == null ? b.value(c.measure()) : value;
                lines.add(line(
                        "  " + voice.say(side == Side.LEFT ? Tell.said("body.left") : Tell.said("body.right")),
                        shown(v.mm()),
                        told(v.origin()),
                        "+- " + shown(v.spread()),
                        "",
                        hard ? voice.say(Tell.said("body.hard")) : ""));
            }
        }
    }

    /** By term: the finding, or else the doubt. */
    private Map<String, String> remarks() {
        Map<String, String> remarks = new HashMap<>();
        doubts.forEach(d -> remarks.putIfAbsent(d.measure().term(), voice.say(Tell.said("body.doubt", d.message()))));
        for (Finding f : findings) {
            String term = f.key().replaceFirst("^wearer\\.measurements\\.", "").replaceFirst("\\.(left|right)$", "");
            remarks.put(term, voice.say(Tell.said("body.finding", f.wrong())));
        }
        return remarks;
    }

    private static String line(String measure, String value, String origin, String spread, String rest, String remark) {
        return String.format(
                        Locale.ROOT, "  %-20s %8s  %-9s  %8s  %17s  %s", measure, value, origin, spread, rest, remark)
                .stripTrailing();
    }

    private Said title() {
        Part figure = switch (wearer.measured().figure()) {
            case WOMAN -> Tell.said("body.woman");
            case MAN -> Tell.said("body.man");
            case CHILD -> Tell.said("body.child");
        };
        Part unit = wearer.unit().said();
        return wearer.name().isEmpty()
                ? Tell.said("body.title", figure, unit)
                : Tell.said("body.title-of", Part.text(wearer.name()), figure, unit);
    }

    private String told(Value.Origin origin) {
        return voice.say(origin == Value.Origin.GIVEN ? Tell.said("body.given") : Tell.said("body.estimated"));
    }

    /** As written for other programs. */
    private static String origin(Value.Origin origin) {
        return origin == Value.Origin.GIVEN ? "given" : "estimated";
    }

    private String shown(OptionalDouble mm) {
        return shown(mm.orElse(Double.NaN));
    }

    private String shown(double mm) {
        return Double.isNaN(mm) ? Double.toString(mm) : voice.say(Part.bare(mm));
    }

    /** The same in millimetres, for other programs. */
    public String json() {
        ObjectNode out = Report.node();
        out.put("bodyCheck", MakeFile.VERSION);
        out.put("name", wearer.name());
        out.put("figure", wearer.measured().figure().word());
        wearer.measured().age().ifPresent(age -> out.put("age", Numbers.mm(age)));
        out.put("seated", wearer.measured().seated());
        ObjectNode measurements = out.putObject("measurements");
        for (Companion c : companions) {
            ObjectNode one = measurements.putObject(c.measure().term());
            if (Double.isFinite(c.mm())) {
                one.put("value", Numbers.mm(c.mm()));
            }
            one.put("origin", origin(c.origin()));
            one.put("spread", Numbers.mm(c.spread()));
            c.expected().ifPresent(mm -> one.put("expected", Numbers.mm(mm)));
            c.expectedSpread().ifPresent(mm -> one.put("expectedSpread", Numbers.mm(mm)));
            body.ifPresent(b -> ReportWearer.sides(one, c.measure(), wearer.measured(), b));
        }
        var list = out.putArray("findings");
        findings.forEach(f ->
                list.addObject().put("key", f.key()).put("problem", f.problem()).put("remedy", f.remedy()));
        if (body.isPresent()) {
            ReportWearer.doubts(out.putArray("doubts"), body.get(), wearer.unit());
        }
        next.ifPresent(n -> ReportWearer.next(out.putObject("measureNext"), n, wearer.unit()));
        return Report.text(out);
    }

    /** body.json and, where the measures go together, body.svg; in the order of their names. */
    public List<Document> documents() {
        List<Document> all = new ArrayList<>();
        all.add(new Document("body.json", "body check", 1, json().getBytes(StandardCharsets.UTF_8)));
        body.ifPresent(b -> all.add(BodySvg.of(b, wearer.name(), wearer.unit())));
        all.sort(Comparator.comparing(Document::name));
        return all;
    }
}
