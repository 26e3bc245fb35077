package stretchwright.print.steps;

import java.util.List;
import stretchwright.ground.Box;
import stretchwright.print.kit.Letters;

/**
 * Where the pieces of a step stand: so many in a row that they are drawn as large as can be.
 *
 * @param columns pieces in a row
 * @param names height for their names, under each
 * @param scale of all of them
 */
record StepCells(Box area, int columns, int rows, double names, double scale) {
    /** Around a piece, in letter sizes: room for its letters and numbers. */
    private static final double AROUND = 1.7;

    static StepCells best(Box area, List<StepPanel> panels, double text) {
        StepCells best = of(area, panels, text, 1);
        for (int columns = 2; columns <= panels.size(); columns++) {
            StepCells other = of(area, panels, text, columns);
            best = other.scale > best.scale ? other : best;
        }
        return best;
    }

    private static StepCells of(Box area, List<StepPanel> panels, double text, int columns) {
        int rows = (panels.size() + columns - 1) / columns;
        double width = area.width() / columns;
        double height = area.height() / rows;
        double names = panels.stream()
                        .mapToInt(
                                p -> Letters.wrapped(p.name(), text, width - 2).size())
                        .max()
                        .orElse(0)
                * text
                * Letters.LEADING;
        double scale = Double.MAX_VALUE;
        for (StepPanel panel : panels) {
            Box window = panel.window();
            scale = Math.min(scale, (width - 2 * AROUND * text) / window.width());
            scale = Math.min(scale, (height - names - 2 * AROUND * text) / window.height());
        }
        return new StepCells(area, columns, rows, names, scale);
    }

    Box cell(int index) {
        double width = area.width() / columns;
        double height = area.height() / rows;
        double left = area.minX() + index % columns * width;
        double foot = area.maxY() - (index / columns + 1) * height;
        return new Box(left, foot, left + width, foot + height);
    }
}
