package stretchwright.workroom.archive;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** A file or folder that holds what people told, and only for a while: it goes too where the program is ended by Ctrl-C. */
final class Passing implements AutoCloseable {
    /** Who still writes while the program ends may put another file there. */
    private static final int TRIES = 5;

    private final Path path;
    private final Thread hook = new Thread(this::swept, "passing");

    Passing(Path path) {
        this.path = path;
        Runtime.getRuntime().addShutdownHook(hook);
    }

    Path path() {
        return path;
    }

    private void swept() {
        for (int i = 0; i < TRIES && Files.exists(path); i++) {
            try {
                sweep();
            } catch (IOException e) {
                continue; // the next try finds what came meanwhile
            }
        }
    }

    private void sweep() throws IOException {
        if (!Files.exists(path)) {
            return;
        }
        List<Path> all;
        try (Stream<Path> files = Files.walk(path)) {
            all = files.sorted(Comparator.reverseOrder()).toList();
        }
        for (Path file : all) {
            Files.deleteIfExists(file);
        }
    }

    @Override
    public void close() throws IOException {
        sweep();
        try {
            Runtime.getRuntime().removeShutdownHook(hook);
        } catch (IllegalStateException e) {
            return; // the program is ending, and the hook runs
        }
    }
}
