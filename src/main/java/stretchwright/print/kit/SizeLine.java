package stretchwright.print.kit;

import java.util.List;

/**
 * How one size of a nest is drawn. Sizes differ in colour and in dash; up to five are told apart in grey, more by every kind of
 * colour sight.
 *
 * @param name of the size, as it stands beside its line
 * @param number from 0
 */
public record SizeLine(String name, int number) {
    /** Seven colours that all kinds of colour sight tell apart on white (Okabe and Ito 2008; their yellow is too pale). */
    private static final List<Integer> COLOURS =
            List.of(0x000000, 0xd55e00, 0x0072b2, 0x009e73, 0xcc79a7, 0xe69f00, 0x56b4e9);

    private static final List<List<Double>> DASHES =
            List.of(List.of(), List.of(6.0, 2.0), List.of(2.0, 2.0), List.of(10.0, 2.0, 2.0, 2.0), List.of(14.0, 3.0));

    /** As many sizes as have a line of their own: 7 colours and 5 dashes have no common divisor. */
    public static final int MOST = 35;

    /** Red, green and blue, a byte each. */
    public int colour() {
        return COLOURS.get(number % COLOURS.size());
    }

    /** Lengths of dash and gap in turn, mm; none for a solid line. */
    public List<Double> dashes() {
        return DASHES.get(number % DASHES.size());
    }
}
