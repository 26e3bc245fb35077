package stretchwright.ground;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;

/** A text of the program that is too long for its sentences, in its language ("guide_de.txt") where there is such a file. */
public final class TextFile {
    private TextFile() {}

    /** The whole, lines ended by a line feed, from the folder of this class. */
    public static String text(Class<?> room, String resource) {
        String own = resource.replace(".txt", "_" + Voice.tag() + ".txt");
        try (InputStream in = Stream.of(own, resource)
                .map(room::getResourceAsStream)
                .filter(Objects::nonNull)
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("the program lacks its " + resource))) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8).replace("\r\n", "\n");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * Its blocks, divided by an empty line, of lines "name: words"; lines that begin with # are left out.
     *
     * @throws IllegalStateException where a block lacks one of the names
     */
    public static List<Map<String, String>> blocks(Class<?> room, String resource, List<String> names) {
        List<Map<String, String>> all = new ArrayList<>();
        for (String block : text(room, resource).split("\n\n")) {
            Map<String, String> parts = new LinkedHashMap<>();
            block.lines().filter(l -> !l.startsWith("#")).forEach(line -> {
                String[] part = line.split(": ", 2);
                parts.put(part[0], part[1].strip());
            });
            if (!parts.isEmpty()) {
                if (!parts.keySet().containsAll(names)) {
                    throw new IllegalStateException(resource + " lacks one of " + names + " in " + parts);
                }
                all.add(parts);
            }
        }
        return all;
    }
}
