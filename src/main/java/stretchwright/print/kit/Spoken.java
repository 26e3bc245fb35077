package stretchwright.print.kit;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;

/**
 * Marks the content of one page for those who have it read out: every text is a heading, a paragraph or part of a figure,
 * in the order in which it is drawn; loose lines are decoration (ISO 32000-1, 14.7 and 14.8.2.2).
 */
final class Spoken {
    private record Element(Tag tag, String words) {}

    private static final COSName DECORATION = COSName.getPDFName("Artifact");

    private final PDPageContentStream out;
    private final List<Element> elements = new ArrayList<>();
    private boolean decorating;
    private boolean inside;

    Spoken(PDPageContentStream out) {
        this.out = out;
    }

    /** Whether what is drawn now belongs to an element already. */
    boolean inside() {
        return inside;
    }

    /** @param words what a figure shows; empty where the text speaks for itself */
    void begin(Tag tag, String words) throws IOException {
        endDecoration();
        out.beginMarkedContent(COSName.getPDFName(tag.type()), elements.size());
        elements.add(new Element(tag, words));
        inside = true;
    }

    void end() throws IOException {
        out.endMarkedContent();
        inside = false;
    }

    /** What is drawn next is not read out, unless an element is open. */
    void decoration() throws IOException {
        if (!inside && !decorating) {
            out.beginMarkedContent(DECORATION);
            decorating = true;
        }
    }

    void endDecoration() throws IOException {
        if (decorating) {
            out.endMarkedContent();
            decorating = false;
        }
    }

    /** Hangs the page's elements below the document's; answers them in the order of their marks. */
    COSArray hang(PDStructureElement document, PDPage page) {
        COSArray marks = new COSArray();
        for (int mark = 0; mark < elements.size(); mark++) {
            PDStructureElement element =
                    new PDStructureElement(elements.get(mark).tag().type(), document);
            element.setPage(page);
            if (!elements.get(mark).words().isEmpty()) {
                element.setAlternateDescription(elements.get(mark).words());
            }
            element.appendKid(mark);
            document.appendKid(element);
            marks.add(element);
        }
        return marks;
    }
}
