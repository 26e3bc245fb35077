package stretchwright.cli;

import picocli.CommandLine;
import picocli.CommandLine.Command;

/** The workroom: what there is, and what is done with it. Each is a command of its own. */
@Command(name = "workroom", synopsisSubcommandLabel = "COMMAND")
final class WorkroomCommand extends Task {
    private WorkroomCommand(Desk desk) {
        super(desk);
    }

    static CommandLine line(Desk desk) {
        CommandLine line = new CommandLine(new WorkroomCommand(desk));
        line.addSubcommand("list", new RoomList(desk));
        line.addSubcommand("show", new RoomShow(desk));
        line.addSubcommand("import", new RoomImport(desk));
        line.addSubcommand("export", new RoomExport(desk));
        line.addSubcommand("note", new RoomNote(desk));
        line.addSubcommand("cut", new RoomCut(desk));
        line.addSubcommand("bin", new RoomBin(desk));
        line.addSubcommand("undo", new RoomUndo(desk));
        line.addSubcommand("queue", new RoomQueue(desk));
        line.addSubcommand("jobs", new RoomJobs(desk));
        line.addSubcommand("work", new RoomWork(desk));
        line.addSubcommand("backup", new RoomBackup(desk));
        line.addSubcommand("restore", new RoomRestore(desk));
        line.addSubcommand("forget", new RoomForget(desk));
        return line;
    }

    /** Without a command the help says what there is. */
    @Override
    public Integer call() {
        line().usage(line().getErr());
        return Exit.INPUT;
    }
}
