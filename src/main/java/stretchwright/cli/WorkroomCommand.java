package stretchwright.cli;

import picocli.CommandLine;
import picocli.CommandLine.Command;

/** The workroom: what there is, and what is done with it. Each is a command of its own. */
@Command(name = "workroom", synopsisSubcommandLabel = "COMMAND")
final class WorkroomCommand extends Task {
    private WorkroomCommand(Commands root) {
        super(root);
    }

    static CommandLine line(Commands root) {
        CommandLine line = new CommandLine(new WorkroomCommand(root));
        line.addSubcommand("list", new RoomList(root));
        line.addSubcommand("show", new RoomShow(root));
        line.addSubcommand("import", new RoomImport(root));
        line.addSubcommand("export", new RoomExport(root));
        line.addSubcommand("note", new RoomNote(root));
        line.addSubcommand("cut", new RoomCut(root));
        line.addSubcommand("bin", new RoomBin(root));
        line.addSubcommand("undo", new RoomUndo(root));
        line.addSubcommand("backup", new RoomBackup(root));
        line.addSubcommand("restore", new RoomRestore(root));
        line.addSubcommand("forget", new RoomForget(root));
        return line;
    }

    /** Without a command the help says what there is. */
    @Override
    public Integer call() {
        line().usage(line().getErr());
        return Exit.INPUT;
    }
}
