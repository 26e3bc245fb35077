package stretchwright.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Response;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.ColorScheme;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The whole job in a real browser: from an empty workroom to a PDF, by somebody who was never here. */
@Tag("slow")
class WholeJobTest {
    @RegisterExtension
    private static final OpenBrowser BROWSER = new OpenBrowser();

    /** To the questions in their order: values of the boxes, empty to skip; "none" for no cloth. */
    private record Answers(String name, String figure, String age, String leg, String unit, List<List<String>> typed) {}

    private static final Answers OWN = new Answers(
            "Ada",
            "woman",
            "",
            "over the skate boot",
            "inches",
            List.of(
                    List.of("65 1/4"),
                    List.of("29 1/2"),
                    List.of("38 3/4"),
                    List.of("30 1/2"),
                    List.of("28 1/4"),
                    List.of("14 1/4"),
                    List.of("6 3/8", "5 3/4"),
                    List.of("11 1/2"),
                    List.of("15 3/4"),
                    List.of("15 1/4"),
                    List.of("3 3/4")));

    private static final Answers PUPIL = new Answers(
            "Kit",
            "child",
            "12",
            "over the skate boot",
            "cm",
            List.of(
                    List.of("150.5"),
                    List.of("64"),
                    List.of("79.5"),
                    List.of("69.5"),
                    List.of("58.5"),
                    List.of("30.5"),
                    List.of("none"),
                    List.of("25.5"),
                    List.of("34.5"),
                    List.of("32"),
                    List.of("5")));

    private static final Answers HOCKEY = new Answers(
            "Alex",
            "man",
            "",
            "over the skate boot",
            "cm",
            List.of(
                    List.of("176"),
                    List.of("88"),
                    List.of("99.5"),
                    List.of("83"),
                    List.of("74"),
                    List.of("37.5"),
                    List.of("none"),
                    List.of("31"),
                    List.of("42"),
                    List.of("40"),
                    List.of("7.5")));

    private static final Map<String, Answers> JOBS = Map.of("own", OWN, "pupil", PUPIL);

    @ParameterizedTest
    @CsvSource({"own, LAPTOP", "own, PHONE", "pupil, PHONE"})
    void aNewcomerComesFromTheEmptyPageToThePattern(String job, String device) throws Exception {
        Server server = Visitor.started();
        Browsing.Device in = device.equals("PHONE") ? Browsing.Device.PHONE : Browsing.Device.LAPTOP;
        String language = JOBS.get(job) == OWN ? "en-US" : "en-GB";
        Page page = BROWSER.browsing().page(in, ColorScheme.LIGHT, true, language);
        TimedWay way = new TimedWay();
        begun(page, server, way);
        answer(page, Objects.requireNonNull(JOBS.get(job)), way);
        assertThat(page.url()).contains("/makes/");
        way.read(page);
        ends(page, job + ", " + device, way);
        server.stop();
    }

    /** Hockey boots, the rise below the waist, a phone pocket and a panel of another colour: all of it at the drawing. */
    @Test
    void aLowRiseWithPocketAndPanelOverHockeyBootsNeedsNoOtherScreen() throws Exception {
        Server server = Visitor.started();
        Page page = BROWSER.browsing().page(Browsing.Device.LAPTOP);
        TimedWay way = new TimedWay();
        begun(page, server, way);
        answer(page, HOCKEY, way);
        way.read(page);
        way.moved(page, "#grip-front_waist", "Shift+ArrowDown", 3);
        way.moved(page, "#grip-back_waist", "Shift+ArrowDown", 2);
        way.pressed(page, "add a pocket", "with a phone pocket");
        way.pressed(page, "add a panel", "with a contrast panel");
        way.read(page);
        String make = page.request().get(page.url() + "/make.yaml").text();
        assertThat(make)
                .containsPattern("front waist: \"-30(\\.0)? mm\"")
                .containsPattern("back waist: \"-20(\\.0)? mm\"");
        assertThat(make).contains("phone").contains("side panel");
        ends(page, "hockey, LAPTOP", way);
        server.stop();
    }

    private static void begun(Page page, Server server, TimedWay way) {
        page.navigate(server.address());
        way.read(page);
        page.getByRole(AriaRole.LINK, new Page.GetByRoleOptions().setName("New make"))
                .first()
                .click();
    }

    /** At a PDF, in ten minutes, with few fields and no complaint. */
    private static void ends(Page page, String who, TimedWay way) throws Exception {
        byte[] pdf = printed(page, way);
        assertThat(new String(pdf, 0, 5, StandardCharsets.US_ASCII)).isEqualTo("%PDF-");
        System.out.printf("%s: from the empty page to the PDF %s%n", who, way);
        assertThat(way.minutes()).isLessThanOrEqualTo(10);
        assertThat(way.fields()).as("fields").isLessThanOrEqualTo(14);
        assertThat(BROWSER.browsing().complaints()).isEmpty();
        page.context().close();
    }

    private static void answer(Page page, Answers answers, TimedWay way) {
        way.read(page);
        way.typed(page.getByLabel("Name"), answers.name());
        way.picked(page.getByLabel(answers.figure(), new Page.GetByLabelOptions().setExact(true)));
        if (!answers.age().isEmpty()) {
            way.typed(page.getByLabel("Age"), answers.age());
        }
        if (!page.getByLabel(answers.leg()).isChecked()) {
            way.picked(page.getByLabel(answers.leg()));
        }
        press(page, "Next");
        for (int i = 0; i < answers.typed().size(); i++) {
            assertThat(Browsing.tooWide(page)).as(page.url()).isLessThanOrEqualTo(0);
            way.read(page);
            if (i == 0 && !page.getByLabel(answers.unit()).isChecked()) {
                way.picked(page.getByLabel(answers.unit()));
            }
            List<String> typed = answers.typed().get(i);
            if (typed.get(0).equals("none")) {
                press(page, "No cloth yet");
                continue;
            }
            for (int k = 0; k < typed.size(); k++) {
                way.typed(page.locator(".reads input").nth(k), typed.get(k));
            }
            String before = page.url();
            page.locator(".go button.first").click();
            page.waitForURL(url -> !url.equals(before));
        }
    }

    private static void press(Page page, String words) {
        String before = page.url();
        page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName(words))
                .click();
        page.waitForURL(url -> !url.equals(before));
    }

    private static byte[] printed(Page page, TimedWay way) throws Exception {
        page.locator("nav:visible a", new Page.LocatorOptions().setHasText("Print"))
                .first()
                .click();
        page.waitForURL("**/print");
        way.read(page);
        Response pdf = page.waitForResponse(
                r -> r.url().contains(".pdf") && r.status() == 200,
                () -> page.locator("#press").click());
        return page.request().get(pdf.url()).body();
    }

    /** With scripting off only liveliness is lost. */
    @Test
    void withoutScriptsEveryControlWorks() {
        Server server = Visitor.started();
        Page page = BROWSER.browsing().page(Browsing.Device.LAPTOP, ColorScheme.LIGHT, false);
        page.navigate(server.address() + "new/1");
        answer(page, OWN, new TimedWay());
        String drawn = page.locator("#drawing svg.wide path.cut").first().getAttribute("d");
        page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("longer"))
                .click();
        assertThat(page.locator("#drawing svg.wide path.cut").first().getAttribute("d"))
                .isNotEqualTo(drawn);
        assertThat(page.locator("#undo").innerText()).startsWith("Undo: ");
        page.locator("#undo").click();
        assertThat(page.locator("#drawing svg.wide path.cut").first().getAttribute("d"))
                .isEqualTo(drawn);
        server.stop();
    }

    /** The pattern follows a finger, a mouse and keys, and is kept when they let go; it can be undone. */
    @Test
    void theDrawingFollowsWhatMovesIt() {
        Server server = Visitor.started();
        Page page = BROWSER.browsing().page(Browsing.Device.LAPTOP);
        page.navigate(server.address() + "new/1");
        answer(page, OWN, new TimedWay());
        String before = waist(page);
        Locator grip = page.locator("#grip-front_waist");
        double y = grip.boundingBox().y;
        page.mouse().move(grip.boundingBox().x + 20, y + 20);
        page.mouse().down();
        page.mouse()
                .move(grip.boundingBox().x + 20, y + 34, new com.microsoft.playwright.Mouse.MoveOptions().setSteps(5));
        page.waitForCondition(() -> !waist(page).equals(before));
        assertThat(page.locator("#undo").count())
                .as("nothing is kept while it is held")
                .isZero();
        page.mouse().up();
        page.locator("#undo").waitFor();
        assertThat(page.locator("#undo").innerText()).contains("lower");
        page.keyboard().press("Control+z");
        page.waitForCondition(() -> waist(page).equals(before));
        page.locator("#grip-hem").focus();
        List<String> seen = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
            page.keyboard().press("Shift+ArrowDown");
        }
        page.locator("#undo").waitFor();
        seen.add(page.locator("#undo").innerText());
        assertThat(seen.get(0)).contains("longer");
        assertThat(page.evaluate("document.activeElement.id")).isEqualTo("grip-hem");
        assertThat(BROWSER.browsing().complaints()).isEmpty();
        server.stop();
    }

    private static String waist(Page page) {
        return page.locator("#grip-front_waist").getAttribute("aria-valuenow");
    }
}
