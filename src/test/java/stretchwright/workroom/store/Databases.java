package stretchwright.workroom.store;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Comparator;
import java.util.stream.Stream;

/** The databases that every test of the workroom runs against: {@code @MethodSource("...Databases#all")}. */
public final class Databases {
    private Databases() {}

    /** A fresh one of each kind that is to be had. */
    public static Stream<Address> all() {
        return Stream.concat(Stream.of(folder()), TestServer.fresh().stream());
    }

    /** A clock that stands still. */
    public static Clock at(long millis) {
        return Clock.fixed(Instant.ofEpochMilli(millis), ZoneOffset.UTC);
    }

    /** What a save that met nobody stored. */
    public static Thing stored(Saved saved) {
        return ((Saved.Stored) saved).thing();
    }

    /** Of a file in a folder that is gone when the tests end. */
    public static Address.Folder folder() {
        try {
            Path folder = Files.createTempDirectory("stretchwright-workroom");
            Runtime.getRuntime().addShutdownHook(new Thread(() -> delete(folder)));
            return new Address.Folder(folder.resolve("room"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void delete(Path folder) {
        try (Stream<Path> files = Files.walk(folder)) {
            files.sorted(Comparator.reverseOrder()).forEach(f -> f.toFile().delete());
        } catch (IOException e) {
            System.err.println("left behind: " + folder);
        }
    }
}
