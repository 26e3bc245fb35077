package stretchwright.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import stretchwright.ground.BadInput;
import stretchwright.intake.MakeFile;
import stretchwright.make.Made;
import stretchwright.make.Make;
import stretchwright.make.Session;

class MakesTest {
    private static final long LONG = 120_000;

    private static String take(Makes makes, String name) {
        String text = Form.example().makeText().replace("Evening practice", name);
        Session session = Session.of(Make.read("form", text.getBytes(StandardCharsets.UTF_8)));
        return makes.take(Form.example(), text, session);
    }

    @Test
    void theSameTextIsComputedOnceForAllWhoAskAtTheSameTime() throws Exception {
        try (Makes makes = new Makes(1)) {
            ExecutorService people = Executors.newFixedThreadPool(20);
            Callable<Made> press = () ->
                    makes.find(take(makes, "The same")).orElseThrow().made(LONG).orElseThrow();
            List<Callable<Made>> all = new ArrayList<>();
            for (int i = 0; i < 20; i++) {
                all.add(press);
            }
            Set<Integer> results = new HashSet<>();
            for (Future<Made> made : people.invokeAll(all)) {
                results.add(System.identityHashCode(made.get()));
            }
            people.shutdown();
            assertThat(results).hasSize(1);
        }
    }

    /** Another name changes nothing that is drafted: the pattern is the same object. */
    @Test
    void whatDidNotChangeSinceTheLastMakeIsNotComputedAgain() {
        try (Makes makes = new Makes(1)) {
            String text = Form.example().makeText();
            MakeFile first = Make.read("form", text.getBytes(StandardCharsets.UTF_8));
            String id = makes.take(Form.example(), text, makes.session(first));
            Session before = makes.find(id).orElseThrow().session();
            MakeFile renamed = Make.read(
                    "form", text.replace("Evening practice", "Morning").getBytes(StandardCharsets.UTF_8));
            Session after = makes.session(renamed);
            assertThat(after.pattern()).isSameAs(before.pattern());
            assertThat(after.make().name()).isEqualTo("Morning");
        }
    }

    @Tag("slow")
    @Test
    void whoWaitsIsToldHowManyComeBefore() {
        try (Makes makes = new Makes(1)) {
            List<String> ids =
                    List.of(take(makes, "One"), take(makes, "Two"), take(makes, "Three"), take(makes, "Four"));
            Makes.Work last = makes.find(ids.get(3)).orElseThrow();
            int before = makes.before(last);
            assertThat(before).isBetween(1, 3);
            assertThat(last.made(LONG)).isPresent();
            assertThat(makes.before(last)).isZero();
            assertThat(ids).doesNotHaveDuplicates();
            ids.forEach(id ->
                    assertThat(makes.find(id).orElseThrow().made(LONG)).as(id).isPresent());
        }
    }

    @Test
    void whatCannotBeDraftedIsToldToWhoAsks() {
        try (Makes makes = new Makes(1)) {
            // a band of 245 mm on a rise of 238 mm
            String text = Form.example()
                    .makeText()
                    .replace("height: 6.5", "height: 24.5 cm")
                    .replace("103.0", "101.0");
            Session session = Session.of(Make.read("form", text.getBytes(StandardCharsets.UTF_8)));
            String id = makes.take(Form.example(), text, session);
            assertThatThrownBy(() -> makes.find(id).orElseThrow().made(LONG)).isInstanceOf(BadInput.class);
        }
    }

    @Test
    @Tag("slow")
    void theOldestOfThoseThatAreDoneAreForgotten() {
        try (Makes makes = new Makes(2)) {
            String first = take(makes, "Make 0");
            assertThat(makes.find(first).orElseThrow().made(LONG)).isPresent();
            for (int i = 1; i <= Makes.MOST; i++) {
                assertThat(makes.find(take(makes, "Make " + i)).orElseThrow().made(LONG))
                        .isPresent();
            }
            assertThat(makes.find(first)).isEmpty();
        }
    }
}
