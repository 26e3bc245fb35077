package stretchwright.workroom;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import stretchwright.workroom.store.Databases;
import stretchwright.workroom.store.Thing;

/** Workrooms for tests. */
public final class Rooms {
    static final Clock NOVEMBER = Clock.fixed(Instant.parse("2026-11-30T12:00:00Z"), ZoneOffset.UTC);

    private Rooms() {}

    public static Workroom fresh() {
        return Workroom.open(Databases.folder(), NOVEMBER);
    }

    public static byte[] example(String name) {
        try {
            return Files.readAllBytes(Path.of("examples", name + ".yaml"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The make of an example, stored. */
    public static Thing with(Workroom room, String example) {
        return room.incoming(example + ".yaml", example(example)).take(Incoming.Same.ASK);
    }
}
