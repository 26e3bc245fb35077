package stretchwright.cli;

import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import stretchwright.ground.Findings;
import stretchwright.ground.Part;
import stretchwright.ground.Said;

/** Opens the page on this computer until it is stopped. */
@Command(name = "serve")
final class ServeCommand extends Task {
    private static final int HIGHEST_PORT = 65_535;

    @Option(names = "--port", paramLabel = "P", defaultValue = "0")
    private int port;

    private final ServeDoor door;

    ServeCommand(Desk desk, ServeDoor door) {
        super(desk);
        this.door = door;
    }

    @Override
    public Integer call() throws InterruptedException {
        Console console = console();
        if (port < 0 || port > HIGHEST_PORT) {
            return refused(console, Tell.said("port.none", Part.text(Integer.toString(port))), Tell.said("port.give"));
        }
        Optional<ServeDoor.Served> served = door.open(named().at(), port);
        if (served.isEmpty()) {
            return refused(
                    console, Tell.said("port.taken", Part.text(Integer.toString(port))), Tell.said("port.other"));
        }
        Runtime.getRuntime().addShutdownHook(new Thread(served.get().stop()));
        console.warn(Tell.said("serve.at", Part.text(served.get().address())));
        console.err().flush();
        new CountDownLatch(1).await(); // until the process is told to end
        return Exit.DONE;
    }

    private static int refused(Console console, Said problem, Said remedy) {
        Findings findings = new Findings("serve");
        findings.add("--port", problem, remedy);
        console.findings(findings.all());
        return Exit.INPUT;
    }
}
