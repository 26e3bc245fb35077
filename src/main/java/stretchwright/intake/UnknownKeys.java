package stretchwright.intake;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import stretchwright.ground.Findings;
import stretchwright.ground.Part;
import stretchwright.ground.Said;

/** Findings about keys of a section that the table does not have: the nearest one it has, or once for all the list. */
final class UnknownKeys {
    private final Keys table;
    private final String section;
    private final String at;
    private final Findings findings;
    private String listed = "";

    UnknownKeys(Keys table, String section, String at, Findings findings) {
        this.table = table;
        this.section = section;
        this.at = at;
        this.findings = findings;
    }

    void tell(Tree.Keys tree, List<String> unknown) {
        for (String name : unknown) {
            Tree value = tree.entries().get(name);
            int line = value == null ? tree.line() : value.line();
            findings.at(Echo.path(at, name), line, Tell.said("key.unknown"), remedy(name));
        }
    }

    private Said remedy(String name) {
        Optional<String> near = Nearest.to(name, names());
        if (near.isPresent()) {
            return Tell.said("word.meant", Part.text(near.get()));
        }
        Optional<Key<?>> elsewhere = table.all().stream()
                .filter(k -> !k.section().equals(section) && k.isCalled(name))
                .findFirst();
        if (elsewhere.isPresent()) {
            return Tell.said("key.elsewhere", Part.text(elsewhere.get().path()));
        }
        if (!listed.isEmpty()) {
            return Tell.said("key.listed", Tell.quoted(listed));
        }
        listed = name;
        return Tell.said(
                "key.known",
                Tell.words(table.inside(section).stream().map(Key::name).toList()));
    }

    private List<String> names() {
        return table.inside(section).stream()
                .flatMap(k -> Stream.concat(Stream.of(k.name()), k.synonyms().stream()))
                .toList();
    }
}
