package stretchwright.web.things;

import java.util.List;
import stretchwright.web.form.Form;
import stretchwright.web.frame.Frame;
import stretchwright.web.frame.MayCut;

/**
 * What is known of a wearer, a cloth or a boot.
 *
 * @param drawing SVG; may be empty
 * @param wrong what is the matter with what was sent
 */
public record ThingPage(
        Frame frame,
        MayCut says,
        List<Press> presses,
        String drawing,
        List<Rows> lists,
        List<Ask> asks,
        List<String> wrong) {
    public ThingPage {
        presses = List.copyOf(presses);
        lists = List.copyOf(lists);
        asks = List.copyOf(asks);
        wrong = List.copyOf(wrong);
    }

    /**
     * The same where something that was sent is refused: it stands in its fields still.
     *
     * @param path that it was sent to
     */
    ThingPage refused(String path, Form sent, List<String> found) {
        List<Ask> typed = asks.stream()
                .map(a -> a.action().replaceFirst("\\?.*", "").equals(path) ? a.with(sent) : a)
                .toList();
        return new ThingPage(frame, says, presses, drawing, lists, typed, found);
    }

    /** Somewhere to go on. */
    public record Press(String address, String words, boolean first) {}

    /** Lines of one kind. */
    public record Rows(String title, String about, List<Row> rows) {
        public Rows {
            rows = List.copyOf(rows);
        }
    }

    /**
     * One line.
     *
     * @param address empty where it leads nowhere
     * @param guessed whether its value is only estimated
     * @param note how old it is, or what to do
     * @param due whether the note asks for something
     */
    public record Row(String address, String name, String value, boolean guessed, String note, boolean due) {
        static Row of(String address, String name, String value) {
            return new Row(address, name, value, false, "", false);
        }
    }

    /**
     * Something small to fill in and send.
     *
     * @param grave whether it takes something away for good
     * @param open whether it was filled in just now
     */
    public record Ask(
            String title,
            List<String> lines,
            String action,
            long seen,
            List<Blank> blanks,
            String press,
            boolean grave,
            boolean open) {
        public Ask {
            lines = List.copyOf(lines);
            blanks = List.copyOf(blanks);
        }

        Ask(
                String title,
                List<String> lines,
                String action,
                long seen,
                List<Blank> blanks,
                String press,
                boolean grave) {
            this(title, lines, action, seen, blanks, press, grave, false);
        }

        private Ask with(Form sent) {
            List<Blank> typed =
                    blanks.stream().map(b -> b.with(sent.value(b.name()))).toList();
            return new Ask(title, lines, action, seen, typed, press, grave, true);
        }
    }
}
