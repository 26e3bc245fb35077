package stretchwright.web;

/**
 * What somebody sees whose make is not done yet.
 *
 * @param before how many makes come before it; 0 where it is worked at
 */
public record WaitingPage(String name, int before) {
    public String words() {
        return before == 0 ? "It is being drafted and laid." : before + " before you.";
    }
}
