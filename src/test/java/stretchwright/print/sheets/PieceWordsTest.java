package stretchwright.print.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import stretchwright.exchange.Handover;
import stretchwright.ground.Point;
import stretchwright.make.ExampleHandovers;
import stretchwright.pattern.EdgeName;
import stretchwright.pattern.Mark;
import stretchwright.pattern.Piece;
import stretchwright.print.kit.Amounts;
import stretchwright.print.kit.Canvas;
import stretchwright.print.kit.Ink;
import stretchwright.print.kit.Job;
import stretchwright.print.kit.SampleJob;
import stretchwright.print.kit.Writing;

/** What is written on the legs of all examples: front, back, stretch, widths; and no two words in one place. */
class PieceWordsTest {
    /** All lettering of a drawing. */
    private static List<Writing> writings(Job job, Piece piece) {
        List<Writing> out = new ArrayList<>();
        PieceDrawing.of(job, piece).drawOn(new Canvas() {
            @Override
            public void line(Ink ink, List<Point> points, boolean closed) {}

            @Override
            public void text(Writing writing) {
                out.add(writing);
            }
        });
        return out;
    }

    /** Legs and their parts, side panels among them. */
    private static List<Piece> ofLegs(Job job) {
        return job.pattern().pieces().stream()
                .filter(p -> p.name().kind().isOfLeg() && p.has(EdgeName.HEM))
                .toList();
    }

    @Test
    void everyLegSaysFrontBackStretchAndItsWidths() {
        int legs = 0;
        for (Map.Entry<String, Handover> e : ExampleHandovers.all().entrySet()) {
            Job job = SampleJob.drawing(e.getValue().pattern(), "A4");
            for (Piece leg : ofLegs(job)) {
                List<String> words =
                        writings(job, leg).stream().map(Writing::words).toList();
                String who = e.getKey() + " " + leg.name();
                boolean front = leg.has(EdgeName.FRONT_INSEAM) || leg.has(EdgeName.FRONT_EDGE);
                boolean back = leg.has(EdgeName.BACK_INSEAM) || leg.has(EdgeName.BACK_EDGE);
                assertThat(words.contains("FRONT")).as(who).isEqualTo(front);
                assertThat(words.contains("BACK")).as(who).isEqualTo(back);
                assertThat(words).as(who).contains("greatest stretch");
                for (Mark mark : leg.marks()) {
                    if (mark.name().level().isPresent()) {
                        String width = Amounts.length(mark.line().length(), job.unit());
                        assertThat(words).as(who).anyMatch(w -> w.endsWith(", " + width + " wide"));
                    }
                }
                legs++;
            }
        }
        assertThat(legs).isGreaterThan(16);
    }

    @Test
    void noWordsLieOnOtherWords() {
        List<String> over = new ArrayList<>();
        for (Map.Entry<String, Handover> e : ExampleHandovers.all().entrySet()) {
            Job job = SampleJob.drawing(e.getValue().pattern(), "A4");
            for (Piece leg : ofLegs(job)) {
                List<Writing> all = writings(job, leg);
                for (int i = 0; i < all.size(); i++) {
                    for (int k = i + 1; k < all.size(); k++) {
                        if (shape(all.get(i)).intersection(shape(all.get(k))).getArea() > 0.5) {
                            over.add(e.getKey() + " " + leg.name() + ": "
                                    + all.get(i).words() + " / " + all.get(k).words());
                        }
                    }
                }
            }
        }
        assertThat(over).isEmpty();
    }

    private static Geometry shape(Writing writing) {
        List<Point> corners = writing.outline();
        Coordinate[] ring = new Coordinate[corners.size() + 1];
        for (int i = 0; i < ring.length; i++) {
            Point p = corners.get(i % corners.size());
            ring[i] = new Coordinate(p.x(), p.y());
        }
        return new GeometryFactory().createPolygon(ring);
    }
}
