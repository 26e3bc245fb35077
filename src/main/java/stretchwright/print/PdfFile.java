package stretchwright.print;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDDocumentOutline;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;

/**
 * A PDF being made: PDF 1.6, one embedded typeface, printed without scaling, the same bytes for the same pages (fixed
 * document id, no dates).
 */
final class PdfFile implements AutoCloseable {
    private final PDDocument document = new PDDocument();
    private final PDDocumentOutline outline = new PDDocumentOutline();
    private final List<PdfCanvas> pages = new ArrayList<>();
    private final PDType0Font face;

    PdfFile(String title) {
        document.setVersion(1.6f);
        document.setDocumentId(1L);
        document.getDocumentInformation().setTitle(title);
        document.getDocumentInformation().setCreator("Stretchwright");
        PDViewerPreferences preferences = new PDViewerPreferences(new org.apache.pdfbox.cos.COSDictionary());
        preferences.setPrintScaling(PDViewerPreferences.PRINT_SCALING.None);
        preferences.setDisplayDocTitle(true);
        document.getDocumentCatalog().setViewerPreferences(preferences);
        document.getDocumentCatalog().setLanguage("en");
        try (InputStream in = Letters.typeface()) {
            TrueTypeFont typeface = new TTFParser(true).parse(new RandomAccessReadBuffer(in));
            // looking for ligatures took half the time of a make, and the widths reckoned with know of none
            typeface.setEnableGsub(false);
            face = PDType0Font.load(document, typeface, true);
        } catch (IOException e) {
            throw new UncheckedIOException("the typeface could not be embedded", e);
        }
    }

    /** A new page at the end, in mm. */
    PdfCanvas page(double width, double height) {
        PdfCanvas page = new PdfCanvas(document, face, width, height);
        pages.add(page);
        return page;
    }

    /** An entry in the reader's side bar that leads to the page last begun. */
    void bookmark(String words) {
        PDOutlineItem item = new PDOutlineItem();
        item.setTitle(words);
        item.setDestination(document.getPage(pages.size() - 1));
        outline.addLast(item);
        document.getDocumentCatalog().setDocumentOutline(outline);
    }

    Document finished(String name, String kind) {
        try (ByteArrayOutputStream out = new ByteArrayOutputStream()) {
            for (PdfCanvas page : pages) {
                page.close();
            }
            document.save(out);
            return new Document(name, kind, pages.size(), out.toByteArray());
        } catch (IOException e) {
            throw new UncheckedIOException(name + " could not be put together", e);
        }
    }

    @Override
    public void close() {
        try {
            document.close();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
