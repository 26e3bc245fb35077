package stretchwright.print;

import java.util.function.Supplier;
import stretchwright.ground.Document;
import stretchwright.print.kit.FileGroup;

/**
 * A file that can be had by its name, not made yet.
 *
 * @param maker a function of the make alone, so that files may be made in any order and side by side
 */
public record Printable(String name, FileGroup group, Supplier<Document> maker) {
    public Document made() {
        Document document = maker.get();
        if (!document.name().equals(name)) {
            throw new IllegalStateException(name + " came out as " + document.name());
        }
        return document;
    }
}
