package stretchwright.intake;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import stretchwright.pattern.Parts;
import stretchwright.pattern.Parts.Pocket;

/** Reads into which parts the leg is cut and what is added to it. */
final class PartsReader {
    /** The keys of the style that are read here. */
    static final List<String> KEYS = List.of("side seam", "panel", "gusset", "knee shaping", "pockets");

    private static final int MOST_POCKETS = 8;

    private PartsReader() {}

    static Parts read(Section style) {
        Parts.SideSeam side = style.choice(
                        "side seam",
                        List.of(Parts.SideSeam.values()),
                        s -> s.name().toLowerCase(Locale.ROOT))
                .orElse(Parts.SideSeam.NONE);
        OptionalDouble panel = none(style, "panel")
                ? OptionalDouble.empty()
                : style.section("panel", List.of("width")).stream()
                        .map(PartsReader::panel)
                        .findFirst()
                        .orElse(OptionalDouble.empty());
        Optional<Parts.Gusset> gusset = none(style, "gusset")
                ? Optional.empty()
                : style.section("gusset", List.of("length", "width")).flatMap(PartsReader::gusset);
        boolean knee = style.yes("knee shaping").orElse(false);
        return new Parts(side, panel, gusset, knee, pockets(style));
    }

    private static boolean none(Section style, String key) {
        return style.isValue(key) && style.text(key).filter("none"::equals).isPresent();
    }

    private static OptionalDouble panel(Section s) {
        s.require("width", "6 cm");
        return s.length("width", Limits.PANEL);
    }

    private static Optional<Parts.Gusset> gusset(Section s) {
        s.require("length", "15 cm");
        s.require("width", "6 cm");
        OptionalDouble length = s.length("length", Limits.GUSSET);
        OptionalDouble width = s.length("width", Limits.GUSSET);
        return length.isPresent() && width.isPresent()
                ? Optional.of(new Parts.Gusset(length.getAsDouble(), width.getAsDouble()))
                : Optional.empty();
    }

    private static List<Pocket> pockets(Section style) {
        List<Pocket> out = new ArrayList<>();
        if (none(style, "pockets")) {
            return out;
        }
        String example = "pockets: [{kind: phone, width: 9 cm, height: 16 cm}]";
        List<Section> all =
                style.sections("pockets", List.of("kind", "width", "height", "thickness"), MOST_POCKETS, example);
        for (Section one : all) {
            pocket(one).ifPresent(p -> {
                if (out.stream().anyMatch(other -> other.kind() == p.kind())) {
                    one.add("kind", "a " + p.kind().word() + " pocket is listed twice.", "List each kind once.");
                } else {
                    out.add(p);
                }
            });
        }
        return out;
    }

    private static Optional<Pocket> pocket(Section s) {
        s.require("kind", "phone");
        s.require("width", "9 cm");
        s.require("height", "16 cm");
        if (s.has("kind") && s.text("kind").filter("key"::equals).isPresent()) {
            s.add("kind", "a key pocket sits in the waistband.", "Write it there: waistband: {key pocket: 7 cm}.");
            return Optional.empty();
        }
        Optional<Pocket.Kind> kind = s.choice("kind", Arrays.asList(Pocket.Kind.values()), Pocket.Kind::word);
        OptionalDouble width = s.length("width", Limits.POCKET);
        OptionalDouble height = s.length("height", Limits.POCKET);
        if (kind.isPresent() && kind.get() != Pocket.Kind.PHONE) {
            s.require("thickness", "5 mm");
        }
        double thick = s.length("thickness", Limits.PAD_THICKNESS).orElse(0);
        return kind.isPresent() && width.isPresent() && height.isPresent()
                ? Optional.of(new Pocket(kind.get(), width.getAsDouble(), height.getAsDouble(), thick))
                : Optional.empty();
    }
}
