package stretchwright.web.lay;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import stretchwright.ground.Part;
import stretchwright.ground.Said;
import stretchwright.ground.Voice;
import stretchwright.make.Made;
import stretchwright.print.cloth.ClothWords;
import stretchwright.print.kit.Amounts;
import stretchwright.web.frame.Frame;
import stretchwright.web.frame.MayCut;
import stretchwright.web.frame.Opened;

/** How the pieces lie on the cloth, and what to buy. */
public record LayPage(Frame frame, Opened make, Made made) {
    static LayPage of(Opened make) {
        return new LayPage(
                Frame.of(make, Frame.Stop.LAY), make, make.session().made(Set.of()));
    }

    public String drawing() {
        return make.address() + "/file/lay.svg";
    }

    public MayCut says() {
        boolean fits = made.use().onHand().map(h -> h.have() >= made.lay().length()).orElse(true);
        return new MayCut(
                fits ? MayCut.Mark.HOLDS : MayCut.Mark.STOP,
                say(Tell.said("lay.takes", Part.cloth(made.lay().length()))),
                say(Tell.said(
                        "result.laid",
                        made.lay().method().said(),
                        Part.cloth(made.lay().length()),
                        Part.share(made.lay().use()))));
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

    public String say(String key) {
        return say(Tell.said(key));
    }

    private String say(Said said) {
        return make.voice().say(said);
    }
}
