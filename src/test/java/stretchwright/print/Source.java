package stretchwright.print;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** A source file as far as its string literals go: each with the calls it stands in, and the arguments of a call. */
final class Source {
    private static final Pattern CALL = Pattern.compile("(?:new\\s+)?[\\w.:]+\\s*$");

    private final String text;
    private final boolean rows;
    private final List<Literal> literals = new ArrayList<>();
    private final Deque<String> calls = new ArrayDeque<>();

    /** @param calls that it stands in, the innermost first; a block counts as one without a name */
    record Literal(String text, List<String> calls) {
        boolean directlyIn(Pattern call) {
            return !calls.isEmpty() && call.matcher(calls.get(0)).matches();
        }

        boolean within(Pattern call) {
            return calls.stream().anyMatch(c -> call.matcher(c).matches());
        }
    }

    Source(String withComments) {
        this(withComments, false);
    }

    private Source(String withComments, boolean rows) {
        this.rows = rows;
        text = withoutComments(withComments);
        int at = 0;
        while (at < text.length()) {
            at = step(at);
        }
    }

    /** All of the room, and its inner rooms that have no sentences of their own. */
    static List<Source> of(String room) {
        Path top = Path.of("src/main/java/stretchwright", room);
        try (Stream<Path> files = Files.walk(top)) {
            return files.filter(f -> f.toString().endsWith(".java")
                            && !speaksForItself(top, java.util.Objects.requireNonNull(f.getParent())))
                    .sorted()
                    .map(Source::read)
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static boolean speaksForItself(Path top, Path folder) {
        Path words = Path.of("src/main/resources")
                .resolve(Path.of("src/main/java").relativize(folder))
                .resolve("words.properties");
        return !folder.equals(top) && Files.exists(words);
    }

    private static Source read(Path file) {
        try {
            String text = Files.readString(file);
            boolean keys = file.toString().matches(".*(Keys?|Measures|WearingSymptom)\\.java");
            return new Source(text, keys || text.contains("import org.jdbi.") || text.contains("import java.sql."));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * Whether it holds rows of the table of keys, names, synonyms and examples, which are the make file's own language; or asks
     * a database, in SQL.
     */
    boolean holdsRows() {
        return rows;
    }

    List<Literal> literals() {
        return List.copyOf(literals);
    }

    private int step(int at) {
        char c = text.charAt(at);
        if (c == '"' || c == '\'') {
            int end = quoted(text, at);
            if (c == '"') {
                literals.add(new Literal(text.substring(at + 1, end - 1), List.copyOf(calls)));
            }
            return end;
        }
        if (c == '(') {
            Matcher call = CALL.matcher(text.substring(Math.max(0, at - 80), at));
            calls.push(call.find() ? call.group().strip().replaceAll("\\s+", " ") : "");
        } else if (c == '{') {
            calls.push("");
        } else if (c == ')' || c == '}') {
            calls.pop();
        }
        return at + 1;
    }

    /** The arguments of each call of that name, as they are written. */
    List<List<String>> arguments(String call) {
        List<List<String>> all = new ArrayList<>();
        int at = text.indexOf(call + "(");
        while (at >= 0) {
            all.add(argumentsAt(at + call.length() + 1));
            at = text.indexOf(call + "(", at + 1);
        }
        return all;
    }

    private List<String> argumentsAt(int start) {
        List<String> all = new ArrayList<>();
        int depth = 0;
        int from = start;
        int at = start;
        while (depth >= 0) {
            char c = text.charAt(at);
            if (c == '"' || c == '\'') {
                at = quoted(text, at);
                continue;
            }
            depth += c == '(' || c == '{' ? 1 : c == ')' || c == '}' ? -1 : 0;
            if (depth < 0 || (depth == 0 && c == ',')) {
                all.add(text.substring(from, at).strip());
                from = at + 1;
            }
            at++;
        }
        return all;
    }

    private static int quoted(String text, int start) {
        int at = start + 1;
        while (text.charAt(at) != text.charAt(start)) {
            at += text.charAt(at) == '\\' ? 2 : 1;
        }
        return at + 1;
    }

    private static String withoutComments(String text) {
        StringBuilder out = new StringBuilder();
        int at = 0;
        while (at < text.length()) {
            char c = text.charAt(at);
            int end = at + 1;
            if (text.startsWith("//", at)) {
                at = text.indexOf('\n', at);
                continue;
            } else if (text.startsWith("/*", at)) {
                at = text.indexOf("*/", at) + 2;
                continue;
            } else if (c == '"' || c == '\'') {
                end = quoted(text, at);
            }
            out.append(text, at, end);
            at = end;
        }
        return out.toString();
    }
}
