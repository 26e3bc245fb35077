package stretchwright.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import stretchwright.ground.Findings;
import stretchwright.ground.Part;
import stretchwright.ground.Said;
import stretchwright.ground.Voice;
import stretchwright.intake.MakeFile;
import stretchwright.workroom.Differences;
import stretchwright.workroom.Incoming;
import stretchwright.workroom.Workroom;
import stretchwright.workroom.archive.Archives;
import stretchwright.workroom.archive.Merge;
import stretchwright.workroom.store.Kind;
import stretchwright.workroom.store.Thing;

/** A make file or an archive into the workroom: shows what would change, and never overwrites in silence. */
@Command(name = "import")
final class RoomImport extends Task {
    private static final int HEAD = 4;

    @Parameters(paramLabel = "FILE", arity = "1..*", descriptionKey = "file")
    private String[] files = {};

    @Option(names = "--replace")
    private boolean replace;

    @Option(names = "--keep")
    private boolean keep;

    @Option(names = "--look")
    private boolean look;

    RoomImport(Desk desk) {
        super(desk);
    }

    @Override
    public Integer call() throws IOException {
        if (replace && keep) {
            throw RoomThing.wrong("--keep", Tell.said("room.both"), Tell.said("room.one"));
        }
        int code = Exit.DONE;
        for (String file : files) {
            code = Math.max(code, isArchive(file) ? archive(file) : make(file));
        }
        return code;
    }

    private int make(String file) {
        Console console = console();
        Findings findings = new Findings(file);
        Optional<byte[]> bytes = Intake.read(file, MakeFile.LARGEST, findings);
        findings.throwIfAny();
        Incoming incoming = named().madeRoom().incoming(file, bytes.orElseThrow());
        incoming.items().forEach(i -> {
            Part kind = Part.text(i.kind().word());
            Part name = Part.text(i.name());
            Said head = i.there().isEmpty()
                    ? Tell.said("import.new", kind, name)
                    : i.differences().isEmpty()
                            ? Tell.said("import.same", kind, name)
                            : keep ? Tell.said("import.kept", kind, name) : Tell.said("import.changes", kind, name);
            console.tell(head);
            i.differences().forEach(d -> console.tell("    " + Voice.plain().say(d)));
        });
        if (look) {
            return Exit.DONE;
        }
        Thing make = incoming.take(keep ? Incoming.Same.KEEP : replace ? Incoming.Same.REPLACE : Incoming.Same.ASK);
        boolean left = keep && incoming.items().stream().anyMatch(i -> i.kind() == Kind.MAKE && i.differs());
        console.tell(
                left
                        ? Tell.said("import.left", Tell.quoted(make.name()))
                        : Tell.said("import.stored", Tell.quoted(make.name())));
        return Exit.DONE;
    }

    private int archive(String file) throws IOException {
        Console console = console();
        Workroom room = named().madeRoom();
        try (Archives.Coming coming = Archives.coming(Path.of(file))) {
            Merge merge = Merge.of(room.store(), coming.store());
            merge.fresh()
                    .forEach(t -> console.tell(
                            Tell.said("import.new", Part.text(t.kind().word()), Part.text(t.name()))));
            for (Merge.Other o : merge.others()) {
                Part kind = Part.text(o.here().kind().word());
                Part name = Part.text(o.here().name());
                console.tell(keep ? Tell.said("import.kept", kind, name) : Tell.said("import.changes", kind, name));
                differences(o).forEach(d -> console.tell("    " + Voice.plain().say(d)));
            }
            if (look) {
                return Exit.DONE;
            }
            if (!merge.others().isEmpty() && !keep && !replace) {
                throw RoomThing.wrong(
                        file,
                        Tell.said("import.others", Part.count(merge.others().size())),
                        Tell.said("import.say"));
            }
            merge.take(replace);
            console.tell(Tell.said("import.archive", Part.count(merge.fresh().size())));
            if (replace) {
                console.tell(
                        Tell.said("import.replaced", Part.count(merge.others().size())));
            }
            return Exit.DONE;
        }
    }

    private static List<Said> differences(Merge.Other o) {
        return o.here().kind().named()
                ? Differences.between(o.standing().text(), o.coming().text())
                : List.of();
    }

    /** Zip files begin with PK (APPNOTE 4.3.7); no make file does. */
    static boolean isArchive(String file) throws IOException {
        try {
            Path path = Path.of(file);
            if (!Files.isRegularFile(path)) {
                return false;
            }
            try (var in = Files.newInputStream(path)) {
                byte[] head = in.readNBytes(HEAD);
                return head.length == HEAD && head[0] == 'P' && head[1] == 'K';
            }
        } catch (InvalidPathException e) {
            return false;
        }
    }
}
