package stretchwright.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.file.FileSystemException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.ResourceBundle;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ScopeType;
import picocli.CommandLine.Spec;
import stretchwright.ground.BadInput;
import stretchwright.ground.Findings;
import stretchwright.ground.Part;
import stretchwright.ground.Said;
import stretchwright.ground.Voice;
import stretchwright.ground.Wording;
import stretchwright.workroom.Site;

/** The command door: which commands there are, what they share, and what happens when something goes wrong. */
@Command(
        name = "stretchwright",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        synopsisSubcommandLabel = "COMMAND")
public final class Commands implements Callable<Integer>, Desk {
    private static final String HELP = "stretchwright.cli.help.words";

    @Option(names = "--quiet", scope = ScopeType.INHERIT)
    private boolean quiet;

    @Option(names = "--json", scope = ScopeType.INHERIT)
    private boolean json;

    @Option(names = "--trace", scope = ScopeType.INHERIT)
    private boolean trace;

    @Option(names = "--workroom", paramLabel = "DIR", scope = ScopeType.INHERIT)
    private @org.jspecify.annotations.Nullable String workroom;

    @Spec
    private @org.jspecify.annotations.Nullable CommandSpec spec;

    private final PrintWriter out;
    private final PrintWriter err;
    private final List<OutFolder> held = new ArrayList<>();
    private final Named named = new Named(() -> Site.of(Optional.ofNullable(workroom)));

    private Commands(PrintWriter out, PrintWriter err) {
        this.out = out;
        this.err = err;
    }

    /** Runs one command line and gives its exit code. */
    public static int run(Writer out, Writer err, String... args) {
        return run(Jobs.real(), Optional.empty(), out, err, args);
    }

    /** The same, with the page door behind the serve command. */
    public static int run(ServeDoor door, Writer out, Writer err, String... args) {
        return run(Jobs.real(), Optional.of(door), out, err, args);
    }

    static int run(Jobs jobs, Writer out, Writer err, String... args) {
        return run(jobs, Optional.empty(), out, err, args);
    }

    private static int run(Jobs jobs, Optional<ServeDoor> door, Writer toOut, Writer toErr, String... args) {
        Terminal out = new Terminal(toOut);
        Terminal err = new Terminal(toErr);
        Commands root = new Commands(out.shown(), err.shown());
        CommandLine line = root.line(jobs, door);
        line.setOut(out.help());
        line.setErr(err.help());
        int code;
        try {
            code = line.execute(args);
        } catch (StackOverflowError | OutOfMemoryError e) {
            code = root.wentWrong(e);
        } finally {
            root.held.forEach(OutFolder::release);
            root.named.close();
        }
        line.getOut().flush();
        code = root.ended(code, out.lost());
        line.getErr().flush();
        return code;
    }

    private CommandLine line(Jobs jobs, Optional<ServeDoor> door) {
        CommandLine line = new CommandLine(this);
        line.addSubcommand("make", new MakeCommand(this, jobs));
        line.addSubcommand("body", new BodyCommand(this));
        line.addSubcommand("why", new WhyCommand(this, jobs));
        line.addSubcommand("cloth", new ClothCommand(this, jobs));
        line.addSubcommand("lay", new LayCommand(this));
        line.addSubcommand("sizes", new SizesCommand(this, jobs));
        line.addSubcommand("club", new ClubCommand(this, jobs));
        line.addSubcommand("compare", new CompareCommand(this, jobs));
        line.addSubcommand("after", new AfterCommand(this, jobs));
        line.addSubcommand("again", new AgainCommand(this));
        line.addSubcommand("workroom", WorkroomCommand.line(this));
        line.addSubcommand("survey", new SurveyCommand(this));
        door.ifPresent(d -> line.addSubcommand("serve", new ServeCommand(this, d)));
        help(line, ResourceBundle.getBundle(HELP, Voice.language(), Wording.ONLY_THAT_LANGUAGE));
        line.setExpandAtFiles(false); // a file may be called @name
        line.setParameterExceptionHandler((e, a) -> wrongArguments(e));
        line.setExecutionExceptionHandler((e, c, r) -> wentWrong(e));
        return line;
    }

    /** The help's sentences, for every command. */
    private static void help(CommandLine line, ResourceBundle sentences) {
        line.setResourceBundle(sentences);
        line.getSubcommands().values().forEach(sub -> help(sub, sentences));
    }

    /** What was to be printed and is lost is told, whatever else went well. */
    private int ended(int code, Optional<Part> lost) {
        lost.ifPresent(why -> err.println(Voice.plain().say(Tell.said("lost.output", why))));
        return lost.isPresent() && (code == Exit.DONE || code == Exit.CANNOT_WORK) ? Exit.INPUT : code;
    }

    /** Without a command there is nothing to do: the help says what there is. */
    @Override
    public Integer call() {
        CommandLine line = java.util.Objects.requireNonNull(spec).commandLine();
        line.usage(line.getErr());
        return Exit.INPUT;
    }

    @Override
    public Console console() {
        return new Console(out, err, quiet, json);
    }

    @Override
    public Named named() {
        return named;
    }

    @Override
    public boolean hold(OutFolder folder, Findings findings) {
        boolean ours = folder.hold(findings);
        if (ours) {
            held.add(folder);
        }
        return ours;
    }

    private int wrongArguments(CommandLine.ParameterException e) {
        String command = e.getCommandLine().getCommandSpec().qualifiedName();
        console().warn(Tell.said("args.see", Arguments.wrong(e), Part.text(command)));
        return Exit.INPUT;
    }

    private int wentWrong(Throwable e) {
        if (e instanceof BadInput bad) {
            console().findings(bad.findings());
            return Exit.INPUT;
        }
        if (e instanceof IOException outside && Reason.isOutside(outside)) {
            console().warn(cannot(outside));
            return Exit.INPUT;
        }
        if (e instanceof OutFolder.Interrupted) {
            return Exit.INTERRUPTED;
        }
        String what = String.valueOf(e.getMessage()).replaceAll("\\s+", " ");
        Part fault = Part.text(e.getClass().getSimpleName());
        console()
                .warn(
                        trace
                                ? Tell.said("fault.program", fault, Part.text(what))
                                : Tell.said("fault.trace", fault, Part.text(what)));
        if (trace) {
            e.printStackTrace(err);
        }
        return Exit.FAULT;
    }

    private static Said cannot(IOException e) {
        return e instanceof FileSystemException file && file.getFile() != null
                ? Tell.said("outside.file", Part.text(file.getFile()), Reason.of(e))
                : Tell.said("outside.some-file", Reason.of(e));
    }
}
