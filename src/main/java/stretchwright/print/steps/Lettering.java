package stretchwright.print.steps;

import java.util.ArrayList;
import java.util.List;
import stretchwright.ground.Box;
import stretchwright.ground.Point;
import stretchwright.print.kit.Canvas;
import stretchwright.print.kit.Ink;
import stretchwright.print.kit.Writing;

/** Puts words where no others stand and nothing leaves the room: near where they belong, farther out where they must. */
final class Lettering {
    /** Between any two of them, in letter sizes. */
    private static final double APART = 0.12;

    private static final int RINGS = 9;
    private static final int TURNS = 12;

    private final Canvas canvas;
    private final Box room;
    private final List<Box> taken = new ArrayList<>();

    Lettering(Canvas canvas, Box room) {
        this.canvas = canvas;
        this.room = room;
    }

    /** Words with a fixed place; it is kept free from then on. */
    void put(Writing words) {
        taken.add(space(words));
        canvas.text(words);
    }

    /**
     * Words that belong to a place; where they stand away from it a thin line leads there.
     *
     * @param outward where they stand best
     * @return whether there was room
     */
    boolean near(Point place, Point outward, double size, String words) {
        return near(place, outward, size, words, RINGS / 2, TURNS / 2)
                || near(place, outward, size, words, RINGS, 2 * TURNS);
    }

    private boolean near(Point place, Point outward, double size, String words, int rings, int turns) {
        for (int ring = 0; ring < rings; ring++) {
            for (int turn = 0; turn < turns; turn++) {
                int side = turn % 2 == 0 ? turn / 2 : -(turn + 1) / 2;
                Point at = place.plus(outward.turned(side * 180.0 / TURNS).times(size * (1.15 + 0.35 * ring)));
                Writing there = Writing.middle(Ink.LABEL, at.x(), at.y() - 0.35 * size, size, words);
                if (free(space(there))) {
                    put(there);
                    if (ring > 1) {
                        canvas.line(Ink.FAINT, place, at.towards(place, 0.7 * size / at.distance(place)));
                    }
                    return true;
                }
            }
        }
        return false;
    }

    private boolean free(Box box) {
        return box.minX() >= room.minX()
                && box.maxX() <= room.maxX()
                && box.minY() >= room.minY()
                && box.maxY() <= room.maxY()
                && taken.stream().noneMatch(box::meets);
    }

    /** Two spaces that do not meet leave a gap between the letters. */
    private static Box space(Writing words) {
        return Box.around(words.outline()).grown(APART * words.size() / 2);
    }
}
