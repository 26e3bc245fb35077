package stretchwright.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import stretchwright.ground.Point;
import stretchwright.make.ExampleHandovers;
import stretchwright.pattern.Piece;

/** What is written on a piece lies on it. */
class LabelTest {
    @Test
    void theWordsOfEveryPieceLieInsideItsSewLine() {
        for (Handover handover : ExampleHandovers.all().values()) {
            for (Piece piece : handover.pattern().pieces()) {
                List<String> words = Stream.concat(
                                Stream.of("Piece Name: " + piece.name(), "Size", "Quantity", "Material"),
                                Words.annotation(handover, piece).stream())
                        .toList();
                Label label = Label.on(piece.sewLine(), List.of(), words, Label.WRITING);
                assertThat(label.size()).as(piece.name().word()).isGreaterThanOrEqualTo(0.7);
                for (int i = 0; i < words.size(); i++) {
                    double wide = words.get(i).length() * Label.WRITING.pitch() * label.size();
                    Point end = label.line(i).plus(new Point(wide, 0).turned(label.degrees()));
                    assertThat(piece.sewLine().contains(label.line(i)))
                            .as(piece.name().word())
                            .isTrue();
                    assertThat(piece.sewLine().contains(end))
                            .as(piece.name().word())
                            .isTrue();
                }
            }
        }
    }
}
