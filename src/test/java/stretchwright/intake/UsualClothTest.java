package stretchwright.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static stretchwright.intake.SampleReading.findings;
import static stretchwright.intake.SampleReading.only;
import static stretchwright.intake.SampleReading.read;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import stretchwright.fabric.Fabric;
import stretchwright.fabric.Usual;
import stretchwright.ground.Finding;

/** A make without cloth: what nothing tells of is taken as usual, what is given stays. */
class UsualClothTest {
    private static String with(String fabric) {
        return SampleText.WHOLE.replaceAll("(?s)fabric:\n.*?boot:", "fabric: {" + fabric + "}\nboot:");
    }

    private static Fabric cloth(String fabric) {
        return read(with(fabric)).cloth();
    }

    @Test
    void nothingElseIsNeeded() {
        Fabric cloth = cloth("usual: true");
        assertThat(cloth.usual()).isEqualTo(new Usual(true, true, true));
        // by hand: 1500 mm less 25 mm at each selvage
        assertThat(cloth.roll().usableWidth()).isEqualTo(1450);
        assertThat(cloth.test().stretchAcross()).isEqualTo(0.50);
        assertThat(cloth.test().stretchAlong()).isEqualTo(0.40);
        assertThat(cloth.test().loadAcross().isAssumed()).isTrue();
        assertThat(cloth.roll().shape().selvage()).isZero();
        assertThat(cloth("no cloth yet: true, selvage: 1 cm").roll().usableWidth())
                .isEqualTo(1480);
    }

    @Test
    void whatIsGivenStaysAndIsNotAssumed() {
        Fabric width = cloth("usual: true, usable width: 140");
        assertThat(width.roll().usableWidth()).isEqualTo(1400);
        assertThat(width.usual()).isEqualTo(new Usual(false, true, true));
        Fabric across = cloth("usual: true, stretch across: 70 %");
        assertThat(across.test().stretchAcross()).isEqualTo(0.7);
        assertThat(across.usual()).isEqualTo(new Usual(true, false, true));
        Fabric fold = cloth("usual: true, fold along: [10, 13.5, 10.2]");
        assertThat(fold.test().stretchAlong()).isCloseTo(0.35, within(1e-9));
        assertThat(fold.usual()).isEqualTo(new Usual(true, true, false));
        Fabric wrap = cloth("usual: true, wrap hip: 84");
        assertThat(wrap.usual()).isEqualTo(new Usual(true, false, true));
        assertThat(wrap.test().assumed().across()).isTrue();
        Fabric load = cloth("usual: true, load across: [[20 %, 3.1 N]]");
        assertThat(load.test().loadAcross().isAssumed()).isFalse();
        assertThat(load.usual().across()).isTrue();
    }

    @Test
    void besideAllValuesItAssumesNothing() {
        String whole = SampleText.with("fabric:\n", "fabric:\n  usual: true\n");
        assertThat(read(whole).cloth()).isEqualTo(read(SampleText.WHOLE).cloth());
        assertThat(read(SampleText.WHOLE).cloth().usual()).isEqualTo(Usual.NOTHING);
        assertThat(cloth("usual: false, usable width: 147, stretch across: 60 %, stretch along: 45 %")
                        .usual()
                        .any())
                .isFalse();
    }

    @ParameterizedTest
    @ValueSource(strings = {"usual: false", "", "name: Ink"})
    void withoutItWidthAndStretchAreMissingAsEver(String fabric) {
        assertThat(findings(with(fabric)))
                .extracting(Finding::key)
                .containsExactly("fabric.usable width", "fabric.stretch across", "fabric.stretch along");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "usable width: nix | fabric.usable width",
                "stretch across: 60 | fabric.stretch across",
                "fold along: [10, 9, 10] | fabric.fold along",
                "wrap hip: 99 | fabric.wrap hip",
                "hang across: [101, 102] | fabric.hang across",
                "reaches pose: true | fabric.reaches pose",
            })
    void whatIsGivenWronglyIsAFindingAndNotTakenAsUsual(String given, String key) {
        assertThat(findings(with("usual: true, " + given)))
                .extracting(Finding::key)
                .containsOnly(key);
    }

    @Test
    void aWordThatIsNoAnswerIsOneFinding() {
        assertThat(only(with("usual: maybe")).key()).isEqualTo("fabric.usual");
    }

    /** Cut crosswise the two change places; another stretch, to try with, is no longer the usual one. */
    @Test
    void itFollowsTheCloth() {
        Fabric cloth = cloth("usual: true, stretch across: 70 %");
        assertThat(cloth.turned().usual()).isEqualTo(new Usual(true, true, false));
        assertThat(cloth.stretching(0.7, 0.40).usual()).isEqualTo(new Usual(true, false, false));
        assertThat(cloth.with(1600, true).usual()).isEqualTo(new Usual(false, false, true));
        assertThat(cloth.asLaid()).isEqualTo(cloth);
    }

    @Test
    void ofOneRollWhatIsAssumedIsNoOtherCloth() {
        assertThat(OneRoll.findings(List.of(
                        read(with("usable width: 145, stretch across: 60 %, stretch along: 45 %")),
                        read(with("usual: true, usable width: 145")))))
                .isEmpty();
    }
}
