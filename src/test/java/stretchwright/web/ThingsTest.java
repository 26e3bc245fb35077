package stretchwright.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Wearers, cloths and boots over real HTTP: one reading at a time, for the make that asked. */
class ThingsTest {
    private static final String BAD = "<b>\"'&x</b>";

    private static Server server;
    private static Visitor visitor;
    private static String make;
    private static String wearer;
    private static String cloth;
    private static String boot;

    @BeforeAll
    static void start() throws Exception {
        server = Visitor.started();
        visitor = new Visitor(server);
        make = visitor.make().replace("makes/", "");
        String start = visitor.get("").body();
        wearer = id(start, "wearers");
        cloth = id(start, "cloths");
        boot = id(start, "boots");
    }

    @AfterAll
    static void stop() {
        server.stop();
    }

    private static String id(String page, String shelf) {
        return Visitor.found(page, "href=\"/" + shelf + "/([0-9a-f-]{36})\"");
    }

    private static HttpResponse<String> post(String path, String... pairs) throws Exception {
        Map<String, List<String>> typed = new java.util.LinkedHashMap<>();
        for (int i = 0; i < pairs.length; i += 2) {
            typed.put(pairs[i], List.of(pairs[i + 1]));
        }
        return visitor.post(path, typed);
    }

    private static String seen(String path) throws Exception {
        return visitor.seen(path);
    }

    /** The figures of the sentence that tells what readings mean. */
    private static String fit(String page) {
        return page.replaceAll("(?s).*id=\"fit\"", "")
                .replaceAll("(?s)</div>.*", "")
                .replaceAll("(?s)<[^>]*>", " ");
    }

    @Test
    void theShelvesLeadToEachThingAndSayWhatIsKnownOfIt() throws Exception {
        assertThat(visitor.get("").body())
                .contains("17 of 19 measured", "1.60 m left, 60 % across, 45 % along", "All 4 measured");
        assertThat(visitor.get("wearers/" + wearer).body())
                .contains("/wearers/" + wearer + "/calf-girth", "Measured", "Forget for good");
        assertThat(visitor.get("cloths/" + cloth).body())
                .contains("/cloths/" + cloth + "/fold", "Shop card", "<circle class=\"dot\"");
        assertThat(visitor.get("boots/" + boot).body())
                .contains(
                        "/boots/" + boot + "/gap-between-mounts",
                        "Blade guards on, or wheels blocked, while you measure");
    }

    @Tag("slow")
    @Test
    void whatIsBeingTypedIsToldBesideTheOthersAndNothingIsStored() throws Exception {
        String before = seen("wearers/" + wearer + "/calf-girth");
        String look = post("wearers/" + wearer + "/calf-girth/look", "once", "36", "again", "36.2", "seen", before)
                .body();
        assertThat(fit(look)).contains("We take 36.1 cm", "is usual");
        assertThat(fit(post("wearers/" + wearer + "/calf-girth/look", "once", "63")
                        .body()))
                .contains("is not below the thigh girth");
        assertThat(seen("wearers/" + wearer + "/calf-girth")).isEqualTo(before);
    }

    @Tag("slow")
    @Test
    void readingsThatDifferAskForAThirdAndTheTwoThatAgreeCount() throws Exception {
        String path = "wearers/" + wearer + "/ankle-girth";
        HttpResponse<String> two = post(path, "once", "22", "again", "23.4", "seen", seen(path));
        assertThat(two.statusCode()).isEqualTo(422);
        assertThat(fit(two.body())).contains("take it a third time", "1.4 cm");
        assertThat(two.body()).contains("value=\"22\"", "value=\"23.4\"", "third shown");
        HttpResponse<String> none = post(path, "once", "21.2", "again", "22.2", "third", "23.2", "seen", seen(path));
        assertThat(fit(none.body())).contains("No two of the three agree");
        HttpResponse<String> three = post(path, "once", "22", "again", "23.4", "third", "22.2", "seen", seen(path));
        assertThat(three.statusCode()).isEqualTo(303);
        assertThat(visitor.get(path).body())
                .contains("value=\"22\"", "value=\"22.2\"")
                .doesNotContain("value=\"23.4\"");
    }

    @Test
    void theMakeThatAskedIsBroughtUpToDateAndLedBackTo() throws Exception {
        String path = "wearers/" + wearer + "/knee-girth";
        assertThat(visitor.get(path + "?for=" + make).body()).contains("name=\"for\" value=\"" + make + "\"");
        HttpResponse<String> kept = post(path, "once", "37.7", "again", "", "for", make, "seen", seen(path));
        assertThat(kept.statusCode()).isEqualTo(303);
        assertThat(kept.headers().firstValue("Location").orElseThrow()).endsWith("/calf-girth?for=" + make);
        assertThat(visitor.text("makes/" + make)).contains("37.7 cm");
        assertThat(visitor.get("wearers/" + wearer + "?for=" + make).body()).contains("href=\"/makes/" + make + "\"");
    }

    @Test
    void legsApartAndOverABraceAreKept() throws Exception {
        String path = "wearers/" + wearer + "/thigh-girth";
        HttpResponse<String> kept = post(path, "left", "56", "right", "57", "hard-left", "true", "seen", seen(path));
        assertThat(kept.statusCode()).isEqualTo(303);
        String page = visitor.get(path).body();
        assertThat(page).contains("value=\"56\"", "value=\"57\"", "<details open>");
        assertThat(page).containsPattern("name=\"hard-left\" value=\"true\" checked");
        assertThat(post(path, "once", "56.5", "seen", seen(path)).statusCode()).isEqualTo(303);
    }

    @Test
    void whoWasSecondIsToldAndNothingOfHisIsLost() throws Exception {
        String path = "wearers/" + wearer + "/waist-height";
        String seen = seen(path);
        assertThat(post(path, "once", "105.5", "seen", seen).statusCode()).isEqualTo(303);
        HttpResponse<String> second = post(path, "once", "106", "seen", seen);
        assertThat(second.statusCode()).isEqualTo(422);
        assertThat(second.body()).contains("value=\"106\"", "105.5");
    }

    @Test
    void aClothIsFoldedAndItsCurveGrowsWithTheStrip() throws Exception {
        HttpResponse<String> made =
                post("cloths/new", "name", "Remnant, plum", "fabric.usable width", "140", "unit", "cm");
        assertThat(made.statusCode()).isEqualTo(303);
        String at = Visitor.at(made);
        assertThat(visitor.get(at).body()).contains("Nothing is known of it yet", "Fold it first");
        assertThat(post(at + "/fold", "was", "100", "pulled", "158", "rested", "102", "seen", "1")
                        .statusCode())
                .isEqualTo(303);
        assertThat(post(at + "/fold-along", "pulled", "30 %", "seen", "2").statusCode())
                .isEqualTo(303);
        String page = visitor.get(at).body();
        assertThat(page).contains("58 % across, 30 % along", "pencilled").doesNotContain("class=\"dot\"");
        String look = post(at + "/hanging/look", "100 g", "112", "250 g", "125", "500 g", "148", "seen", "3")
                .body();
        assertThat(look.split("<circle class=\"dot\"", -1)).hasSize(4);
        assertThat(post(at + "/hanging", "250 g", "125", "500 g", "148", "seen", "3")
                        .statusCode())
                .isEqualTo(303);
        assertThat(visitor.get(at + "/hanging").body()).contains("value=\"125\"", "value=\"148\"");
        assertThat(post(at + "/roll", "fabric.usable width", "140", "fabric.on hand", "1.3 m", "seen", "4")
                        .statusCode())
                .isEqualTo(303);
        assertThat(visitor.get("").body()).contains("1.30 m left, 58 % across, 30 % along");
    }

    @Test
    void whatCannotBeOfAClothIsToldInItsOwnWords() throws Exception {
        HttpResponse<String> shorter = post(
                "cloths/" + cloth + "/fold",
                "was",
                "100",
                "pulled",
                "95",
                "rested",
                "97",
                "seen",
                seen("cloths/" + cloth));
        assertThat(shorter.statusCode()).isEqualTo(422);
        assertThat(shorter.body()).contains("did not get longer when pulled", "value=\"95\"");
        assertThat(post("cloths/" + cloth + "/dye", "dye", "red\" onload=x").statusCode())
                .isEqualTo(422);
        assertThat(post("cloths/" + cloth + "/dye", "dye", "#204060").statusCode())
                .isEqualTo(303);
        assertThat(visitor.get("").body()).contains("fill=\"#204060\"");
        assertThat(post(
                                "cloths/" + cloth + "/setting",
                                "stitch",
                                "four-thread overlock",
                                "stitch length",
                                "2.2 mm",
                                "note",
                                BAD)
                        .statusCode())
                .isEqualTo(303);
        assertThat(visitor.get("cloths/" + cloth).body())
                .contains("2.2 mm, &lt;b&gt;")
                .doesNotContain(BAD);
    }

    @Test
    void aBootIsMeasuredOneAtATimeAndNeverGuessed() throws Exception {
        HttpResponse<String> made = post("boots/new", "name", "Mo", "boot.kind", "inline skate", "unit", "cm");
        String at = Visitor.at(made);
        assertThat(visitor.get(at).body()).contains("0 of the 4", "A boot is never guessed", "inline skate, Mo");
        assertThat(visitor.get(at + "/top-girth").body()).contains("Blade guards on, or wheels blocked");
        assertThat(post(at + "/top-girth", "reading", "29", "seen", "1").statusCode())
                .isEqualTo(303);
        HttpResponse<String> small = post(at + "/heel-girth", "reading", "4", "seen", "2");
        assertThat(small.statusCode()).isEqualTo(422);
        assertThat(small.body()).contains("out of range", "value=\"4\"");
        assertThat(post("boots/" + boot + "/heel-girth", "reading", "40.5", "for", make, "seen", seen("boots/" + boot))
                        .statusCode())
                .isEqualTo(303);
        assertThat(visitor.text("makes/" + make)).contains("40.5 cm");
    }

    @Test
    void aBootOfWhichOnlyTheFirstMeasureIsThereIsKeptAndTheMakeWaitsForTheOthers() throws Exception {
        String at = Visitor.at(post("boots/new", "name", "Nell", "boot.kind", "figure skate", "unit", "cm"));
        int seen = 1;
        for (String one : List.of("top-girth=30.7", "heel-girth=41", "hem-girth=39")) {
            String[] measure = one.split("=");
            assertThat(post(at + "/" + measure[0], "reading", measure[1], "for", make, "seen", Integer.toString(seen++))
                            .statusCode())
                    .as(one)
                    .isEqualTo(303);
        }
        assertThat(visitor.text("makes/" + make)).doesNotContain("30.7");
        assertThat(post(at + "/ankle-to-hem", "reading", "14", "for", make, "seen", "4")
                        .statusCode())
                .isEqualTo(303);
        assertThat(visitor.text("makes/" + make)).contains("30.7 cm", "39 cm");
        assertThat(post("boots/" + boot + "/top-girth", "reading", "29", "for", make, "seen", seen("boots/" + boot))
                        .statusCode())
                .isEqualTo(303);
    }

    @Test
    void aNewWearerIsMeasuredNamedAndForgottenForGood() throws Exception {
        assertThat(post("wearers/new", "name", "Tiny", "wearer.figure", "child", "unit", "cm")
                        .statusCode())
                .isEqualTo(422);
        String at = Visitor.at(
                post("wearers/new", "name", "Tiny", "wearer.figure", "child", "wearer.age", "8", "unit", "in"));
        assertThat(post("wearers/new", "name", "tiny", "wearer.figure", "woman").statusCode())
                .isEqualTo(422);
        assertThat(visitor.get(at).body()).contains("Nothing is measured yet");
        assertThat(post(at + "/stature", "once", "50 1/2", "again", "", "seen", "1")
                        .statusCode())
                .isEqualTo(303);
        assertThat(visitor.get(at).body()).contains("1 of 19 measured", "50 1/2 in", "give or take");
        assertThat(post(at + "/consent", "agreed", "").statusCode()).isEqualTo(422);
        assertThat(post(at + "/consent", "agreed", "her mother, on paper").statusCode())
                .isEqualTo(303);
        assertThat(visitor.get(at).body()).contains("her mother, on paper");
        assertThat(post(at + "/forget", "name", "Tony").body()).contains("That is not the name");
        assertThat(post(at + "/forget", "name", "tiny").statusCode()).isEqualTo(303);
        assertThat(visitor.get(at).statusCode()).isEqualTo(404);
        assertThat(visitor.get("").body()).doesNotContain("Tiny");
    }

    @Test
    void whatIsNotThereIsNotFoundAndWhatIsForgedChangesNothing() throws Exception {
        for (String path : List.of(
                "wearers/x",
                "wearers/" + cloth,
                "wearers/" + wearer + "/shoe-size",
                "wearers/" + wearer + "/calf-girth?for=nobody",
                "cloths/" + cloth + "/smell",
                "boots/" + boot + "/..%2f")) {
            assertThat(visitor.get(path).statusCode()).as(path).isEqualTo(404);
        }
        HttpResponse<String> html = post("wearers/" + wearer + "/hip-girth", "once", BAD, "seen", BAD);
        assertThat(html.statusCode()).isEqualTo(422);
        assertThat(html.body()).doesNotContain(BAD).contains("is not a length");
        HttpResponse<String> named = post("wearers/new", "name", BAD, "wearer.figure", BAD);
        assertThat(named.statusCode()).isEqualTo(422);
        assertThat(named.body()).doesNotContain(BAD);
        assertThat(post("wearers/" + wearer + "/hip-girth", "once", "98", "for", "nobody")
                        .statusCode())
                .isEqualTo(404);
    }

    @Test
    @Tag("slow")
    void whatWasCutIsTakenOffAndWhatIsLeftOverComesBack() throws Exception {
        Map<String, List<String>> other = Visitor.example();
        other.put("fabric.name", List.of("Knit to cut"));
        String cut = Visitor.at(visitor.post(other)).replace("makes/", "");
        String at = Visitor.found(visitor.get("").body(), "/(cloths/[0-9a-f-]{36})\"><bdi>Knit to cut<");
        assertThat(visitor.get(at).body()).contains("1.60 m left", "not cut yet");
        assertThat(post(at + "/cut", "make", cut).statusCode()).isEqualTo(303);
        assertThat(visitor.get(at).body())
                .contains("took ", "Knit to cut, remnant 1")
                .doesNotContain("1.60 m left", "not cut yet");
        assertThat(post(at + "/cut", "make", cut).statusCode()).isEqualTo(422);
        assertThat(post(at + "/cut", "make", make).statusCode()).isEqualTo(404);
    }
}
