package stretchwright.print.kit;

import org.apache.pdfbox.pdmodel.documentinterchange.taggedpdf.StandardStructureTypes;

/** What a part of a page is to someone who has it read out (structure types of ISO 32000-1, 14.8.4). */
public enum Tag {
    HEADING(StandardStructureTypes.H2),
    PARAGRAPH(StandardStructureTypes.P),
    /** A drawing; what it shows is said in words. */
    FIGURE(StandardStructureTypes.Figure);

    private final String type;

    Tag(String type) {
        this.type = type;
    }

    String type() {
        return type;
    }
}
