package stretchwright.print.steps;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.ByteArrayInputStream;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.Base64;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stretchwright.print.kit.Browser;
import stretchwright.print.kit.HelpedJob;
import stretchwright.print.kit.Job;
import stretchwright.print.kit.SampleJob;

class ChecklistTest {
    private static final Job JOB = SampleJob.on("A4");
    private static final String PAGE = text(JOB);

    private static String text(Job job) {
        return new String(Checklist.of(job).bytes(), StandardCharsets.UTF_8);
    }

    @Test
    void withoutScriptItIsOneListWithEveryStepAndItsDrawing() throws Exception {
        JOB.sewing()
                .operations()
                .forEach(o -> assertThat(PAGE)
                        .contains("tabindex=\"-1\">" + StepWords.of(JOB).title(o)));
        assertThat(PAGE.split("<section ")).hasSize(JOB.sewing().operations().size() + 1);
        Matcher svg = Pattern.compile("<svg.*?</svg>", Pattern.DOTALL).matcher(PAGE);
        int drawn = 0;
        while (svg.find()) {
            DocumentBuilderFactory.newInstance()
                    .newDocumentBuilder()
                    .parse(new ByteArrayInputStream(svg.group().getBytes(StandardCharsets.UTF_8)));
            drawn++;
        }
        assertThat(drawn).isEqualTo(7);
        assertThat(PAGE).doesNotContain(" hidden");
    }

    /** The drawing in the page is that of the file, line for line. */
    @Test
    void theDrawingIsThatOfTheFile() {
        String file = new String(
                StepDrawing.svg(JOB, JOB.sewing().operations().get(1)).bytes(), StandardCharsets.UTF_8);
        String drawn = file.substring(file.indexOf("</style>") + 9);
        assertThat(drawn).hasSizeGreaterThan(1000);
        assertThat(PAGE).contains(drawn);
    }

    /** Only what the policy knows by its hash may run; the hashes are computed again here from the page. */
    @Test
    void thePolicyAllowsThisStyleAndThisScriptAndNothingElse() throws Exception {
        assertThat(PAGE.replace("&#39;", "'"))
                .contains("content=\"default-src 'none'; style-src 'sha256-" + hash("style") + "'; script-src 'sha256-"
                        + hash("script") + "'; base-uri 'none'; form-action 'none'\"")
                .doesNotContain("http:", "https:", "src=", "href=", " style=", "url(", "@import", "unsafe");
        assertThat(PAGE.indexOf("Content-Security-Policy")).isLessThan(PAGE.indexOf("<style>"));
    }

    private static String hash(String tag) throws Exception {
        Matcher m = Pattern.compile("<" + tag + ">(.*?)</" + tag + ">", Pattern.DOTALL)
                .matcher(PAGE);
        assertThat(m.find()).isTrue();
        byte[] hash = MessageDigest.getInstance("SHA-256").digest(m.group(1).getBytes(StandardCharsets.UTF_8));
        assertThat(m.find()).as("one only").isFalse();
        return Base64.getEncoder().encodeToString(hash);
    }

    @Test
    void namesAreWordsAndNothingElse() {
        String page = text(SampleJob.named("A4", "</title><script>x</script>\"' onload=\"x&", "<b>"));
        assertThat(page.split("<script")).hasSize(2);
        assertThat(page)
                .as("in an attribute, and as text")
                .contains("&lt;/script>&#34;&#39; onload=&#34;x&amp;")
                .contains("&lt;/title&gt;&lt;script&gt;x&lt;/script&gt;\"' onload=\"x&amp;");
    }

    @Test
    void anotherPlanOrMakeIsRememberedForItself() {
        assertThat(Checklist.key(JOB)).isEqualTo(Checklist.key(SampleJob.on("Letter")));
        assertThat(Checklist.key(JOB)).isNotEqualTo(Checklist.key(SampleJob.named("A4", "Other", "Rowan")));
        assertThat(Checklist.key(JOB)).isNotEqualTo(Checklist.key(HelpedJob.job()));
    }

    @Test
    @Tag("slow")
    void aTapGoesOnAndThePlaceIsRemembered(@TempDir Path folder) throws Exception {
        Optional<String> browser = Browser.installed();
        assumeTrue(browser.isPresent(), "skipped: no chromium on the PATH, the checklist was not tried in a browser");
        Path file = folder.resolve("checklist.html");
        Job job = HelpedJob.job();
        Files.write(file, Checklist.of(job).bytes());
        int steps = job.sewing().operations().size();
        for (int[] size : new int[][] {{390, 844}, {360, 640}}) {
            try (Browser page =
                    new Browser(browser.get(), URI.create(file.toUri().toString()), size[0], size[1])) {
                assertThat(status(page)).isEqualTo("Step 1 of " + steps + ", 0 done");
                assertThat(visible(page)).isEqualTo("1");
                page.tap(size[0] / 2, size[1] / 2);
                assertThat(status(page)).isEqualTo("Step 2 of " + steps + ", 1 done");
                page.key(" ", " ");
                page.key("ArrowRight", "");
                assertThat(status(page)).isEqualTo("Step 4 of " + steps + ", 3 done");
                assertThat(page.eval("document.activeElement.id")).isEqualTo("t4");
                page.key("ArrowLeft", "");
                page.eval("document.getElementById('back').click()");
                assertThat(status(page)).isEqualTo("Step 2 of " + steps + ", 3 done");
                page.eval("document.querySelectorAll('input')[1].click()");
                page.reload();
                assertThat(status(page)).isEqualTo("Step 2 of " + steps + ", 2 done");
                assertThat(page.eval(SMALLEST))
                        .satisfies(s -> assertThat(Double.parseDouble(s)).isGreaterThanOrEqualTo(24));
                assertThat(page.eval("document.documentElement.scrollWidth <= innerWidth"))
                        .isEqualTo("true");
                keep(page, size[0]);
                for (int i = 0; i < steps; i++) {
                    page.tap(size[0] / 2, size[1] / 2);
                }
                assertThat(status(page)).isEqualTo("All " + steps + " steps done");
                assertThat(page.eval("document.querySelector('progress').value"))
                        .isEqualTo(String.valueOf(steps));
            }
        }
    }

    /** 18 pt are 24 px: letters in the page, and those in its drawings as large as they are shown. */
    private static final String SMALLEST = """
            Math.min(...[...document.querySelectorAll('h1,h2,p,label,button')]
                .map(e => parseFloat(getComputedStyle(e).fontSize)),
                ...[...document.querySelectorAll('svg')].filter(s => s.getBoundingClientRect().width)
                .map(s => s.getBoundingClientRect().width / s.viewBox.baseVal.width
                    * Math.min(...[...s.querySelectorAll('text')].map(t => parseFloat(t.getAttribute('font-size'))))))""";

    private static String status(Browser page) throws Exception {
        return page.eval("document.getElementById('where').textContent");
    }

    private static String visible(Browser page) throws Exception {
        return page.eval("[...document.querySelectorAll('section')].filter(s => s.offsetHeight).length");
    }

    /** -Dpictures=DIR keeps what was seen. */
    private static void keep(Browser page, int width) throws Exception {
        String folder = System.getProperty("pictures");
        if (folder != null) {
            Files.write(Path.of(folder, "checklist-" + width + ".png"), page.picture());
        }
    }
}
