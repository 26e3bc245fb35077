package stretchwright.intake;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stretchwright.ground.Part;
import stretchwright.ground.Said;
import stretchwright.ground.TextFile;
import stretchwright.ground.Voice;

/**
 * How to take one measure of the laced boot by hand. The words stand in boot-guide.txt, by the name of the key; when it is
 * needed and what is taken without it say the rows of {@link BootKeys}.
 *
 * @param wrong what goes wrong
 */
public record BootGuide(Key<?> key, String how, String wrong) {
    private static final Map<String, BootGuide> ALL = read();

    /** Of a measure of the boot, by the path of its key. */
    public static BootGuide of(String path) {
        return Optional.ofNullable(ALL.get(path))
                .orElseThrow(() -> new IllegalStateException("the guide to the boot lacks " + path));
    }

    /** Everything of the boot that is measured, in the order of the table. */
    public static List<Key<?>> measures() {
        return Table.keys().all().stream()
                .filter(k -> k.section().equals(BootKeys.BOOT.path()))
                .filter(k -> k.kind().within().isPresent())
                .toList();
    }

    /** The boot's part of docs/measuring.md. */
    public static String text(Voice voice) {
        StringBuilder out = new StringBuilder(TextFile.text(BootGuide.class, "boot-guide-start.txt"));
        for (Key<?> key : measures()) {
            out.append('\n').append(of(key.path()).section(voice));
        }
        return out.toString();
    }

    /** File name of its drawing. */
    public String picture() {
        return key.name().replace(' ', '-') + ".svg";
    }

    private String section(Voice voice) {
        return "### " + key.name() + "\n\n"
                + "![" + voice.say(Tell.said("boot-guide.picture", key.label())) + "](pictures/boot/" + picture()
                + ")\n\n"
                + line(voice, Tell.said("boot-guide.how", Part.text(how)))
                + line(voice, Tell.said("boot-guide.wrong", Part.text(wrong)))
                + line(voice, needed());
    }

    private Said needed() {
        String when =
                key.need().always() ? BootKeys.BOOT.need().when() : key.need().when();
        if (!when.isEmpty()) {
            return Tell.said("boot-guide.needed", Part.text(key.path()), Tell.said(when));
        }
        return key.usual()
                .map(usual -> Tell.said(
                        "boot-guide.else", Part.text(key.path()), Part.length(((Number) usual).doubleValue())))
                .orElseGet(() -> Tell.said("boot-guide.free", Part.text(key.path())));
    }

    private static String line(Voice voice, Said said) {
        return "- " + voice.say(said) + "\n";
    }

    private static Map<String, BootGuide> read() {
        Map<String, BootGuide> all = new LinkedHashMap<>();
        TextFile.blocks(BootGuide.class, "boot-guide.txt", List.of("measure", "how", "wrong")).stream()
                .map(BootGuide::of)
                .forEach(guide -> all.put(guide.key.path(), guide));
        return all;
    }

    private static BootGuide of(Map<String, String> parts) {
        return new BootGuide(
                Table.keys()
                        .find(BootKeys.BOOT.path() + "." + parts.get("measure"))
                        .orElseThrow(() -> new IllegalStateException("no key for " + parts)),
                parts.getOrDefault("how", ""),
                parts.getOrDefault("wrong", ""));
    }
}
