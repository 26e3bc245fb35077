package stretchwright.web.draft;

import java.util.Optional;
import stretchwright.ground.Part;
import stretchwright.web.draw.Outline;

/** The levels of the garment: lines from the body to the piece, and the numbers between them. */
final class LevelLines {
    private final Spread spread;
    private final Optional<WornBeside> worn;

    LevelLines(Spread spread, Optional<WornBeside> worn) {
        this.spread = spread;
        this.worn = worn;
    }

    void draw(double top) {
        Outline at = spread.front().at();
        double last = 0;
        if (spread.sheet().wide()) {
            spread.svg().text("lab", spread.sheet().left() - 112, top - 24, "end", spread.say("draw.on-her"));
            spread.svg().text("lab", spread.sheet().left() - 32, top - 24, "end", unitHead());
        }
        for (LevelRow row : LevelRow.of(spread.session())) {
            double level = at.y(row.level().height());
            double y = Math.max(level, last + 18);
            last = y;
            String name = spread.make().voice().say(row.level().name().said());
            double end = at.x(Spread.edgeAt(spread.front().piece(), row.level().height(), true));
            wornLevel(row, y);
            spread.svg()
                    .path(
                            "level",
                            "M" + Outline.px(spread.sheet().left() - 26) + " " + Outline.px(y) + "L" + Outline.px(end)
                                    + " " + Outline.px(level));
            spread.svg().text(row.estimated() ? "est" : "", numbersAt(), y + 5, "start", name);
            if (spread.sheet().wide()) {
                number(row, spread.sheet().left() - 112, y + 5, spread.say("draw.on-her"), row.onHer());
            }
            number(row, spread.sheet().left() - 32, y + 5, spread.say("draw.as-cut"), row.asCut());
            if (row.looks()) {
                spread.svg().path("mark look", ring(end, level));
            }
        }
    }

    private double numbersAt() {
        return spread.sheet().wide() ? spread.sheet().left() - 238 : 8;
    }

    private String unitHead() {
        return spread.make()
                .voice()
                .say(Tell.said(
                        "draw.as-cut-unit",
                        Part.text(spread.session().make().unit().symbol())));
    }

    private void number(LevelRow row, double x, double y, String column, double mm) {
        String value = spread.make().voice().say(Part.bare(mm));
        String told = (row.estimated() ? "~" : "") + value;
        String kind = row.estimated() ? "num est" : "num";
        String name = spread.make().voice().say(row.level().name().said());
        if (row.why().isPresent()) {
            spread.svg()
                    .open(
                            "a",
                            "href",
                            spread.make().address() + "?why=" + row.why().get().name(),
                            "aria-label",
                            spread.make()
                                    .voice()
                                    .say(Tell.said("draw.why", Part.text(name), Part.text(column), Part.text(told))));
            spread.svg().text(kind, x, y, "end", told).close("a");
        } else {
            spread.svg().text("lab", x, y, "end", told);
        }
    }

    private static String ring(double x, double y) {
        return "M" + Outline.px(x - 14) + " " + Outline.px(y) + "a22 13 0 1 1 30 9a22 13 0 0 1 -29 -6";
    }

    /** A level line from her to the numbers. */
    private void wornLevel(LevelRow row, double y) {
        worn.ifPresent(w -> {
            double height = spread.session().pattern().onBody(row.level().height());
            spread.svg().line("level", w.x(height), w.y(height), numbersAt() - 6, y);
        });
    }
}
