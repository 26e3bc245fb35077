package stretchwright.ground;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stretchwright.ground.Part.Join;

class VoiceTest {
    private static final Voice MM = Voice.plain();
    private static final Voice CM = Voice.of(Unit.CM);
    private static final Voice IN = Voice.of(Unit.IN);

    /** By hand: 961 mm are 37.83 in, nearest sixteenth 37 13/16 (37.8125); 25.4 mm are 1 in; 3 mm are 1.89 sixteenths. */
    @ParameterizedTest
    @CsvSource({
        "961, 961 mm, 96.1 cm, 37 13/16 in",
        "25.4, 25 mm, 2.5 cm, 1 in",
        "3, 3 mm, 0.3 cm, 1/8 in",
        "0, 0 mm, 0.0 cm, 0 in"
    })
    void aLengthIsToldInTheMakersUnit(double mm, String inMm, String inCm, String inInches) {
        assertThat(List.of(MM, CM, IN)).extracting(v -> v.say(Part.length(mm))).containsExactly(inMm, inCm, inInches);
    }

    /** By hand: 20 mm are 12.6 sixteenths, nearest 13/16. */
    @Test
    void signsStandBeforeLengths() {
        assertThat(MM.say(Part.signed(20))).isEqualTo("+20 mm");
        assertThat(IN.say(Part.signed(20))).isEqualTo("+13/16 in");
        assertThat(IN.say(Part.signed(-20))).isEqualTo("-13/16 in");
        assertThat(MM.say(Part.signed(-0.2))).isEqualTo("0 mm");
    }

    /** By hand: 12 mm are 7.56 sixteenths: no more than 7, no less than 8. 831.3 mm are 83.13 cm. */
    @Test
    void aLimitIsToldSoThatWhatIsToldKeepsIt() {
        assertThat(IN.say(Part.length(12).atMost())).isEqualTo("7/16 in");
        assertThat(IN.say(Part.length(12).atLeast())).isEqualTo("1/2 in");
        assertThat(IN.say(Part.signed(-30).atLeast())).isEqualTo("-1 1/8 in");
        assertThat(IN.say(Part.length(25.4).atLeast())).isEqualTo("1 in");
        assertThat(CM.say(Part.length(831.3).atLeast())).isEqualTo("83.2 cm");
        assertThat(CM.say(Part.length(831.3).atMost())).isEqualTo("83.1 cm");
        assertThat(MM.say(Part.length(831.3).atLeast())).isEqualTo("832 mm");
    }

    /** By hand: 12 mm are 7.56 sixteenths, nearest 8: 1/2. */
    @Test
    void aLengthBehindItsLikeHasNoUnit() {
        assertThat(List.of(MM, CM, IN)).extracting(v -> v.say(Part.bare(12))).containsExactly("12", "1.2", "1/2");
    }

    @Test
    void aClauseIsTheFirstSentenceWithoutItsFullStop() {
        Said first = Said.of("ground", "finding.row", Part.text("7."));
        Said stopped = SampleSaid.of("It goes on, but only just.");
        assertThat(MM.say(new Part.Clause(stopped.and(first)))).isEqualTo("It goes on, but only just");
        assertThat(MM.say(new Part.Clause(first))).isEqualTo("line 7.:");
    }

    /** What is sewn is set in mm everywhere; a stitch of 2.5 mm has no sixteenths. */
    @Test
    void sewnLengthsStayInMillimetres() {
        assertThat(CM.say(Part.sewn(6.5))).isEqualTo("6.5 mm");
        assertThat(IN.say(Part.sewn(7))).isEqualTo("7 mm (1/4 in)");
        assertThat(IN.say(Part.sewn(2.5))).isEqualTo("2.5 mm");
        assertThat(IN.say(Part.millimetres(75, 0))).isEqualTo("75 mm");
    }

    /** By hand: 1450 mm are 1.586 yd, nearest eighth 1 5/8 (1.625). */
    @Test
    void clothIsToldAsAShopHasIt() {
        assertThat(CM.say(Part.cloth(1450))).isEqualTo("1.45 m");
        assertThat(IN.say(Part.cloth(1450))).isEqualTo("1 5/8 yd");
    }

    @Test
    void aSpanNamesItsUnitOnce() {
        assertThat(MM.say(Part.span(572, 602))).isEqualTo("572 to 602 mm");
        assertThat(CM.say(Part.span(572, 602))).isEqualTo("57.2 to 60.2 cm");
        assertThat(MM.say(Part.span(20, 20.2))).isEqualTo("20 mm");
    }

    @Test
    void listsAreJoinedAsTheLanguageDoes() {
        List<Part.Text> three = List.of(Part.text("a"), Part.text("b"), Part.text("c"));
        assertThat(MM.say(Part.listed(Join.AND, three))).isEqualTo("a, b and c");
        assertThat(MM.say(Part.listed(Join.OR, three.subList(0, 2)))).isEqualTo("a or b");
        assertThat(MM.say(Part.listed(Join.EITHER, three.subList(0, 2)))).isEqualTo("a; or b");
        assertThat(MM.say(Part.listed(Join.AND, three.subList(0, 1)))).isEqualTo("a");
    }

    @Test
    void sharesPressuresAndNumbers() {
        assertThat(MM.say(Part.share(0.154))).isEqualTo("15 %");
        assertThat(MM.say(Part.share(0.154, 1))).isEqualTo("15.4 %");
        assertThat(MM.say(new Part.Pressure(1, 1))).isEqualTo("7.5 mmHg");
        assertThat(MM.say(Part.number(2.50, 2))).isEqualTo("2.5");
        assertThat(MM.say(Part.fixed(2.50, 2))).isEqualTo("2.50");
    }

    @Test
    void sentencesFollowEachOtherAndKeepTheFirstKey() {
        Said first = Said.of("ground", "share", Part.text("7"));
        Said both = first.and(Said.of("ground", "minutes", Part.text("2"))).and(Said.NOTHING);
        assertThat(MM.say(both)).isEqualTo("7 % 2 minutes");
        assertThat(both.sameKey(first)).isTrue();
        assertThat(Said.NOTHING.and(first)).isEqualTo(first);
    }

    /** A name that looks like a gap, or like markup, stays as it was given. */
    @Test
    void whatAPersonWroteIsNotReadAgain() {
        assertThat(MM.say(Said.of("ground", "share", Part.text("{0} '% <b>")))).isEqualTo("{0} '% <b> %");
    }

    @Test
    void aKeyThatIsMissingIsAFault() {
        assertThatThrownBy(() -> MM.say(Said.of("ground", "nothing"))).hasMessageContaining("nothing");
    }
}
