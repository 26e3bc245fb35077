package stretchwright.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import stretchwright.many.BodyTable;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.json.JsonFactory;

/** Tells the files this program wrote from all others: its own report lists them. */
final class OwnFiles {
    private static final JsonFactory JSON = new JsonFactory();
    /** No report or layout comes near this. */
    private static final long LARGEST_REPORT = 64L * 1024 * 1024;

    private OwnFiles() {}

    /** Names of what this program did not write there, in order; empty for an empty folder. */
    static List<String> foreignIn(Path folder) throws IOException {
        Set<String> own = ownIn(folder);
        List<String> foreign = new ArrayList<>();
        for (Path entry : entries(folder)) {
            String name = entry.getFileName().toString();
            if (Files.isDirectory(entry, LinkOption.NOFOLLOW_LINKS)) {
                if (ownIn(entry).isEmpty()) {
                    foreign.add(name);
                } else {
                    foreignIn(entry).forEach(inside -> foreign.add(name + "/" + inside));
                }
            } else if (!Files.isRegularFile(entry, LinkOption.NOFOLLOW_LINKS) || !own.contains(name)) {
                foreign.add(name);
            }
        }
        return foreign;
    }

    private static List<Path> entries(Path folder) throws IOException {
        try (Stream<Path> list = Files.list(folder)) {
            return list.sorted().toList();
        }
    }

    private static Set<String> ownIn(Path folder) throws IOException {
        Set<String> own = new HashSet<>();
        Told report = told(folder.resolve("report.json"));
        if (report.has("stretchwright") && report.lists) {
            own.add("report.json");
            own.addAll(report.files);
        }
        Told club = told(folder.resolve("club.json"));
        if (club.has("club") && club.lists) {
            own.addAll(club.files);
        }
        Told lay = told(folder.resolve("lay.json"));
        if (lay.has("instance") && lay.has("placements") && lay.has("density")) {
            own.addAll(Set.of("lay.json", "lay.svg"));
        }
        if (told(folder.resolve("body.json")).has("bodyCheck")) {
            own.addAll(Set.of("body.json", "body.svg"));
        }
        if (told(folder.resolve("cloth.json")).has("clothCards")) {
            own.addAll(Set.of("cloth.json", "cloth-test-card.pdf", "shop-card.pdf"));
        }
        if (told(folder.resolve("survey.json")).has("survey")) {
            own.addAll(Set.of("survey.json", "survey.md", "worst.svg"));
        }
        if (told(folder.resolve("nest.json")).has("nest")) {
            own.addAll(Set.of("nest.json", "nest.svg", "nest.dxf", "sizes.csv", "grade.csv"));
            entries(folder).stream()
                    .map(e -> e.getFileName().toString())
                    .filter(n -> n.startsWith("nest-") && n.endsWith(".pdf"))
                    .forEach(own::add);
        }
        if (told(folder.resolve("compare.json")).has("compare")) {
            own.addAll(Set.of("compare.json", "compare.svg"));
        }
        if (startsWith(folder.resolve("bodies.csv"), BodyTable.FIRST_WORDS)) {
            own.add("bodies.csv");
        }
        return own;
    }

    private static boolean startsWith(Path file, String words) throws IOException {
        if (!Files.isRegularFile(file)) {
            return false;
        }
        try (InputStream in = Files.newInputStream(file)) {
            return new String(in.readNBytes(words.length()), StandardCharsets.UTF_8).equals(words);
        }
    }

    /** Nothing where it is no file, too large, or not JSON from end to end. */
    private static Told told(Path file) throws IOException {
        if (!Files.isRegularFile(file) || Files.size(file) > LARGEST_REPORT) {
            return new Told();
        }
        try (JsonParser json = JSON.createParser(ObjectReadContext.empty(), Files.readAllBytes(file))) {
            Told told = new Told();
            if (json.nextToken() == JsonToken.START_OBJECT) {
                told.read(json);
            }
            return json.nextToken() == null ? told : new Told();
        } catch (JacksonException e) {
            return new Told();
        }
    }

    /** What a file says at its top: the names of its fields, and the files that it lists. Nothing else of it is kept. */
    private static final class Told {
        private final Set<String> fields = new HashSet<>();
        private final Set<String> files = new HashSet<>();
        private boolean lists;

        boolean has(String field) {
            return fields.contains(field);
        }

        void read(JsonParser json) {
            for (String field = json.nextName(); field != null; field = json.nextName()) {
                fields.add(field);
                boolean list = json.nextToken() == JsonToken.START_ARRAY;
                if (field.equals("files") && list) {
                    lists = true;
                    readFiles(json);
                } else {
                    json.skipChildren();
                }
            }
        }

        private void readFiles(JsonParser json) {
            while (json.nextToken() != JsonToken.END_ARRAY) {
                if (json.currentToken() == JsonToken.START_OBJECT) {
                    readFile(json);
                } else {
                    json.skipChildren();
                }
            }
        }

        private void readFile(JsonParser json) {
            for (String field = json.nextName(); field != null; field = json.nextName()) {
                if (json.nextToken().isScalarValue() && field.equals("name")) {
                    files.add(json.getValueAsString(""));
                } else {
                    json.skipChildren();
                }
            }
        }
    }
}
