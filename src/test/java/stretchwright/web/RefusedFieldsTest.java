package stretchwright.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/** What is refused of a wearer or a cloth stands in its fields still, and is not folded away. */
class RefusedFieldsTest {
    @RegisterExtension
    private static final OpenPage PAGE = new OpenPage();

    private static HttpResponse<String> post(String path, String... pairs) throws Exception {
        Map<String, List<String>> all = new java.util.LinkedHashMap<>();
        for (int i = 0; i < pairs.length; i += 2) {
            all.put(pairs[i], List.of(pairs[i + 1]));
        }
        return PAGE.visitor().post(path, all);
    }

    private static void standsIn(HttpResponse<String> answer, String action, String typed) {
        assertThat(answer.statusCode()).isEqualTo(422);
        String before = answer.body().substring(0, answer.body().indexOf("action=\"/" + action));
        assertThat(before.substring(before.lastIndexOf("<details"))).contains(" open");
        assertThat(answer.body().substring(before.length())).contains("value=\"" + typed + "\"");
    }

    @Test
    void ofACloth() throws Exception {
        String cloth = Visitor.at(post("cloths/new", "name", "Crepe", "fabric.usable width", "140", "unit", "cm"));
        standsIn(post(cloth + "/roll", "fabric.usable width", "wide", "seen", "1"), cloth + "/roll", "wide");
        HttpResponse<String> setting =
                post(cloth + "/setting", "stitch", "zigzag", "stitch length", "long", "needle", "75/11");
        standsIn(setting, cloth + "/setting", "75/11");
    }

    @Test
    void ofAWearer() throws Exception {
        String wearer = Visitor.at(post("wearers/new", "name", "Ilse", "wearer.figure", "woman", "unit", "cm"));
        standsIn(post(wearer + "/forget", "name", "Else"), wearer + "/forget", "Else");
        assertThat(PAGE.visitor().get(wearer).statusCode()).isEqualTo(200);
    }
}
