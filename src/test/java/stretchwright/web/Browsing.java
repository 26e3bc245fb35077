package stretchwright.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.deque.html.axecore.results.Rule;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.options.ColorScheme;
import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;

/** A real browser for tests: Chromium, where the machine has one; what its pages complain of is collected. */
final class Browsing implements AutoCloseable {
    private static final List<String> NAMES = List.of("chromium", "chromium-browser", "google-chrome");

    /** It starts nothing of its own accord and asks nobody; as root it cannot shut itself in. */
    private static final List<String> SWITCHES = List.of(
            "--no-sandbox",
            "--disable-gpu",
            "--disable-quic",
            "--no-first-run",
            "--disable-background-networking",
            "--disable-component-update",
            "--disable-sync");

    private final Playwright playwright;
    private final Browser browser;
    private final List<String> complaints = new ArrayList<>();

    private Browsing(Playwright playwright, Browser browser) {
        this.playwright = playwright;
        this.browser = browser;
    }

    /** What a visitor has in hand. */
    record Device(int width, int height, boolean touch) {
        static final Device LAPTOP = new Device(1280, 900, false);
        static final Device PHONE = new Device(360, 740, true);
    }

    /** The test is skipped, and says so, where there is no browser. */
    static Browsing open() {
        Optional<Path> chromium = chromium();
        if (chromium.isEmpty()) {
            System.out.println("skipped: no Chromium on this machine (apt-get install chromium)");
        }
        Assumptions.assumeTrue(chromium.isPresent(), "no Chromium on this machine");
        Playwright playwright = Playwright.create(
                new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
        Browser browser = playwright
                .chromium()
                .launch(new BrowserType.LaunchOptions()
                        .setExecutablePath(chromium.orElseThrow())
                        .setArgs(SWITCHES));
        return new Browsing(playwright, browser);
    }

    private static Optional<Path> chromium() {
        String path = System.getenv().getOrDefault("PATH", "");
        return Arrays.stream(path.split(File.pathSeparator))
                .flatMap(folder -> NAMES.stream().map(name -> Path.of(folder, name)))
                .filter(Files::isExecutable)
                .findFirst();
    }

    Page page(Device device) {
        return page(device, ColorScheme.LIGHT, true);
    }

    Page page(Device device, ColorScheme scheme, boolean scripts) {
        return page(device, scheme, scripts, "en-GB");
    }

    Page page(Device device, ColorScheme scheme, boolean scripts, String language) {
        BrowserContext context = browser.newContext(new Browser.NewContextOptions()
                .setViewportSize(device.width(), device.height())
                .setHasTouch(device.touch())
                .setColorScheme(scheme)
                .setJavaScriptEnabled(scripts)
                .setLocale(language));
        context.setDefaultTimeout(20_000);
        Page page = context.newPage();
        page.onConsoleMessage(m -> {
            if (List.of("error", "warning").contains(m.type()) && !isLeft(m.text())) {
                complain(page, m.text());
            }
        });
        page.onPageError(e -> complain(page, e));
        return page;
    }

    /** Each once, with the first page that it was heard of. */
    private void complain(Page page, String words) {
        if (complaints.stream().noneMatch(c -> c.endsWith(": " + words))) {
            complaints.add(page.url() + ": " + words);
        }
    }

    /** A request that was still under way when the page was left: the library tells it, and nobody misses the answer. */
    private static boolean isLeft(String told) {
        return told.startsWith("htmx:sendAbort") || told.startsWith("htmx:afterRequest");
    }

    /** What its pages complained of so far: faults of scripts, what a policy refused, files that were not there. */
    List<String> complaints() {
        return List.copyOf(complaints);
    }

    /** What it must not complain of again. */
    void forgive() {
        complaints.clear();
    }

    /** What axe finds on the page that is open. */
    static List<String> barriers(Page page) {
        return new AxeBuilder(page)
                .analyze().getViolations().stream().map(Browsing::told).toList();
    }

    private static String told(Rule rule) {
        return rule.getId() + ": " + rule.getHelp() + " at "
                + rule.getNodes().stream().limit(3).map(n -> n.getHtml()).toList();
    }

    /** By how much the page is wider than its window, px. */
    static int tooWide(Page page) {
        return ((Number) page.evaluate("document.documentElement.scrollWidth - document.documentElement.clientWidth"))
                .intValue();
    }

    /** Nothing on it stands in anybody's way. */
    static void mustBeOpenToAll(Page page) {
        assertThat(barriers(page)).as(page.url()).isEmpty();
        assertThat(tooWide(page)).as(page.url() + " scrolls sideways").isLessThanOrEqualTo(0);
    }

    static Stream<Device> devices() {
        return Stream.of(Device.LAPTOP, Device.PHONE);
    }

    @Override
    public void close() {
        browser.close();
        playwright.close();
    }
}
