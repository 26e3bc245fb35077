package stretchwright.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import stretchwright.ground.Findings;
import stretchwright.ground.Part;
import stretchwright.ground.Said;
import stretchwright.ground.Voice;

/**
 * The pass phrase of a shared page: from a file, the environment, or asked for twice. Never an argument, as everybody on a machine
 * sees those of all programs.
 */
final class PassPhrase {
    static final String VARIABLE = "STRETCHWRIGHT_PASS_PHRASE";

    /** In characters; as short as many people's names and years would not be. */
    static final int SHORTEST = 12;

    static final int LONGEST = 200;
    private static final int LARGEST_FILE = 4096;

    private final Function<String, @Nullable String> environment;
    private final Optional<Asking> asking;
    private final Console told;

    /** Somebody at a terminal, who types without it being shown; null where nothing comes any more. */
    interface Asking {
        char @Nullable [] hidden(String question);
    }

    PassPhrase(Function<String, @Nullable String> environment, Optional<Asking> asking, Console told) {
        this.environment = environment;
        this.asking = asking;
        this.told = told;
    }

    static PassPhrase real(Console told) {
        java.io.Console terminal = System.console();
        return new PassPhrase(
                System::getenv,
                terminal == null ? Optional.empty() : Optional.of(q -> terminal.readPassword("%s", q)),
                told);
    }

    /** As it will be asked for; or empty and a finding. */
    Optional<String> get(Optional<Path> file, Findings findings) throws IOException {
        if (file.isPresent()) {
            return longEnough("--pass-phrase-file", firstLine(file.get()), findings);
        }
        String given = environment.apply(VARIABLE);
        if (given != null) {
            return longEnough(VARIABLE, given, findings);
        }
        if (asking.isEmpty()) {
            findings.add("--share", Tell.said("phrase.none"), Tell.said("phrase.give", Part.text(VARIABLE)));
            return Optional.empty();
        }
        return asked(asking.get(), findings);
    }

    private Optional<String> asked(Asking who, Findings findings) {
        char[] first = who.hidden(say(Tell.said("phrase.ask", Part.count(SHORTEST))));
        if (first == null) {
            findings.add("--share", Tell.said("phrase.none"), Tell.said("phrase.give", Part.text(VARIABLE)));
            return Optional.empty();
        }
        if (first.length == 0) {
            String made = PhraseWords.some();
            told.warn(Tell.said("phrase.made", Part.text(made)));
            return Optional.of(made);
        }
        char[] again = who.hidden(say(Tell.said("phrase.again")));
        if (again == null || !Arrays.equals(first, again)) {
            findings.add("--share", Tell.said("phrase.differs"), Tell.said("phrase.differs-help"));
            return Optional.empty();
        }
        return longEnough("--share", new String(first), findings);
    }

    private static Optional<String> longEnough(String key, String phrase, Findings findings) {
        String plain = phrase.strip();
        int length = plain.codePointCount(0, plain.length());
        if (length < SHORTEST || plain.length() > LONGEST) {
            findings.add(
                    key,
                    Tell.said("phrase.length", Part.count(length)),
                    Tell.said("phrase.length-help", Part.count(SHORTEST), Part.count(LONGEST)));
            return Optional.empty();
        }
        return Optional.of(plain);
    }

    private static String firstLine(Path file) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            return new String(in.readNBytes(LARGEST_FILE), StandardCharsets.UTF_8)
                    .lines()
                    .findFirst()
                    .orElse("");
        }
    }

    private static String say(Said said) {
        return Voice.plain().say(said);
    }
}
