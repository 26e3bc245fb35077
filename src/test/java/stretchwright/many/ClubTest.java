package stretchwright.many;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
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
import stretchwright.ground.BadInput;
import stretchwright.ground.Document;
import stretchwright.ground.Finding;
import stretchwright.ground.Progress;
import stretchwright.intake.MakeFile;
import stretchwright.intake.OneRoll;
import stretchwright.intake.SampleText;
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
class ClubTest {
    private static final String BASE = SampleText.with("lay: any", "lay: open");
    private static final double TABLE = 3400;

    private static final Club CLUB = of(TABLE);

    private static MakeFile make(String file, String wearer, String hip) {
        String text = BASE.replace("name: Rowan", "name: " + wearer).replace("hip girth: 96.1", "hip girth: " + hip);
        return Make.read(file, text.getBytes(StandardCharsets.UTF_8));
    }

    private static MakeFile with(String old, String now) {
        assertThat(BASE).contains(old);
        return Make.read("b.yaml", BASE.replace(old, now).getBytes(StandardCharsets.UTF_8));
    }

    private static Club.Wish wish(double table, Effort effort) {
        return new Club.Wish(OptionalDouble.of(table), SearchWork.of(7, effort));
    }

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

    @Test
    void whatDiffersIsNamedWithBothFiles() {
        MakeFile first = make("a.yaml", "Rowan", "96.1");
        List<String[]> cases = List.of(
                new String[] {"usable width: 147", "usable width: 150", "fabric.usable width", "is 150 cm, but 147 cm"},
                new String[] {"one way: true", "one way: false", "fabric.one way", "is false, but true"},
                new String[] {"repeat along: 0", "repeat along: 12", "fabric.repeat along", "is 12 cm, but 0 cm"},
                new String[] {"along: 2 %", "along: 3 %", "fabric.shrinkage along", "is 3 %, but 2 %"},
                new String[] {"across: 1 %", "across: 2 %", "fabric.shrinkage across", "is 2 %, but 1 %"},
                new String[] {
                    "stretch across: 60 %", "stretch across: 50 %", "fabric.stretch across", "is 50 %, but 60 %"
                },
                new String[] {"stretch along: 45 %", "stretch along: 40 %", "fabric.stretch along", "is 40 %, but 45 %"
                },
                new String[] {
                    "[60 %, 13 N]]",
                    "[60 %, 15 N]]",
                    "fabric.load across",
                    "is 3.1 N at 20 %, 6.9 N at 40 %, 15 N at 60 %, but 3.1 N at 20 %, 6.9 N at 40 %, 13 N at 60 %"
                },
                new String[] {"weight: 260 g/m2", "weight: 300 g/m2", "fabric.weight", "is 300 g/m2, but 260 g/m2"},
                new String[] {"recovery: 95 %", "recovery: 80 %", "fabric.recovery", "is 80 %, but 95 %"},
                new String[] {
                    "shows through at: 75 %", "shows through at: 100 %", "fabric.shows through at", "is 100 %, but 75 %"
                },
                new String[] {
                    "knit, ink",
                    "knit, rust",
                    "fabric.name",
                    "is \"Heavy performance knit, rust\", but \"Heavy performance knit, ink\""
                },
                new String[] {"lay: open", "lay: folded", "style.lay.way", "is folded, but open"},
                new String[] {
                    "lay: open", "lay: {way: open, scissor gap: 0.5}", "style.lay.scissor gap", "is 0.5 cm, but 0 cm"
                });
        for (String[] c : cases) {
            assertThatThrownBy(() ->
                            Club.of(List.of(first, with(c[0], c[1])), wish(TABLE, Effort.NONE), Progress.silent()))
                    .isInstanceOfSatisfying(
                            BadInput.class,
                            e -> assertThat(e.findings())
                                    .singleElement()
                                    .matches(f ->
                                            f.file().equals("b.yaml") && f.key().equals(c[2]))
                                    .matches(f -> f.problem().startsWith(c[3] + " in a.yaml"), c[3]));
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

    /** All that differs of the cloth is one finding, that of the lay another. */
    @Test
    void anotherClothIsToldWholeAndOnce() {
        MakeFile first = make("a.yaml", "Rowan", "96.1");
        MakeFile other = Make.read(
                "b.yaml",
                BASE.replace("knit, ink", "jersey")
                        .replace("260 g/m2", "180 g/m2")
                        .replace("stretch across: 60 %", "stretch across: 90 %")
                        .replace("lay: open", "lay: folded")
                        .getBytes(StandardCharsets.UTF_8));
        assertThat(OneRoll.findings(List.of(first, other, other, first)))
                .extracting(Finding::line)
                .containsExactly(
                        "b.yaml: fabric.name: is \"Heavy performance jersey\", but \"Heavy performance knit, ink\" in a.yaml."
                                + " fabric.weight is 180 g/m2, but 260 g/m2. fabric.stretch across is 90 %, but 60 %."
                                + " One roll is one cloth. Give both the same fabric, or lay them in two runs.",
                        "b.yaml: style.lay.way: is folded, but open in a.yaml. One roll is laid in one way. Write the same in"
                                + " both files, or lay them apart.");
    }

    /** The first file does not say which cloth it is for; the others do. */
    @Test
    void everyFileIsHeldAgainstAllThatGoTogether() {
        MakeFile nameless = Make.read(
                "a.yaml",
                BASE.replace("  name: Heavy performance knit, ink\n", "").getBytes(StandardCharsets.UTF_8));
        MakeFile ink = make("c.yaml", "Mika", "92.0");
        MakeFile rust = with("knit, ink", "knit, rust");
        assertThat(OneRoll.findings(List.of(nameless, ink, rust, ink)))
                .singleElement()
                .matches(f -> f.file().equals("b.yaml") && f.key().equals("fabric.name"))
                .matches(f -> f.problem().contains("in c.yaml. One roll is one cloth."));
    }

    /** What a file leaves out, rounds in another unit or assumes for its own wearer is no other cloth. */
    @Test
    void whatIsNotToldOrRoundedOrAssumedIsTheSameCloth() {
        MakeFile first = make("a.yaml", "Rowan", "96.1");
        List<MakeFile> same = List.of(
                with("  weight: 260 g/m2\n", ""),
                with("weight: 260 g/m2", "weight: 7.7 oz/yd2"),
                with("  name: Heavy performance knit, ink\n", ""),
                with("name: Heavy performance knit, ink", "name: heavy  performance knit, INK"),
                with("  recovery: 95 %\n", ""),
                with("  load along:  [[20 %, 4.0 N], [40 %, 9.5 N]]\n", ""),
                with("[60 %, 13 N]]", "[60 %, 1326 g]]"),
                with("price: 14.50 per m", "price: 12 per m"));
        for (MakeFile other : same) {
            assertThat(OneRoll.findings(List.of(first, other))).isEmpty();
        }
        String wrapped = BASE.replace("stretch across: 60 %", "wrap hip: 80")
                .replace("  load across: [[20 %, 3.1 N], [40 %, 6.9 N], [60 %, 13 N]]\n", "");
        MakeFile large = Make.read("c.yaml", wrapped.getBytes(StandardCharsets.UTF_8));
        MakeFile small = Make.read("d.yaml", wrapped.replace("96.1", "92.0").getBytes(StandardCharsets.UTF_8));
        assertThat(large.fabric().test().stretchAcross())
                .isNotEqualTo(small.fabric().test().stretchAcross());
        assertThat(OneRoll.findings(List.of(large, small, first))).isEmpty();
    }

    /** As make says it, for every make that has such a piece; the child's would fit. */
    @Test
    void aPieceWiderThanTheClothIsAFindingOfItsMake() {
        String narrow = BASE.replace("usable width: 147", "usable width: 62 cm");
        MakeFile a = Make.read("a.yaml", narrow.getBytes(StandardCharsets.UTF_8));
        MakeFile b = Make.read("b.yaml", narrow.replace("Rowan", "Mika").getBytes(StandardCharsets.UTF_8));
        MakeFile c = Make.read(
                "c.yaml",
                narrow.replace("waist girth: 74.2\n    hip girth: 96.1", "waist girth: 60\n    hip girth: 75")
                        .replace("stature: 162.7", "stature: 140")
                        .replace("figure: woman\n  age: 31", "figure: child\n  age: 10")
                        .getBytes(StandardCharsets.UTF_8));
        assertThatThrownBy(() -> Club.of(List.of(a, b, c, a), wish(TABLE, new Effort(2, 1)), Progress.silent()))
                .isInstanceOfSatisfying(BadInput.class, e -> {
                    assertThat(e.findings()).extracting(Finding::file).containsExactly("a.yaml", "b.yaml");
                    assertThat(e.findings())
                            .allMatch(f -> f.key().equals("fabric.usable width"))
                            .allMatch(f -> f.problem()
                                    .startsWith(
                                            "waistband is 68.2 cm wide unfolded, wider than the 62.0 cm of the cloth"));
                });
    }

    @Test
    void aTableShorterThanALegIsAFinding() {
        MakeFile a = make("a.yaml", "Rowan", "96.1");
        assertThatThrownBy(() -> Club.of(List.of(a), wish(600, new Effort(2, 1)), Progress.silent()))
                .isInstanceOf(BadInput.class)
                .hasMessageContaining("Rowan alone is longer than the table of 60.0 cm.");
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
    void clothWithFlawsIsNotCutIntoTables() {
        MakeFile flawed = with("on hand: 1.6 m", "flaws: [{from left: 30, from end: 52, wide: 1, long: 2}]");
        assertThatThrownBy(() -> Club.of(List.of(flawed), wish(TABLE, Effort.NONE), Progress.silent()))
                .hasMessageContaining("Leave --table out.");
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
