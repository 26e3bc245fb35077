package stretchwright.many;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.OptionalDouble;
import stretchwright.intake.MakeFile;
import stretchwright.intake.SampleText;
import stretchwright.lay.SearchWork;
import stretchwright.lay.nest.Effort;
import stretchwright.make.Make;

/** Makes that are laid together, and how they are wished for; all bodies invented. */
abstract class ClubMakes {
    static final String BASE = SampleText.with("lay: any", "lay: open");
    static final double TABLE = 3400;

    static MakeFile make(String file, String wearer, String hip) {
        String text = BASE.replace("name: Rowan", "name: " + wearer).replace("hip girth: 96.1", "hip girth: " + hip);
        return Make.read(file, text.getBytes(StandardCharsets.UTF_8));
    }

    static MakeFile with(String old, String now) {
        assertThat(BASE).contains(old);
        return Make.read("b.yaml", BASE.replace(old, now).getBytes(StandardCharsets.UTF_8));
    }

    static Club.Wish wish(double table, Effort effort) {
        return new Club.Wish(OptionalDouble.of(table), SearchWork.of(7, effort));
    }
}
