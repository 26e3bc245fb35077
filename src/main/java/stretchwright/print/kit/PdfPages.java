package stretchwright.print.kit;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeMap;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSObject;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureTreeRoot;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDDocumentOutline;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import stretchwright.ground.Document;

/**
 * Some pages of a finished PDF, each with the bytes that it had: nothing is drawn anew. What is read out, and the entries of the side
 * bar, are those of these pages; the same pages give the same bytes.
 */
public final class PdfPages {
    private final PDDocument pdf;
    private final Set<COSDictionary> kept = new HashSet<>();

    private PdfPages(PDDocument pdf) {
        this.pdf = pdf;
    }

    /** @param pages counted from 0; at least one of those that there are */
    public static Document only(Document whole, SortedSet<Integer> pages) {
        if (pages.isEmpty() || pages.first() < 0 || pages.last() >= whole.pages()) {
            throw new IllegalArgumentException("pages " + pages + " of " + whole.pages());
        }
        if (pages.size() == whole.pages()) {
            return whole;
        }
        try (PDDocument pdf = Loader.loadPDF(whole.bytes());
                ByteArrayOutputStream out = new ByteArrayOutputStream()) {
            new PdfPages(pdf).keep(pages);
            pdf.setDocumentId(1L);
            pdf.save(out);
            return new Document(whole.name(), whole.kind(), pages.size(), out.toByteArray());
        } catch (IOException e) {
            throw new UncheckedIOException(whole.name() + " could not be taken apart", e);
        }
    }

    private void keep(Set<Integer> pages) throws IOException {
        bookmarks(pages);
        for (int i = pdf.getNumberOfPages() - 1; i >= 0; i--) {
            if (pages.contains(i)) {
                kept.add(pdf.getPage(i).getCOSObject());
            } else {
                pdf.removePage(i);
            }
        }
        PDStructureTreeRoot read = pdf.getDocumentCatalog().getStructureTreeRoot();
        if (read != null) {
            readOut(read.getK());
            parents(read);
        }
    }

    /** Entries that lead to a page that stays. */
    private void bookmarks(Set<Integer> pages) throws IOException {
        PDDocumentOutline before = pdf.getDocumentCatalog().getDocumentOutline();
        if (before == null) {
            return;
        }
        PDDocumentOutline after = new PDDocumentOutline();
        for (PDOutlineItem item : before.children()) {
            PDPage page = item.findDestinationPage(pdf);
            if (page != null && pages.contains(pdf.getPages().indexOf(page))) {
                PDOutlineItem same = new PDOutlineItem();
                same.setTitle(item.getTitle());
                same.setDestination(page);
                after.addLast(same);
            }
        }
        pdf.getDocumentCatalog().setDocumentOutline(after.hasChildren() ? after : null);
    }

    /** What was read out of pages that are gone is taken out, below every element. */
    private void readOut(@org.jspecify.annotations.Nullable COSBase element) {
        COSBase plain = element instanceof COSObject o ? o.getObject() : element;
        if (plain instanceof COSArray kids) {
            List<COSBase> stay = new ArrayList<>();
            kids.forEach(k -> {
                if (!isGone(k)) {
                    readOut(k);
                    stay.add(k);
                }
            });
            kids.clear();
            stay.forEach(kids::add);
        } else if (plain instanceof COSDictionary one) {
            readOut(one.getDictionaryObject(COSName.K));
        }
    }

    private boolean isGone(COSBase kid) {
        COSBase plain = kid instanceof COSObject o ? o.getObject() : kid;
        if (!(plain instanceof COSDictionary one)) {
            return false;
        }
        COSDictionary page = one.getCOSDictionary(COSName.PG);
        return page != null && !kept.contains(page);
    }

    /** Which elements belong to the marks of a page: of those that stay, under their own numbers. */
    private void parents(PDStructureTreeRoot read) throws IOException {
        Map<Integer, COSBase> stay = new TreeMap<>();
        COSArray before = read.getParentTree() == null
                ? new COSArray()
                : read.getParentTree().getCOSObject().getCOSArray(COSName.NUMS);
        Set<Integer> numbers = new HashSet<>();
        pdf.getPages().forEach(p -> numbers.add(p.getStructParents()));
        for (int i = 0; before != null && i + 1 < before.size(); i += 2) {
            if (numbers.contains(before.getInt(i))) {
                stay.put(before.getInt(i), before.get(i + 1));
            }
        }
        COSArray after = new COSArray();
        stay.forEach((number, elements) -> {
            after.add(org.apache.pdfbox.cos.COSInteger.get(number));
            after.add(elements);
        });
        COSDictionary tree = new COSDictionary();
        tree.setItem(COSName.NUMS, after);
        read.getCOSObject().setItem(COSName.PARENT_TREE, tree);
    }
}
