package stretchwright.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** A search for a shorter lay as a job, over real HTTP. */
@Tag("slow")
@Timeout(value = 3, unit = TimeUnit.MINUTES)
class LaySearchTest extends LayVisits {
    @Test
    void aSearchComesOnAsEventsIsNeverLongerAndStaysWhereItIsStopped() throws Exception {
        Server server = server();
        Visitor visitor = new Visitor(server);
        String make = remnant(visitor);
        double stopped;
        try {
            String far = spread(placed(visitor, make));
            assertThat(press(visitor, make, "do", "keep", "placed", far).statusCode())
                    .isEqualTo(303);
            double long0 = now(visitor.get(make + "/lay").body());
            assertThat(press(visitor, make, "do", "search").statusCode()).isEqualTo(303);
            List<String> events = events(server, make, 4);
            List<Double> lengths = events.stream()
                    .map(JSON::readTree)
                    .filter(e -> e.has("mm"))
                    .map(e -> e.get("mm").asDouble())
                    .toList();
            assertThat(lengths).hasSizeGreaterThanOrEqualTo(2).isSortedAccordingTo((a, b) -> Double.compare(b, a));
            assertThat(lengths.get(0)).isLessThan(10 * long0);
            String page = visitor.get(make + "/lay").body();
            assertThat(page).contains("Good enough, stop", "data-looking=\"yes\"", "Still looking");
            assertThat(press(visitor, make, "do", "stop", "job", "no-such-job").statusCode())
                    .isEqualTo(422);
            assertThat(press(visitor, make, "do", "stop", "job", hidden(page, "job"))
                            .statusCode())
                    .isEqualTo(303);
            assertThat(press(visitor, make, "do", "stop", "job", hidden(page, "job"))
                            .statusCode())
                    .isEqualTo(422);
            stopped = now(visitor.get(make + "/lay").body());
            assertThat(10 * stopped).isLessThanOrEqualTo(lengths.get(lengths.size() - 1) + 1);
            assertThat(events(server, make, 1).get(0)).contains("cancelled");
        } finally {
            server.stop();
        }
        Server again = server();
        try {
            assertThat(now(new Visitor(again).get(make + "/lay").body())).isEqualTo(stopped);
        } finally {
            again.stop();
        }
    }

    @Test
    void aSearchGoesOnOverARestartAndAnotherWaitsInLine() throws Exception {
        Server server = server();
        Visitor visitor = new Visitor(server);
        String make = remnant(visitor);
        String other = remnant(visitor);
        double before;
        try {
            for (String m : List.of(make, other)) {
                press(visitor, m, "do", "keep", "placed", spread(placed(visitor, m)));
            }
            press(visitor, make, "do", "search");
            before = JSON.readTree(events(server, make, 2).get(1)).get("mm").asDouble();
            press(visitor, other, "do", "search");
            assertThat(visitor.get(other + "/lay").body()).contains("Second in line");
        } finally {
            server.stop();
        }
        Server again = server();
        try {
            List<String> events = events(again, make, 2);
            assertThat(JSON.readTree(events.get(0)).get("mm").asDouble()).isLessThanOrEqualTo(before);
            assertThat(JSON.readTree(events.get(events.size() - 1))
                            .get("reached")
                            .asLong())
                    .isGreaterThan(60);
            assertThat(new Visitor(again).get(other + "/lay").body()).contains("Second in line");
        } finally {
            again.stop();
        }
    }

    @Test
    void theSearchGoesRoundWhatIsPinned() throws Exception {
        Server server = server();
        try {
            Visitor visitor = new Visitor(server);
            String make = remnant(visitor);
            String far = spread(placed(visitor, make));
            double y = spot(far, "cuff 1");
            assertThat(press(visitor, make, "do", "search", "placed", far, "pinned", "cuff 1")
                            .statusCode())
                    .isEqualTo(303);
            events(server, make, 3);
            String page = visitor.get(make + "/lay").body();
            assertThat(page).contains("pin-head", ", pinned");
            press(visitor, make, "do", "stop", "job", hidden(page, "job"));
            assertThat(spot(placed(visitor, make).toString(), "cuff 1")).isEqualTo(y);
            assertThat(spot(placed(visitor, make).toString(), "waistband 1")).isNotEqualTo(spot(far, "waistband 1"));
        } finally {
            server.stop();
        }
    }
}
