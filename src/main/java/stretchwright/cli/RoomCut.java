package stretchwright.cli;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import stretchwright.ground.Part;
import stretchwright.report.Report;
import stretchwright.workroom.Cutting;
import stretchwright.workroom.Workroom;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** A make was cut: the stash falls by what its lay used. */
@Command(name = "cut")
final class RoomCut extends Task {
    @Parameters(paramLabel = "MAKE", descriptionKey = "make")
    private String make = "";

    @Option(names = "--again")
    private boolean again;

    RoomCut(Desk desk) {
        super(desk);
    }

    @Override
    public Integer call() {
        Console console = console();
        Workroom room = named().room();
        Cutting.Cut cut = new Cutting(room, room.needMake(make)).run(again);
        console.tell(Tell.said("cut.used", Part.cloth(cut.used())));
        cut.cloth()
                .ifPresent(cloth -> console.tell(
                        cut.left().isPresent()
                                ? Tell.said(
                                        "cut.left",
                                        Part.text(cloth.name()),
                                        Part.cloth(cut.left().getAsDouble()))
                                : Tell.said("cut.none-left", Part.text(cloth.name()))));
        cut.remnants().forEach(r -> console.tell(Tell.said("cut.remnant", Part.text(r.name()))));
        if (console.json()) {
            console.print(json(cut));
        }
        return Exit.DONE;
    }

    private static String json(Cutting.Cut cut) {
        ObjectNode out = Report.node();
        cut.cloth().ifPresent(c -> out.put("fabric", c.name()));
        out.put("used", cut.used());
        cut.left().ifPresent(mm -> out.put("left", mm));
        ArrayNode remnants = out.putArray("remnants");
        cut.remnants().forEach(r -> remnants.add(r.name()));
        return Report.text(out);
    }
}
