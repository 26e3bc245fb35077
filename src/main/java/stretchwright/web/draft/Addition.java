package stretchwright.web.draft;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import stretchwright.ground.Part;
import stretchwright.ground.Quantities;
import stretchwright.ground.Said;
import stretchwright.ground.Unit;
import stretchwright.intake.Key;
import stretchwright.intake.Table;
import stretchwright.web.form.Form;

/** What is often wanted beside a plain leg, put on or left out by one press, in the size that the table of keys shows for it. */
enum Addition {
    PHONE_POCKET("phone pocket"),
    /** A strip along the side, cut from another colour. */
    PANEL("contrast panel");

    private static final String PANEL_KEY = "style.panel";
    private static final String PANEL_WIDTH = "style.panel.width";
    private static final String PANEL_PIECE = "side panel";

    /** So much wider than a pocket on it is the panel, mm: more than the draft keeps clear on both sides (common practice, no source). */
    private static final double BESIDE_POCKET = 20;

    private final String word;

    Addition(String word) {
        this.word = word;
    }

    /** As a form sends it. */
    String word() {
        return word;
    }

    /** Of its line and its button on the page. */
    String id() {
        return word.replace(' ', '-');
    }

    static Optional<Addition> of(String word) {
        return Arrays.stream(values()).filter(a -> a.word.equals(word)).findFirst();
    }

    boolean isIn(Form form) {
        return this == PANEL ? form.has(PANEL_WIDTH) : !phonePlace(form).isEmpty();
    }

    /** Whether it is under this key that it stands. */
    boolean owns(String key) {
        return this == PANEL
                ? key.startsWith(PANEL_KEY) || key.startsWith(Lists.CONTRASTS)
                : key.startsWith(Lists.POCKETS);
    }

    Said label() {
        return this == PANEL ? Tell.said("addition.panel") : Tell.said("addition.pocket");
    }

    /** On the button that puts it on or leaves it out. */
    Said press(Form form) {
        if (this == PANEL) {
            return isIn(form) ? Tell.said("addition.no-panel") : Tell.said("addition.add-panel");
        }
        return isIn(form) ? Tell.said("addition.no-pocket") : Tell.said("addition.add-pocket");
    }

    /** What became of it: "with a phone pocket". */
    Said changed(Form after) {
        if (this == PANEL) {
            return isIn(after) ? Tell.said("addition.with-panel") : Tell.said("addition.without-panel");
        }
        return isIn(after) ? Tell.said("addition.with-pocket") : Tell.said("addition.without-pocket");
    }

    /** How it stands: "9 by 16 cm". */
    Said now(Form form) {
        if (!isIn(form)) {
            return Tell.said("addition.none");
        }
        if (this == PANEL) {
            return Tell.said("addition.wide", Part.length(mm(form, PANEL_WIDTH)));
        }
        String place = phonePlace(form);
        return Tell.said(
                "addition.by", Part.length(mm(form, place + ".width")), Part.length(mm(form, place + ".height")));
    }

    /** Without it where it is there; else with it, the usual way first and then a way round what may not go together. */
    List<Form> pressed(Form form, String contrastName) {
        if (isIn(form)) {
            return List.of(this == PANEL ? withoutPanel(form) : Lists.without(form, phonePlace(form)));
        }
        if (this == PANEL) {
            Form with = withPanel(form, contrastName);
            return PHONE_POCKET.isIn(form) ? List.of(with, roomForPocket(with)) : List.of(with);
        }
        Form with = withPocket(form);
        return PANEL.isIn(form) ? List.of(with, roomForPocket(with)) : List.of(with);
    }

    private static Form withPocket(Form form) {
        String place = Lists.free(form, Lists.POCKETS);
        Key<?> list = Table.keys().find(Lists.POCKETS).orElseThrow();
        return form.with(Map.of(
                Lists.POCKETS,
                "",
                place + ".kind",
                "phone",
                place + ".width",
                usual(list.parts().find("width").orElseThrow()),
                place + ".height",
                usual(list.parts().find("height").orElseThrow())));
    }

    private static Form withPanel(Form form, String contrastName) {
        Map<String, String> changes = new LinkedHashMap<>();
        changes.put(PANEL_KEY, "");
        changes.put(PANEL_WIDTH, usual(Table.keys().find(PANEL_WIDTH).orElseThrow()));
        if (Lists.place(form, Lists.CONTRASTS, at -> Lists.names(form, at).contains(PANEL_PIECE))
                .isEmpty()) {
            String place = Lists.free(form, Lists.CONTRASTS);
            changes.put(place + ".name", contrastName);
            changes.put(place + ".pieces", PANEL_PIECE);
        }
        return form.with(changes);
    }

    private static Form withoutPanel(Form form) {
        Form without = form.with(Map.of(PANEL_WIDTH, ""));
        String place =
                Lists.place(form, Lists.CONTRASTS, at -> Lists.names(form, at).contains(PANEL_PIECE));
        if (place.isEmpty()) {
            return without;
        }
        List<String> others = Lists.names(form, place).stream()
                .filter(n -> !n.equals(PANEL_PIECE))
                .toList();
        return others.isEmpty()
                ? Lists.without(without, place)
                : without.with(Map.of(place + ".pieces", String.join("; ", others)));
    }

    /** The panel so wide that the phone pocket lies on it. */
    private static Form roomForPocket(Form form) {
        double pocket = mm(form, phonePlace(form) + ".width");
        return form.with(Map.of(PANEL_WIDTH, Handle.written(pocket + BESIDE_POCKET)));
    }

    private static String phonePlace(Form form) {
        return Lists.place(
                form, Lists.POCKETS, at -> form.value(at + ".kind").strip().equalsIgnoreCase("phone"));
    }

    private static double mm(Form form, String key) {
        return Quantities.length(form.value(key), Unit.of(form.value("unit")).orElse(Unit.CM))
                .orElse(0);
    }

    /** What the table shows as an example: lengths stand there between braces, in mm. */
    private static String usual(Key<?> key) {
        return key.example().replaceAll("[{}]", "") + " mm";
    }

    /** Places of the lists of a make. */
    private static final class Lists {
        static final String POCKETS = "style.pockets";
        static final String CONTRASTS = "fabric.contrasts";

        /** The first place of which it holds; empty where there is none. */
        static String place(Form form, String list, Predicate<String> which) {
            return places(form, list).stream().filter(which).findFirst().orElse("");
        }

        static String free(Form form, String list) {
            return list + "." + (places(form, list).size() + 1);
        }

        private static List<String> places(Form form, String list) {
            return IntStream.iterate(1, i -> form.has(list + "." + i), i -> i + 1)
                    .mapToObj(i -> list + "." + i)
                    .toList();
        }

        static List<String> names(Form form, String place) {
            return form.typed().getOrDefault(place + ".pieces", List.of()).stream()
                    .flatMap(v -> Arrays.stream(v.split("[;,]")))
                    .map(String::strip)
                    .toList();
        }

        /** The later places move up. */
        static Form without(Form form, String place) {
            Map<String, List<String>> left = new LinkedHashMap<>(form.typed());
            new ArrayList<>(left.keySet())
                    .stream().filter(k -> k.startsWith(place + ".")).forEach(left::remove);
            return Form.sent(left);
        }
    }
}
