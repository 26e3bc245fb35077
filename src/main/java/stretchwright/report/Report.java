package stretchwright.report;

import java.util.List;
import stretchwright.body.Body;
import stretchwright.fit.FitReport;
import stretchwright.ground.Document;
import stretchwright.ground.Json;
import stretchwright.ground.Numbers;
import stretchwright.ground.Voice;
import stretchwright.intake.MakeFile;
import stretchwright.intake.Table;
import stretchwright.lay.ClothLay;
import stretchwright.pattern.Pattern;
import stretchwright.sewing.SewingPlan;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * The report as JSON: millimetres, degrees, kilopascals, minutes; shares, not percent; y up; polygons
 * counter-clockwise. Field names are a contract (report.schema.json): extended, never renamed.
 */
public final class Report {
    public static final String NAME = "report.json";
    private static final String KIND = "report";

    private Report() {}

    /** The finished file; its own entry in files[] tells its own size. */
    public static Document document(
            MakeFile make,
            Body body,
            Pattern pattern,
            FitReport fit,
            List<ClothLay> lays,
            SewingPlan sewing,
            List<Document> others) {
        ObjectNode report = node();
        report.put("stretchwright", MakeFile.VERSION);
        report.put("name", make.name());
        ObjectNode program = report.putObject("program");
        program.put("version", Program.VERSION);
        program.put("seed", make.seed());
        report.put("unit", make.unit().symbol());
        ReportWearer.wearer(report.putObject("wearer"), make, body);
        ReportEcho.section(report.putObject("fabric"), "fabric", make, Table.keys());
        if (make.boot().isPresent()) {
            ReportEcho.section(report.putObject("boot"), "boot", make, Table.keys());
        }
        ReportEcho.section(report.putObject("style"), "style", make, Table.keys());
        ReportWearer.history(report, make.worn());
        ArrayNode machines = report.putArray("machines");
        make.machines().forEach(machine -> machines.add(machine.word()));
        ReportPattern.pattern(report.putObject("pattern"), pattern, Voice.of(make.unit()));
        ReportResults.fit(report.putObject("fit"), fit, Voice.of(make.unit()));
        ReportCloth.lays(report.putObject("lay"), lays);
        ReportSewing.plan(report.putObject("sewing"), sewing, make.unit());
        cost(report.putObject("cost"), lays);
        files(report, others);
        return new Document(NAME, KIND, 1, withOwnSize(report));
    }

    /** What of the cloths has a price; the first with one tells its metres too. */
    private static void cost(ObjectNode out, List<ClothLay> lays) {
        List<ClothLay> priced =
                lays.stream().filter(l -> l.fabric().roll().price().isPresent()).toList();
        if (priced.isEmpty()) {
            return;
        }
        out.put("fabric", Numbers.mm(priced.stream().mapToDouble(Report::cost).sum()));
        out.put("pricePerMetre", Numbers.mm(perMetre(priced.get(0))));
        out.put("metres", Numbers.share(priced.get(0).use().buying().bought() / 1000));
    }

    private static double cost(ClothLay l) {
        return perMetre(l) * l.use().buying().bought() / 1000;
    }

    private static double perMetre(ClothLay l) {
        return l.fabric().roll().price().orElseThrow().perMetre();
    }

    private static void files(ObjectNode report, List<Document> others) {
        ArrayNode files = report.putArray("files");
        for (Document d : others) {
            file(files.addObject(), d.name(), d.kind(), d.pages()).put("bytes", d.bytes().length);
        }
        file(files.addObject(), NAME, KIND, 1);
    }

    private static ObjectNode file(ObjectNode out, String name, String kind, int pages) {
        return out.put("name", name).put("kind", kind).put("pages", pages);
    }

    /**
     * The report names its own size, which depends on the digits of that number: repeated until it agrees. Two sizes
     * that chase each other (possible only at a power of ten) leave it out.
     */
    private static byte[] withOwnSize(ObjectNode report) {
        ArrayNode files = (ArrayNode) report.get("files");
        ObjectNode own = (ObjectNode) files.get(files.size() - 1);
        int size = 0;
        for (int attempt = 0; attempt < 5; attempt++) {
            own.put("bytes", size);
            byte[] bytes = Json.bytes(report);
            if (bytes.length == size) {
                return bytes;
            }
            size = bytes.length;
        }
        own.remove("bytes");
        return Json.bytes(report);
    }

    public static ObjectNode node() {
        return Json.node();
    }

    public static String text(ObjectNode node) {
        return Json.text(node);
    }
}
