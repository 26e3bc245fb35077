package stretchwright.cli;

import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;
import stretchwright.ground.Findings;

/** What every command has: help, version, and the console that the options before it ask for. */
@Command(mixinStandardHelpOptions = true, versionProvider = Version.class)
abstract class Task implements Callable<Integer> {
    @Spec
    private @Nullable CommandSpec spec;

    private final Desk desk;

    Task(Desk desk) {
        this.desk = desk;
    }

    CommandLine line() {
        return Objects.requireNonNull(spec).commandLine();
    }

    Console console() {
        return desk.console();
    }

    /** What is meant where a make file is asked for. */
    Named named() {
        return desk.named();
    }

    /** The folder for the output, held for this run; or empty and a finding. */
    Optional<OutFolder> folder(String named, Findings findings) {
        return OutFolder.at(named, findings).filter(folder -> desk.hold(folder, findings));
    }
}
