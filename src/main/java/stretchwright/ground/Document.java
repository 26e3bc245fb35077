package stretchwright.ground;

import java.util.Arrays;

/**
 * A finished file, not yet written.
 *
 * @param name file name, such as "pattern-A4.pdf"
 * @param kind what it is for people: "pattern tiles", "lay", "sewing plan", "report"
 * @param pages number of pages; 1 for a drawing
 */
public record Document(String name, String kind, int pages, byte[] bytes) {
    @Override
    public boolean equals(Object other) {
        return other instanceof Document d
                && name.equals(d.name)
                && kind.equals(d.kind)
                && pages == d.pages
                && Arrays.equals(bytes, d.bytes);
    }

    @Override
    public int hashCode() {
        return 31 * name.hashCode() + Arrays.hashCode(bytes);
    }

    @Override
    public String toString() {
        return name + " (" + kind + ", " + pages + " pages, " + bytes.length + " bytes)";
    }
}
