package stretchwright.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static stretchwright.intake.SampleReading.findings;
import static stretchwright.intake.SampleReading.read;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stretchwright.body.Body;
import stretchwright.fit.FitReport;
import stretchwright.ground.BadInput;
import stretchwright.ground.Finding;
import stretchwright.ground.Findings;
import stretchwright.ground.Voice;
import stretchwright.make.Make;
import stretchwright.make.Rooms;
import stretchwright.make.Stages;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Stitch;
import stretchwright.sewing.Place;
import stretchwright.sewing.SewingPlan;
import stretchwright.sewing.SewingTerms;

/** What is said about the sewing: read, planned, refused. */
class SewingReaderTest {
    private static String sewing(String lines) {
        return SampleText.WHOLE + "\nsewing: " + lines + "\n";
    }

    private static String settings(String items) {
        return SampleText.WHOLE.replace("  on hand: 1.6 m\n", "  settings: " + items + "\n");
    }

    private static SewingPlan plan(String text) {
        Stages rooms = new Rooms();
        MakeFile make = Make.read("a.yaml", text.getBytes(StandardCharsets.UTF_8));
        Findings findings = new Findings("test");
        Body body = rooms.body(make.measured(), findings).orElseThrow();
        Pattern pattern = rooms.draft(body, make, findings).orElseThrow();
        FitReport fit = rooms.judge(pattern, body, make);
        return rooms.sewing(pattern, make, fit);
    }

    @Test
    void nothingSaidIsAsUsual() {
        SewingTerms terms = read(SampleText.WHOLE).sewing();
        assertThat(terms.conversion()).isEqualTo(SewingTerms.CONVERSION);
        assertThat(terms.cone()).isEqualTo(SewingTerms.CONE);
        assertThat(terms.pairs()).isEqualTo(1);
        assertThat(terms.extras()).isEmpty();
        assertThat(terms.kept()).isEmpty();
    }

    @Test
    void allIsRead() {
        SewingTerms terms = read(sewing("{conversion: 20 min, cone: 5000 m, spool: 100 m, pairs: 12, in work: 4, extra:"
                        + " [{name: name tape, place: hand, minutes: 3, instruction: Sew it on., after: [inseams]}]}"))
                .sewing();
        assertThat(terms.conversion()).isEqualTo(20);
        assertThat(terms.cone()).isEqualTo(5000);
        assertThat(terms.spool()).isEqualTo(100);
        assertThat(terms.pairs()).isEqualTo(12);
        assertThat(terms.inWork()).isEqualTo(4);
        assertThat(terms.extras())
                .containsExactly(
                        new SewingTerms.Extra("name tape", Place.HAND, 3, "Sew it on.", List.of("inseams"), List.of()));
    }

    @Test
    void anExtraStepStandsWhereItMay() {
        SewingPlan plan =
                plan(sewing("{extra: [{name: name tape, minutes: 3, after: [inseams], before: [crotch bar]}]}"));
        List<String> names =
                plan.operations().stream().map(o -> o.name().word()).toList();
        assertThat(names.indexOf("name tape")).isBetween(names.indexOf("inseams") + 1, names.indexOf("crotch bar") - 1);
        assertThat(plan.minutes()).isGreaterThan(plan(SampleText.WHOLE).minutes() + 2.9);
    }

    /** Settings that worked are kept with the fabric and come back instead of the usual ones. */
    @Test
    void keptSettingsComeBack() {
        String kept = settings("[{stitch: four-thread overlock, stitch length: 2.4 mm, needle: 80/12, feed: 1.7,"
                + " note: left needle 4}]");
        SewingPlan plan = plan(kept);
        assertThat(plan.operations().stream()
                        .filter(o ->
                                o.stitch().filter(s -> s == Stitch.OVERLOCK_4).isPresent())
                        .map(o -> o.help().setting().orElseThrow()))
                .isNotEmpty()
                .allSatisfy(s -> {
                    assertThat(s.stitchLength()).isEqualTo(2.4);
                    assertThat(s.feed()).hasValue(1.7);
                    assertThat(Voice.plain().say(s.note())).isEqualTo("left needle 4");
                    assertThat(s.kept()).isTrue();
                });
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "{pairs: 0} | sewing.pairs",
                "{pairs: 61} | sewing.pairs",
                "{pairs: 2.5} | sewing.pairs",
                "{in work: -1} | sewing.in work",
                "{conversion: soon} | sewing.conversion",
                "{conversion: 1e9 min} | sewing.conversion",
                "{cone: 0 m} | sewing.cone",
                "{thread: 3} | sewing.thread",
                "{extra: [{name: a}]} | sewing.extra.1.minutes",
                "{extra: [{minutes: 1}]} | sewing.extra.1.name",
                "{extra: [{name: a, minutes: 1, place: moon}]} | sewing.extra.1.place",
                "{extra: 3} | sewing.extra",
                "[1, 2] | sewing"
            })
    void whatCannotBeIsAFinding(String lines, String key) {
        assertThat(findings(sewing(lines))).extracting(Finding::key).contains(key);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "[{stitch: knitting, stitch length: 2 mm}] | fabric.settings.1.stitch",
                "[{stitch: zigzag}] | fabric.settings.1.stitch length",
                "[{stitch: zigzag, stitch length: 0}] | fabric.settings.1.stitch length",
                "[{stitch: zigzag, stitch length: 2 mm, feed: 9}] | fabric.settings.1.feed",
                "[{stitch: zigzag, stitch length: 2 mm}, {stitch: zigzag, stitch length: 3 mm}] | fabric.settings.2.stitch"
            })
    void settingsThatCannotBeAreFindings(String items, String key) {
        assertThat(findings(settings(items))).extracting(Finding::key).contains(key);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "{name: a, minutes: 1, after: [inseams], before: [front rise]} | sewing.extra | wait for each other",
                "{name: a, minutes: 1, after: [a]} | sewing.extra | wait for each other",
                "{name: a, minutes: 1, after: [the moon]} | sewing.extra.1.after | which this plan does not have",
                "{name: b, minutes: 1}, {name: a, minutes: 1, after: [b], before: [the sun]}"
                        + " | sewing.extra.2.before | which this plan does not have",
                "{name: inseams, minutes: 1} | sewing.extra.1.name | the same name",
                "{name: a, minutes: 1}, {name: a, minutes: 1} | sewing.extra.2.name | the same name"
            })
    void anExtraStepThatCannotBeKeptIsAFinding(String extra, String key, String says) {
        BadInput bad = catchThrowableOfType(
                BadInput.class,
                () -> Make.run(
                        Make.read("a.yaml", sewing("{extra: [" + extra + "]}").getBytes(StandardCharsets.UTF_8)),
                        stretchwright.ground.Progress.silent()));
        assertThat(bad.findings()).anySatisfy(f -> {
            assertThat(f.file()).isEqualTo("a.yaml");
            assertThat(f.key()).isEqualTo(key);
            assertThat(f.problem()).contains(says);
        });
    }

    /** Five steps that may stand anywhere, on a pair with every option that was sampled: still ordered exactly. */
    @Test
    void fiveFreeStepsAreOrdered() {
        StringBuilder extras = new StringBuilder();
        for (int i = 0; i < SewingTerms.MOST_EXTRAS; i++) {
            extras.append(i == 0 ? "" : ", ").append("{name: free ").append(i).append(", minutes: 1}");
        }
        assertThat(plan(sewing("{extra: [" + extras + "]}")).operations())
                .anyMatch(o -> o.name().word().equals("free 4"));
    }
}
