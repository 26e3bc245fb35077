package stretchwright.web.lay;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import stretchwright.ground.Part;
import stretchwright.ground.Said;
import stretchwright.ground.Unit;
import stretchwright.ground.Voice;
import stretchwright.lay.Buying;
import stretchwright.lay.ClothLay;
import stretchwright.lay.Leftover;
import stretchwright.print.cloth.ClothWords;
import stretchwright.print.kit.Amounts;
import stretchwright.web.frame.Opened;

/** What to buy, and what is left over. */
final class Buys {
    private final Opened make;
    private final Table table;
    private final Unit unit;

    Buys(Opened make, Table table) {
        this.make = make;
        this.table = table;
        this.unit = make.session().make().unit();
    }

    List<String> lines() {
        List<Said> lines = new ArrayList<>();
        List<ClothLay> lays = make.session().lays();
        for (int i = 0; i < lays.size(); i++) {
            cloth(lays.get(i), i, lines);
        }
        make.session()
                .sewing()
                .thread()
                .forEach((machine, m) ->
                        lines.add(Tell.said("buy.thread", machine.said(), Part.number(Math.ceil(m), 0))));
        return lines.stream().map(make.voice()::say).toList();
    }

    private void cloth(ClothLay cloth, int number, List<Said> lines) {
        Part length = Part.cloth(cloth.lay().length());
        Buying buying = cloth.use().buying();
        if (number > 0) {
            lines.add(Tell.said("lay.also", Part.text(cloth.fabric().roll().name()), pieces(cloth)));
        }
        if (cloth.fabric().roll().shape().outline().isPresent()) {
            lines.add(Tell.said("buy.remnant", length));
            return;
        }
        lines.add(Tell.said(
                "buy.fabric",
                Part.text(Amounts.toBuy(buying)),
                Part.length(cloth.fabric().roll().usableWidth()),
                length));
        lines.add(Tell.said("buy.sum", Part.text(ClothWords.sum(buying, unit))));
        cloth.use()
                .onHand()
                .ifPresent(hand -> lines.add(
                        Tell.said("buy.on-hand", Part.length(hand.have()), Part.text(ClothWords.onHand(hand, unit)))));
        cloth.fabric()
                .roll()
                .price()
                .ifPresent(p -> lines.add(
                        Tell.said("buy.price", Part.text(Voice.fixed(p.perMetre() * buying.bought() / 1000, 2)))));
    }

    private static Part pieces(ClothLay cloth) {
        return Part.listed(
                Part.Join.COMMA,
                cloth.pieces().stream().map(p -> (Part) p.name().said()).collect(Collectors.toList()));
    }

    /** What is left and what can be cut from it. */
    List<String> leftOver(Shown shown) {
        List<String> out = new ArrayList<>();
        if (!shown.troubles().isEmpty()) {
            return out;
        }
        List<Leftover> left = shown.cloth().use().leftovers();
        for (int i = 0; i < left.size(); i++) {
            out.add(ClothWords.leftover(left.get(i), (char) ('A' + i), unit));
        }
        out.addAll(ClothWords.offcuts(shown.cloth().use(), unit));
        return out;
    }
}
