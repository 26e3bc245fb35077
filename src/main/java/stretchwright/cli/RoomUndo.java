package stretchwright.cli;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import stretchwright.ground.Part;
import stretchwright.ground.Said;
import stretchwright.report.Report;
import stretchwright.workroom.Kept;
import stretchwright.workroom.Remembered;
import stretchwright.workroom.store.Step;
import stretchwright.workroom.store.Store;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** The newest step back, in this session or from an earlier one; or done again; or told. */
@Command(name = "undo")
final class RoomUndo extends Task {
    private static final int MOST = 20;

    @Option(names = "--redo")
    private boolean redo;

    @Option(names = "--list")
    private boolean list;

    RoomUndo(Desk desk) {
        super(desk);
    }

    @Override
    public Integer call() {
        Console console = console();
        Store store = named().room().store();
        if (list) {
            List<Step> steps = store.steps(MOST);
            steps.forEach(s -> console.tell(listed(s)));
            if (console.json()) {
                console.print(json(steps));
            }
            return Exit.DONE;
        }
        Optional<Step> step = redo ? store.redo() : store.undo();
        console.tell(step.map(s -> redo
                        ? Tell.said("room.redone", what(s), Part.text(s.about()))
                        : Tell.said("room.undone", what(s), Part.text(s.about())))
                .orElseGet(() -> redo ? Tell.said("room.nothing-to-redo") : Tell.said("room.nothing-to-undo")));
        return Exit.DONE;
    }

    private static String json(List<Step> steps) {
        ObjectNode out = Report.node();
        ArrayNode list = out.putArray("steps");
        steps.forEach(s -> list.addObject()
                .put("number", s.number())
                .put("what", s.what())
                .put("about", s.about())
                .put("state", s.state().name().toLowerCase(Locale.ROOT)));
        return Report.text(out);
    }

    private static Said listed(Step step) {
        Part day = Part.text(RoomList.day(step.at()));
        Part about = Part.text(step.about());
        return switch (step.state()) {
            case DONE -> Tell.said("step.done", day, what(step), about);
            case UNDONE -> Tell.said("step.undone", day, what(step), about);
            case LEFT -> Tell.said("step.left", day, what(step), about);
        };
    }

    private static Part what(Step step) {
        return switch (step.what()) {
            case "import" -> Tell.said("step.import");
            case "again" -> Tell.said("step.again");
            case "after" -> Tell.said("step.after");
            case "cut" -> Tell.said("step.cut");
            case "stand" -> Tell.said("step.stand");
            case Kept.KEPT -> Tell.said("step.kept");
            case Remembered.SEWING -> Tell.said("step.sewing");
            case Remembered.PRINTED -> Tell.said("step.printed");
            case "note" -> Tell.said("step.note");
            case "bin" -> Tell.said("step.bin");
            case "unbinned" -> Tell.said("step.out-again");
            default -> Tell.said("step.save");
        };
    }
}
