package stretchwright.ground;

import java.util.Locale;

/** Numbers written with so many decimals, the same in every country: drawings have tens of thousands of them. */
public final class Decimals {
    private static final long[] POWERS = {1, 10, 100, 1_000, 10_000, 100_000, 1_000_000};
    /** Up to here, in last places, a number tells the last place and what is beyond it. */
    private static final double LARGEST = 1e12;
    /** Nearer to half a last place than this, it is rounded by its own digits. */
    private static final double NEAR_HALF = 1e-3;

    private Decimals() {}

    /** Half a last place goes away from zero; negative numbers that come to nothing keep their sign, as in Java's own writing. */
    public static String fixed(double value, int decimals) {
        double places = Math.abs(value) * POWERS[decimals];
        double whole = Math.floor(places);
        if (!(places < LARGEST) || Math.abs(places - whole - 0.5) < NEAR_HALF) {
            return String.format(Locale.ROOT, "%." + decimals + "f", value);
        }
        long number = (long) whole + (places - whole > 0.5 ? 1 : 0);
        StringBuilder out = new StringBuilder();
        out.append(Double.compare(value, 0) < 0 ? "-" : "").append(number / POWERS[decimals]);
        if (decimals > 0) {
            String rest = Long.toString(number % POWERS[decimals]);
            out.append('.').append("0".repeat(decimals - rest.length())).append(rest);
        }
        return out.toString();
    }

    /** Up to so many decimals: without idle zeros, and nothing has no sign. */
    public static String upTo(double value, int decimals) {
        String text = fixed(value, decimals);
        int end = text.length();
        if (text.indexOf('.') >= 0) {
            while (text.charAt(end - 1) == '0') {
                end--;
            }
            end -= text.charAt(end - 1) == '.' ? 1 : 0;
        }
        String bare = text.substring(0, end);
        return bare.equals("-0") ? "0" : bare;
    }
}
