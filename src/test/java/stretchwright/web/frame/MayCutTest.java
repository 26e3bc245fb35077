package stretchwright.web.frame;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import stretchwright.ground.Unit;
import stretchwright.ground.Voice;
import stretchwright.make.Make;
import stretchwright.make.Session;
import stretchwright.web.form.Form;

/** The one sentence on top. */
class MayCutTest {
    private static String sentence(String text) {
        Session session = Session.of(Make.read("make", text.getBytes(StandardCharsets.UTF_8)));
        return MayCut.of(session, Voice.of(Unit.CM)).sentence();
    }

    private static String overNarrowBoot(String stretch) {
        Form make = Form.empty()
                .with(Map.of(
                        "name", "Narrow",
                        "unit", "cm",
                        "wearer.figure", "woman",
                        "wearer.measurements.stature", "169",
                        "wearer.measurements.calf girth", "36.5",
                        "fabric.usable width", "145",
                        "fabric.stretch across", stretch,
                        "fabric.stretch along", "40 %"));
        return make.with(Map.of(
                        "style.leg", "over boot",
                        "boot.top girth", "26.7",
                        "boot.heel girth", "33",
                        "boot.hem girth", "26",
                        "boot.ankle to hem", "12.7"))
                .makeText();
    }

    @Test
    void whatWillNotPassIsToldAsItWillBeFelt() throws IOException {
        assertThat(sentence(Files.readString(Path.of("examples/too-little-stretch.yaml"))))
                .isEqualTo("Do not cut yet: the band will not pass the hips.");
        assertThat(sentence(overNarrowBoot("50 %"))).isEqualTo("Do not cut yet: the leg will not pass the calf.");
    }

    @Test
    void whatElseStopsIsNamed() {
        assertThat(sentence(overNarrowBoot("20 %"))).isEqualTo("Do not cut yet: hem on the boot.");
    }
}
