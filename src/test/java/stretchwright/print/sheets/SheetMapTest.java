package stretchwright.print.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import stretchwright.ground.Document;
import stretchwright.pattern.Piece;
import stretchwright.print.kit.Job;
import stretchwright.print.kit.Paper;
import stretchwright.print.kit.PdfPages;
import stretchwright.print.kit.SampleJob;

/** The sheets of the map are those of the file, and some pages of it are what they were. */
class SheetMapTest {
    private static final Pattern PLACE = Pattern.compile("row ([A-Z]+), column (\\d+) of (\\d+)");

    @ParameterizedTest
    @ValueSource(strings = {"A4", "Letter", "roll 914 mm"})
    void theSheetsOfTheMapAreThePagesOfTheFile(String name) throws IOException {
        Job job = SampleJob.on("A4");
        Paper paper = Paper.named(name);
        SheetMap map = SheetMap.of(job.pattern(), paper);
        List<String> drawn = new ArrayList<>();
        try (PDDocument pdf = Loader.loadPDF(TiledPdf.of(job, paper).bytes())) {
            Matcher places = PLACE.matcher(new PDFTextStripper().getText(pdf));
            while (places.find()) {
                drawn.add(places.group(1) + places.group(2));
            }
        }
        assertThat(map.sheets())
                .extracting(SheetMap.Sheet::name)
                .isEqualTo(drawn.stream().distinct().toList());
        assertThat(map.pieces()).hasSameSizeAs(job.pattern().pieces());
        assertThat(map.sheets()).allMatch(s -> !s.pieces().isEmpty());
    }

    /** By hand: where one piece is other, the sheets that carry it are, and those that carry only others are not. */
    @Test
    void anotherPieceMarksItsOwnSheetsOnly() {
        stretchwright.pattern.Pattern pattern = SampleJob.on("A4").pattern();
        SheetMap before = SheetMap.of(pattern, Paper.named("A4"));
        Piece last = pattern.pieces().get(pattern.pieces().size() - 1);
        List<Piece> pieces = new ArrayList<>(pattern.pieces());
        pieces.set(pieces.size() - 1, last.with(List.of(), List.of()));
        assertThat(pieces).isNotEqualTo(pattern.pieces());
        SheetMap after = SheetMap.of(with(pattern, pieces), Paper.named("A4"));
        assertThat(before.sheets()).anyMatch(s -> !s.pieces().contains(last.name()));
        for (int i = 0; i < before.sheets().size(); i++) {
            SheetMap.Sheet sheet = before.sheets().get(i);
            assertThat(after.sheets().get(i).mark().equals(sheet.mark()))
                    .as(sheet.name())
                    .isEqualTo(!sheet.pieces().contains(last.name()));
        }
        assertThat(SheetMap.of(pattern, Paper.named("A4"))).isEqualTo(before);
    }

    @Test
    void whatIsReadOutAndTheSideBarAreThoseOfThePagesTaken() throws IOException {
        Document whole = TiledPdf.of(SampleJob.on("A4"), Paper.named("A4"));
        Document two = PdfPages.only(whole, new TreeSet<>(List.of(0, 2)));
        assertThat(two.pages()).isEqualTo(2);
        assertThat(two.bytes().length).isLessThan(whole.bytes().length);
        try (PDDocument pdf = Loader.loadPDF(two.bytes())) {
            assertThat(pdf.getNumberOfPages()).isEqualTo(2);
            for (PDOutlineItem item :
                    pdf.getDocumentCatalog().getDocumentOutline().children()) {
                assertThat(pdf.getPages().indexOf(item.findDestinationPage(pdf)))
                        .isBetween(0, 1);
            }
            List<Object> document =
                    pdf.getDocumentCatalog().getStructureTreeRoot().getKids();
            List<Object> read = ((PDStructureElement) document.get(0)).getKids();
            assertThat(read).isNotEmpty();
            assertThat(read).allMatch(e -> pdf.getPages().indexOf(((PDStructureElement) e).getPage()) >= 0);
            COSArray parents = (COSArray) pdf.getDocumentCatalog()
                    .getStructureTreeRoot()
                    .getParentTree()
                    .getCOSObject()
                    .getDictionaryObject("Nums");
            assertThat(parents.size())
                    .as("a number and its elements for each page")
                    .isEqualTo(4);
        }
        assertThat(PdfPages.only(whole, new TreeSet<>(List.of(0, 2)))).isEqualTo(two);
    }

    private static stretchwright.pattern.Pattern with(stretchwright.pattern.Pattern p, List<Piece> pieces) {
        return new stretchwright.pattern.Pattern(
                pieces,
                p.seams(),
                p.levels(),
                p.reductions(),
                p.reasons(),
                p.notions(),
                p.holds(),
                p.moved(),
                p.backOff(),
                p.above());
    }
}
