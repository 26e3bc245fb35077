package stretchwright.web;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.util.Locale;

/** What a newcomer reads, fills in and presses on the way, and how long that takes. */
final class TimedWay {
    /** Of somebody who reads a screen for the first time (page.md, first use): words a minute, and seconds a field. */
    private static final double WORDS_A_MINUTE = 200;

    private static final double SECONDS_A_FIELD = 6;

    private int steps;
    private int fields;
    private int presses;
    private int words;

    /** All that stands open on the page is read once. */
    void read(Page page) {
        steps++;
        String text = page.locator("main").innerText();
        words += text.isBlank() ? 0 : text.trim().split("\\s+").length;
    }

    void typed(Locator field, String value) {
        fields++;
        field.fill(value);
    }

    void picked(Locator choice) {
        fields++;
        choice.check();
    }

    /** A line of the drawing, moved by keys: a field as well. */
    void moved(Page page, String grip, String key, int times) {
        fields++;
        String before = page.locator(grip).getAttribute("aria-valuenow");
        page.locator(grip).focus();
        for (int i = 0; i < times; i++) {
            page.keyboard().press(key);
        }
        page.waitForCondition(
                () -> !page.locator(grip).getAttribute("aria-valuenow").equals(before));
        page.locator("#undo").waitFor();
    }

    /** A button that changes something, and is not only the way on. */
    void pressed(Page page, String button, String undo) {
        presses++;
        page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName(button))
                .click();
        page.locator("#undo", new Page.LocatorOptions().setHasText(undo)).waitFor();
    }

    double minutes() {
        return words / WORDS_A_MINUTE + (fields + presses) * SECONDS_A_FIELD / 60;
    }

    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "%d screens, %d fields, %d presses, %d words, %.1f minutes",
                steps,
                fields,
                presses,
                words,
                minutes());
    }

    int fields() {
        return fields;
    }
}
