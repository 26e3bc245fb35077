package stretchwright.make;

import java.util.ArrayList;
import java.util.List;
import stretchwright.body.Measuring;
import stretchwright.ground.Document;
import stretchwright.ground.Part;
import stretchwright.ground.Part.Join;
import stretchwright.ground.Said;
import stretchwright.ground.Unit;
import stretchwright.ground.Voice;
import stretchwright.intake.MakeFile;
import stretchwright.lay.ClothLay;
import stretchwright.lay.Lay;
import stretchwright.print.cloth.ClothWords;
import stretchwright.print.kit.Amounts;

/** What a maker wants to know first, in a few lines. */
final class Summary {
    private final Made made;
    private final Unit unit;
    private final Lines lines;

    private Summary(Made made) {
        this.made = made;
        unit = made.make().unit();
        lines = new Lines(Voice.of(unit), Made.COLUMN);
    }

    static List<String> of(Made made) {
        Summary summary = new Summary(made);
        summary.cloth();
        summary.work();
        return summary.lines.all();
    }

    private void cloth() {
        MakeFile make = made.make();
        Part name = Part.text(make.name());
        lines.say(make.wearer().isEmpty() ? name : Tell.said("summary.for", name, Part.text(make.wearer())));
        if (make.fabric().roll().shape().outline().isPresent()) {
            lines.about(Tell.said("label.fabric"), Tell.said("summary.remnant", length(), used()));
        } else {
            lines.about(
                    Tell.said("label.buy"),
                    Tell.said(
                            "summary.buy",
                            Part.text(Amounts.bought(made.use().buying())),
                            Part.length(make.fabric().roll().usableWidth()),
                            length(),
                            used()));
            lines.about(
                    Tell.said("label.that-is"),
                    Part.text(ClothWords.sum(made.use().buying(), unit)));
        }
        made.use()
                .onHand()
                .ifPresent(hand -> lines.about(
                        Tell.said("label.on-hand"),
                        Tell.said(
                                "summary.on-hand", Part.cloth(hand.have()), Part.text(ClothWords.onHand(hand, unit)))));
        lines.about(Tell.said("label.laid"), laid(made.lay()));
        ClothWords.otherWays(made.lay(), unit).forEach(w -> lines.more(Part.text(w)));
        contrasts(made).forEach(c -> lines.about(Tell.said("label.and"), c));
    }

    private Part length() {
        return Part.cloth(made.lay().length());
    }

    private Part used() {
        return Part.share(made.lay().use());
    }

    /** How it is laid, and how much shorter any lay could be at most. */
    private static Said laid(Lay lay) {
        Part way = lay.method().said();
        return lay.shortest()
                ? Tell.said("summary.shortest", way)
                : Tell.said("summary.above-floor", way, Part.share(lay.aboveFloor(), 1));
    }

    /** What to buy of each other cloth, and for what. */
    static List<Said> contrasts(Made made) {
        List<Said> out = new ArrayList<>();
        for (ClothLay c : made.contrasts()) {
            Part cloth = Part.text(c.fabric().roll().name());
            Part pieces = Part.listed(
                    Join.COMMA,
                    c.pieces().stream().map(p -> Part.text(p.name())).toList());
            Part way = c.lay().method().said();
            out.add(
                    c.fabric().roll().shape().outline().isPresent()
                            ? Tell.said("summary.contrast-remnant", cloth, pieces, way)
                            : Tell.said(
                                    "summary.contrast",
                                    Part.text(Amounts.bought(c.use().buying())),
                                    cloth,
                                    pieces,
                                    way));
        }
        return out;
    }

    private void work() {
        lines.about(
                Tell.said("label.sewing"),
                Tell.said(
                        "summary.sewing",
                        Part.number(made.sewing().minutes(), 0),
                        Part.count(made.sewing().changeovers())));
        Measuring.next(made.body())
                .ifPresent(next -> lines.about(
                        Tell.said("label.measure-next"),
                        Tell.said("summary.next", next.measure().said(), Part.share(next.narrows()))));
        for (Document d : made.documents()) {
            if (d.pages() > 1) {
                lines.about(
                        Tell.said("label.paper"),
                        Tell.said("summary.paper", Part.text(d.name()), Part.count(d.pages())));
            }
        }
    }
}
