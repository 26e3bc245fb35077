package stretchwright.benchmarks;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;
import stretchwright.workroom.store.Address;
import stretchwright.workroom.store.Database;
import stretchwright.workroom.store.Databases;
import stretchwright.workroom.store.Edit;
import stretchwright.workroom.store.Kind;
import stretchwright.workroom.store.Links;
import stretchwright.workroom.store.Place;
import stretchwright.workroom.store.Saved;
import stretchwright.workroom.store.Store;
import stretchwright.workroom.store.TestServer;
import stretchwright.workroom.store.Thing;
import stretchwright.workroom.store.Version;

/** A workroom of 10,000 makes of 200 wearers, each tenth in two versions, with figures of some 6 kB. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 2, time = 2)
@Measurement(iterations = 3, time = 4)
public class WorkroomBenchmark {
    private static final int MAKES = 10_000;
    private static final int WEARERS = 200;
    private static final int AT_ONCE = 100;
    private static final int FIGURES = 6000;
    private static final int PAGE = 50;
    private static final List<String> FIRST =
            List.of("Linnea", "Maja", "Noor", "Petra", "Signe", "Tove", "Vera", "Ylva");
    private static final List<String> WHAT = List.of("evening", "show", "training", "winter", "spare", "trial");

    @Param({"SQLite", "PostgreSQL"})
    public String on = "SQLite";

    private final Random random = new Random(1);
    private final List<Thing> wearers = new ArrayList<>();
    private final List<Thing> makes = new ArrayList<>();
    private final List<String> texts = examples();
    private Optional<Database> database = Optional.empty();
    private int saved;

    private static List<String> examples() {
        try (Stream<Path> files = Files.list(Path.of("examples"))) {
            List<String> out = new ArrayList<>();
            for (Path file :
                    files.filter(f -> f.toString().endsWith(".yaml")).sorted().toList()) {
                out.add(Files.readString(file));
            }
            return out;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Setup
    public void fill() throws IOException {
        Address at = on.equals("SQLite")
                ? Databases.folder()
                : TestServer.fresh().orElseThrow(() -> new IllegalStateException("no PostgreSQL here"));
        database = Optional.of(Database.open(at));
        Store store = store();
        for (int i = 0; i < WEARERS; i++) {
            wearers.add(one(
                    store.save(Edit.fresh(Kind.WEARER, FIRST.get(i % FIRST.size()) + " " + i, "hip: 96", Links.NONE))));
        }
        for (int i = 0; i < MAKES; i += AT_ONCE) {
            List<Edit> edits = new ArrayList<>();
            for (int k = i; k < i + AT_ONCE; k++) {
                edits.add(make(k));
            }
            store.save("import", edits).forEach(s -> makes.add(one(s)));
        }
        for (int i = 0; i < MAKES; i += 10) {
            Thing seen = makes.get(i);
            Edit edit = Edit.after(seen, seen.name(), texts.get(i % texts.size()) + "# again\n")
                    .with(figures(), "1");
            makes.set(i, one(store.save(edit)));
            store.save(Edit.fresh(Kind.NOTE, "worn", "sat well, " + i, Links.from(seen.id())));
        }
        System.out.printf("%n%s: %.1f MB%n", on, size(at) / 1e6);
    }

    private static Thing one(Saved saved) {
        return ((Saved.Stored) saved).thing();
    }

    private Store store() {
        return new Store(database.orElseThrow(), Clock.systemUTC());
    }

    private Edit make(int number) {
        Links links = new Links("", wearers.get(number % WEARERS).id(), "", "", "");
        String name = WHAT.get(number % WHAT.size()) + " pair " + number;
        return Edit.fresh(Kind.MAKE, name, texts.get(number % texts.size()), links)
                .with(figures(), "1");
    }

    private String figures() {
        StringBuilder out = new StringBuilder("{\"sizes\": [0");
        while (out.length() < FIGURES) {
            out.append(", ").append(random.nextInt(20_000) / 10.0);
        }
        return out.append("]}").toString();
    }

    private long size(Address at) throws IOException {
        return at instanceof Address.Folder folder
                ? Files.size(folder.file())
                : database.orElseThrow()
                        .read(h -> h.createQuery("SELECT pg_database_size(current_database())")
                                .mapTo(long.class)
                                .one());
    }

    @TearDown(Level.Trial)
    public void close() {
        database.ifPresent(Database::close);
    }

    @Benchmark
    public List<Thing> list() {
        return store().list(Kind.MAKE, Place.HERE, "", 0, PAGE);
    }

    /** One word of the make's name, one of its wearer's. */
    @Benchmark
    public List<Thing> search() {
        String words = WHAT.get(random.nextInt(WHAT.size())) + " " + FIRST.get(random.nextInt(FIRST.size()));
        return store().list(Kind.MAKE, Place.HERE, words, 0, PAGE);
    }

    /** The worst case: all are read, none is found. */
    @Benchmark
    public List<Thing> searchInVain() {
        return store().list(Kind.MAKE, Place.HERE, "evening nobody", 0, PAGE);
    }

    @Benchmark
    public int open() {
        Thing thing = store().thing(makes.get(random.nextInt(MAKES)).id()).orElseThrow();
        Version version = store().now(thing).orElseThrow();
        return version.text().length() + store().from(thing.id(), Kind.NOTE).size();
    }

    @Benchmark
    public Saved save() {
        return store().save(make(MAKES + saved++));
    }
}
