package stretchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stretchwright.ground.Findings;

/** What serve takes before it opens anything: ports, addresses, and a pass phrase from where no list of processes shows it. */
class ServeCommandTest {
    private static final String WORDS = "chalk canvas comet oyster";

    @TempDir
    private Path folder;

    private final List<Optional<ServeDoor.Share>> opened = new ArrayList<>();
    private final StringWriter told = new StringWriter();

    /** The door cannot be had, so that the command ends. */
    private int serve(String... more) {
        List<String> line = new ArrayList<>(List.of(
                "serve", "--no-browser", "--workroom", folder.resolve("room").toString()));
        line.addAll(List.of(more));
        ServeDoor door = (room, port, share) -> {
            opened.add(share);
            return Optional.empty();
        };
        return Commands.run(door, new StringWriter(), told, line.toArray(String[]::new));
    }

    private String file(String text) throws Exception {
        return Files.writeString(folder.resolve("phrase.txt"), text).toString();
    }

    @Test
    void withoutShareItIsForThisMachineAlone() {
        assertThat(serve("--port", "8000")).isEqualTo(Exit.INPUT);
        assertThat(opened).containsExactly(Optional.empty());
        assertThat(told.toString()).contains("port 8000 cannot be used");
    }

    @Test
    void thePhraseIsTheFirstLineOfAFile() throws Exception {
        serve("--share", "--pass-phrase-file", file("  " + WORDS + "\r\nmore\n"));
        serve("--share", "127.0.0.1", "--pass-phrase-file", file(WORDS));
        assertThat(opened)
                .containsExactly(
                        Optional.of(new ServeDoor.Share("0.0.0.0", WORDS)),
                        Optional.of(new ServeDoor.Share("127.0.0.1", WORDS)));
        assertThat(opened.toString()).doesNotContain("chalk");
        assertThat(told.toString()).doesNotContain("chalk");
    }

    @Test
    void nothingIsOpenedWithoutAGoodPhrase() throws Exception {
        assertThat(serve("--share", "--pass-phrase-file", file("eleven lett"))).isEqualTo(Exit.INPUT);
        assertThat(serve("--share", "--pass-phrase-file", file(""))).isEqualTo(Exit.INPUT);
        assertThat(serve("--share", "--pass-phrase-file", file("x".repeat(100_000))))
                .isEqualTo(Exit.INPUT);
        assertThat(serve("--share", "--pass-phrase-file", folder.resolve("none").toString()))
                .isEqualTo(Exit.INPUT);
        assertThat(serve("--pass-phrase-file", file(WORDS))).isEqualTo(Exit.INPUT);
        assertThat(serve("--share", "198.51.100.7", "--pass-phrase-file", file(WORDS)))
                .isEqualTo(Exit.INPUT);
        assertThat(opened).isEmpty();
        assertThat(told.toString())
                .contains("the pass phrase has 11 characters", "the pass phrase has 0 characters")
                .contains("--pass-phrase-file: is for a page that is shared")
                .contains("198.51.100.7 is no address of this computer");
    }

    private Optional<String> phrase(Optional<String> environment, Optional<Deque<String>> typed, Findings findings)
            throws Exception {
        Console console = new Console(new PrintWriter(new StringWriter()), new PrintWriter(told, true), false, false);
        Optional<PassPhrase.Asking> asking = typed.map(answers -> question -> {
            told.append(question);
            String answer = answers.poll();
            return answer == null ? null : answer.toCharArray();
        });
        return new PassPhrase(name -> environment.orElse(null), asking, console).get(Optional.empty(), findings);
    }

    private static Optional<Deque<String>> typed(String... answers) {
        return Optional.of(new ArrayDeque<>(List.of(answers)));
    }

    @Test
    void theEnvironmentComesBeforeTheTerminal() throws Exception {
        Findings findings = new Findings("serve");
        assertThat(phrase(Optional.of(WORDS), typed("never asked here"), findings))
                .contains(WORDS);
        assertThat(phrase(Optional.of("short"), typed(WORDS, WORDS), findings)).isEmpty();
        assertThat(findings.all()).hasSize(1);
    }

    @Test
    void atATerminalItIsTypedTwice() throws Exception {
        Findings findings = new Findings("serve");
        assertThat(phrase(Optional.empty(), typed(WORDS, WORDS), findings)).contains(WORDS);
        assertThat(findings.all()).isEmpty();
        assertThat(phrase(Optional.empty(), typed(WORDS, WORDS + "s"), findings))
                .isEmpty();
        assertThat(phrase(Optional.empty(), typed("short", "short"), findings)).isEmpty();
        assertThat(phrase(Optional.empty(), typed(), findings)).isEmpty();
        assertThat(phrase(Optional.empty(), Optional.empty(), findings)).isEmpty();
        assertThat(findings.all()).hasSize(4);
        assertThat(told.toString()).doesNotContain("chalk");
    }

    @Test
    void whoTypesNothingIsGivenOne() throws Exception {
        Findings findings = new Findings("serve");
        String made = phrase(Optional.empty(), typed(""), findings).orElseThrow();
        assertThat(PhraseWords.list()).containsAll(List.of(made.split(" ")));
        assertThat(made.split(" ")).hasSize(PhraseWords.WORDS);
        assertThat(told.toString()).contains("The pass phrase is: " + made);
        assertThat(new HashSet<>(List.of(PhraseWords.some(), PhraseWords.some(), PhraseWords.some())))
                .as("another each time")
                .hasSize(3);
    }

    @Test
    void theListIsOf256WordsAndAllOfThemCome() {
        List<String> words = PhraseWords.list();
        assertThat(words).hasSize(256).doesNotHaveDuplicates().allMatch(w -> w.matches("[a-z]{3,8}"));
        HashSet<String> came = new HashSet<>();
        Random random = new Random(1);
        for (int i = 0; i < 1000; i++) {
            came.addAll(List.of(PhraseWords.some(random).split(" ")));
        }
        assertThat(came).hasSize(256);
        int shortest =
                words.stream().map(String::length).sorted().limit(1).findFirst().orElseThrow();
        assertThat(PhraseWords.WORDS * (shortest + 1) - 1).isGreaterThanOrEqualTo(PassPhrase.SHORTEST);
    }
}
