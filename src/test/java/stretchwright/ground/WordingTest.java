package stretchwright.ground;

import static org.assertj.core.api.Assertions.assertThat;

import java.text.MessageFormat;
import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Java's MessageFormat is the second opinion on every sentence of two rooms. */
class WordingTest {
    @Test
    void everySentenceIsFilledAsMessageFormatFillsIt() {
        for (String room : List.of("stretchwright.print.words", "stretchwright.exchange.words")) {
            Wording words = new Wording(room, Locale.ROOT);
            ResourceBundle sentences = ResourceBundle.getBundle(room, Locale.ROOT);
            assertThat(sentences.keySet()).isNotEmpty();
            for (String key : sentences.keySet()) {
                MessageFormat sentence = new MessageFormat(sentences.getString(key), Locale.ROOT);
                int gaps = sentence.getFormatsByArgumentIndex().length;
                String[] filled = IntStream.range(0, gaps)
                        .mapToObj(i -> "it's {" + i + "}")
                        .toArray(String[]::new);
                assertThat(words.of(key, filled)).as(key).isEqualTo(sentence.format(filled));
            }
        }
    }
}
