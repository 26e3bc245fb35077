package stretchwright.web;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import stretchwright.body.Measure;
import stretchwright.body.Value;
import stretchwright.fit.FitReport;
import stretchwright.ground.Part;
import stretchwright.ground.Unit;
import stretchwright.ground.Voice;
import stretchwright.make.Made;
import stretchwright.make.Session;
import stretchwright.print.cloth.ClothWords;
import stretchwright.print.fit.FitTables;
import stretchwright.print.kit.Amounts;
import stretchwright.report.Report;
import stretchwright.sewing.SewingPlan;

/** A make as the page shows it: numbers as texts, in the maker's unit. */
public record ResultPage(String id, Session session, Made made) {

    /** One verdict; the sign tells it apart without colour. */
    public record Verdict(String severity, String sign, String about, String words, List<String> tried) {}

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
                        sign(v.severity()),
                        voice.say(v.about()),
                        voice.say(v.message().and(v.remedy())),
                        v.tried().stream().map(t -> FitTables.tried(t, voice)).toList()))
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
        return FitTables.signs();
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
                    m.term(),
                    length(v.mm()),
                    v.origin() == Value.Origin.GIVEN ? "given" : "estimated",
                    "\u00B1 " + length(v.spread())));
        }
        return rows;
    }

    /** In words, in the maker's unit. */
    public String say(Part part) {
        return Voice.of(made.make().unit()).say(part);
    }

    public List<SewingPlan.Operation> steps() {
        return made.sewing().operations();
    }

    public String work() {
        return String.format(
                Locale.ROOT,
                "%d steps, %.0f minutes for a practised sewer from cut pieces, changes of machine: %d.",
                steps().size(),
                made.sewing().minutes(),
                made.sewing().changeovers());
    }

    public List<String> toBuy() {
        List<String> lines = new ArrayList<>();
        double mm = made.use().buying().bought();
        if (made.make().fabric().roll().shape().outline().isPresent()) {
            lines.add(String.format(
                    Locale.ROOT,
                    "Fabric: the remnant on hand. The lay takes %.2f m of its length.",
                    made.lay().length() / 1000));
        } else {
            lines.add(String.format(
                    Locale.ROOT,
                    "Fabric: %s, %s %s wide between the selvages. The lay itself needs %.2f m.",
                    Amounts.toBuy(made.use().buying()),
                    length(made.make().fabric().roll().usableWidth()),
                    lengthUnit(),
                    made.lay().length() / 1000));
            lines.add("As a sum: "
                    + ClothWords.sum(made.use().buying(), made.make().unit()));
        }
        made.contrastWords()
                .forEach(c -> lines.add("And " + Voice.of(made.make().unit()).say(c) + "."));
        made.use()
                .onHand()
                .ifPresent(hand -> lines.add("On hand: "
                        + length(hand.have()) + " " + lengthUnit() + ". It "
                        + ClothWords.onHand(hand, made.make().unit()) + "."));
        made.make()
                .fabric()
                .roll()
                .price()
                .ifPresent(p ->
                        lines.add(String.format(Locale.ROOT, "Price of the fabric: %.2f", p.perMetre() * mm / 1000)));
        made.sewing()
                .thread()
                .forEach((machine, metres) ->
                        lines.add(String.format(Locale.ROOT, "Thread, %s: %.0f m", machine, Math.ceil(metres))));
        return lines;
    }

    public String lay() {
        return String.format(
                Locale.ROOT,
                "Laid %s: %.2f m long, %.0f %% of the cloth used.",
                made.lay().method().word(),
                made.lay().length() / 1000,
                made.lay().use() * 100);
    }

    public List<File> files() {
        List<File> files = new ArrayList<>();
        session.printables().forEach(p -> files.add(new File(p.name(), p.group().word())));
        files.add(new File(Report.NAME, "report"));
        return files;
    }

    private String length(double mm) {
        Unit unit = made.make().unit();
        return unit == Unit.IN
                ? Voice.of(unit).say(Part.bare(mm))
                : String.format(Locale.ROOT, unit == Unit.MM ? "%.0f" : "%.1f", unit.fromMm(mm));
    }
}
