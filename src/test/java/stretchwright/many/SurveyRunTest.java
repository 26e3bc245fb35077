package stretchwright.many;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;
import stretchwright.ground.BadInput;
import stretchwright.ground.Progress;
import stretchwright.intake.SampleText;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Surveys of a few invented bodies. */
class SurveyRunTest {
    private static final String OURS = """
            name,figure,age,stature,waist girth,hip girth,crotch height
            ada,woman,,165 cm,72 cm,97 cm,78 cm
            ben,man,,178 cm,101 cm,99 cm,83 cm
            cy,child,9,135 cm,,70 cm,
            """;

    private static final String SURVEY = """
            subject_id,sex,age_years,weight_kg,stature_mm,waist_natural_girth_mm,buttock_girth_mm,crotch_height_mm
            1,F,24,60,1650,720,970,780
            2,M,40,88,1780,1010,990,830
            3,X,30,70,1700,,,
            4,F,30,70,16500,,,
            5,M,8,30,1300,,,
            """;

    private static SurveyRun.Source source(String name, String text) {
        return new SurveyRun.Source(name, text.getBytes(StandardCharsets.UTF_8));
    }

    private static SurveyRun run(SurveyRun.Source table, SurveyRun.Source... makes) {
        return SurveyRun.of(List.of(table), List.of(makes), () -> 0, Progress.silent());
    }

    private static JsonNode survey(SurveyRun run) {
        return JsonMapper.builder().build().readTree(run.json()).get("survey");
    }

    @Test
    void everyBodyIsDraftedInEveryCase() {
        SurveyRun run = run(source("some/ours.csv", OURS));
        JsonNode survey = survey(run);
        assertThat(survey.get("cases")).hasSize(6);
        assertThat(survey.at("/tables/0/file").asString()).isEqualTo("ours.csv");
        assertThat(survey.at("/tables/0/bodies").asInt()).isEqualTo(3);
        for (JsonNode in : survey.at("/tables/0/drafts")) {
            int sum = in.get("held").asInt()
                    + in.get("stopped").asInt()
                    + in.get("atOdds").asInt();
            assertThat(sum).as(in.toString()).isEqualTo(3);
            boolean soft = in.get("case").asString().contains("60/45");
            assertThat(in.get("held").asInt() == 3 || !soft).as(in.toString()).isTrue();
        }
        assertThat(survey.at("/waistOverHip/bodies").asInt()).isEqualTo(1);
        assertThat(survey.at("/waistOverHip/drafted").asInt()).isEqualTo(6);
        assertThat(run.hasFaults()).isFalse();
    }

    /** A band of cloth of 30 % across does not pass much larger hips: the reason is counted with its first case. */
    @Test
    void reasonsOfStopsAreCounted() {
        JsonNode stopped = survey(run(source("ours.csv", OURS))).at("/cases/4/stopped");
        assertThat(stopped).anySatisfy(r -> {
            assertThat(r.get("about").asString()).isEqualTo("waistband over hips");
            assertThat(r.get("drafts").asInt()).isPositive();
            assertThat(r.get("first").asString()).startsWith("ours.csv, ");
        });
    }

    @Test
    void theColumnsOfAPublicSurveyAreKnownAndBrokenRowsNamed() {
        JsonNode table = survey(run(source("s.csv", SURVEY))).at("/tables/0");
        assertThat(table.get("bodies").asInt()).isEqualTo(3);
        assertThat(table.get("refused")).hasSize(2);
        assertThat(table.at("/refused/0/row").asInt()).isEqualTo(4);
        assertThat(table.at("/refused/0/column").asString()).isEqualTo("sex");
        assertThat(table.at("/refused/1/row").asInt()).isEqualTo(5);
        assertThat(table.at("/refused/1/column").asString()).isEqualTo("stature_mm");
    }

    /** The same body under both headers gives the same bodies, so the mapping takes the right columns. */
    @Test
    void bothHeadersMeanTheSameBody() {
        String ours = "figure,age,unit,stature,waist girth,hip girth,crotch height\nwoman,24,mm,1650,720,970,780\n";
        String theirs = SURVEY.lines().limit(2).reduce("", (a, b) -> a + b + "\n");
        assertThat(rows(theirs).get(0).body()).isEqualTo(rows(ours).get(0).body());
    }

    private static List<BodyRows.Row> rows(String table) {
        return BodyRows.of("t.csv", table.getBytes(StandardCharsets.UTF_8), java.util.Optional.empty())
                .rows();
    }

    @Test
    void makeFilesGiveOtherCases() {
        SurveyRun run = run(source("ours.csv", OURS), source("m.yaml", SampleText.WHOLE));
        assertThat(survey(run).get("cases")).hasSize(1);
        assertThat(survey(run).at("/cases/0/name").asString()).isEqualTo("m.yaml");
        assertThat(survey(run).at("/tables/0/drafts/0/held").asInt()).isEqualTo(3);
    }

    @Test
    void theClockGivesTheTimes() {
        AtomicLong clock = new AtomicLong();
        SurveyRun run = SurveyRun.of(
                List.of(source("one.csv", "figure,stature\nwoman,165 cm\n")),
                List.of(source("m.yaml", SampleText.WHOLE)),
                () -> clock.getAndAdd(3_000_000),
                Progress.silent());
        assertThat(survey(run).at("/milliseconds/median").asDouble()).isEqualTo(3);
    }

    @Test
    void theSameInputGivesTheSameBytes() {
        SurveyRun.Source table = source("ours.csv", OURS);
        assertThat(run(table).documents()).isEqualTo(run(table).documents());
        assertThat(run(table).documents())
                .extracting(d -> d.name())
                .containsExactly("survey.json", "survey.md", "worst.svg");
    }

    @Test
    void tablesAndStylesThatCannotBeUsedAreAllNamed() {
        assertThatThrownBy(() -> SurveyRun.of(
                        List.of(
                                source("none.csv", "sex,age_years,shoe\nF,30,39\n"),
                                source("empty.csv", ""),
                                source("header.csv", "figure,stature\n"),
                                source("other.csv", "figure,waste girth\nwoman,70\n")),
                        List.of(source("bad.yaml", SampleText.with("leg: over boot", "leg: moon"))),
                        () -> 0,
                        Progress.silent()))
                .isInstanceOfSatisfying(
                        BadInput.class,
                        e -> assertThat(e.findings())
                                .extracting(f -> f.file())
                                .containsExactlyInAnyOrder(
                                        "none.csv", "empty.csv", "header.csv", "other.csv", "bad.yaml"));
    }

    /** The sole, the gap and the guard grow with the boot: a cover and a strap are drafted, not a fault. */
    @Test
    void stylesThatNeedTheSoleAreSurveyed() throws Exception {
        for (String example : List.of("whole-boot", "over-the-heel")) {
            byte[] make = java.nio.file.Files.readAllBytes(java.nio.file.Path.of("examples", example + ".yaml"));
            SurveyRun run = run(source("ours.csv", OURS), new SurveyRun.Source(example, make));
            assertThat(survey(run).at("/cases/0/crashed")).as(example).isEmpty();
            assertThat(run.hasFaults()).isFalse();
        }
    }

    @Test
    void aTableWithoutAnyBodyIsAFinding() {
        assertThatThrownBy(() -> run(source("bare.csv", "figure,stature\nwoman,1650\nman,1780\n")))
                .isInstanceOfSatisfying(
                        BadInput.class,
                        e -> assertThat(e.findings().get(0).line())
                                .contains("bare.csv: row 2, column stature", "none of the 2 rows", "has no unit"));
    }
}
