package stretchwright.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.extension.RegisterExtension;
import stretchwright.ground.Waiting;
import stretchwright.web.door.Opening;
import stretchwright.workroom.store.Address;

/** In a real browser: the network goes and comes back, the program is started again, two windows change one make. Nothing is lost. */
@Tag("slow")
@Timeout(value = 3, unit = TimeUnit.MINUTES)
class InterruptedTest extends LayVisits {
    private static final String WAITS = "Not connected. Your changes wait here.";

    private static final Locator.WaitForOptions ATTACHED =
            new Locator.WaitForOptions().setState(com.microsoft.playwright.options.WaitForSelectorState.ATTACHED);

    @RegisterExtension
    private static final OpenBrowser BROWSER = new OpenBrowser();

    /** That nobody could be reached is told in the console as well. */
    @AfterEach
    void forgive() {
        BROWSER.browsing().forgive();
    }

    private static Page at(Server server, String path) {
        Page page = BROWSER.browsing().page(Browsing.Device.LAPTOP);
        page.navigate(server.address() + path);
        return page;
    }

    private static void press(Page page, String row, String button) {
        page.locator("#change dl > div", new Page.LocatorOptions().setHasText(row))
                .getByRole(AriaRole.BUTTON, new Locator.GetByRoleOptions().setName(button))
                .click();
    }

    private static Locator status(Page page) {
        return page.locator(".kept");
    }

    private static void waitFor(Page page, Locator at, String words) {
        page.waitForCondition(() -> at.innerText().contains(words));
    }

    @Test
    void whatIsPressedWithoutAConnectionWaitsAndIsKeptWhenItIsBack() throws Exception {
        Server server = server();
        Visitor visitor = new Visitor(server);
        String make = visitor.make();
        String before = visitor.text(make);
        Page page = at(server, make);
        String told = status(page).innerText();
        page.context().setOffline(true);
        press(page, "Length", "longer");
        waitFor(page, status(page), WAITS);
        press(page, "Hold", "firm");
        page.locator("#grip-front_waist").focus();
        page.keyboard().press("Shift+ArrowDown");
        page.waitForTimeout(1000);
        assertThat(status(page).innerText()).isEqualTo(WAITS);
        assertThat(page.locator("#change").isVisible()).isTrue();
        assertThat(visitor.text(make)).isEqualTo(before);
        page.context().setOffline(false);
        page.locator("#undo").waitFor();
        waitFor(page, status(page), told);
        assertThat(visitor.text(make))
                .contains("hem: \"5.0 mm\"", "front waist: \"-10 mm\"")
                .contains("hold: \"firm\"");
        page.context().close();
        server.stop();
    }

    /** Who has changes waiting is asked before the page goes. */
    @Test
    void aPageWithWaitingChangesIsNotLeftUnasked() throws Exception {
        Server server = server();
        Visitor visitor = new Visitor(server);
        String make = visitor.make();
        Page page = at(server, make);
        boolean[] asked = {false};
        page.onDialog(d -> {
            asked[0] = d.type().equals("beforeunload");
            d.dismiss();
        });
        page.context().setOffline(true);
        press(page, "Length", "longer");
        waitFor(page, status(page), WAITS);
        page.locator("nav:visible a", new Page.LocatorOptions().setHasText("Print"))
                .first()
                .click();
        page.waitForCondition(() -> asked[0]);
        assertThat(page.url()).endsWith(make);
        page.context().setOffline(false);
        page.locator("#undo").waitFor();
        assertThat(visitor.text(make)).contains("5.0 mm");
        page.context().close();
        server.stop();
    }

    /** Pressed quickly, or moved by keys and pressed at once: each is kept, and nobody is told that it was another window. */
    @Test
    void quickPressesAreAllKept() throws Exception {
        Server server = server();
        Visitor visitor = new Visitor(server);
        String make = visitor.make();
        Page page = at(server, make);
        for (int i = 0; i < 4; i++) {
            page.evaluate(
                    "[...document.querySelectorAll('#change button')].find(b => b.name === 'style.shifts.hem' && b.textContent === 'longer').click()");
        }
        page.locator("#grip-front_waist").focus();
        page.keyboard().press("Shift+ArrowDown");
        page.evaluate("[...document.querySelectorAll('#change button')].find(b => b.value === 'firm').click()");
        page.waitForCondition(
                () -> page.locator("button[value=firm][aria-pressed=true]").count() == 1);
        assertThat(page.locator("main").innerText()).doesNotContain("another window");
        assertThat(visitor.text(make))
                .contains("hem: \"20.0 mm\"", "front waist: \"-10 mm\"")
                .contains("hold: \"firm\"");
        assertThat(BROWSER.browsing().complaints()).isEmpty();
        page.context().close();
        server.stop();
    }

    @Test
    void sewingGoesOnWithoutAConnectionAndIsToldWhenItIsBack() throws Exception {
        Server server = server();
        Visitor visitor = new Visitor(server);
        String make = visitor.make();
        Page page = at(server, make + "/sew");
        page.waitForCondition(
                () -> (boolean)
                        page.evaluate(
                                "navigator.serviceWorker.ready.then(async () => !!navigator.serviceWorker.controller && (await caches.keys()).length > 0)"));
        String first = page.url();
        page.context().setOffline(true);
        for (int i = 0; i < 3; i++) {
            String here = page.url();
            page.locator("#done button").click();
            page.waitForURL(url -> !url.equals(here));
        }
        waitFor(page, status(page), WAITS);
        String reached = page.locator("#done").getAttribute("data-stop");
        assertThat(visitor.get(make + "/sew").body()).doesNotContain("data-stop=\"" + reached + "\" data-on");
        page.context().setOffline(false);
        page.waitForCondition(() -> !status(page).innerText().contains(WAITS));
        assertThat(page.url()).isNotEqualTo(first);
        assertThat(visitor.get(make + "/sew").body()).contains("data-stop=\"" + reached + "\" data-on");
        page.context().close();
        server.stop();
    }

    private static Server again(Address room, int port) throws Exception {
        return Waiting.until(Duration.ofSeconds(5), () -> Server.start(room, Opening.here(port)), Optional::isPresent)
                .orElseThrow(() -> new AssertionError("the port was not free again"));
    }

    /** The program is ended and started again while a lay is searched on and the page of it is open. */
    @Test
    void aSearchIsToldOverARestartAndGoesOn() throws Exception {
        Server server = server();
        int port = java.net.URI.create(server.address()).getPort();
        Visitor visitor = new Visitor(server);
        String make = remnant(visitor);
        press(visitor, make, "do", "keep", "placed", spread(placed(visitor, make)));
        Page page = at(server, make + "/lay");
        page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Look for a shorter lay"))
                .click();
        page.locator("#share").waitFor();
        double before = now(visitor.get(make + "/lay").body());
        server.stop();
        waitFor(page, status(page), "Not connected.");
        Server started = again(room(), port);
        page.waitForCondition(() -> !status(page).innerText().contains("Not connected."));
        page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Good enough, stop"))
                .click();
        page.waitForCondition(() -> page.locator("#share").count() == 0);
        assertThat(page.locator("#drawing path").count()).isGreaterThan(2);
        double after = now(new Visitor(started).get(make + "/lay").body());
        assertThat(after).isLessThanOrEqualTo(before);
        assertThat(page.locator("#drawing").innerText())
                .contains(String.format(java.util.Locale.ROOT, "now %.1f cm", after));
        page.context().close();
        started.stop();
    }

    /** A piece that was moved stays where it is, and what was pressed goes on. */
    @Test
    void aLayGoesOnAfterTheNetworkWasGone() throws Exception {
        Server server = server();
        Visitor visitor = new Visitor(server);
        String make = remnant(visitor);
        double before = spot(placed(visitor, make).toString(), "cuff 1");
        Page page = at(server, make + "/lay");
        page.context().setOffline(true);
        Locator cuff =
                page.locator("#drawing svg.wide a.held-by[data-id='cuff 1']").first();
        cuff.focus();
        page.keyboard().press("Shift+ArrowUp");
        waitFor(page, status(page), WAITS);
        page.keyboard().press("ArrowUp");
        page.waitForTimeout(1000);
        page.context().setOffline(false);
        page.waitForCondition(() -> !status(page).innerText().contains("Not connected."));
        page.locator("#hand input[name=placed]:not([value=''])").waitFor(ATTACHED);
        page.waitForCondition(() ->
                Math.abs(spot(page.locator("#hand input[name=placed]").inputValue(), "cuff 1") - before - 11) < 0.05);
        page.navigate(server.address() + make + "/lay");
        page.context().setOffline(true);
        page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Look for a shorter lay"))
                .click();
        waitFor(page, status(page), WAITS);
        page.context().setOffline(false);
        page.locator("#share").waitFor();
        page.waitForCondition(() -> !status(page).innerText().contains("Not connected."));
        page.context().close();
        server.stop();
    }

    /** The table stays usable: what was pressed while the program was away is kept by the one that came after it. */
    @Test
    void aChangePressedWhileTheProgramIsAwayIsKeptByTheNext() throws Exception {
        Server server = server();
        int port = java.net.URI.create(server.address()).getPort();
        String make = new Visitor(server).make();
        Page page = at(server, make);
        server.stop();
        press(page, "Length", "longer");
        waitFor(page, status(page), WAITS);
        Server started = again(room(), port);
        page.locator("#undo").waitFor();
        assertThat(new Visitor(started).text(make)).contains("hem: \"5.0 mm\"");
        page.context().close();
        started.stop();
    }

    /** The later of two windows is told and has both ways; whichever it goes, the other stays among the versions. */
    @Test
    void theLaterOfTwoWindowsSeesTheOtherOrKeepsItsOwn() throws Exception {
        Server server = server();
        Visitor visitor = new Visitor(server);
        for (boolean mine : new boolean[] {false, true}) {
            String make = visitor.make();
            Page first = at(server, make);
            Page second = first.context().newPage();
            second.navigate(server.address() + make);
            press(first, "Length", "longer");
            first.locator("#undo").waitFor();
            press(second, "Hold", "firm");
            second.getByText("Changed in another window at").waitFor();
            assertThat(second.locator("#live").innerText()).contains("See it", "Keep mine as version 2", "hold", "hem");
            if (mine) {
                second.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Keep mine as version 2"))
                        .click();
            } else {
                second.getByRole(AriaRole.LINK, new Page.GetByRoleOptions().setName("See it"))
                        .click();
            }
            second.locator("#change dl").first().waitFor();
            assertThat(visitor.text(make)).contains(mine ? "hold: \"firm\"" : "hem: \"5.0 mm\"");
            second.navigate(server.address() + make + "/versions");
            second.locator("details.saved summary").click();
            Locator other = second.locator("details.saved li");
            assertThat(other.count()).isEqualTo(1);
            assertThat(other.innerText()).contains(mine ? "Hold: medium and 1 more" : "Hold: firm and 1 more");
            assertThat(second.locator("main").innerText().contains("Version 2")).isEqualTo(mine);
            other.getByRole(AriaRole.BUTTON).click();
            second.locator("#change dl").first().waitFor();
            assertThat(visitor.text(make)).contains(mine ? "hem: \"5.0 mm\"" : "hold: \"firm\"");
            first.context().close();
        }
        server.stop();
    }
}
