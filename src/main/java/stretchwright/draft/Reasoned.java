package stretchwright.draft;

import java.util.List;
import stretchwright.pattern.Reason;

/** What was drawn, with the reasons of its dimensions. */
record Reasoned<T>(T drawn, List<Reason> reasons) {
    Reasoned {
        reasons = List.copyOf(reasons);
    }
}
