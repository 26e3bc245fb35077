package stretchwright.cli;

import java.io.IOException;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import stretchwright.ground.Findings;
import stretchwright.ground.Part;
import stretchwright.ground.Voice;
import stretchwright.make.Made;
import stretchwright.workroom.Again;
import stretchwright.workroom.Due;
import stretchwright.workroom.Workroom;
import stretchwright.workroom.store.Kind;
import stretchwright.workroom.store.Thing;

/** The next make from an earlier one: for another wearer, from another cloth, over another boot. */
@Command(name = "again")
final class AgainCommand extends Task {
    @Parameters(paramLabel = "MAKE", descriptionKey = "make")
    private String make = "";

    @Option(names = "--fabric", paramLabel = "F")
    private @Nullable String fabric;

    @Option(names = "--wearer", paramLabel = "W")
    private @Nullable String wearer;

    @Option(names = "--boot", paramLabel = "B")
    private @Nullable String boot;

    @Option(names = "--style", paramLabel = "S")
    private @Nullable String style;

    @Option(names = "--name", paramLabel = "NAME")
    private @Nullable String name;

    @Option(names = "--out", paramLabel = "DIR")
    private @Nullable String out;

    AgainCommand(Desk desk) {
        super(desk);
    }

    @Override
    public Integer call() throws IOException {
        Console console = console();
        Findings aboutOut = new Findings(String.valueOf(out));
        Optional<OutFolder> folder = out == null ? Optional.empty() : folder(out, aboutOut);
        aboutOut.throwIfAny();
        Workroom room = named().room();
        Again again = new Again(room, room.needMake(make));
        with(again, room, Kind.FABRIC, fabric);
        with(again, room, Kind.WEARER, wearer);
        with(again, room, Kind.BOOT, boot);
        with(again, room, Kind.STYLE, style);
        Again.Next next = again.run(Optional.ofNullable(name), console.progress(""));
        if (folder.isPresent()) {
            folder.get().write(next.made().documents());
        }
        tell(next, console);
        return next.made().stops() ? Exit.CANNOT_WORK : Exit.DONE;
    }

    private static void with(Again again, Workroom room, Kind kind, @Nullable String named) {
        if (named != null) {
            Thing thing = room.need(kind, named);
            again.with(thing);
        }
    }

    private void tell(Again.Next next, Console console) {
        Voice voice = Voice.of(next.made().make().unit());
        next.made().verdicts(console.quiet()).forEach(console::warn);
        next.comparison().table().forEach(console::tell);
        console.tell("");
        next.due().map(Due::said).ifPresent(d -> console.warn(voice.say(d)));
        if (next.lentBoot()) {
            console.warn(Tell.said("again.lent-boot"));
        }
        console.tell(Tell.said("again.stored", Tell.quoted(next.make().name())));
        if (out != null) {
            console.about(Made.COLUMN, Tell.said("label.files"), Part.text(out));
        }
        if (console.json()) {
            console.print(next.comparison().json());
        }
    }
}
