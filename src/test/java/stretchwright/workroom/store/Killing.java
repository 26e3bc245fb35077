package stretchwright.workroom.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.TimeUnit;

/** What was acknowledged by programs that were killed, and whether it is all there. */
final class Killing {
    private static final String JAVA =
            System.getProperty("java.home") + File.separator + "bin" + File.separator + "java";

    /** Saved into before the time runs; beside it the library that the driver leaves behind when it is killed. */
    private static final Address.Folder WARM = warm();

    /** Of a version, as "id:number", the checksum of its text. */
    private final Map<String, Long> sums = new HashMap<>();

    /** Of a thing the version and place, as "number:PLACE". */
    private final Map<String, String> stand = new HashMap<>();

    private long acknowledged;

    private static Address.Folder warm() {
        Address.Folder folder = Databases.folder();
        Database.open(folder).close();
        return folder;
    }

    long acknowledged() {
        return acknowledged;
    }

    /** A program that is loaded, and waits for being told where to save. */
    static Running loaded(long seed) throws IOException {
        return loaded(Long.toString(seed));
    }

    /** The same, that undoes nothing. */
    static Running loadedBeside(long seed) throws IOException {
        return loaded(Long.toString(seed), "beside");
    }

    private static Running loaded(String seed, String... more) throws IOException {
        Path told = Files.createTempFile("stretchwright-saver", ".log");
        told.toFile().deleteOnExit();
        List<String> words = new ArrayList<>(List.of(
                JAVA,
                "-Xmx128m",
                "-XX:+UseSerialGC",
                "-XX:TieredStopAtLevel=1",
                "-Djava.io.tmpdir=" + WARM.path().getParent(),
                "-cp",
                System.getProperty("surefire.test.class.path", System.getProperty("java.class.path")),
                Saver.class.getName(),
                seed,
                WARM.path().toString()));
        words.addAll(List.of(more));
        Process process = new ProcessBuilder(words)
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .redirectOutput(told.toFile())
                .start();
        return new Running(process, told);
    }

    /** A program and what it tells. */
    record Running(Process process, Path told) {
        /** Its address, once it is loaded. */
        void tell(Address at) throws IOException, InterruptedException {
            await("ready");
            byte[] words = Saver.told(at).getBytes(StandardCharsets.UTF_8);
            OutputStream to = process.getOutputStream();
            to.write(words.length);
            to.write(words);
            to.flush();
        }

        /** Until it has told so many lines, or half a minute has gone by. */
        void awaitLines(int lines) throws IOException, InterruptedException {
            long until = System.nanoTime() + TimeUnit.SECONDS.toNanos(30);
            while (process.isAlive()
                    && System.nanoTime() < until
                    && Files.readString(told).lines().count() < lines) {
                Thread.sleep(2);
            }
        }

        void await(String word) throws IOException, InterruptedException {
            while (process.isAlive() && !Files.readString(told).contains(word)) {
                Thread.sleep(2);
            }
        }
    }

    /** SIGKILL; then all that it still told. */
    void kill(Running saver) throws IOException, InterruptedException {
        saver.process().destroyForcibly();
        assertThat(saver.process().waitFor(20, TimeUnit.SECONDS)).isTrue();
        String told = Files.readString(saver.told());
        // a line that was not ended was not told
        told.substring(0, told.lastIndexOf('\n') + 1).lines().forEach(this::heard);
        Files.delete(saver.told());
    }

    private void heard(String line) {
        assertThat(line).doesNotStartWith("BROKEN");
        assertThat(line.startsWith("closed") && !line.contains("does not answer"))
                .as(line)
                .isFalse();
        int space = line.indexOf(' ');
        String what = space < 0 ? line : line.substring(0, space);
        String[] halves = line.substring(space + 1).split(" \\| ");
        if (what.equals("again")) {
            stand.clear();
        }
        if (List.of("done", "saved", "again").contains(what)) {
            List<String> touched = halves[0].isEmpty() ? List.of() : List.of(halves[0].split(" "));
            for (int i = 0; i < touched.size(); i++) {
                String[] one = touched.get(i).split(":");
                stand.put(one[0], one[1] + ":" + one[2]);
                if (what.equals("saved")) {
                    sums.put(one[0] + ":" + one[1], Long.valueOf(halves[1].split(" ")[i]));
                }
            }
            acknowledged += what.equals("again") ? 0 : 1;
        }
    }

    /** Opens it, checks all, and saves once more. Without a sum of what stands where steps may be missing. */
    void allIsThere(Address at, String told) {
        try (Database database = Database.open(at)) {
            database.mustBeSound();
            Store store = new Store(database, Clock.systemUTC());
            sums.forEach((key, sum) -> {
                String[] one = key.split(":");
                assertThat(store.version(one[0], Long.parseLong(one[1])).map(v -> Saver.sum(v.text())))
                        .as(told + " " + key)
                        .contains(sum);
            });
            onlyOneStepMore(store, told);
            Saved next = store.save(Edit.fresh(Kind.BOOT, "Boot " + System.nanoTime(), "next", Links.NONE));
            assertThat(next).isInstanceOf(Saved.Stored.class);
            Thing boot = ((Saved.Stored) next).thing();
            stand.put(boot.id(), boot.now() + ":" + boot.place());
            database.mustBeSound();
        }
    }

    /** What stands is what was acknowledged, but for what one step may have done that no answer came for. */
    private void onlyOneStepMore(Store store, String told) {
        Set<String> others = new HashSet<>();
        List<Thing> all = new ArrayList<>();
        for (Kind kind : Kind.values()) {
            for (Place place : Place.values()) {
                all.addAll(store.list(kind, place, "", 0, Integer.MAX_VALUE));
            }
        }
        assertThat(all).extracting(Thing::id).as(told).containsAll(stand.keySet());
        for (Thing t : all) {
            String now = t.now() + ":" + t.place();
            if (!now.equals(stand.put(t.id(), now))) {
                others.add(t.id());
            }
        }
        if (!others.isEmpty()) {
            assertThat(store.steps(Integer.MAX_VALUE))
                    .as(told + " changed without an answer: " + others)
                    .anyMatch(s -> store.database().read(h -> Rows.changes(h, s.number())).stream()
                            .map(Change::thing)
                            .toList()
                            .containsAll(others));
        }
    }
}
