package stretchwright.many;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Predicate;
import stretchwright.ground.Numbers;
import stretchwright.ground.Voice;
import stretchwright.intake.MakeFile;
import stretchwright.pattern.EdgeName;
import stretchwright.report.Report;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** A survey's result as JSON: docs/formats.md. */
final class SurveyJson {
    private static final int LISTED = 20;
    private static final int REFUSED_LISTED = 1000;

    private final SurveyResult result;

    private SurveyJson(SurveyResult result) {
        this.result = result;
    }

    static byte[] of(SurveyResult result) {
        return new SurveyJson(result).json();
    }

    private byte[] json() {
        ObjectNode root = Report.node();
        root.put("stretchwright", MakeFile.VERSION);
        ObjectNode survey = root.putObject("survey");
        ArrayNode tables = survey.putArray("tables");
        for (int i = 0; i < result.tables().size(); i++) {
            table(tables.addObject(), i);
        }
        ArrayNode cases = survey.putArray("cases");
        for (int i = 0; i < result.cases().size(); i++) {
            theCase(cases.addObject(), i);
        }
        waist(survey.putObject("waistOverHip"), p -> true);
        ArrayNode worst = survey.putArray("worst");
        for (SurveyPage.Worst kind : SurveyPage.WORST) {
            for (SurveyResult.Draft d : result.worst(kind.what(), LISTED)) {
                worst(worst.addObject(), kind, d);
            }
        }
        ObjectNode time = survey.putObject("milliseconds");
        time.put("median", Numbers.rounded(result.milliseconds(0.5), 3));
        time.put("percentile95", Numbers.rounded(result.milliseconds(0.95), 3));
        return Report.text(root).getBytes(StandardCharsets.UTF_8);
    }

    private void table(ObjectNode out, int index) {
        SurveyResult.Table table = result.tables().get(index);
        out.put("file", table.file());
        out.put("rows", table.read());
        out.put("bodies", table.read() - table.refused().size());
        ArrayNode refused = out.putArray("refused");
        for (BodyRows.Refused row : table.refused()
                .subList(0, Math.min(REFUSED_LISTED, table.refused().size()))) {
            for (BodyRows.Problem p : row.problems()) {
                refused.addObject()
                        .put("row", row.line())
                        .put("column", p.column())
                        .put("problem", Voice.of(row.unit()).say(p.wrong()));
            }
        }
        waist(out.putObject("waistOverHip"), p -> p.table() == index);
        ArrayNode drafts = out.putArray("drafts");
        for (int i = 0; i < result.cases().size(); i++) {
            int in = i;
            ObjectNode counts = drafts.addObject();
            counts.put("case", result.cases().get(i).name());
            for (SurveyTrial.Kind kind : SurveyTrial.Kind.values()) {
                counts.put(word(kind), SurveyResult.count(result.drafts(p -> p.table() == index, in), kind));
            }
        }
    }

    private void waist(ObjectNode out, Predicate<SurveyResult.Person> group) {
        Predicate<SurveyResult.Person> who = group.and(SurveyResult.Person::isWaistOverHip);
        out.put("bodies", result.persons().stream().filter(who).count());
        out.put("drafts", result.drafts(who).count());
        out.put(
                "drafted",
                result.drafts(who).filter(d -> d.outcome().isDrafted()).count());
    }

    private void theCase(ObjectNode out, int index) {
        SurveyCase in = result.cases().get(index);
        out.put("name", in.name());
        out.put("stretchAcross", Numbers.share(in.fabric().test().stretchAcross()));
        out.put("stretchAlong", Numbers.share(in.fabric().test().stretchAlong()));
        out.put("farOff", result.farOff(p -> true, index));
        truth(out.putArray("truth"), index);
        for (SurveyTrial.Kind kind : SurveyTrial.Kind.values()) {
            if (kind == SurveyTrial.Kind.HELD) {
                continue;
            }
            ArrayNode reasons = out.putArray(word(kind));
            for (boolean child : List.of(false, true)) {
                Map<String, SurveyResult.Count> counts =
                        result.reasons(result.drafts(p -> p.isChild() == child, index), kind);
                counts.forEach((about, c) -> reasons.addObject()
                        .put("who", child ? "children" : "adults")
                        .put("about", about)
                        .put("drafts", c.times())
                        .put("first", c.example()));
            }
        }
    }

    private void truth(ArrayNode out, int index) {
        for (boolean child : List.of(false, true)) {
            for (SurveyTruth.Figure figure : SurveyTruth.FIGURES) {
                double[] spread = SurveyTruth.spread(
                        figure, result.drafts(p -> p.isChild() == child, index).map(SurveyResult.Draft::outcome));
                if (spread.length > 0) {
                    out.addObject()
                            .put("who", child ? "children" : "adults")
                            .put("figure", figure.word())
                            .put("least", Numbers.rounded(spread[0], 3))
                            .put("percentile5", Numbers.rounded(spread[1], 3))
                            .put("median", Numbers.rounded(spread[2], 3))
                            .put("percentile95", Numbers.rounded(spread[3], 3))
                            .put("most", Numbers.rounded(spread[4], 3));
                }
            }
        }
    }

    private void worst(ObjectNode out, SurveyPage.Worst kind, SurveyResult.Draft d) {
        SurveyTrial.Outcome o = d.outcome();
        out.put("kind", Voice.plain().say(kind.title()));
        out.put("who", result.who(d.person()));
        out.put("case", result.cases().get(d.of()).name());
        out.put("outcome", word(o.kind()));
        out.put("correction", Numbers.mm(o.correction()));
        out.put("radius", Numbers.mm(o.bend().radius()));
        out.put("edge", o.bend().edge().map(EdgeName::word).orElse(""));
        out.put("evened", Numbers.share(o.evened()));
    }

    private static String word(SurveyTrial.Kind kind) {
        String[] words = kind.name().toLowerCase(Locale.ROOT).split("_");
        return words.length == 1
                ? words[0]
                : words[0] + words[1].substring(0, 1).toUpperCase(Locale.ROOT) + words[1].substring(1);
    }
}
