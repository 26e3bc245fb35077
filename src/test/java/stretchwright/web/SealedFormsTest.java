package stretchwright.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Every form that sends something carries the seal, in each template; without it the door refuses the form. */
class SealedFormsTest {
    private static final Pattern FORM = Pattern.compile(
            "<form\\b[^\\n]*?\\bmethod=[\"']?post\\b(.*?)</form>", Pattern.DOTALL | Pattern.CASE_INSENSITIVE);

    private static final String SEAL = "@template.seal()";

    private static int forms(String template) {
        return (int) FORM.matcher(template).results().count();
    }

    private static List<String> unsealed(String template) {
        List<String> found = new ArrayList<>();
        for (Matcher m = FORM.matcher(template); m.find(); ) {
            if (!m.group(1).contains(SEAL)) {
                found.add(m.group());
            }
        }
        return found;
    }

    @Test
    void everyFormIsSealed() throws IOException {
        int forms = 0;
        try (Stream<Path> all = Files.walk(Path.of("src/main/jte"))) {
            for (Path template : all.filter(Files::isRegularFile).toList()) {
                String text = Files.readString(template);
                forms += forms(text);
                assertThat(unsealed(text))
                        .as(template + " has a form without " + SEAL)
                        .isEmpty();
                assertThat(forms(text))
                        .as(template + " has a form that is not written as one")
                        .isEqualTo(text.toLowerCase(java.util.Locale.ROOT).split("method=[\"']?post", -1).length - 1);
            }
        }
        assertThat(forms).isGreaterThanOrEqualTo(4);
    }

    @Test
    void oneThatIsNotWouldBeFound() {
        String good = "<form method=\"post\" action=\"/a\">\n" + SEAL + "\n<p></p></form>\n";
        String bad = "<form class=\"x\" action=\"${a > b}\" method=post>\n<p></p>\n</form>\n";
        assertThat(unsealed(good + bad + good)).singleElement().asString().contains("class=\"x\"");
        assertThat(unsealed("<form method=\"get\"></form>")).isEmpty();
    }
}
