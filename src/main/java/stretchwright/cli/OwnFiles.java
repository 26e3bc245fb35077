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
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Tells the files this program wrote from all others: its own report lists them. */
final class OwnFiles {
    private static final JsonMapper JSON = JsonMapper.builder().build();
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
        JsonNode report = json(folder.resolve("report.json"));
        if (report.has("stretchwright") && report.path("files").isArray()) {
            own.add("report.json");
            report.path("files").forEach(file -> own.add(file.path("name").asString("")));
        }
        JsonNode club = json(folder.resolve("club.json"));
        if (club.has("club") && club.path("files").isArray()) {
            club.path("files").forEach(file -> own.add(file.path("name").asString("")));
        }
        JsonNode lay = json(folder.resolve("lay.json"));
        if (lay.has("instance") && lay.has("placements") && lay.has("density")) {
            own.addAll(Set.of("lay.json", "lay.svg"));
        }
        if (json(folder.resolve("body.json")).has("bodyCheck")) {
            own.addAll(Set.of("body.json", "body.svg"));
        }
        if (json(folder.resolve("cloth.json")).has("clothCards")) {
            own.addAll(Set.of("cloth.json", "cloth-test-card.pdf", "shop-card.pdf"));
        }
        if (json(folder.resolve("survey.json")).has("survey")) {
            own.addAll(Set.of("survey.json", "survey.md", "worst.svg"));
        }
        if (json(folder.resolve("nest.json")).has("nest")) {
            own.addAll(Set.of("nest.json", "nest.svg", "nest.dxf", "sizes.csv", "grade.csv"));
            entries(folder).stream()
                    .map(e -> e.getFileName().toString())
                    .filter(n -> n.startsWith("nest-") && n.endsWith(".pdf"))
                    .forEach(own::add);
        }
        if (json(folder.resolve("compare.json")).has("compare")) {
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

    private static JsonNode json(Path file) throws IOException {
        if (!Files.isRegularFile(file) || Files.size(file) > LARGEST_REPORT) {
            return JSON.createObjectNode();
        }
        try {
            return JSON.readTree(Files.readAllBytes(file));
        } catch (JacksonException e) {
            return JSON.createObjectNode();
        }
    }
}
