package stretchwright.workroom.jobs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BooleanSupplier;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stretchwright.ground.BadInput;
import stretchwright.ground.Document;
import stretchwright.ground.Point;
import stretchwright.ground.Polygon;
import stretchwright.ground.Waiting;
import stretchwright.lay.nest.Effort;
import stretchwright.lay.nest.StripInstance;
import stretchwright.workroom.store.Address;
import stretchwright.workroom.store.Database;

@Tag("slow")
class JobsTest {
    private static final String ALL = "stretchwright.workroom.store.Databases#all";
    private static final int SPELL = 2;

    static Job awaited(Jobs jobs, String id) throws Exception {
        Job job = Waiting.until(
                Duration.ofMinutes(1),
                () -> jobs.one(id).orElseThrow(),
                seen -> seen.state().over());
        assertThat(job.state().over()).as("not over after a minute: " + job).isTrue();
        return job;
    }

    private static long queued(Database database) {
        return database.read(h -> h.createQuery("SELECT count(*) FROM job_queue")
                .mapTo(long.class)
                .one());
    }

    private static Worker worker(Database database, int spell, BooleanSupplier closing) {
        return new Worker(database, Clock.systemUTC(), 2, spell, closing);
    }

    @ParameterizedTest
    @MethodSource(ALL)
    void whatIsAskedIsDoneOnce(Address address) throws Exception {
        try (Database database = Database.open(address)) {
            Jobs jobs = Jobs.open(database);
            Asked.Lay asked = SmallLays.asked(1, 4, 2);
            Job job = jobs.add("First", asked);
            assertThat(job.state()).isEqualTo(Job.State.QUEUED);
            assertThat(queued(database)).isEqualTo(1);
            try (Workers workers = Workers.start(database, 1)) {
                Job done = awaited(jobs, job.id());
                assertThat(done.state()).as("%s", done.told()).isEqualTo(Job.State.DONE);
                assertThat(done.reached()).isEqualTo(6);
                assertThat(done.begun()).isBetween(done.added(), done.ended());
                assertThat(jobs.files(job.id())).containsExactly(SmallLays.direct(asked, LaySpells.LONG));
            }
            assertThat(queued(database)).isZero();
            assertThat(jobs.cancel(job.id())).isFalse();
            worker(database, SPELL, () -> false).work(job.id());
            assertThat(jobs.one(job.id()).orElseThrow().ended()).isPositive();
            assertThat(jobs.list(5)).extracting(Job::name).containsExactly("First");
        }
    }

    /** Broken off at moments drawn at random, also in the middle of a spell, each time by another worker. */
    @Tag("slow")
    @ParameterizedTest
    @MethodSource(ALL)
    void howOftenItIsBrokenOffChangesNoByte(Address address) {
        try (Database database = Database.open(address)) {
            Jobs jobs = Jobs.open(database);
            Random random = new Random(5);
            Asked.Lay asked = SmallLays.asked(2, 9, 4);
            String id = jobs.add("Broken off", asked).id();
            long reached = 0;
            int times = 0;
            while (!worker(database, SPELL, after(random.nextInt(40_000))).work(id)) {
                Job job = jobs.one(id).orElseThrow();
                assertThat(job.state()).isEqualTo(Job.State.RUNNING);
                assertThat(job.reached()).isGreaterThanOrEqualTo(reached);
                assertThat(jobs.files(id)).hasSize(job.reached() == 0 ? 0 : 1);
                reached = job.reached();
                times++;
            }
            assertThat(times).isGreaterThan(2);
            assertThat(jobs.files(id)).containsExactly(SmallLays.direct(asked, SPELL));
        }
    }

    /** True from so many times asked on. */
    private static BooleanSupplier after(int asked) {
        AtomicInteger left = new AtomicInteger(asked);
        return () -> left.decrementAndGet() < 0;
    }

    @ParameterizedTest
    @MethodSource(ALL)
    void badInputFailsAndIsNotTriedAgain(Address address) throws Exception {
        try (Database database = Database.open(address)) {
            Jobs jobs = Jobs.open(database);
            Polygon tall = new Polygon(List.of(Point.ORIGIN, new Point(5, 0), new Point(5, 20), new Point(0, 20)));
            StripInstance instance =
                    new StripInstance("tall", 10, List.of(0.0), List.of(new StripInstance.Item("door", 1, tall)));
            Asked.File make = new Asked.File("none.yaml", "make: 7".getBytes(StandardCharsets.UTF_8));
            String lay = jobs.add("Lay", new Asked.Lay(instance, 1, new Effort(3, 3)))
                    .id();
            String club = jobs.add("Club", new Asked.Club(List.of(make), OptionalDouble.empty(), 1, Effort.NONE))
                    .id();
            String torn = jobs.add("Torn", SmallLays.asked(1, 1, 1)).id();
            database.write(h -> h.execute("UPDATE job SET input = '{\"rounds\": 3' WHERE name = 'Torn'"));
            try (Workers workers = Workers.start(database, 2)) {
                assertThat(awaited(jobs, lay).told()).singleElement().asString().contains("door");
                assertThat(awaited(jobs, club).told()).isNotEmpty().allMatch(t -> t.startsWith("none.yaml"));
                assertThat(awaited(jobs, torn).told())
                        .singleElement()
                        .asString()
                        .startsWith("Torn: ");
                for (String id : List.of(lay, club, torn)) {
                    assertThat(jobs.one(id).orElseThrow().state()).isEqualTo(Job.State.FAILED);
                    assertThat(jobs.files(id)).isEmpty();
                }
            }
            assertThat(queued(database)).isZero();
        }
    }

    @ParameterizedTest
    @MethodSource(ALL)
    void whatIsCancelledStaysAsFarAsItCame(Address address) {
        try (Database database = Database.open(address)) {
            Jobs jobs = Jobs.open(database);
            String never = jobs.add("Never", SmallLays.asked(1, 1, 1)).id();
            assertThat(jobs.cancel(never)).isTrue();
            assertThat(queued(database)).isZero();
            assertThat(worker(database, SPELL, () -> false).work(never)).isTrue();
            assertThat(jobs.files(never)).isEmpty();

            String half = jobs.add("Half", SmallLays.asked(3, 1000, 0)).id();
            AtomicInteger asked = new AtomicInteger();
            BooleanSupplier cancels = () -> {
                if (asked.incrementAndGet() % 1000 == 0
                        && jobs.one(half).orElseThrow().reached() >= SPELL) {
                    jobs.cancel(half);
                }
                return false;
            };
            assertThat(worker(database, SPELL, cancels).work(half)).isTrue();
            Job job = jobs.one(half).orElseThrow();
            assertThat(job.state()).isEqualTo(Job.State.CANCELLED);
            assertThat(job.reached()).isBetween(1L, 100L);
            assertThat(jobs.files(half))
                    .containsExactly(SmallLays.direct(SmallLays.asked(3, (int) job.reached(), 0), SPELL));
        }
    }

    /** Two at one job, of whom the slower finds it done, or further than he is. */
    @ParameterizedTest
    @MethodSource(ALL)
    void twoAtOneJobDoNoHarm(Address address) throws Exception {
        try (Database database = Database.open(address)) {
            Jobs jobs = Jobs.open(database);
            Asked.Lay asked = SmallLays.asked(4, 8, 0);
            String id = jobs.add("Twice", asked).id();
            Thread other = new Thread(() -> worker(database, SPELL, () -> false).work(id));
            other.start();
            assertThat(worker(database, SPELL, () -> false).work(id)).isTrue();
            other.join();
            assertThat(jobs.files(id)).containsExactly(SmallLays.direct(asked, SPELL));
            assertThat(jobs.count(Job.State.DONE)).isEqualTo(1);
        }
    }

    @ParameterizedTest
    @MethodSource(ALL)
    void whatNeverComesOnEnds(Address address) {
        try (Database database = Database.open(address)) {
            Jobs jobs = Jobs.open(database);
            String id = jobs.add("Too large", SmallLays.asked(5, 4, 0)).id();
            for (int i = 0; i < Worker.MOST_TRIES; i++) {
                assertThat(worker(database, SPELL, () -> true).work(id)).isFalse();
            }
            assertThat(worker(database, SPELL, () -> false).work(id)).isTrue();
            assertThat(jobs.one(id).orElseThrow().state()).isEqualTo(Job.State.FAILED);
        }
    }

    @Tag("slow")
    @ParameterizedTest
    @MethodSource(ALL)
    void aClubAndATableOfSizesAreDoneToo(Address address) throws Exception {
        Asked.File make = new Asked.File("evening.yaml", Files.readAllBytes(Path.of("examples/evening-practice.yaml")));
        Asked.File bodies = new Asked.File(
                "bodies.csv",
                "figure,age,height,hips\nwoman,31,165,96.1\nwoman,31,tall,96\n".getBytes(StandardCharsets.UTF_8));
        try (Database database = Database.open(address)) {
            Jobs jobs = Jobs.open(database);
            String club = jobs.add("Club", new Asked.Club(List.of(make, make), OptionalDouble.empty(), 1, Effort.NONE))
                    .id();
            String sizes = jobs.add("Sizes", new Asked.Sizes(make, bodies, Optional.of("cm")))
                    .id();
            worker(database, SPELL, () -> false).work(club);
            worker(database, SPELL, () -> false).work(sizes);
            assertThat(jobs.one(club).orElseThrow().told()).isEmpty();
            assertThat(jobs.files(club)).extracting(Document::name).contains("club.json", "club.pdf");
            assertThat(jobs.files(sizes))
                    .as("%s", jobs.one(sizes).orElseThrow().told())
                    .extracting(Document::name)
                    .contains("nest.json");
            assertThat(jobs.one(sizes).orElseThrow().told()).first().asString().contains("tall");
        }
    }

    @ParameterizedTest
    @MethodSource(ALL)
    void whatIsForgottenTakesItsJobsAlong(Address address) {
        try (Database database = Database.open(address)) {
            Jobs jobs = Jobs.open(database);
            jobs.add("Hers", SmallLays.asked(1, 1, 0), Set.of("her", "other"));
            Job kept = jobs.add("Kept", SmallLays.asked(1, 1, 0), Set.of("other"));
            assertThat(jobs.forget(List.of("her"))).isEqualTo(1);
            assertThat(jobs.list(9)).extracting(Job::name).containsExactly("Kept");
            jobs.remove(kept.id());
            assertThat(queued(database)).isZero();
            assertThatThrownBy(() -> jobs.cancel(kept.id())).isInstanceOf(BadInput.class);
            assertThatThrownBy(() -> jobs.add("a\nb", SmallLays.asked(1, 1, 0))).isInstanceOf(BadInput.class);
        }
    }
}
