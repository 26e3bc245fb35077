package stretchwright.print;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSNumber;
import org.apache.pdfbox.pdfparser.PDFStreamParser;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.COSObjectable;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.markedcontent.PDMarkedContent;
import org.apache.pdfbox.text.PDFMarkedContentExtractor;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stretchwright.ground.Document;
import stretchwright.print.kit.SampleJob;

/** What a PDF says to those who have it read out, read back by the structure of ISO 32000-1, 14.7. */
@Tag("slow")
class SpokenTest {
    static List<Document> pdfs() {
        return Printing.documents(SampleJob.on("A4")).stream()
                .filter(d -> d.name().endsWith(".pdf"))
                .toList();
    }

    @ParameterizedTest
    @MethodSource("pdfs")
    void nothingIsDrawnOutsideOfTheStructureOrTheDecoration(Document document) throws IOException {
        try (PDDocument pdf = Loader.loadPDF(document.bytes())) {
            for (PDPage page : pdf.getPages()) {
                assertThat(outside(page)).isEmpty();
            }
        }
    }

    /** Operators that paint or write while no marked content is open; clipping and state may stand anywhere. */
    private static List<String> outside(PDPage page) throws IOException {
        List<String> found = new ArrayList<>();
        int depth = 0;
        for (Object token : new PDFStreamParser(page).parse()) {
            if (token instanceof Operator operator) {
                switch (operator.getName()) {
                    case "BDC", "BMC" -> depth++;
                    case "EMC" -> depth--;
                    case "S", "f", "Tj", "TJ" -> {
                        if (depth != 1) {
                            found.add(operator.getName() + " at depth " + depth);
                        }
                    }
                    default -> {}
                }
            }
        }
        assertThat(depth).isZero();
        return found;
    }

    @ParameterizedTest
    @MethodSource("pdfs")
    void everyMarkIsReadOnceInTheOrderOfThePages(Document document) throws IOException {
        try (PDDocument pdf = Loader.loadPDF(document.bytes())) {
            assertThat(pdf.getDocumentCatalog().getMarkInfo().isMarked()).isTrue();
            List<PDStructureElement> elements = elements(pdf);
            int at = 0;
            for (int p = 0; p < pdf.getNumberOfPages(); p++) {
                PDPage page = pdf.getPage(p);
                assertThat(page.getStructParents()).isEqualTo(p);
                for (int mark : marks(page)) {
                    PDStructureElement element = elements.get(at++);
                    assertThat(element.getPage()).isEqualTo(page);
                    assertThat(element.getKids()).isEqualTo(List.of(mark));
                    assertThat(parents(pdf, p).getObject(mark)).isSameAs(element.getCOSObject());
                }
            }
            assertThat(at).isEqualTo(elements.size());
        }
    }

    @ParameterizedTest
    @MethodSource("pdfs")
    void figuresSayWhatTheyShowAndTextIsWhatItSays(Document document) throws IOException {
        try (PDDocument pdf = Loader.loadPDF(document.bytes())) {
            for (PDStructureElement element : elements(pdf)) {
                if (element.getStructureType().equals("Figure")) {
                    assertThat(element.getAlternateDescription()).isNotBlank();
                } else {
                    assertThat(element.getStructureType()).isIn("P", "H2");
                    assertThat(words(element)).isNotBlank();
                }
            }
        }
    }

    private static COSArray parents(PDDocument pdf, int page) throws IOException {
        Map<Integer, COSObjectable> numbers = Objects.requireNonNull(
                pdf.getDocumentCatalog().getStructureTreeRoot().getParentTree().getNumbers());
        return (COSArray) Objects.requireNonNull(numbers.get(page)).getCOSObject();
    }

    private static List<PDStructureElement> elements(PDDocument pdf) {
        PDStructureElement whole = (PDStructureElement)
                pdf.getDocumentCatalog().getStructureTreeRoot().getKids().get(0);
        assertThat(whole.getStructureType()).isEqualTo("Document");
        return whole.getKids().stream().map(k -> (PDStructureElement) k).toList();
    }

    private static List<Integer> marks(PDPage page) throws IOException {
        List<Integer> marks = new ArrayList<>();
        for (Object token : new PDFStreamParser(page).parse()) {
            if (token instanceof COSBase base && base instanceof COSDictionary d && d.containsKey(COSName.MCID)) {
                marks.add(((COSNumber) d.getDictionaryObject(COSName.MCID)).intValue());
            }
        }
        return marks;
    }

    private static String words(PDStructureElement element) throws IOException {
        PDFMarkedContentExtractor reader = new PDFMarkedContentExtractor();
        reader.processPage(element.getPage());
        return reader.getMarkedContents().stream()
                .filter(m -> m.getMCID() == (Integer) element.getKids().get(0))
                .flatMap((PDMarkedContent m) -> m.getContents().stream())
                .map(c -> ((TextPosition) c).getUnicode())
                .collect(Collectors.joining());
    }
}
