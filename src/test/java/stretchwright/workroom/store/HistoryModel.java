package stretchwright.workroom.store;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;

/** What a store has to say of the history of its things, kept plainly: all that ever stood, one after another. */
final class HistoryModel {
    private final Map<String, Past> pasts = new TreeMap<>();
    private final Deque<Map<String, Stands>> before = new ArrayDeque<>();
    private final Deque<Map<String, Stands>> after = new ArrayDeque<>();
    private Map<String, Stands> now = new TreeMap<>();

    /** Where a thing stands; 0 of what is not yet there. */
    record Stands(long number, Place place) {}

    /** What one thing ever was. */
    static final class Past {
        final List<String> texts = new ArrayList<>();
        private final List<String> names = new ArrayList<>();
        private final Map<Long, Long> madeFrom = new HashMap<>();
        /** As often as they stood. */
        private final List<Long> stood = new ArrayList<>();

        long entered(String name, String text) {
            names.add(name);
            texts.add(text);
            return names.size();
        }

        private void stepped(long was, long now) {
            if (was != now) {
                madeFrom.putIfAbsent(now, was);
            }
            stood.add(was);
            stood.add(now);
        }

        long earlier(long number) {
            return madeFrom.getOrDefault(number, 0L);
        }

        long later(long number) {
            for (int i = stood.size() - 1; i >= 0; i--) {
                if (stood.get(i) > 0 && number > 0 && madeFrom.getOrDefault(stood.get(i), 0L) == number) {
                    return stood.get(i);
                }
            }
            return 0;
        }

        String name(long number) {
            return names.get((int) number - 1);
        }
    }

    Map<String, Stands> now() {
        return now;
    }

    Past past(String id) {
        return pasts.computeIfAbsent(id, fresh -> new Past());
    }

    List<String> ids(Place place) {
        return now.entrySet().stream()
                .filter(e -> e.getValue().place() == place)
                .map(Map.Entry::getKey)
                .toList();
    }

    boolean isFree(String name, String but) {
        return ids(Place.HERE).stream()
                .filter(id -> !id.equals(but))
                .noneMatch(
                        id -> past(id).name(Objects.requireNonNull(now.get(id)).number())
                                .equals(name));
    }

    void stepped(String id, long number, Place place) {
        Stands was = now.getOrDefault(id, new Stands(0, Place.NOT_YET));
        past(id).stepped(was.number(), number);
        before.push(now);
        after.clear();
        now = new TreeMap<>(now);
        now.put(id, new Stands(number, place));
    }

    /** Whether there was a step to undo. */
    boolean undone() {
        if (before.isEmpty()) {
            return false;
        }
        after.push(now);
        Map<String, Stands> then = new TreeMap<>(before.pop());
        now.keySet().forEach(id -> then.putIfAbsent(id, new Stands(0, Place.NOT_YET)));
        now = then;
        return true;
    }

    /** Whether there was one to do again. */
    boolean again() {
        if (after.isEmpty()) {
            return false;
        }
        before.push(now);
        now = after.pop();
        return true;
    }
}
