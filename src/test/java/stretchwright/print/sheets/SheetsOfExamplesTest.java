package stretchwright.print.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import stretchwright.body.Body;
import stretchwright.body.Measuring;
import stretchwright.draft.Draft;
import stretchwright.ground.Box;
import stretchwright.ground.Findings;
import stretchwright.ground.Polygon;
import stretchwright.intake.MakeFile;
import stretchwright.make.Make;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Piece;
import stretchwright.print.kit.Motion;
import stretchwright.print.kit.Paper;
import stretchwright.print.kit.SampleJob;
import stretchwright.print.kit.Tiles;
import stretchwright.print.kit.Tiles.Tile;

/** Sheets of paper for every example, against the pieces put side by side in one row and cut into tiles. */
@Tag("slow")
class SheetsOfExamplesTest {
    private static final double BETWEEN = 10;

    private static Map<String, Pattern> patterns() throws IOException {
        Map<String, Pattern> all = new LinkedHashMap<>();
        try (Stream<Path> files = Files.list(Path.of("examples"))) {
            for (Path file :
                    files.filter(f -> f.toString().endsWith(".yaml")).sorted().toList()) {
                MakeFile make = Make.read(file.toString(), Files.readAllBytes(file));
                Findings findings = new Findings("test");
                Body body = Measuring.body(make.measured(), findings).orElseThrow();
                all.put(
                        file.getFileName().toString(),
                        Draft.of(body, make.fabric(), make.boot(), make.style(), make.machines(), findings)
                                .orElseThrow());
            }
        }
        return all;
    }

    /** Tile by tile, blank ones left out, upright or on its side, whichever takes fewer sheets. */
    private static int plain(Pattern pattern, Paper paper) {
        return Math.min(inOneRow(pattern, paper), inOneRow(pattern, paper.turned()));
    }

    private static int inOneRow(Pattern pattern, Paper paper) {
        List<Polygon> placed = new ArrayList<>();
        double x = 2;
        double high = 0;
        for (Piece piece : pattern.pieces()) {
            Box box = piece.cutLine().box();
            Motion to = new Motion(0, new stretchwright.ground.Point(x - box.minX(), 2 - box.minY()));
            placed.add(new Polygon(to.apply(piece.cutLine().points())));
            x += box.width() + BETWEEN;
            high = Math.max(high, box.height());
        }
        Tiles tiles = Tiles.covering(paper, x, high + 4);
        int sheets = 0;
        for (int row = 0; row < tiles.rows(); row++) {
            for (int column = 0; column < tiles.columns(); column++) {
                Box window = tiles.window(new Tile(row, column));
                sheets += placed.stream().anyMatch(p -> Crossing.meets(window, p, p.box())) ? 1 : 0;
            }
        }
        return sheets;
    }

    @Test
    void fewerSheetsThanPiecesInARow() throws IOException {
        Map<String, Pattern> patterns = patterns();
        int fewer = 0;
        int all = 0;
        for (String name : List.of("A4", "Letter")) {
            Paper paper = Paper.named(name);
            for (Map.Entry<String, Pattern> e : patterns.entrySet()) {
                int ours =
                        Plane.of(SampleJob.bare(e.getValue()), paper).sheets().size();
                int plain = plain(e.getValue(), paper);
                System.out.printf("sheets of %s, %s: %d, in one row %d%n", name, e.getKey(), ours, plain);
                assertThat(ours).as(e.getKey()).isLessThanOrEqualTo(plain);
                fewer += ours < plain ? 1 : 0;
                all++;
            }
        }
        assertThat(fewer).isGreaterThanOrEqualTo((int) Math.ceil(0.8 * all));
    }
}
