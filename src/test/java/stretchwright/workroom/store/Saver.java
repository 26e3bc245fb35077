package stretchwright.workroom.store;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.zip.CRC32;
import stretchwright.ground.BadInput;

/**
 * A program that saves until it is killed: {@code Saver SEED WARM [beside]}, then on its input the address. It tells each thing that it did
 * once it was told that it stands: "done", and what it touched as id:version:place, behind it the checksums of texts.
 */
public final class Saver {
    private static final int LONGEST_TEXT = 20_000;

    private final Store store;
    private final Random random;
    private final PrintStream out;
    private final String mark;
    private int count;

    /** Others save there too: what they did is not undone. */
    private static boolean beside;

    private Saver(Store store, Random random, PrintStream out) {
        this.store = store;
        this.random = random;
        this.out = out;
        this.mark = Long.toString(random.nextLong(), 36);
    }

    public static void main(String[] arguments) throws Exception {
        PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
        warm(Path.of(arguments[1]));
        beside = arguments.length > 2;
        out.println("ready");
        Address at = address(new String(System.in.readNBytes(System.in.read()), StandardCharsets.UTF_8));
        try (Database database = Database.open(at)) {
            Saver saver =
                    new Saver(new Store(database, Clock.systemUTC()), new Random(Long.parseLong(arguments[0])), out);
            out.println("open");
            while (true) {
                saver.once();
            }
        } catch (BadInput e) {
            out.println("closed " + e.getMessage());
        }
    }

    /** What is loaded at the first save is loaded before the time runs. */
    private static void warm(Path brought) throws Exception {
        Address.Folder folder = new Address.Folder(Files.createTempDirectory("warm"));
        Files.copy(new Address.Folder(brought).file(), folder.file());
        try (Database database = Database.open(folder)) {
            Store store = new Store(database, Clock.systemUTC());
            store.save(Edit.fresh(Kind.WEARER, "warm", "warm", Links.NONE));
            store.undo();
            store.redo();
        }
        Class.forName("org.postgresql.Driver");
    }

    static String told(Address at) {
        return at instanceof Address.Folder folder
                ? "file " + folder.path()
                : "server " + ((Address.Server) at).server();
    }

    private static Address address(String told) {
        String rest = told.substring(told.indexOf(' ') + 1);
        return told.startsWith("file ") ? new Address.Folder(Path.of(rest)) : new Address.Server(rest, "postgres", "");
    }

    static long sum(String text) {
        CRC32 sum = new CRC32();
        sum.update(text.getBytes(StandardCharsets.UTF_8));
        return sum.getValue();
    }

    /** Where the answer fails it looks at what stands, waits until it can, and tells that. */
    private void once() throws InterruptedException {
        long before = newest();
        try {
            work();
        } catch (BadInput e) {
            out.println("failed " + e.getMessage());
            boolean unsure = String.valueOf(e.getMessage()).contains("nobody knows");
            while (true) {
                try {
                    long after = newest();
                    out.println(
                            unsure || after == before ? "again " + touched(everything()) : "BROKEN " + e.getMessage());
                    return;
                } catch (BadInput down) {
                    Thread.sleep(30);
                }
            }
        }
    }

    private long newest() {
        return store.steps(1).stream().mapToLong(Step::number).findFirst().orElse(0);
    }

    private void work() {
        int what = random.nextInt(10);
        List<Thing> here = store.list(Kind.WEARER, Place.HERE, "", 0, 20);
        List<Thing> bin = store.list(Kind.WEARER, Place.BIN, "", 0, 20);
        if (what < 3 || here.isEmpty()) {
            saved(List.of(Edit.fresh(Kind.WEARER, name(), text(), Links.NONE)));
        } else if (what < 6) {
            saved(List.of(Edit.after(any(here), name(), text())));
        } else if (what == 6) {
            saved(IntStream.rangeClosed(0, random.nextInt(4))
                    .mapToObj(i -> Edit.fresh(Kind.WEARER, name(), text(), Links.NONE))
                    .toList());
        } else if (what == 7) {
            moved(any(here), Place.BIN);
        } else if (what == 8 && !bin.isEmpty()) {
            moved(any(bin), Place.HERE);
        } else if (!beside) {
            (random.nextBoolean() ? store.undo() : store.redo())
                    .ifPresent(step -> out.println("done "
                            + touched(store.database().read(h -> Rows.changes(h, step.number())).stream()
                                    .map(c -> store.thing(c.thing()).orElseThrow())
                                    .toList())));
        }
    }

    private void saved(List<Edit> edits) {
        List<Saved> saved = store.save("save", edits);
        List<Thing> things = saved.stream().map(s -> ((Saved.Stored) s).thing()).toList();
        String sums = edits.stream().map(e -> Long.toString(sum(e.text()))).collect(Collectors.joining(" "));
        out.println("saved " + touched(things) + " | " + sums);
    }

    private void moved(Thing thing, Place to) {
        store.move("move", List.of(thing.id()), to);
        out.println("done " + thing.id() + ":" + thing.now() + ":" + to);
    }

    private static String touched(Collection<Thing> things) {
        return things.stream()
                .map(t -> t.id() + ":" + t.now() + ":" + t.place())
                .collect(Collectors.joining(" "));
    }

    private List<Thing> everything() {
        List<Thing> all = new ArrayList<>();
        for (Kind kind : Kind.values()) {
            for (Place place : Place.values()) {
                all.addAll(store.list(kind, place, "", 0, Integer.MAX_VALUE));
            }
        }
        return all;
    }

    private String name() {
        return "Wearer " + mark + " " + count++;
    }

    private String text() {
        String line = Long.toString(random.nextLong(), 36) + "\n";
        return line.repeat(1 + random.nextInt(LONGEST_TEXT / line.length()));
    }

    private Thing any(List<Thing> things) {
        return things.get(random.nextInt(things.size()));
    }
}
