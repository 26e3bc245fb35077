package stretchwright.intake;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Parse;
import org.snakeyaml.engine.v2.events.AliasEvent;
import org.snakeyaml.engine.v2.events.CollectionStartEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.MappingStartEvent;
import org.snakeyaml.engine.v2.events.NodeEvent;
import org.snakeyaml.engine.v2.events.ScalarEvent;
import org.snakeyaml.engine.v2.events.SequenceStartEvent;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlVersionException;
import stretchwright.ground.Findings;
import stretchwright.ground.Part;
import stretchwright.ground.Said;

/**
 * Reads the text of a make file (YAML 1.2; JSON is a part of it) into a tree with line numbers, straight from the
 * parser's events, so that depth, size and aliases are bounded before anything grows.
 */
public final class YamlTree {
    /** Levels of the deepest make file. */
    private static final int NEEDED = 6;

    private static final int DEEPEST = 12;
    /** A handwritten file has a few hundred values. */
    private static final int MOST_VALUES = 20_000;
    /** A make file repeats nothing; a few aliases are let through because YAML has them. */
    private static final int MOST_ALIASES = 20;

    /** Those of the core schema (YAML 1.2.2, chapter 10) and the empty one; any other would ask for something else. */
    private static final Set<String> CORE_TAGS = Stream.concat(
                    Stream.of("!"),
                    Stream.of("str", "int", "float", "bool", "null", "seq", "map")
                            .map(t -> "tag:yaml.org,2002:" + t))
            .collect(Collectors.toUnmodifiableSet());

    private final Findings findings;
    private final Map<String, Tree> anchors = new HashMap<>();
    private int values;
    private int aliases;
    private int reached = 1;

    private YamlTree(Findings findings) {
        this.findings = findings;
    }

    /** The file cannot be read further; the finding says why. */
    private static final class Unreadable extends RuntimeException {
        private static final long serialVersionUID = 1L;
        private final int line;
        private final transient Said wrong;
        private final transient Said right;

        Unreadable(int line, Said wrong, Said right) {
            super(wrong.key());
            this.line = line;
            this.wrong = wrong;
            this.right = right;
        }
    }

    /** The sections of the file; empty with at least one finding where it is not such a file. */
    public static Optional<Tree.Keys> read(String text, Findings findings) {
        if (text.isBlank()) {
            findings.add("", Tell.said("file.empty"), Tell.said("file.start"));
            return Optional.empty();
        }
        try {
            return Optional.of(new YamlTree(findings).document(plainSpaces(text)));
        } catch (Unreadable e) {
            findings.at("", e.line, e.wrong, e.right);
        } catch (YamlVersionException e) {
            findings.add("", Tell.said("yaml.version"), Tell.said("yaml.version-write"));
        } catch (MarkedYamlEngineException e) {
            int line = e.getProblemMark().map(m -> m.getLine() + 1).orElse(0);
            findings.at(
                    "",
                    line,
                    Tell.said("yaml.not", Part.text(Echo.shortened(e.getProblem(), 100))),
                    remedy(e.getProblem()));
        } catch (YamlEngineException e) {
            findings.add("", Tell.said("yaml.not", Part.text(firstLine(e))), Tell.said("yaml.save"));
        }
        return Optional.empty();
    }

    /** JSON may be indented with tabs, YAML may not; inside JSON texts a raw tab is not allowed anyway. */
    private static String plainSpaces(String text) {
        return text.stripLeading().startsWith("{") ? text.replace('\t', ' ') : text;
    }

    private static String firstLine(YamlEngineException e) {
        return Echo.shortened(String.valueOf(e.getMessage()).lines().findFirst().orElse("unreadable"), 100);
    }

    private static Said remedy(String problem) {
        return problem.contains("\\t") ? Tell.said("yaml.tabs") : Tell.said("yaml.look");
    }

    private Tree.Keys document(String text) {
        LoadSettings settings = LoadSettings.builder()
                .setLabel("make file")
                .setParseComments(false)
                .build();
        Iterator<Event> events = new Parse(settings).parseString(text).iterator();
        next(events);
        if (next(events).getEventId() != Event.ID.DocumentStart) {
            throw new Unreadable(0, Tell.said("file.comments"), Tell.said("file.start"));
        }
        Tree root = node(next(events), events, 1, "");
        next(events);
        if (next(events).getEventId() != Event.ID.StreamEnd) {
            throw new Unreadable(0, Tell.said("file.documents"), Tell.said("file.one"));
        }
        if (root instanceof Tree.Keys keys) {
            return keys;
        }
        throw new Unreadable(root.line(), Tell.said("file.keys", root.said()), Tell.said("file.start"));
    }

    /** The parser does not check how large the number of an escape is, and then fails in a way of its own. */
    private Event next(Iterator<Event> events) {
        try {
            Event event = events.next();
            reached = line(event);
            return event;
        } catch (IllegalArgumentException e) {
            throw new Unreadable(reached, Tell.said("yaml.escape"), Tell.said("yaml.letter"));
        }
    }

    private Tree node(Event event, Iterator<Event> events, int depth, String path) {
        int line = line(event);
        if (depth > DEEPEST) {
            throw new Unreadable(
                    line, Tell.said("yaml.deep", Part.count(DEEPEST)), Tell.said("yaml.needs", Part.count(NEEDED)));
        }
        if (++values > MOST_VALUES) {
            throw new Unreadable(
                    0, Tell.said("yaml.values", Part.text(Integer.toString(MOST_VALUES))), Tell.said("yaml.dozens"));
        }
        if (event instanceof AliasEvent alias) {
            return aliased(alias, line);
        }
        refuseTags(event, line);
        Tree tree;
        if (event instanceof ScalarEvent scalar) {
            tree = new Tree.Text(scalar.getValue(), line);
        } else if (event instanceof SequenceStartEvent) {
            tree = items(events, depth, path, line);
        } else if (event instanceof MappingStartEvent) {
            tree = keys(events, depth, path, line);
        } else {
            throw new IllegalStateException("unexpected in a YAML document: " + event);
        }
        ((NodeEvent) event).getAnchor().ifPresent(a -> anchors.put(a.getValue(), tree));
        return tree;
    }

    private Tree aliased(AliasEvent alias, int line) {
        if (++aliases > MOST_ALIASES) {
            throw new Unreadable(
                    line, Tell.said("yaml.aliases", Part.count(MOST_ALIASES)), Tell.said("yaml.write-out"));
        }
        Tree tree = anchors.get(alias.getAlias().getValue());
        if (tree == null) {
            throw new Unreadable(
                    line,
                    Tell.said(
                            "yaml.alias",
                            Part.text(Echo.shortened(alias.getAlias().getValue(), 40))),
                    Tell.said("yaml.write-out"));
        }
        return tree;
    }

    private static void refuseTags(Event event, int line) {
        Optional<String> tag = Optional.empty();
        if (event instanceof ScalarEvent scalar) {
            tag = scalar.getTag();
        } else if (event instanceof CollectionStartEvent collection) {
            tag = collection.getTag();
        }
        tag.filter(t -> !CORE_TAGS.contains(t)).ifPresent(t -> {
            throw new Unreadable(line, Tell.said("yaml.tag", Tell.quoted(t)), Tell.said("yaml.leave-out"));
        });
    }

    private Tree items(Iterator<Event> events, int depth, String path, int line) {
        List<Tree> items = new ArrayList<>();
        Event event = next(events);
        while (event.getEventId() != Event.ID.SequenceEnd) {
            items.add(node(event, events, depth + 1, path + "." + (items.size() + 1)));
            event = next(events);
        }
        return new Tree.Items(items, line);
    }

    private Tree keys(Iterator<Event> events, int depth, String path, int line) {
        Map<String, Tree> entries = new LinkedHashMap<>();
        Map<String, Integer> lines = new HashMap<>();
        Event event = next(events);
        while (event.getEventId() != Event.ID.MappingEnd) {
            int at = line(event);
            if (!(event instanceof ScalarEvent name)) {
                throw new Unreadable(at, Tell.said("yaml.key"), Said.NOTHING);
            }
            String key = name.getValue();
            String inside = Echo.path(path, key);
            Tree value = node(next(events), events, depth + 1, inside);
            Integer before = lines.putIfAbsent(key, at);
            if (before == null) {
                entries.put(key, value);
            } else {
                findings.at(inside, at, Tell.said("key.twice", Part.count(before)), Tell.said("key.keep-one"));
            }
            event = next(events);
        }
        return new Tree.Keys(entries, line);
    }

    private static int line(Event event) {
        return event.getStartMark().map(Mark::getLine).orElse(0) + 1;
    }
}
