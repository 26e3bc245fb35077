package stretchwright.report;

import java.util.List;
import java.util.Locale;
import stretchwright.ground.Numbers;
import stretchwright.ground.Point;
import stretchwright.ground.Voice;
import stretchwright.pattern.Edge;
import stretchwright.pattern.Level;
import stretchwright.pattern.Mark;
import stretchwright.pattern.Moved;
import stretchwright.pattern.Notch;
import stretchwright.pattern.Notion;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Piece;
import stretchwright.pattern.Reason;
import stretchwright.pattern.Seam;
import stretchwright.pattern.WhichLeg;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** The pattern in the report. */
public final class ReportPattern {
    private ReportPattern() {}

    static void pattern(ObjectNode out, Pattern pattern, Voice voice) {
        ArrayNode pieces = out.putArray("pieces");
        pattern.pieces().forEach(p -> piece(pieces.addObject(), p));
        ArrayNode seams = out.putArray("seams");
        pattern.seams().forEach(s -> seam(seams.addObject(), s));
        ArrayNode levels = out.putArray("levels");
        for (Level level : pattern.levels()) {
            ObjectNode node = levels.addObject();
            if (level.leg() != WhichLeg.BOTH) {
                node.put("leg", level.leg().word());
            }
            node.put("level", level.name().word())
                    .put("height", Numbers.mm(level.height()))
                    .put("width", Numbers.mm(level.width()));
        }
        ReportHolds.holds(out.putArray("holds"), pattern, voice);
        ArrayNode notions = out.putArray("notions");
        for (Notion n : pattern.notions()) {
            notions.addObject()
                    .put("name", n.name().word())
                    .put("count", n.count())
                    .put("width", Numbers.mm(n.width()))
                    .put("cut", Numbers.mm(n.cut()))
                    .put("worn", Numbers.mm(n.worn()))
                    .put("ends", Numbers.mm(n.ends()))
                    .put("lap", Numbers.mm(n.lap()))
                    .put("piece", n.piece().word())
                    .put("edge", n.edge().word());
        }
        Pattern.Reductions r = pattern.reductions();
        out.putObject("reductions")
                .put("across", Numbers.share(r.across()))
                .put("along", Numbers.share(r.along()))
                .put("rise", Numbers.share(r.rise()))
                .put("crotch", Numbers.share(r.crotch()))
                .put("waistband", Numbers.share(r.waistband()))
                .put("hem", Numbers.share(r.hem()));
        if (!pattern.moved().isEmpty()) {
            moved(out.putArray("moved"), pattern);
        }
        reasons(out.putArray("reasons"), pattern.reasons(), voice);
    }

    private static void moved(ArrayNode out, Pattern pattern) {
        for (Moved moved : pattern.moved()) {
            ObjectNode points = out.addObject()
                    .put("by", moved.word())
                    .put("amount", Numbers.mm(moved.amount()))
                    .putObject("points");
            moved.shifts().by().forEach((shift, mm) -> points.put(shift.word(), Numbers.mm(mm)));
        }
    }

    public static void reasons(ArrayNode out, List<Reason> all, Voice voice) {
        all.forEach(why -> reason(out.addObject(), why, voice));
    }

    private static void reason(ObjectNode out, Reason reason, Voice voice) {
        out.put("dimension", reason.dimension().word());
        out.put("value", Numbers.mm(reason.value()));
        out.put("unit", reason.unit());
        out.put("rule", voice.say(reason.rule()));
        ArrayNode inputs = out.putArray("inputs");
        for (Reason.Input input : reason.inputs()) {
            inputs.addObject()
                    .put("name", voice.say(input.name()))
                    .put("value", Numbers.mm(input.value()))
                    .put("unit", input.unit())
                    .put("from", input.from().word());
        }
        out.put("source", voice.say(reason.source()));
    }

    private static void piece(ObjectNode out, Piece piece) {
        out.put("name", piece.name().word());
        out.put("cut", piece.cut());
        out.put("mirrored", piece.mirrored());
        out.put("onFold", piece.onFold());
        points(out.putArray("cutLine"), piece.cutLine().points());
        points(out.putArray("sewLine"), piece.sewLine().points());
        points(
                out.putArray("grain"),
                List.of(piece.grain().from(), piece.grain().to()));
        ArrayNode notches = out.putArray("notches");
        piece.notches().forEach(n -> notch(notches.addObject(), n));
        ArrayNode edges = out.putArray("edges");
        for (Edge edge : piece.edges()) {
            edges.addObject()
                    .put("name", edge.name().word())
                    .put("length", Numbers.mm(edge.length()))
                    .put("allowance", Numbers.mm(edge.allowance()));
        }
        ArrayNode marks = out.putArray("marks");
        for (Mark mark : piece.marks()) {
            ObjectNode one = marks.addObject();
            one.put("name", mark.name().word());
            one.put("kind", mark.kind().name().toLowerCase(Locale.ROOT));
            points(one.putArray("line"), mark.line().points());
        }
        out.put("area", Numbers.mm(piece.cutLine().area()));
    }

    private static void notch(ObjectNode out, Notch notch) {
        out.put("name", notch.name().word());
        point(out.putArray("at"), notch.at());
        out.put("edge", notch.edge().word());
        out.put("along", Numbers.mm(notch.along()));
        out.put("mark", notch.mark().name().toLowerCase(Locale.ROOT));
    }

    private static void seam(ObjectNode out, Seam seam) {
        out.put("name", seam.name().word());
        out.put("role", seam.role().name().toLowerCase(Locale.ROOT).replace('_', ' '));
        ArrayNode sides = out.putArray("sides");
        for (Seam.Side side : seam.sides()) {
            sides.addObject()
                    .put("piece", side.piece().word())
                    .put("edge", side.edge().word())
                    .put("length", Numbers.mm(side.length()));
        }
        out.put("ease", Numbers.mm(seam.ease()));
        out.put("allowance", Numbers.mm(seam.allowance()));
        out.put("times", seam.times());
    }

    private static void points(ArrayNode out, List<Point> points) {
        points.forEach(p -> point(out.addArray(), p));
    }

    private static void point(ArrayNode out, Point p) {
        out.add(Numbers.mm(p.x())).add(Numbers.mm(p.y()));
    }
}
