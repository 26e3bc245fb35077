package stretchwright.report;

import java.util.List;
import stretchwright.ground.Numbers;
import stretchwright.ground.Point;
import stretchwright.ground.Unit;
import stretchwright.ground.Voice;
import stretchwright.lay.Buying;
import stretchwright.lay.ClothLay;
import stretchwright.lay.ClothUse;
import stretchwright.lay.CuttingGuide;
import stretchwright.lay.Lay;
import stretchwright.lay.Leftover;
import stretchwright.lay.Offcut;
import stretchwright.lay.OnHand;
import stretchwright.print.cloth.ClothWords;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** The lay and what follows from it in the report: the sum to buy, the order of cutting, what is left. */
public final class ReportCloth {
    private ReportCloth() {}

    /** The fabric's own lay; those on other cloths inside it. */
    static void lays(ObjectNode out, List<ClothLay> lays) {
        lay(out, lays.get(0).lay(), lays.get(0).use());
        if (lays.size() > 1) {
            ArrayNode contrasts = out.putArray("contrasts");
            lays.stream().skip(1).forEach(l -> {
                ObjectNode one = contrasts.addObject();
                one.put("cloth", l.fabric().roll().name());
                ArrayNode pieces = one.putArray("pieces");
                l.pieces().forEach(p -> pieces.add(p.name()));
                lay(one, l.lay(), l.use());
            });
        }
    }

    private static void lay(ObjectNode out, Lay lay, ClothUse use) {
        out.put("method", lay.method().word());
        if (lay.doubled() > 0) {
            out.put("doubled", Numbers.mm(lay.doubled()));
        }
        out.put("fabricWidth", Numbers.mm(lay.fabricWidth()));
        out.put("length", Numbers.mm(lay.length()));
        out.put("buy", Numbers.mm(use.buying().bought()));
        sum(out.putObject("sum"), use.buying());
        use.onHand().ifPresent(hand -> {
            out.put("onHand", Numbers.mm(hand.have()));
            out.put("enough", hand.verdict() == OnHand.Verdict.FITS);
            onHand(out.putObject("onHandCheck"), hand);
        });
        out.put("use", Numbers.share(lay.use()));
        out.put("floor", Numbers.mm(lay.floor()));
        ArrayNode ways = out.putArray("ways");
        for (Lay.Way way : lay.ways()) {
            ways.addObject()
                    .put("method", way.method().word())
                    .put("length", Numbers.mm(way.length()))
                    .put("why", ClothWords.why(way.method()));
        }
        placements(out.putArray("placements"), lay);
        guide(out.putArray("guide"), use.guide(), lay);
        leftovers(out, use);
    }

    public static void placements(ArrayNode out, Lay lay) {
        for (Lay.Placement p : lay.placements()) {
            ObjectNode one = out.addObject();
            one.put("piece", p.piece());
            one.put("copy", p.copy());
            one.put("x", Numbers.mm(p.x()));
            one.put("y", Numbers.mm(p.y()));
            one.put("rotation", Numbers.mm(p.rotation()));
            one.put("mirrored", p.mirrored());
            one.put("unfolded", p.unfolded());
            one.put("layers", p.layers());
            ArrayNode fromSelvage = one.putArray("fromSelvage");
            p.fromSelvage().forEach(v -> fromSelvage.add(Numbers.mm(v)));
        }
    }

    public static void sum(ObjectNode out, Buying b) {
        out.put("length", Numbers.mm(b.length()))
                .put("shrinkage", Numbers.mm(b.shrinkage()))
                .put("straightening", Numbers.mm(b.straightening()))
                .put("repeat", Numbers.mm(b.repeat()))
                .put("needed", Numbers.mm(b.needed()))
                .put("step", Numbers.mm(b.counter().step()))
                .put("steps", b.steps());
    }

    private static void onHand(ObjectNode out, OnHand hand) {
        out.put("verdict", hand.verdict().word())
                .put("needed", Numbers.mm(hand.needed()))
                .put("spare", Numbers.mm(hand.spare()));
        ArrayNode conditions = out.putArray("fitsIf");
        hand.conditions().forEach(c -> conditions.add(ClothWords.condition(c, Unit.MM)));
    }

    public static void guide(ArrayNode out, CuttingGuide guide, Lay lay) {
        for (CuttingGuide.Step s : guide.steps()) {
            ObjectNode one = out.addObject();
            one.put("number", s.number())
                    .put("piece", s.piece())
                    .put("copy", s.copy())
                    .put("hand", s.hand().word())
                    .put("printedSide", s.turnedOver() ? "down" : "up")
                    .put("top", s.headDown() ? "near end" : "far end")
                    .put("onFold", s.onFold())
                    .put("layers", s.layers())
                    .put("count", s.count())
                    .put("edge", lay.fromFold(s.layers()) ? "fold" : "selvage");
            ArrayNode fromEdge = one.putArray("fromEdge");
            s.fromEdge().forEach(v -> fromEdge.add(Numbers.mm(v)));
            one.put("fromEnd", Numbers.mm(s.fromEnd()));
            ArrayNode weights = one.putArray("weights");
            for (Point w : s.weights()) {
                weights.addArray().add(Numbers.mm(w.x())).add(Numbers.mm(w.y()));
            }
        }
    }

    private static void leftovers(ObjectNode out, ClothUse use) {
        ArrayNode leftovers = out.putArray("leftovers");
        for (Leftover l : use.leftovers()) {
            leftovers
                    .addObject()
                    .put("x", Numbers.mm(l.x()))
                    .put("y", Numbers.mm(l.y()))
                    .put("width", Numbers.mm(l.width()))
                    .put("height", Numbers.mm(l.height()))
                    .put("layers", l.layers())
                    .put("atFold", l.atFold());
        }
        ArrayNode offcuts = out.putArray("offcuts");
        for (Offcut.Fit fit : use.offcuts()) {
            ObjectNode one = offcuts.addObject();
            one.put("name", fit.what().name())
                    .put("across", Numbers.mm(fit.what().across()))
                    .put("along", Numbers.mm(fit.what().along()))
                    .put("source", Voice.plain().say(fit.what().source()))
                    .put("total", fit.total());
            ArrayNode counts = one.putArray("counts");
            fit.counts().forEach(counts::add);
        }
    }
}
