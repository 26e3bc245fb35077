package stretchwright.cli;

import java.io.PrintWriter;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ScopeType;
import picocli.CommandLine.Spec;
import stretchwright.ground.BadInput;
import stretchwright.report.Program;

/** The command door: which commands there are, what they share, and what happens when something goes wrong. */
@Command(
        name = "stretchwright",
        mixinStandardHelpOptions = true,
        versionProvider = Commands.Version.class,
        synopsisSubcommandLabel = "COMMAND",
        description = "From body, fabric and boot to a checked, printable pattern for stretch leggings.",
        footer = {
            "",
            "Exit codes: 0 done; 1 a fault of the program; 2 the input is wrong (each finding on one line);",
            "3 the garment cannot work as asked (the files are written all the same).",
            "The make file and the report are described in docs/formats.md."
        })
public final class Commands implements Callable<Integer> {
    @Option(
            names = "--quiet",
            scope = ScopeType.INHERIT,
            description = "Say only what is wrong and what stops the garment from working.")
    private boolean quiet;

    @Option(
            names = "--json",
            scope = ScopeType.INHERIT,
            description = "Print the report to standard output and nothing else there; several make files give one"
                    + " array. Progress and messages go to standard error.")
    private boolean json;

    @Option(
            names = "--trace",
            scope = ScopeType.INHERIT,
            description = "After a fault of the program, print where it happened.")
    private boolean trace;

    @Spec
    private @org.jspecify.annotations.Nullable CommandSpec spec;

    private Commands() {}

    /** Runs one command line and gives its exit code. */
    public static int run(PrintWriter out, PrintWriter err, String... args) {
        return run(Jobs.real(), Optional.empty(), out, err, args);
    }

    /** The same, with the page door behind the serve command. */
    public static int run(ServeDoor door, PrintWriter out, PrintWriter err, String... args) {
        return run(Jobs.real(), Optional.of(door), out, err, args);
    }

    static int run(Jobs jobs, PrintWriter out, PrintWriter err, String... args) {
        return run(jobs, Optional.empty(), out, err, args);
    }

    private static int run(Jobs jobs, Optional<ServeDoor> door, PrintWriter out, PrintWriter err, String... args) {
        Commands root = new Commands();
        CommandLine line = new CommandLine(root);
        line.addSubcommand("make", new MakeCommand(root, jobs));
        line.addSubcommand("body", new BodyCommand(root));
        line.addSubcommand("why", new WhyCommand(root, jobs));
        line.addSubcommand("cloth", new ClothCommand(root, jobs));
        line.addSubcommand("lay", new LayCommand(root));
        line.addSubcommand("sizes", new SizesCommand(root, jobs));
        line.addSubcommand("club", new ClubCommand(root, jobs));
        line.addSubcommand("compare", new CompareCommand(root, jobs));
        line.addSubcommand("after", new AfterCommand(root, jobs));
        line.addSubcommand("survey", new SurveyCommand(root));
        door.ifPresent(d -> line.addSubcommand("serve", new ServeCommand(root, d)));
        line.setOut(out);
        line.setErr(err);
        line.setParameterExceptionHandler((e, a) -> wrongArguments(e, err));
        line.setExecutionExceptionHandler((e, c, r) -> root.wentWrong(e, err));
        try {
            return line.execute(args);
        } catch (StackOverflowError | OutOfMemoryError e) {
            return root.wentWrong(e, err);
        } finally {
            out.flush();
            err.flush();
        }
    }

    /** Without a command there is nothing to do: the help says what there is. */
    @Override
    public Integer call() {
        CommandLine line = java.util.Objects.requireNonNull(spec).commandLine();
        line.usage(line.getErr());
        return Exit.INPUT;
    }

    Console console(CommandLine line) {
        return new Console(line.getOut(), line.getErr(), quiet, json);
    }

    private static int wrongArguments(CommandLine.ParameterException e, PrintWriter err) {
        String command = e.getCommandLine().getCommandSpec().qualifiedName();
        String problem = String.valueOf(e.getMessage()).replaceAll("\\s+", " ");
        err.println("stretchwright: " + problem + ". See: " + command + " --help");
        return Exit.INPUT;
    }

    private int wentWrong(Throwable e, PrintWriter err) {
        if (e instanceof BadInput bad) {
            bad.findings().forEach(f -> err.println(f.line()));
            return Exit.INPUT;
        }
        if (e instanceof OutFolder.Interrupted) {
            return Exit.INTERRUPTED;
        }
        String what = String.valueOf(e.getMessage()).replaceAll("\\s+", " ");
        err.println("stretchwright: a fault of the program: " + e.getClass().getSimpleName() + ": " + what
                + (trace ? "" : " (the same command with --trace shows where)"));
        if (trace) {
            e.printStackTrace(err);
        }
        return Exit.FAULT;
    }

    /** For --version. */
    static final class Version implements CommandLine.IVersionProvider {
        @Override
        public String[] getVersion() {
            return new String[] {"stretchwright " + Program.VERSION};
        }
    }
}
