package stretchwright.pattern;

import java.util.Locale;
import stretchwright.ground.Said;

/** What is bought and sewn on. */
public enum NotionName {
    WAIST_ELASTIC(Tell.said("notion.waist-elastic")),
    CORD(Tell.said("notion.cord")),
    STRAP(Tell.said("notion.strap")),
    SOLE_ELASTIC(Tell.said("notion.sole-elastic"));

    private final String word;
    private final Said said;

    NotionName(Said said) {
        this.word = name().toLowerCase(Locale.ROOT).replace('_', ' ');
        this.said = said;
    }

    /** As written in the report. */
    public String word() {
        return word;
    }

    public Said said() {
        return said;
    }

    @Override
    public String toString() {
        return word;
    }
}
