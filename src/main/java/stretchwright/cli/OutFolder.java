package stretchwright.cli;

import java.io.IOException;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.ReadOnlyFileSystemException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.locks.ReentrantLock;
import java.util.function.Consumer;
import stretchwright.ground.Document;
import stretchwright.ground.Findings;
import stretchwright.ground.Said;

/**
 * The folder given with --out: complete or untouched. Everything is first written into a hidden folder beside it; an
 * older output is moved aside, the new one takes its place, and only then the older one is deleted. A folder that
 * holds anything this program did not write is refused, so nothing of anybody else can be lost.
 */
final class OutFolder {
    private static final Said BUSY = Tell.said("folder.busy");
    private static final Said WAIT = Tell.said("folder.wait");
    private static final Said ELSEWHERE = Tell.said("folder.elsewhere");
    private static final Said ROOM = Tell.said("folder.room");

    private final String named;
    private final Path target;
    private final Consumer<String> before;
    private final ReentrantLock lock = new ReentrantLock();
    private final Thread release = new Thread(this::release);
    private Optional<FolderLock> mark = Optional.empty();
    private boolean interrupted;

    private OutFolder(String named, Path target, Consumer<String> before) {
        this.named = named;
        this.target = target;
        this.before = before;
    }

    /** Ctrl-C came while writing; nothing is left to be said. */
    static final class Interrupted extends RuntimeException {
        private static final long serialVersionUID = 1L;
    }

    /** The folder, if it can be written; otherwise empty and a finding. Nothing is created yet. */
    static Optional<OutFolder> at(String named, Findings findings) {
        return at(named, findings, step -> {});
    }

    /** For tests of interruption: before is told each step and may throw. */
    static Optional<OutFolder> at(String named, Findings findings, Consumer<String> before) {
        try {
            Path target = Path.of(named).toAbsolutePath().normalize();
            OutFolder folder = new OutFolder(named, real(target), before);
            Optional<Said> wrong = folder.whatIsWrong();
            wrong.ifPresent(problem -> findings.add("--out", problem, Tell.said("folder.new-or-own")));
            return wrong.isPresent() ? Optional.empty() : Optional.of(folder);
        } catch (InvalidPathException | IOException e) {
            findings.add("--out", Tell.said("folder.cannot-use", Reason.of(e)), ELSEWHERE);
            return Optional.empty();
        }
    }

    /** Takes the folder for this run until it is released; a finding where another run has it. */
    boolean hold(Findings findings) {
        try {
            if (!Files.isDirectory(target.resolveSibling(".")) || held()) {
                return true; // where there is no folder around it yet, writing takes it
            }
            findings.add("--out", BUSY, WAIT);
        } catch (IOException e) {
            findings.add("--out", Tell.said("folder.cannot-write", Reason.of(e)), ELSEWHERE);
        }
        return false;
    }

    /** Whether this run has it, now if not before. */
    private boolean held() throws IOException {
        lock.lock();
        try {
            if (mark.isEmpty()) {
                mark = FolderLock.take(sibling("lock"));
                mark.ifPresent(m -> addHook(release));
            }
            return mark.isPresent();
        } finally {
            lock.unlock();
        }
    }

    /** Lets other runs have it. */
    void release() {
        lock.lock();
        try {
            mark.ifPresent(FolderLock::close);
            mark = Optional.empty();
            removeHook(release);
        } finally {
            lock.unlock();
        }
    }

    /** Links on the way are followed, so that the folder itself is replaced and not the link. */
    private static Path real(Path target) throws IOException {
        return Files.exists(target) ? target.toRealPath() : target;
    }

    private Optional<Said> whatIsWrong() throws IOException {
        return FolderCheck.wrongWith(target, sibling("new-" + Integer.MAX_VALUE).getFileName());
    }

    /** Writes all documents under their names, or none. */
    void write(List<Document> documents) throws IOException {
        SortedMap<String, byte[]> files = new TreeMap<>();
        documents.forEach(d -> files.put(d.name(), d.bytes()));
        write(files);
    }

    /** Writes all files (names relative, with / between folder and file), or none. */
    void write(SortedMap<String, byte[]> files) throws IOException {
        try {
            writeWhole(files);
        } catch (IOException | ReadOnlyFileSystemException e) {
            if (e instanceof IOException && !Reason.isOutside(e)) {
                throw e;
            }
            refuse(Tell.said("folder.cannot-write", Reason.of(e)), Reason.isRoom(e) ? ROOM : ELSEWHERE);
        } finally {
            release();
        }
    }

    private void writeWhole(SortedMap<String, byte[]> files) throws IOException {
        Path fresh = sibling("new-" + ProcessHandle.current().pid());
        Thread hook = new Thread(() -> giveUp(fresh));
        addHook(hook);
        try {
            Files.createDirectories(fresh.resolveSibling("."));
            if (!held()) {
                refuse(BUSY, WAIT);
            }
            recover();
            whatIsWrong().ifPresent(problem -> refuse(problem, Tell.said("folder.new")));
            for (Map.Entry<String, byte[]> file : files.entrySet()) {
                step("write " + file.getKey(), () -> put(fresh, file.getKey(), file.getValue()));
            }
            step("swap", () -> swap(fresh));
        } finally {
            removeHook(hook);
            delete(fresh);
        }
    }

    private interface Work {
        void run() throws IOException;
    }

    /** One step at a time, so that Ctrl-C finds the folder between two of them. */
    private void step(String name, Work work) throws IOException {
        lock.lock();
        try {
            if (interrupted) {
                throw new Interrupted();
            }
            before.accept(name);
            work.run();
        } finally {
            lock.unlock();
        }
    }

    private static void put(Path folder, String name, byte[] bytes) throws IOException {
        Path file = folder.resolve(name).normalize();
        if (!file.startsWith(folder)) {
            throw new IllegalArgumentException("the file name " + name + " leads out of the folder");
        }
        Files.createDirectories(file.resolveSibling("."));
        Files.write(file, bytes);
    }

    private void swap(Path fresh) throws IOException {
        if (!Files.exists(target)) {
            Files.move(fresh, target);
            return;
        }
        Path old = sibling("old");
        Files.move(target, old);
        try {
            before.accept("place");
            Files.move(fresh, target);
        } catch (IOException | RuntimeException | Error e) {
            Files.move(old, target);
            throw e;
        }
        delete(old);
    }

    /** A run that was killed between the two moves of a swap left the older output aside: put it back. */
    private void recover() throws IOException {
        Path old = sibling("old");
        if (!Files.exists(old)) {
            return;
        }
        if (Files.exists(target)) {
            delete(old);
        } else {
            Files.move(old, target);
        }
    }

    private Path sibling(String what) {
        return target.resolveSibling("." + target.getFileName() + ".stretchwright-" + what);
    }

    private void refuse(Said problem, Said remedy) {
        Findings findings = new Findings(named);
        findings.add("--out", problem, remedy);
        findings.throwIfAny();
    }

    private void giveUp(Path fresh) {
        lock.lock();
        try {
            interrupted = true;
            delete(fresh);
        } catch (IOException e) {
            // the program is ending; a hidden folder stays behind and is named in docs/formats.md
        } finally {
            lock.unlock();
        }
    }

    private static void addHook(Thread hook) {
        try {
            Runtime.getRuntime().addShutdownHook(hook);
        } catch (IllegalStateException e) {
            // a search was stopped, and the program ends when this is written
        }
    }

    static void removeHook(Thread hook) {
        try {
            Runtime.getRuntime().removeShutdownHook(hook);
        } catch (IllegalStateException e) {
            // the program is ending already; the hook does its work
        }
    }

    private static void delete(Path folder) throws IOException {
        if (!Files.exists(folder, LinkOption.NOFOLLOW_LINKS)) {
            return;
        }
        if (Files.isDirectory(folder, LinkOption.NOFOLLOW_LINKS)) {
            try (var inside = Files.list(folder)) {
                for (Path entry : inside.toList()) {
                    delete(entry);
                }
            }
        }
        try {
            Files.delete(folder);
        } catch (DirectoryNotEmptyException e) {
            // someone put a file in at this moment; it is theirs
        }
    }
}
