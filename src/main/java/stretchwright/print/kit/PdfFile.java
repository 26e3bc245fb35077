package stretchwright.print.kit;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDNumberTreeNode;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDMarkInfo;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDParentTreeValue;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureTreeRoot;
import org.apache.pdfbox.pdmodel.documentinterchange.taggedpdf.StandardStructureTypes;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentGroup;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentProperties;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDDocumentOutline;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;
import stretchwright.ground.Document;
import stretchwright.ground.Voice;

/**
 * A PDF being made: PDF 1.6, one embedded typeface, printed without scaling, the same bytes for the same pages (fixed
 * document id, no dates).
 */
public final class PdfFile implements AutoCloseable {
    private final PDDocument document = new PDDocument();
    private final PDDocumentOutline outline = new PDDocumentOutline();
    private final List<PdfCanvas> pages = new ArrayList<>();
    private final Map<SizeLine, PDOptionalContentGroup> layers = new HashMap<>();
    private final PDType0Font face;

    public PdfFile(String title) {
        document.setVersion(1.6f);
        document.setDocumentId(1L);
        document.getDocumentInformation().setTitle(title);
        document.getDocumentInformation().setCreator("Stretchwright");
        PDViewerPreferences preferences = new PDViewerPreferences(new org.apache.pdfbox.cos.COSDictionary());
        preferences.setPrintScaling(PDViewerPreferences.PRINT_SCALING.None);
        preferences.setDisplayDocTitle(true);
        document.getDocumentCatalog().setViewerPreferences(preferences);
        document.getDocumentCatalog().setLanguage(Voice.tag());
        try {
            face = PDType0Font.load(document, Letters.typeface(), true);
        } catch (IOException e) {
            throw new UncheckedIOException("the typeface could not be embedded", e);
        }
    }

    /** A new page at the end, in mm. */
    public PdfCanvas page(double width, double height) {
        PdfCanvas page = new PdfCanvas(document, face, this::layer, width, height);
        pages.add(page);
        return page;
    }

    /** An entry in the reader's side bar that leads to the page last begun. */
    public void bookmark(String words) {
        PDOutlineItem item = new PDOutlineItem();
        item.setTitle(words);
        item.setDestination(document.getPage(pages.size() - 1));
        outline.addLast(item);
        document.getDocumentCatalog().setDocumentOutline(outline);
    }

    private PDOptionalContentGroup layer(SizeLine size) {
        return layers.computeIfAbsent(size, s -> {
            PDOptionalContentProperties all = document.getDocumentCatalog().getOCProperties();
            if (all == null) {
                all = new PDOptionalContentProperties();
                document.getDocumentCatalog().setOCProperties(all);
            }
            PDOptionalContentGroup layer = new PDOptionalContentGroup(s.name());
            all.addGroup(layer);
            return layer;
        });
    }

    public Document finished(String name, String kind) {
        try (ByteArrayOutputStream out = new ByteArrayOutputStream()) {
            for (PdfCanvas page : pages) {
                page.close();
            }
            structure();
            document.save(out);
            return new Document(name, kind, pages.size(), out.toByteArray());
        } catch (IOException e) {
            throw new UncheckedIOException(name + " could not be put together", e);
        }
    }

    /** The order in which everything is read out. */
    private void structure() {
        PDStructureTreeRoot root = new PDStructureTreeRoot();
        PDStructureElement whole = new PDStructureElement(StandardStructureTypes.DOCUMENT, root);
        root.appendKid(whole);
        Map<Integer, PDParentTreeValue> parents = new TreeMap<>();
        for (int i = 0; i < pages.size(); i++) {
            parents.put(i, new PDParentTreeValue(pages.get(i).hang(whole, i)));
        }
        PDNumberTreeNode tree = new PDNumberTreeNode(PDParentTreeValue.class);
        tree.setNumbers(parents);
        root.setParentTree(tree);
        root.setParentTreeNextKey(pages.size());
        document.getDocumentCatalog().setStructureTreeRoot(root);
        PDMarkInfo mark = new PDMarkInfo();
        mark.setMarked(true);
        document.getDocumentCatalog().setMarkInfo(mark);
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
