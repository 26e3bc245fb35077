package stretchwright.many;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import stretchwright.body.Body;
import stretchwright.body.Figure;
import stretchwright.body.Measure;
import stretchwright.ground.Part;
import stretchwright.ground.Voice;

/** Everything a survey found, and how it is counted. */
record SurveyResult(List<Table> tables, List<SurveyCase> cases, List<Person> persons) {
    /** Three times what hand measuring of a height may err (common practice: 10 to 15 mm), mm. */
    static final double FAR = 40;

    SurveyResult {
        tables = List.copyOf(tables);
        cases = List.copyOf(cases);
        persons = List.copyOf(persons);
    }

    /** A file: how many rows it had, and which of them are no bodies. */
    record Table(String file, int read, List<BodyRows.Refused> refused) {}

    /** A row that is a body, with an outcome per case. */
    record Person(int table, BodyRows.Row row, List<SurveyTrial.Outcome> outcomes) {
        Body body() {
            return row.body();
        }

        boolean isChild() {
            return body().figure() == Figure.CHILD;
        }

        boolean isWaistOverHip() {
            return body().mm(Measure.WAIST_GIRTH) > body().mm(Measure.HIP_GIRTH);
        }
    }

    /** One draft: who, in which case, and how it went. */
    record Draft(Person person, int of, SurveyTrial.Outcome outcome) {}

    /** A reason, how often it was given, and the first one in full. */
    record Count(int times, String example) {}

    private static String say(Part part) {
        return Voice.plain().say(part);
    }

    String who(Person person) {
        return say(Tell.said("survey.who", Part.text(tables.get(person.table).file()), Part.text(person.row.label())));
    }

    Stream<Draft> drafts(Predicate<Person> who, int of) {
        return persons.stream().filter(who).map(p -> new Draft(p, of, p.outcomes.get(of)));
    }

    Stream<Draft> drafts(Predicate<Person> who) {
        return persons.stream()
                .filter(who)
                .flatMap(p -> Stream.iterate(0, i -> i < cases.size(), i -> i + 1)
                        .map(i -> new Draft(p, i, p.outcomes.get(i))));
    }

    static long count(Stream<Draft> drafts, SurveyTrial.Kind kind) {
        return drafts.filter(d -> d.outcome.kind() == kind).count();
    }

    /** Reasons of one kind of outcome by what they are about, with the first example. */
    Map<String, Count> reasons(Stream<Draft> drafts, SurveyTrial.Kind kind) {
        Map<String, Count> counts = new TreeMap<>();
        drafts.filter(d -> d.outcome.kind() == kind).forEach(d -> {
            for (SurveyTrial.Reason r : d.outcome.reasons()) {
                Count one =
                        new Count(1, say(Tell.said("survey.example", Part.text(who(d.person)), Part.text(r.words()))));
                counts.merge(r.about(), one, (a, b) -> new Count(a.times + 1, a.example));
            }
        });
        return counts;
    }

    /** Why rows are no bodies, by column. */
    static Map<String, Count> refusals(Table table) {
        Map<String, Count> counts = new TreeMap<>();
        for (BodyRows.Refused row : table.refused) {
            BodyRows.Problem p = row.problems().get(0);
            String problem = Voice.of(row.unit()).say(p.wrong());
            Count one = new Count(
                    1, say(Tell.said("survey.example", Part.text(Tell.at(row.line(), "")), Part.text(problem))));
            String about = p.column().isEmpty() ? say(Tell.said("survey.row")) : p.column();
            counts.merge(about, one, (a, b) -> new Count(a.times + 1, a.example));
        }
        return counts;
    }

    /** Drafts with the largest of something, one per person. */
    List<Draft> worst(ToDoubleFunction<SurveyTrial.Outcome> what, int many) {
        return persons.stream()
                .map(p -> Stream.iterate(0, i -> i < cases.size(), i -> i + 1)
                        .map(i -> new Draft(p, i, p.outcomes.get(i)))
                        .max(Comparator.comparingDouble(d -> what.applyAsDouble(d.outcome)))
                        .orElseThrow())
                .filter(d -> d.outcome.isDrafted() || d.outcome.kind() == SurveyTrial.Kind.BROKEN)
                .sorted(Comparator.comparingDouble((Draft d) -> -what.applyAsDouble(d.outcome)))
                .limit(many)
                .toList();
    }

    /** How many drafts end at the side this far from the measured waist height: the crotch length decided. */
    long farOff(Predicate<Person> who, int of) {
        return drafts(who, of)
                .filter(d -> Math.abs(d.outcome.correction()) > FAR)
                .count();
    }

    /** Time of a draft that so large a share of all are below, ms. */
    double milliseconds(double share) {
        long[] nanos = persons.stream()
                .flatMap(p -> p.outcomes.stream())
                .mapToLong(SurveyTrial.Outcome::nanos)
                .sorted()
                .toArray();
        return nanos.length == 0 ? 0 : nanos[(int) Math.min(nanos.length - 1, share * nanos.length)] / 1e6;
    }

    long waistOverHip() {
        return persons.stream().filter(Person::isWaistOverHip).count();
    }

    boolean hasFaults() {
        return Arrays.asList(SurveyTrial.Kind.CRASHED, SurveyTrial.Kind.BROKEN).stream()
                .anyMatch(k -> drafts(p -> true).anyMatch(d -> d.outcome.kind() == k));
    }
}
