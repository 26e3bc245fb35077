package stretchwright.many;

import java.util.List;
import stretchwright.ground.Part;
import stretchwright.ground.Said;
import stretchwright.ground.Unit;
import stretchwright.ground.Voice;
import stretchwright.lay.ClubLay;
import stretchwright.lay.Lay;
import stretchwright.make.Lines;
import stretchwright.make.Made;
import stretchwright.print.cloth.ClothWords;
import stretchwright.print.kit.Amounts;

/** A club in a few lines, as a maker wants to know it first. */
final class ClubText {
    private ClubText() {}

    static List<String> summary(Club club) {
        Unit unit = club.unit();
        Lines lines = new Lines(Voice.of(unit), Made.COLUMN);
        lines.say(Tell.said(
                "club.heading",
                garments(club.members().size()),
                tables(club.tables().size())));
        for (int i = 0; i < club.tables().size(); i++) {
            lines.about(
                    Tell.said("club.label-table", Part.count(i + 1)),
                    table(club.tables().get(i)));
        }
        buying(club, lines);
        club.onHand()
                .ifPresent(h -> lines.about(
                        Tell.said("club.label-on-hand"),
                        Tell.said("club.on-hand", Part.cloth(h.have()), Part.text(ClothWords.onHand(h, unit)))));
        String contrasts = club.contrasts();
        if (!contrasts.isEmpty()) {
            lines.about(Tell.said("club.label-elsewhere"), Tell.said("club.elsewhere", Part.text(contrasts)));
        }
        Part alone = Part.cloth(club.alone());
        Part saved = Part.share(Math.abs(club.saved()), 1);
        lines.about(
                Tell.said("club.label-alone"),
                club.saved() >= 0 ? Tell.said("club.less", alone, saved) : Tell.said("club.more", alone, saved));
        return lines.all();
    }

    private static Said garments(int count) {
        return count == 1 ? Tell.said("club.garment") : Tell.said("club.garments", Part.count(count));
    }

    private static Said tables(int count) {
        return count == 1 ? Tell.said("club.table") : Tell.said("club.tables", Part.count(count));
    }

    private static void buying(Club club, Lines lines) {
        if (club.fabric().roll().shape().outline().isPresent()) {
            lines.about(Tell.said("club.label-fabric"), Tell.said("club.remnant"));
            return;
        }
        lines.about(
                Tell.said("club.label-buy"),
                Tell.said(
                        "club.buy",
                        Part.text(Amounts.bought(club.buying())),
                        Part.length(club.fabric().roll().usableWidth())));
        lines.about(Tell.said("club.label-that-is"), Part.text(ClothWords.sum(club.buying(), club.unit())));
    }

    private static Said table(ClubLay.Table table) {
        Lay lay = table.lay();
        return Tell.said(
                "club.laid",
                Part.cloth(lay.length()),
                lay.method().said(),
                Part.share(lay.use()),
                Part.share(lay.aboveFloor(), 1),
                Tell.words(table.garments().stream().map(ClubLay.Garment::name).toList()));
    }
}
