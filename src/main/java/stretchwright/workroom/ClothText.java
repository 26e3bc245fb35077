package stretchwright.workroom;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.OptionalDouble;
import stretchwright.ground.Numbers;
import stretchwright.ground.Quantities;
import stretchwright.ground.Unit;
import stretchwright.intake.Tree;
import stretchwright.workroom.store.Kind;

/** The text of a cloth in the stash, and how much of it there is. */
final class ClothText {
    private static final String ON_HAND = "on hand";

    private final Tree.Keys file;
    private final Tree.Keys section;

    ClothText(String text) {
        this.file = Parts.tree(text);
        this.section = Parts.section(file, Kind.FABRIC).orElseThrow();
    }

    /** How much of it there is, mm; empty where that is not told, or by an outline. */
    OptionalDouble onHand() {
        return Parts.key("fabric", ON_HAND, section)
                .filter(Tree.Text.class::isInstance)
                .map(t -> Quantities.length(((Tree.Text) t).text(), Parts.unit(file)))
                .orElse(OptionalDouble.empty());
    }

    /** Whether it is a remnant that is not simply a rectangle. */
    boolean hasOutline() {
        return Parts.key("fabric", ON_HAND, section)
                .filter(Tree.Keys.class::isInstance)
                .isPresent();
    }

    /** The same with so much of it, mm; without a word about it where it is empty. */
    String onHand(OptionalDouble mm) {
        Map<String, Tree> out = without(ON_HAND);
        mm.ifPresent(v -> out.put(ON_HAND, length(v)));
        return Parts.text(Parts.unit(file), Kind.FABRIC, new Tree.Keys(out, 0));
    }

    /** A rectangle of the same cloth; it is paid for, and what was a flaw elsewhere is not in it. */
    String remnant(String name, double width, double height) {
        Map<String, Tree> out = without(ON_HAND);
        for (String gone : java.util.List.of("price", "flaws", "name", "usable width", "selvage")) {
            out.keySet().removeIf(k -> Parts.isCalled("fabric", gone, k));
        }
        out.put("name", new Tree.Text(name, 0));
        out.put("usable width", length(width));
        out.put(ON_HAND, length(height));
        return Parts.text(Parts.unit(file), Kind.FABRIC, new Tree.Keys(out, 0));
    }

    private Map<String, Tree> without(String key) {
        Map<String, Tree> out = new LinkedHashMap<>(section.entries());
        out.keySet().removeIf(k -> Parts.isCalled("fabric", key, k));
        return out;
    }

    /** Down to whole millimetres: nobody has more than there is. */
    private static Tree length(double mm) {
        return new Tree.Text(Numbers.plain(Math.floor(mm)) + " " + Unit.MM.symbol(), 0);
    }
}
