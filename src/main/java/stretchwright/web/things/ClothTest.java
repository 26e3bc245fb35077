package stretchwright.web.things;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import stretchwright.ground.Said;
import stretchwright.web.draw.ClothHands;

/** The tests of a cloth, in their order. The fold alone is enough. */
enum ClothTest {
    FOLD("fold", ClothHands.FOLD, Tell.said("cloth.fold"), Tell.said("cloth.fold-how")),
    FOLD_ALONG("fold-along", ClothHands.FOLD, Tell.said("cloth.fold-along"), Tell.said("cloth.fold-along-how")),
    HANGING("hanging", ClothHands.HANGING, Tell.said("cloth.hanging"), Tell.said("cloth.hanging-how")),
    HANGING_ALONG(
            "hanging-along",
            ClothHands.HANGING,
            Tell.said("cloth.hanging-along"),
            Tell.said("cloth.hanging-along-how")),
    WRAP("wrap", ClothHands.WRAP, Tell.said("cloth.wrap"), Tell.said("cloth.wrap-how")),
    SHOW_THROUGH(
            "show-through",
            ClothHands.SHOW_THROUGH,
            Tell.said("cloth.show-through"),
            Tell.said("cloth.show-through-how")),
    WASH("wash", ClothHands.WASH, Tell.said("cloth.wash"), Tell.said("cloth.wash-how"));

    private final String path;
    private final ClothHands hands;
    private final Said title;
    private final Said how;

    ClothTest(String path, ClothHands hands, Said title, Said how) {
        this.path = path;
        this.hands = hands;
        this.title = title;
        this.how = how;
    }

    static Optional<ClothTest> at(String path) {
        return Arrays.stream(values()).filter(t -> t.path.equals(path)).findFirst();
    }

    String path() {
        return "/" + path;
    }

    ClothHands hands() {
        return hands;
    }

    Said title() {
        return title;
    }

    Said how() {
        return how;
    }

    /** "across" or "along", as keys end. */
    String way() {
        return this == FOLD_ALONG || this == HANGING_ALONG ? "along" : "across";
    }

    /** Under which its readings stand in the make file. */
    List<String> keys() {
        return switch (this) {
            case FOLD, FOLD_ALONG -> List.of("fabric.fold " + way(), "fabric.stretch " + way());
            case HANGING ->
                List.of(
                        "fabric.hang across",
                        "fabric.strip.back across",
                        "fabric.strip.width across",
                        "fabric.strip.after 30 min");
            case HANGING_ALONG -> List.of("fabric.hang along", "fabric.strip.back along", "fabric.strip.width along");
            case WRAP -> List.of("fabric.wrap hip", "fabric.wrap calf");
            case SHOW_THROUGH -> List.of("fabric.shows through at");
            case WASH -> List.of("fabric.shrinkage across", "fabric.shrinkage along");
        };
    }
}
