package stretchwright.many;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.util.AffineTransformation;
import stretchwright.ground.Document;
import stretchwright.ground.Progress;
import stretchwright.intake.MakeFile;
import stretchwright.lay.ClubClock;
import stretchwright.lay.ClubLay;
import stretchwright.lay.Lay;
import stretchwright.lay.Laying;
import stretchwright.lay.SearchWork;
import stretchwright.lay.nest.Effort;
import stretchwright.lay.nest.LayClock;
import stretchwright.make.Make;
import stretchwright.pattern.Piece;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Six pairs of three makes on tables of 3.4 m; all bodies invented. */
class ClubTest extends ClubMakes {
    private static final Club CLUB = of(TABLE);

    private static Club of(double table) {
        MakeFile a = make("a.yaml", "Rowan", "96.1");
        MakeFile b = make("b.yaml", "Mika", "92.0");
        MakeFile c = make("c.yaml", "Rowan", "99.5");
        return Club.of(List.of(a, b, c, a, b, c), wish(table, new Effort(2, 1)), Progress.silent());
    }

    @Test
    void everyPairLiesWholeOnOneTable() {
        assertThat(CLUB.tables()).hasSize(2);
        assertThat(CLUB.tables()).allMatch(t -> t.lay().spreadLength() <= TABLE);
        assertThat(CLUB.tables().stream().flatMap(t -> t.garments().stream()).map(ClubLay.Garment::name))
                .containsExactly("Rowan", "Mika", "Rowan 2", "Rowan 3", "Mika 2", "Rowan 4");
        for (ClubLay.Table table : CLUB.tables()) {
            int cut = table.pieces().stream().mapToInt(Piece::cut).sum();
            assertThat(table.lay().placements()).hasSize(cut);
        }
    }

    /** A second opinion by the geometry library, from the numbers of the placements alone. */
    @Test
    void nothingOverlapsAndAllLiesOnTheTable() {
        for (ClubLay.Table table : CLUB.tables()) {
            List<Geometry> laid = new ArrayList<>();
            for (Lay.Placement p : table.lay().placements()) {
                laid.add(placed(table, p));
            }
            for (int i = 0; i < laid.size(); i++) {
                assertThat(laid.get(i).getEnvelopeInternal().getMinX()).isGreaterThan(-0.02);
                assertThat(laid.get(i).getEnvelopeInternal().getMinY()).isGreaterThan(-0.02);
                assertThat(laid.get(i).getEnvelopeInternal().getMaxX()).isLessThan(1470.02);
                assertThat(laid.get(i).getEnvelopeInternal().getMaxY()).isLessThan(TABLE + 0.02);
                for (int j = 0; j < i; j++) {
                    assertThat(laid.get(i).intersection(laid.get(j)).getArea()).isLessThan(1);
                }
            }
        }
    }

    private static Geometry placed(ClubLay.Table table, Lay.Placement p) {
        Piece piece = table.pieces().stream()
                .filter(q -> q.name().equals(p.piece()))
                .findFirst()
                .orElseThrow();
        List<Coordinate> ring = new ArrayList<>(piece.cutLine().points().stream()
                .map(q -> new Coordinate(q.x(), q.y()))
                .toList());
        ring.add(ring.get(0));
        Geometry outline = new GeometryFactory().createPolygon(ring.toArray(new Coordinate[0]));
        if (p.unfolded()) {
            outline = outline.union(AffineTransformation.scaleInstance(-1, 1).transform(outline));
        }
        AffineTransformation move = new AffineTransformation();
        move.scale(p.mirrored() ? -1 : 1, 1);
        move.rotate(Math.toRadians(p.rotation()));
        move.translate(p.x(), p.y());
        return move.transform(outline);
    }

    @Tag("slow")
    @Test
    void theSameWishGivesTheSameBytes() {
        List<Document> first = CLUB.documents();
        assertThat(of(TABLE).documents()).isEqualTo(first);
        assertThat(first)
                .extracting(Document::name)
                .containsExactly("club.json", "table-1.svg", "table-2.svg", "club.pdf");
    }

    private static String text(Club club) throws IOException {
        byte[] bytes = club.documents().stream()
                .filter(d -> d.name().equals("club.pdf"))
                .findFirst()
                .orElseThrow()
                .bytes();
        try (PDDocument pdf = Loader.loadPDF(bytes)) {
            return new PDFTextStripper().getText(pdf);
        }
    }

    /** Behind each table's drawing the list to tick: every placement of it, and how many left and right. */
    @Test
    void theListOfEachTableNamesEveryPlacement() throws IOException {
        String text = text(CLUB);
        for (ClubLay.Table table : CLUB.tables()) {
            int pairs = table.garments().size();
            assertThat(text).contains(pairs + " for the left and " + pairs + " for the right");
            for (int i = 1; i <= table.lay().placements().size(); i++) {
                assertThat(text).contains("\n" + i + ". ");
            }
        }
        assertThat(text).contains("Fabric to buy: ");
    }

    /** Added up again from the numbers of the two tables: shrinkage 2 %, 5 cm at each of four cut ends, steps of 5 cm. */
    @Test
    void whatToBuyIsTheSumOfTheTables() {
        JsonNode json = JsonMapper.builder()
                .build()
                .readTree(CLUB.documents().get(0).bytes())
                .get("club");
        double length = 0;
        for (JsonNode table : json.get("tables")) {
            length += table.get("length").asDouble();
            double floor = table.get("floor").asDouble();
            assertThat(table.get("aboveFloor").asDouble())
                    .isCloseTo((table.get("length").asDouble() - floor) / floor, within(1e-4));
        }
        double needed = length / 0.98 + 4 * 50;
        assertThat(json.get("length").asDouble()).isCloseTo(length, within(0.02));
        assertThat(json.get("needed").asDouble()).isCloseTo(needed, within(0.03));
        assertThat(json.get("buy").asDouble()).isEqualTo(Math.ceil(needed / 50) * 50);
        double alone = 0;
        for (JsonNode garment : json.get("garments")) {
            alone += garment.get("alone").asDouble();
        }
        assertThat(json.get("alone").asDouble()).isCloseTo(alone, within(0.05));
        assertThat(json.get("saved").asDouble()).isCloseTo(1 - length / alone, within(1e-4));
    }

    @Test
    void aloneIsWhatOneGarmentIsEstimatedToTake() {
        ClubMember mika = CLUB.members().get(1);
        assertThat(CLUB.alone(mika))
                .isEqualTo(Laying.estimate(mika.pattern().pieces(), CLUB.fabric(), CLUB.terms(), 7)
                        .orElseThrow());
    }

    @Test
    void everyPieceOfTheDrawingsIsNamedWithItsWearer() {
        for (int i = 0; i < 2; i++) {
            String svg = new String(CLUB.documents().get(i + 1).bytes(), StandardCharsets.UTF_8).replace('\u00a0', ' ');
            for (ClubLay.Garment g : CLUB.tables().get(i).garments()) {
                assertThat(svg).contains(">" + g.name() + ": leg L<", ">" + g.name() + ": leg R<");
                assertThat(svg).contains(">" + g.name() + ": leg \u00d7 2, waistband, cuff \u00d7 2<");
                assertThat(svg).contains(g.name() + ": cuff 1", g.name() + ": waistband");
            }
        }
    }

    /** All lie on the roll all the same; the rounds that were asked for would not give this lay again and are not told. */
    @Test
    void aClubThatWasToldToStopTellsNoRounds() {
        MakeFile a = make("a.yaml", "Rowan", "96.1");
        LayClock over = LayClock.of(() -> true, () -> true);
        Club club = Club.of(
                List.of(a, a),
                new Club.Wish(OptionalDouble.empty(), new SearchWork(7, new Effort(2, 1), ClubClock.of(over))),
                Progress.silent());
        assertThat(json(club).has("rounds")).isFalse();
        assertThat(json(club).at("/tables/0/placements").size()).isEqualTo(10);
        assertThat(json(CLUB).get("rounds").get(0).asInt()).isEqualTo(2);
    }

    private static JsonNode json(Club club) {
        return JsonMapper.builder()
                .build()
                .readTree(club.documents().get(0).bytes())
                .get("club");
    }

    /** What a contrast takes is not laid on the roll, and both are told: that it is not, and whether the cloth on hand is enough. */
    @Test
    void contrastsAreLeftOutAndTheClothOnHandIsHeldAgainstTheNeed() throws IOException {
        MakeFile plain = make("a.yaml", "Rowan", "96.1");
        MakeFile cuffs = with(
                "  on hand: 1.6 m\n",
                "  on hand: 9 m\n  contrasts: [{name: Rust, pieces: [cuff], usable width: 90}]\n");
        Club club = Club.of(List.of(plain, cuffs), wish(TABLE, Effort.NONE), Progress.silent());
        assertThat(club.tables()).hasSize(1);
        assertThat(club.tables().get(0).garments().get(0).pieces())
                .extracting(p -> p.name().word())
                .contains("cuff");
        assertThat(club.tables().get(0).garments().get(1).pieces())
                .extracting(p -> p.name().word())
                .contains("leg")
                .doesNotContain("cuff");
        assertThat(text(club)).contains("from other cloth: cuff");
        double short1 = club.buying().needed() - 1600;
        assertThat(club.onHand().orElseThrow().spare()).isCloseTo(-short1, within(0.011));
        assertThat(club.summary())
                .anyMatch(l -> l.contains("on hand        1.60 m: does not fit"))
                .anyMatch(l -> l.contains("what is cut from Rust: make lays that for each pair"));
        JsonNode json = JsonMapper.builder()
                .build()
                .readTree(club.documents().get(0).bytes())
                .get("club");
        assertThat(json.at("/onHand/verdict").asString()).isEqualTo("short");
    }

    @Test
    void namesAreTheWearersElseTheMakesAndShortEnough() {
        MakeFile named = make("a.yaml", "Rowan", "96.1");
        MakeFile nameless =
                Make.read("b.yaml", BASE.replace("  name: Rowan\n", "").getBytes(StandardCharsets.UTF_8));
        MakeFile two = make("c.yaml", "Rowan 2", "96.1");
        MakeFile longest = make("d.yaml", "Rosalind of the Seven Long Frozen Lakes", "96.1");
        assertThat(ClubMember.names(List.of(named, nameless, two, named, longest)))
                .containsExactly(
                        "Rowan", "Evening practice", "Rowan 2", "Rowan 3", "Rosalind of the Seven Long Fro\u2026");
    }
}
