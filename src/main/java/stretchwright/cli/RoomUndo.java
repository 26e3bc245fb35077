package stretchwright.cli;

import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import stretchwright.ground.Part;
import stretchwright.workroom.store.Step;
import stretchwright.workroom.store.Store;

/** The newest step back, in this session or from an earlier one; or done again; or told. */
@Command(name = "undo")
final class RoomUndo extends Task {
    private static final int MOST = 20;

    @Option(names = "--redo")
    private boolean redo;

    @Option(names = "--list")
    private boolean list;

    RoomUndo(Commands root) {
        super(root);
    }

    @Override
    public Integer call() {
        Console console = console();
        Store store = named().room().store();
        if (list) {
            store.steps(MOST)
                    .forEach(s -> console.tell(RoomList.day(s.at()) + "  " + s.what() + "  " + s.about()
                            + (s.state() == Step.State.DONE ? "" : "  (" + s.state().name().toLowerCase(java.util.Locale.ROOT) + ")")));
            return Exit.DONE;
        }
        Optional<Step> step = redo ? store.redo() : store.undo();
        console.tell(step.map(s -> redo
                        ? Tell.said("room.redone", Part.text(s.what()), Part.text(s.about()))
                        : Tell.said("room.undone", Part.text(s.what()), Part.text(s.about())))
                .orElseGet(() -> redo ? Tell.said("room.nothing-to-redo") : Tell.said("room.nothing-to-undo")));
        return Exit.DONE;
    }
}
