package stretchwright.body;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stretchwright.ground.Findings;

/** The shared survey rows as bodies, for tests of later rooms: what a row has is given, the rest estimated. */
public final class SurveyBodies {
    /** One body and where it came from. */
    public record Named(String name, Body body) {}

    private SurveyBodies() {}

    /** All bodies the estimator accepts; rows it refuses as slips are counted in refused. */
    public static List<Named> all(List<String> refused) {
        FitBodies.Surveys surveys = FitBodies.Surveys.read();
        List<Named> out = new ArrayList<>();
        for (SurveyRows.Group group : SurveyRows.Group.values()) {
            int row = 0;
            for (SurveyRows.Person person : SurveyRows.people(group, surveys)) {
                String name = group + " row " + ++row;
                Findings findings = new Findings(name);
                Optional<Body> body = Measuring.body(person.figure(), person.age(), person.mm(), findings);
                body.ifPresentOrElse(
                        b -> out.add(new Named(name, b)),
                        () -> refused.add(findings.all().get(0).line()));
            }
        }
        return out;
    }
}
