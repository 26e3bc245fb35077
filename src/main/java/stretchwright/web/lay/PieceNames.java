package stretchwright.web.lay;

import java.util.ArrayList;
import java.util.List;
import stretchwright.ground.Part;
import stretchwright.ground.Said;
import stretchwright.ground.Voice;
import stretchwright.lay.CuttingGuide;
import stretchwright.lay.Hand;
import stretchwright.lay.Lay;
import stretchwright.lay.Trouble;

/** What the pieces of a lay are called, and how each one lies. */
final class PieceNames {
    private final Shown shown;
    private final Voice voice;

    PieceNames(Shown shown, Voice voice) {
        this.shown = shown;
        this.voice = voice;
    }

    /** "leg R", "cuff 2". */
    String name(Lay.Placement p) {
        String hand = hand(p);
        String several = copy(p);
        return voice.say(p.piece().said())
                + (several.isEmpty() ? "" : " " + several)
                + (hand.isEmpty() ? "" : " " + hand);
    }

    /** The name alone, for the drawing, where the side stands by itself. */
    String plain(Lay.Placement p) {
        String several = copy(p);
        return voice.say(p.piece().said()) + (several.isEmpty() ? "" : " " + several);
    }

    /** "R", "L + R"; empty where it makes no difference, or its name says it. */
    String hand(Lay.Placement p) {
        CuttingGuide.Step step = shown.step(p);
        boolean said = p.piece().leg().word().equals(step.hand().word());
        return said || step.hand() == Hand.EITHER ? "" : voice.say(step.hand().mark());
    }

    private String copy(Lay.Placement p) {
        CuttingGuide.Step step = shown.step(p);
        int cut = shown.piece(p).cut();
        boolean several = step.hand() == Hand.EITHER ? cut > 1 && step.count() < cut : cut > 2;
        return several ? String.valueOf(p.copy()) : "";
    }

    List<String> lies(Lay.Placement p) {
        CuttingGuide.Step step = shown.step(p);
        List<String> out = new ArrayList<>();
        out.add(say(step.turnedOver() ? "lay.over" : "lay.up"));
        if (step.headDown()) {
            out.add(say("lay.head-down"));
        }
        if (step.onFold()) {
            out.add(say("lay.on-fold"));
        } else if (step.layers() == 2) {
            out.add(say("lay.two-layers"));
        }
        return out;
    }

    /** "Leg R, piece 2, turned over". */
    String label(Lay.Placement p) {
        List<Part> lies = new ArrayList<>();
        lies(p).forEach(l -> lies.add(Part.text(l)));
        Said said = Tell.said(
                "lay.label",
                new Part.Capital(Part.text(name(p))),
                Part.count(shown.step(p).number()),
                Part.listed(Part.Join.COMMA, lies));
        return voice.say(shown.isPinned(p) ? Tell.said("lay.label-pinned", said) : said);
    }

    List<String> troubles() {
        return shown.troubles().stream().map(this::trouble).toList();
    }

    private String trouble(Trouble told) {
        // told of the piece that is held
        boolean held = told.other() >= 0 && shown.isPicked(shown.placements().get(told.other()));
        Trouble t = held ? new Trouble(told.kind(), told.other(), told.piece(), told.mm()) : told;
        Part one = t.piece() < 0
                ? Part.text("")
                : new Part.Capital(Part.text(name(shown.placements().get(t.piece()))));
        Part mm = Part.sewn(Math.max(1, Math.ceil(t.mm() - 0.01)));
        return voice.say(
                switch (t.kind()) {
                    case OVERLAPS -> Tell.said("lay.overlaps", one, other(t), mm);
                    case NEAR -> Tell.said("lay.near", one, other(t), mm);
                    case BEYOND -> Tell.said("lay.beyond", one, mm);
                    case FLAW -> Tell.said("lay.on-flaw", one);
                    case REMNANT -> Tell.said("lay.off-remnant", one);
                    case LAYERS -> Tell.said("lay.off-layers", one);
                    case FOLD -> Tell.said("lay.off-fold", one);
                    case TURNED -> Tell.said("lay.off-grain", one);
                    case PRINT -> Tell.said("lay.off-print");
                    case OTHER -> Tell.said("lay.other-trouble");
                });
    }

    private Part other(Trouble t) {
        return Part.text(name(shown.placements().get(t.other())));
    }

    private String say(String key) {
        return voice.say(Tell.said(key));
    }
}
