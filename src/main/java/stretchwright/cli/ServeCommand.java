package stretchwright.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import stretchwright.ground.Findings;
import stretchwright.ground.Part;
import stretchwright.ground.Said;

/** Opens the page until it is stopped: on this computer, or shared with a phone in the same network. */
@Command(name = "serve")
final class ServeCommand extends Task {
    private static final int HIGHEST_PORT = 65_535;

    @Option(names = "--port", paramLabel = "P", defaultValue = "0")
    private int port;

    @Option(names = "--no-browser")
    private boolean noBrowser;

    @Option(names = "--share", paramLabel = "ADDRESS", arity = "0..1", fallbackValue = ShareAt.EVERYWHERE)
    private @Nullable String share;

    @Option(names = "--pass-phrase-file", paramLabel = "FILE")
    private @Nullable Path phraseFile;

    private final ServeDoor door;

    ServeCommand(Desk desk, ServeDoor door) {
        super(desk);
        this.door = door;
    }

    @Override
    public Integer call() throws InterruptedException, IOException {
        Console console = console();
        Findings findings = new Findings("serve");
        if (port < 0 || port > HIGHEST_PORT) {
            findings.add("--port", Tell.said("port.none", Part.text(Integer.toString(port))), Tell.said("port.give"));
        }
        Optional<ServeDoor.Share> shared = shared(console, findings);
        if (!findings.all().isEmpty()) {
            console.findings(findings.all());
            return Exit.INPUT;
        }
        Optional<ServeDoor.Served> served = door.open(named().at(), port, shared);
        if (served.isEmpty()) {
            return refused(
                    console, Tell.said("port.taken", Part.text(Integer.toString(port))), Tell.said("port.other"));
        }
        Runtime.getRuntime().addShutdownHook(new Thread(served.get().stop()));
        told(console, served.get());
        if (!noBrowser) {
            served.get().look().run();
        }
        new CountDownLatch(1).await(); // until the process is told to end
        return Exit.DONE;
    }

    private Optional<ServeDoor.Share> shared(Console console, Findings findings) throws IOException {
        if (share == null) {
            if (phraseFile != null) {
                findings.add("--pass-phrase-file", Tell.said("phrase.alone"), Tell.said("phrase.alone-help"));
            }
            return Optional.empty();
        }
        ShareAt.check(share, findings);
        if (!findings.all().isEmpty()) {
            return Optional.empty(); // nobody is asked for a phrase in vain
        }
        String at = share;
        return PassPhrase.real(console)
                .get(Optional.ofNullable(phraseFile), findings)
                .map(phrase -> new ServeDoor.Share(at, phrase));
    }

    private static void told(Console console, ServeDoor.Served served) {
        console.warn(Tell.said("serve.at", Part.text(served.address())));
        served.reach().stream()
                .findFirst()
                .ifPresent(address -> console.warn(Tell.said("serve.reach", Part.text(address))));
        console.err().flush();
    }

    private static int refused(Console console, Said problem, Said remedy) {
        Findings findings = new Findings("serve");
        findings.add("--port", problem, remedy);
        console.findings(findings.all());
        return Exit.INPUT;
    }
}
