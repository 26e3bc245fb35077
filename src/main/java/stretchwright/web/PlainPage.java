package stretchwright.web;

import java.util.List;
import stretchwright.ground.BadInput;
import stretchwright.ground.Said;
import stretchwright.ground.Voice;
import stretchwright.web.door.Refusal;
import stretchwright.web.frame.Frame;

/** A page without a make: what is the matter, and what to do. */
public record PlainPage(Frame frame, List<String> lines) {
    public PlainPage {
        lines = List.copyOf(lines);
    }

    static PlainPage of(Said heading, Said help) {
        return new PlainPage(Frame.plain("plain", say(heading)), List.of(say(help)));
    }

    static PlainPage of(Refusal why) {
        return switch (why) {
            case HOST -> of(Tell.said("plain.403"), Tell.said("plain.403-help"));
            case ORIGIN -> of(Tell.said("plain.403-origin"), Tell.said("plain.403-origin-help"));
            case SEAL -> of(Tell.said("plain.403-seal"), Tell.said("plain.403-seal-help"));
            case JOIN -> of(Tell.said("plain.403-join"), Tell.said("plain.403-join-help"));
        };
    }

    static PlainPage of(BadInput wrong) {
        return new PlainPage(
                Frame.plain("plain", say(Tell.said("plain.422"))),
                wrong.findings().stream()
                        .map(f -> f.key() + ": " + f.told(Voice.of(f.unit())))
                        .toList());
    }

    public String back() {
        return say(Tell.said("plain.back"));
    }

    private static String say(Said said) {
        return Voice.plain().say(said);
    }
}
