package stretchwright.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import java.net.http.HttpResponse;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/** Who was second, in a real browser on a phone: what is offered can be pressed. */
@Tag("slow")
class SecondWindowTest {
    private static final int PATIENCE = 5000;

    @RegisterExtension
    private static final OpenPage PAGE = new OpenPage();

    @RegisterExtension
    private static final OpenBrowser BROWSER = new OpenBrowser();

    @Test
    void onAPhoneEitherOfTheTwoCanBeChosen() throws Exception {
        String at = PAGE.visitor().make();
        Page page = BROWSER.browsing().page(Browsing.Device.PHONE);
        page.navigate(PAGE.server().address() + at + "/lay");
        HttpResponse<String> first =
                PAGE.visitor().post(at + "/change", Map.of("seen", List.of("1"), "style.hold", List.of("firm")));
        assertThat(first.statusCode()).isEqualTo(303);
        page.locator("input[name=way][value=open]").check();
        page.getByText("Lay it so").click();
        assertThat(page.content()).contains("Changed in another window");
        Browsing.mustBeOpenToAll(page);
        page.getByText("Keep mine as version").click(new Locator.ClickOptions().setTimeout(PATIENCE));
        page.waitForURL("**/" + at);
        assertThat(PAGE.visitor().text(at)).contains("way: \"open\"");
    }
}
