package stretchwright.make;

import java.util.ArrayList;
import java.util.List;
import stretchwright.ground.Part;
import stretchwright.ground.Voice;

/** Lines for people, in the maker's unit: what a line is about stands in a column of its own, what is told behind it. */
public final class Lines {
    private static final String MARGIN = "  ";

    private final Voice voice;
    private final int column;
    private final List<String> all = new ArrayList<>();

    /** @param column letters for what a line is about; where that is longer one blank parts it from what is told */
    public Lines(Voice voice, int column) {
        this.voice = voice;
        this.column = column;
    }

    /** A line by itself. */
    public void say(Part told) {
        all.add(voice.say(told));
    }

    public void about(Part label, Part told) {
        String about = voice.say(label);
        all.add(MARGIN + about + " ".repeat(Math.max(1, column - about.length())) + voice.say(told));
    }

    /** Another line about the same. */
    public void more(Part told) {
        all.add(MARGIN + " ".repeat(column) + voice.say(told));
    }

    public List<String> all() {
        return List.copyOf(all);
    }
}
