package stretchwright.web.draft;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stretchwright.ground.Box;
import stretchwright.make.Session;
import stretchwright.pattern.Piece;
import stretchwright.pattern.TopEnd;
import stretchwright.web.draft.Spread.Sheet;
import stretchwright.web.draw.Outline;
import stretchwright.web.draw.Svg;
import stretchwright.web.frame.Opened;

/** The pattern on the screen, all pieces to one scale: lines, numbers on their levels, and what can be moved. */
final class PatternDrawing {
    private static final double BAND_ROOM = 90;

    /** px over the band for its slab of chalk. */
    private static final double SLAB = 30;

    private final Spread spread;
    private final PieceLines lines;
    private final Optional<Session> before;

    private PatternDrawing(Spread spread, Optional<Session> before) {
        this.spread = spread;
        this.lines = new PieceLines(spread);
        this.before = before;
    }

    /** Room over the legs for the band, mm: a higher one than is usual may be pulled without all growing smaller. */
    private static double band(Session session) {
        TopEnd.Band band = session.make().style().top().band();
        return band.shape() == TopEnd.Band.Shape.CASING ? 0 : Math.max(BAND_ROOM, band.height());
    }

    /** @param before how it was, in tacking; empty where nothing is compared */
    static String of(Opened make, Optional<Session> before, Sheet sheet) {
        List<Piece> all = ofLeg(make.session());
        double wide = all.stream().mapToDouble(p -> p.cutLine().box().width()).sum();
        double low =
                all.stream().mapToDouble(p -> p.cutLine().box().minY()).min().orElse(0);
        double high =
                all.stream().mapToDouble(p -> p.cutLine().box().maxY()).max().orElse(1);
        double band = band(make.session());
        double scale = Math.min(
                (sheet.height() - SLAB - 40) / (high - low + band), (sheet.room() - 12 * (all.size() - 1)) / wide);
        double top = Math.max(sheet.wide() ? 52 : 34, SLAB + scale * band);
        List<Spread.Placed> legs = new ArrayList<>();
        double x = sheet.left();
        for (Piece p : all) {
            Box box = p.cutLine().box();
            legs.add(new Spread.Placed(p, new Outline(scale, x - scale * box.minX(), top + scale * high)));
            x += scale * box.width() + 12;
        }
        return new PatternDrawing(new Spread(make, sheet, legs, new Svg()), before).drawn(top, scale);
    }

    /** Front, panel and back beside each other, as they are sewn. */
    private static List<Piece> ofLeg(Session session) {
        return session.pattern().pieces().stream()
                .filter(p -> p.name().kind().isOfLeg())
                .toList();
    }

    private String drawn(double top, double scale) {
        Sheet sheet = spread.sheet();
        spread.svg()
                .open(
                        "svg",
                        "class",
                        sheet.wide() ? "wide" : "narrow",
                        "viewBox",
                        "0 0 " + Math.round(sheet.width()) + " " + Math.round(sheet.height()),
                        "role",
                        "group",
                        "aria-label",
                        spread.say("draw.pattern"));
        Optional<WornBeside> worn = sheet.wide() ? WornBeside.draw(spread, top) : Optional.empty();
        new LevelLines(spread, worn).draw(top);
        spread.legs().forEach(lines::draw);
        spread.legs().forEach(lines::words);
        tacking();
        if (sheet.aside() > 0) {
            others(scale);
        }
        if (!spread.make().demo()) {
            new Grips(spread).draw();
        }
        return spread.svg().close("svg").toString();
    }

    /** The legs as they were, where they are otherwise now. */
    private void tacking() {
        before.ifPresent(s -> spread.legs()
                .forEach(leg -> ofLeg(s).stream()
                        .filter(then -> then.name().equals(leg.piece().name()))
                        .forEach(then -> Moved.runs(then.cutLine(), leg.piece().cutLine())
                                .forEach(run ->
                                        spread.svg().path("before", leg.at().path(run, false))))));
    }

    private void others(double scale) {
        double y = 92;
        for (Piece p : spread.session().pattern().pieces()) {
            if (p.name().kind().isOfLeg() || y > spread.sheet().height() - 60) {
                continue;
            }
            Box box = p.cutLine().box();
            boolean tall = box.height() > box.width() && scale * box.height() > 150;
            if (scale * box.width() <= spread.sheet().width() - spread.sheet().aside() && !tall) {
                y += 22;
                spread.svg()
                        .text(
                                "name",
                                spread.sheet().aside(),
                                y - 8,
                                "start",
                                spread.make().voice().say(p.name().said()));
                spread.svg()
                        .text(
                                "small",
                                spread.sheet().width() - 10,
                                y - 8,
                                "end",
                                spread.make().voice().say(p.timesCut()));
                lines.draw(new Spread.Placed(
                        p, new Outline(scale, spread.sheet().aside() - scale * box.minX(), y + scale * box.maxY())));
                y += scale * box.height() + 26;
            }
        }
    }
}
