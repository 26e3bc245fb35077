package stretchwright.cli;

import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import stretchwright.ground.Finding;

/** Opens the page on this computer until it is stopped. */
@Command(
        name = "serve",
        description = "Opens the page on this computer (127.0.0.1 only) until it is stopped with Ctrl-C.")
final class ServeCommand extends Task {
    private static final int HIGHEST_PORT = 65_535;

    @Option(
            names = "--port",
            paramLabel = "P",
            defaultValue = "0",
            description = "Port of the page; 0 takes any free one (default: ${DEFAULT-VALUE}).")
    private int port;

    private final ServeDoor door;

    ServeCommand(Commands root, ServeDoor door) {
        super(root);
        this.door = door;
    }

    @Override
    public Integer call() throws InterruptedException {
        Console console = console();
        if (port < 0 || port > HIGHEST_PORT) {
            return refused(console, "there is no port " + port + ".", "Give 1 to 65535, or 0 for any free one.");
        }
        Optional<ServeDoor.Served> served = door.open(port);
        if (served.isEmpty()) {
            return refused(
                    console,
                    "port " + port + " cannot be used: another program has it, or it is not allowed.",
                    "Give another, or leave --port out for any free one.");
        }
        Runtime.getRuntime().addShutdownHook(new Thread(served.get().stop()));
        console.warn("Stretchwright is at " + served.get().address() + " - stop it with Ctrl-C");
        console.err().flush();
        new CountDownLatch(1).await(); // until the process is told to end
        return Exit.DONE;
    }

    private static int refused(Console console, String problem, String remedy) {
        console.findings(java.util.List.of(new Finding("serve", "--port", problem, remedy)));
        return Exit.INPUT;
    }
}
