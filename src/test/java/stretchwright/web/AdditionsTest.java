package stretchwright.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/** A phone pocket and a contrast panel are one press each on the table, alone and together, and come off again. */
@Tag("slow")
class AdditionsTest {
    @RegisterExtension
    private static final OpenPage PAGE = new OpenPage();

    private static String make(String key, String value) throws Exception {
        Map<String, List<String>> other = new LinkedHashMap<>(Visitor.example());
        other.put(key, List.of(value));
        return Visitor.at(PAGE.visitor().post(other));
    }

    private static HttpResponse<String> press(String at, String what) throws Exception {
        String seen = PAGE.visitor().seen(at);
        return PAGE.visitor().post(at + "/change", Map.of("seen", List.of(seen), "do", List.of(what)));
    }

    @Test
    void aPocketIsOnePressAndComesOffAgain() throws Exception {
        String at = PAGE.visitor().make();
        String before = PAGE.visitor().text(at);
        assertThat(PAGE.visitor().get(at).body()).contains("add a pocket", "add a panel");
        assertThat(press(at, "phone pocket").statusCode()).isEqualTo(303);
        assertThat(PAGE.visitor().text(at)).contains("phone").contains("90 mm").contains("160 mm");
        assertThat(PAGE.visitor().get(at).body())
                .contains("9.0 cm by 16.0 cm", "Undo: with a phone pocket", "no pocket");
        assertThat(press(at, "phone pocket").statusCode()).isEqualTo(303);
        assertThat(PAGE.visitor().text(at)).isEqualTo(before);
    }

    @Test
    void aPanelIsCutFromAnotherColourAndComesOffAgain() throws Exception {
        String at = PAGE.visitor().make();
        String before = PAGE.visitor().text(at);
        assertThat(press(at, "contrast panel").statusCode()).isEqualTo(303);
        assertThat(PAGE.visitor().text(at))
                .contains("Other colour")
                .contains("side panel")
                .contains("60 mm");
        assertThat(PAGE.visitor().get(at).body())
                .contains("6.0 cm wide", "Undo: with a contrast panel", "no panel")
                .contains(">side panel</text>");
        assertThat(press(at, "contrast panel").statusCode()).isEqualTo(303);
        assertThat(PAGE.visitor().text(at)).isEqualTo(before);
    }

    /** The panel of the usual width is narrower than the pocket that lies on it: it gives way, whichever came first. */
    @Test
    void bothGoTogetherInEitherOrder() throws Exception {
        String pocketFirst = PAGE.visitor().make();
        assertThat(press(pocketFirst, "phone pocket").statusCode()).isEqualTo(303);
        assertThat(press(pocketFirst, "contrast panel").statusCode()).isEqualTo(303);
        String panelFirst = PAGE.visitor().make();
        assertThat(press(panelFirst, "contrast panel").statusCode()).isEqualTo(303);
        assertThat(press(panelFirst, "phone pocket").statusCode()).isEqualTo(303);
        for (String at : List.of(pocketFirst, panelFirst)) {
            assertThat(PAGE.visitor().text(at))
                    .contains("phone")
                    .contains("side panel")
                    .contains("110.0 mm");
        }
    }

    /** What else is cut from the other colour, and pockets for pads, stay. */
    @Test
    void whatTheMakerHadOfHerOwnStays() throws Exception {
        Map<String, List<String>> own = new LinkedHashMap<>(Visitor.example());
        own.put("fabric.contrasts.1.name", List.of("Rust"));
        own.put("fabric.contrasts.1.pieces", List.of("cuff; side panel"));
        own.put("style.panel.width", List.of("11"));
        own.put("style.pockets.1.kind", List.of("phone"));
        own.put("style.pockets.1.width", List.of("8"));
        own.put("style.pockets.1.height", List.of("15"));
        own.put("style.pockets.2.kind", List.of("knee pad"));
        own.put("style.pockets.2.width", List.of("6"));
        own.put("style.pockets.2.height", List.of("7"));
        own.put("style.pockets.2.thickness", List.of("0.5"));
        String at = Visitor.at(PAGE.visitor().post(own));
        assertThat(press(at, "phone pocket").statusCode()).isEqualTo(303);
        assertThat(PAGE.visitor().text(at)).contains("knee pad").doesNotContain("phone");
        assertThat(press(at, "contrast panel").statusCode()).isEqualTo(303);
        assertThat(PAGE.visitor().text(at)).contains("Rust", "cuff").doesNotContain("side panel");
    }

    /** Refused with the reason, and nothing is lost. */
    @Test
    void whatCannotGoOnIsTold() throws Exception {
        String at = make("style.leg", "short");
        String before = PAGE.visitor().text(at);
        HttpResponse<String> refused = press(at, "phone pocket");
        assertThat(refused.statusCode()).isEqualTo(422);
        assertThat(refused.body()).contains("the phone pocket, finished", "role=\"alert\"");
        assertThat(press(at, "<b>whatever").statusCode()).isEqualTo(303);
        assertThat(PAGE.visitor().text(at)).isEqualTo(before);
    }
}
