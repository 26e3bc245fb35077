package stretchwright.cli;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import stretchwright.ground.BadInput;
import stretchwright.ground.Finding;
import stretchwright.ground.Findings;
import stretchwright.ground.Part;
import stretchwright.intake.MakeFile;
import stretchwright.workroom.Site;
import stretchwright.workroom.Workroom;
import stretchwright.workroom.store.Address;
import stretchwright.workroom.store.Kind;

/**
 * What is meant where a make file is asked for: a file of that name, or else a make of the workroom. Nothing is opened before it
 * is needed, and no workroom is made by asking.
 */
final class Named implements AutoCloseable {
    private final Supplier<Address> at;
    private @Nullable Workroom room;

    /** Each as it was first seen: what becomes of it belongs to that version, whatever is saved meanwhile. */
    private final Map<String, Optional<Workroom.Stored>> seen = new HashMap<>();

    Named(Supplier<Address> at) {
        this.at = at;
    }

    /** Where the workroom is, or would be. */
    Address at() {
        return at.get();
    }

    /** The workroom that is there; a finding where nothing was ever stored. */
    Workroom room() {
        if (!Site.isThere(at.get())) {
            throw RoomThing.wrong(
                    "--workroom", Tell.said("room.nowhere", Part.text(at.get().told())), Tell.said("room.first"));
        }
        return madeRoom();
    }

    /** The workroom, made where there is none yet. */
    Workroom madeRoom() {
        if (room == null) {
            room = Workroom.open(at.get());
        }
        return room;
    }

    /** The make of that name; empty where a file is called so, or nothing is. */
    Optional<Workroom.Stored> make(String named) {
        return isFile(named) || !Site.isThere(at.get())
                ? Optional.empty()
                : seen.computeIfAbsent(named, n -> room().make(n));
    }

    /** The bytes of a file or of a make in the workroom, or empty and a finding. */
    Optional<byte[]> read(String named, int limit, Findings findings) {
        Optional<byte[]> stored = make(named).map(s -> bytes(s.version().text()));
        return stored.isPresent() ? stored : Intake.read(named, limit, findings);
    }

    /** The same, where a wearer alone will do. */
    Optional<byte[]> readWearer(String named, int limit, Findings findings) {
        if (isFile(named) || !Site.isThere(at.get()) || make(named).isPresent()) {
            return read(named, limit, findings);
        }
        Optional<byte[]> wearer = room().store()
                .named(Kind.WEARER, named)
                .map(t -> bytes(room().standing(t).text()));
        return wearer.isPresent() ? wearer : Intake.read(named, limit, findings);
    }

    /** The make in a file or in the workroom, or empty and what is wrong with it. */
    Optional<MakeFile> make(String named, Jobs jobs, List<Finding> wrong) {
        Findings findings = new Findings(named);
        Optional<byte[]> bytes = read(named, MakeFile.LARGEST, findings);
        wrong.addAll(findings.all());
        try {
            return bytes.map(b -> jobs.read(named, b));
        } catch (BadInput e) {
            wrong.addAll(e.findings());
            return Optional.empty();
        }
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    private static boolean isFile(String named) {
        try {
            Path path = Path.of(named);
            return Files.exists(path) && !Files.isDirectory(path); // a folder may be called as the make it holds
        } catch (InvalidPathException e) {
            return false;
        }
    }

    @Override
    public void close() {
        if (room != null) {
            room.close();
        }
    }
}
