package stretchwright.many;

import java.nio.charset.StandardCharsets;
import java.util.List;
import stretchwright.ground.Document;
import stretchwright.ground.Numbers;
import stretchwright.intake.MakeFile;
import stretchwright.lay.Buying;
import stretchwright.lay.ClubLay;
import stretchwright.lay.CuttingGuide;
import stretchwright.lay.Lay;
import stretchwright.lay.nest.Effort;
import stretchwright.report.Program;
import stretchwright.report.Report;
import stretchwright.report.ReportCloth;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * club.json: millimetres and shares, fields as in the report's lay (docs/formats.md). Field names are a contract
 * (club.schema.json): extended, never renamed.
 */
final class ClubJson {
    static final String NAME = "club.json";
    private static final String KIND = "club";

    private ClubJson() {}

    static Document document(Club club, List<Document> others) {
        ObjectNode out = Report.node();
        out.put("stretchwright", MakeFile.VERSION);
        out.putObject("program")
                .put("version", Program.VERSION)
                .put("seed", club.wish().work().seed());
        out.put("unit", club.unit().symbol());
        club(out.putObject("club"), club);
        ArrayNode files = out.putArray("files");
        others.forEach(d -> files.addObject()
                .put("name", d.name())
                .put("kind", d.kind())
                .put("pages", d.pages())
                .put("bytes", d.bytes().length));
        files.addObject().put("name", NAME).put("kind", KIND).put("pages", 1);
        return new Document(NAME, KIND, 1, Report.text(out).getBytes(StandardCharsets.UTF_8));
    }

    private static void club(ObjectNode out, Club club) {
        club.wish().table().ifPresent(t -> out.put("tableLength", Numbers.mm(t)));
        Effort effort = club.wish().work().effort();
        if (!effort.equals(Effort.UNLIMITED) && !club.stopped()) {
            out.putArray("rounds").add(effort.explore()).add(effort.compress());
        }
        garments(out.putArray("garments"), club);
        ArrayNode tables = out.putArray("tables");
        club.tables().forEach(t -> table(tables.addObject(), club, t));
        Buying buying = club.buying();
        out.put("length", Numbers.mm(club.length()));
        ReportCloth.sum(out.putObject("sum"), buying);
        out.put("needed", Numbers.mm(buying.needed()));
        out.put("buy", Numbers.mm(buying.bought()));
        club.onHand()
                .ifPresent(h -> out.putObject("onHand")
                        .put("have", Numbers.mm(h.have()))
                        .put("verdict", h.verdict().word())
                        .put("needed", Numbers.mm(h.needed()))
                        .put("spare", Numbers.mm(h.spare())));
        out.put("alone", Numbers.mm(club.alone()));
        out.put("saved", Numbers.share(club.saved()));
    }

    private static void garments(ArrayNode out, Club club) {
        for (ClubMember m : club.members()) {
            ObjectNode one = out.addObject();
            one.put("name", m.name())
                    .put("file", m.make().file())
                    .put("make", m.make().name())
                    .put("wearer", m.make().wearer())
                    .put("table", tableOf(club, m.name()))
                    .put("stops", m.fit().stops())
                    .put("alone", Numbers.mm(club.alone(m)));
        }
    }

    private static int tableOf(Club club, String name) {
        int number = 1;
        for (ClubLay.Table t : club.tables()) {
            if (t.garments().stream().anyMatch(g -> g.name().equals(name))) {
                return number;
            }
            number++;
        }
        throw new IllegalStateException(name + " lies on no table");
    }

    private static void table(ObjectNode out, Club club, ClubLay.Table table) {
        Lay lay = table.lay();
        ArrayNode garments = out.putArray("garments");
        table.garments().forEach(g -> garments.add(g.name()));
        out.put("method", lay.method().word());
        if (lay.doubled() > 0) {
            out.put("doubled", Numbers.mm(lay.doubled()));
        }
        out.put("fabricWidth", Numbers.mm(lay.fabricWidth()));
        out.put("length", Numbers.mm(lay.length()));
        out.put("spread", Numbers.mm(lay.spreadLength()));
        out.put("needed", Numbers.mm(club.buying(table).needed()));
        out.put("use", Numbers.share(lay.use()));
        out.put("floor", Numbers.mm(lay.floor()));
        out.put("aboveFloor", Numbers.share(lay.aboveFloor()));
        ReportCloth.placements(out.putArray("placements"), lay);
        ReportCloth.guide(
                out.putArray("guide"),
                CuttingGuide.of(lay, table.pieces(), club.fabric(), club.terms().matchAt()),
                lay);
    }
}
