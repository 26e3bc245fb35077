package stretchwright.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.JsonObject;
import com.microsoft.playwright.CDPSession;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Mouse;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.BoundingBox;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/** Slabs of chalk and fields of a make in a real browser: by mouse, finger, arrow keys and typing. */
@Tag("slow")
class ChalkTest {
    @RegisterExtension
    private static final OpenPage PAGE = new OpenPage();

    @RegisterExtension
    private static final OpenBrowser BROWSER = new OpenBrowser();

    private String make = "";

    @BeforeEach
    void another() throws Exception {
        make = PAGE.server().address() + PAGE.visitor().make();
    }

    private Page page(Browsing.Device device) {
        Page page = BROWSER.browsing().page(device);
        page.navigate(make);
        return page;
    }

    /** Of the pages of this make; that a value was refused the browser tells as well. */
    private List<String> complaints() {
        return BROWSER.browsing().complaints().stream()
                .filter(c -> c.startsWith(make) && !c.contains("status of 422"))
                .toList();
    }

    private static void waitFor(Page page, String id, String value) {
        page.waitForCondition(() -> value.equals(page.locator(id).getAttribute("aria-valuenow")));
    }

    private static String undo(Page page) {
        page.locator("#undo").waitFor();
        return page.locator("#undo").innerText();
    }

    @Test
    void arrowsShiftHomeAndEscapeMoveEverySlab() {
        Page page = page(Browsing.Device.LAPTOP);
        for (String id : List.of("#grip-band", "#grip-at_hem", "#grip-at_knee", "#grip-at_calf")) {
            Locator grip = page.locator(id);
            int from = Integer.parseInt(grip.getAttribute("aria-valuenow"));
            grip.focus();
            page.keyboard().press("ArrowUp");
            page.keyboard().press("ArrowRight");
            page.keyboard().press("ArrowDown");
            waitFor(page, id, Integer.toString(from + 1));
            page.keyboard().press("Shift+ArrowLeft");
            waitFor(page, id, Integer.toString(from - 9));
            assertThat(page.evaluate("document.activeElement.id")).isEqualTo(id.substring(1));
        }
        page.locator("#undo").waitFor();
        page.waitForCondition(() -> undo(page).equals("Undo: calf 0.9 cm tighter"));
        page.locator("#grip-at_calf").focus();
        page.keyboard().press("ArrowUp");
        page.keyboard().press("Home");
        waitFor(page, "#grip-at_calf", "0");
        page.locator("#grip-band").focus();
        page.keyboard().press("ArrowUp");
        page.keyboard().press("Escape");
        waitFor(page, "#grip-band", "56");
        assertThat(undo(page)).startsWith("Undo: calf ");
        assertThat(complaints()).isEmpty();
    }

    @Test
    void aMousePullsTheHemWider() {
        Page page = page(Browsing.Device.LAPTOP);
        BoundingBox box = page.locator("#grip-at_hem .slab").boundingBox();
        page.mouse().move(box.x + box.width / 2, box.y + box.height / 2);
        page.mouse().down();
        page.mouse().move(box.x + box.width / 2 + 5, box.y + 40, new Mouse.MoveOptions().setSteps(4));
        page.waitForCondition(() -> !"0".equals(page.locator("#grip-at_hem").getAttribute("aria-valuenow")));
        assertThat(page.locator("#undo").count()).as("it is held").isZero();
        page.mouse().up();
        assertThat(undo(page)).startsWith("Undo: Width of the hem ").endsWith(" wider");
        assertThat(complaints()).isEmpty();
    }

    /** The page must not scroll away under a finger that pulls a slab. */
    @Test
    void aFingerPullsTheBandHigher() {
        Page page = page(Browsing.Device.PHONE);
        page.locator("#grip-band-small").scrollIntoViewIfNeeded();
        BoundingBox box = page.locator("#grip-band-small .slab").boundingBox();
        CDPSession finger = page.context().newCDPSession(page);
        touch(finger, "touchStart", box.x + box.width / 2, box.y + box.height / 2);
        for (int i = 1; i <= 14; i++) {
            touch(finger, "touchMove", box.x + box.width / 2, box.y + box.height / 2 - 4 * i);
        }
        page.waitForCondition(
                () -> Integer.parseInt(page.locator("#grip-band-small").getAttribute("aria-valuenow")) > 90);
        page.waitForTimeout(500);
        assertThat(page.locator("#undo").count()).as("it is held").isZero();
        touch(finger, "touchEnd", 0, 0);
        assertThat(undo(page)).startsWith("Undo: Height of the band ").endsWith(" higher");
        assertThat(complaints()).isEmpty();
    }

    private static void touch(CDPSession finger, String type, double x, double y) {
        JsonObject point = new JsonObject();
        point.addProperty("x", x);
        point.addProperty("y", y);
        com.google.gson.JsonArray points = new com.google.gson.JsonArray();
        if (!type.equals("touchEnd")) {
            points.add(point);
        }
        JsonObject event = new JsonObject();
        event.addProperty("type", type);
        event.add("touchPoints", points);
        finger.send("Input.dispatchTouchEvent", event);
    }

    @Test
    void whatIsTypedIsDrawnAtOnceKeptByEnterAndNonsenseIsToldBesideIt() {
        Page page = page(Browsing.Device.LAPTOP);
        Locator cut = page.locator("#drawing svg.wide path.cut").first();
        String before = cut.getAttribute("d");
        Locator field = page.locator("#at_hem-typed");
        field.focus();
        page.keyboard().press("Control+a");
        page.keyboard().type("1.5", new com.microsoft.playwright.Keyboard.TypeOptions().setDelay(60));
        page.waitForCondition(() -> page.locator("#at_hem-now").innerText().equals("1.5 cm wider"));
        page.waitForCondition(() -> !cut.getAttribute("d").equals(before));
        String drawn = cut.getAttribute("d");
        assertThat(field.inputValue()).isEqualTo("1.5");
        assertThat(page.evaluate("document.activeElement.id")).isEqualTo("at_hem-typed");
        assertThat(page.locator("#undo").count()).as("it is only tried").isZero();
        page.keyboard().type("x");
        page.waitForCondition(() -> !page.locator("#at_hem-wrong").innerText().isBlank());
        assertThat(cut.getAttribute("d")).as("the last drawing stays").isEqualTo(drawn);
        assertThat(field.getAttribute("aria-invalid")).isNotNull();
        page.keyboard().press("Backspace");
        page.waitForCondition(() -> page.locator("#at_hem-wrong").textContent().isBlank());
        page.keyboard().press("Enter");
        assertThat(undo(page)).isEqualTo("Undo: Width of the hem 1.5 cm wider");
        assertThat(page.evaluate("document.activeElement.id")).isEqualTo("at_hem-typed");
        page.keyboard().press("Control+a");
        page.keyboard().type("3");
        page.waitForCondition(() -> page.locator("#at_hem-now").innerText().equals("3.0 cm wider"));
        page.keyboard().press("Escape");
        page.waitForCondition(() -> page.locator("#at_hem-now").innerText().equals("1.5 cm wider"));
        assertThat(complaints()).isEmpty();
    }

    @Test
    void whatWasUnfoldedStaysUnfolded() {
        Page page = page(Browsing.Device.PHONE);
        page.locator("#levels summary").click();
        page.locator("#at_knee-more").click();
        page.waitForCondition(() -> page.locator("#at_knee-now").innerText().equals("0.5 cm looser"));
        page.locator("#at_knee-less").click();
        page.waitForCondition(() -> page.locator("#at_knee-now").innerText().equals("as usual"));
        assertThat(page.locator("#at_knee-more").isVisible()).isTrue();
        assertThat(Browsing.tooWide(page)).isZero();
        assertThat(Browsing.barriers(page)).isEmpty();
        Object small = page.evaluate(
                "[...document.querySelectorAll('.change button, .change input[type=text], .change summary')]"
                        + ".filter(e => e.checkVisibility()).map(e => e.getBoundingClientRect())"
                        + ".filter(r => r.width < 44 || r.height < 44).length");
        assertThat(small).as("targets under 44 px").isEqualTo(0);
        Object grips = page.evaluate(
                "[...document.querySelectorAll('svg.narrow .grip .hit')].map(e => e.getBoundingClientRect())"
                        + ".filter(r => r.width < 44 || r.height < 44).length");
        assertThat(grips).as("slabs under 44 px").isEqualTo(0);
        assertThat(complaints()).isEmpty();
    }
}
