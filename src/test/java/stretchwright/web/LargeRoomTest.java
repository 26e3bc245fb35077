package stretchwright.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/** A workroom that holds more than its rail and its shelves show: everything in it is reached all the same. */
class LargeRoomTest {
    @RegisterExtension
    private static final OpenPage PAGE = new OpenPage();

    private static String get(String path) throws Exception {
        return PAGE.visitor().get(path).body();
    }

    @Test
    void whatTheShelfDoesNotHoldIsFoundByLeafingAndByItsName() throws Exception {
        assertThat(get("")).doesNotContain("href=\"/wearers\"", "href=\"/makes\"");
        for (int i = 1; i <= 53; i++) {
            PAGE.visitor()
                    .post(
                            "wearers/new",
                            Map.of(
                                    "name", List.of("Skater " + i),
                                    "wearer.figure", List.of("woman"),
                                    "unit", List.of("cm")));
        }
        assertThat(get("")).contains("href=\"/wearers\"").doesNotContain("Skater 1<", "href=\"/boots\"");
        assertThat(get("wearers"))
                .contains("Skater 53<", "Skater 4<", "href=\"/wearers?from=50&amp;sought=\"")
                .doesNotContain("Skater 3<");
        assertThat(get("wearers?from=50&sought=")).contains("Skater 1<").doesNotContain("Older ones");
        assertThat(get("wearers?sought=skater+17")).contains("Skater 17<").doesNotContain("Skater 53<");
        assertThat(get("wearers?sought=%3Cb%3Enobody"))
                .contains("There is none of that name.")
                .doesNotContain("<b>nobody");
        assertThat(get("boots?from=-1")).contains("There is none of that name.");
        assertThat(get("makes?from=x")).contains("There is none of that name.");
    }
}
