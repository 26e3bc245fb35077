package stretchwright.report;

import java.util.Optional;
import stretchwright.intake.Key;
import stretchwright.intake.Keys;
import stretchwright.intake.MakeFile;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** What the make was made from, repeated in the report as the table of keys says, with the values that were assumed marked as such. */
public final class ReportEcho {
    private ReportEcho() {}

    /** The keys of one section, "fabric", and of the sections in it. */
    public static void section(ObjectNode out, String section, MakeFile make, Keys table) {
        for (Key<?> key : table.all()) {
            if (key.path().startsWith(section + ".")) {
                put(out, key, make);
            }
        }
    }

    private static void put(ObjectNode out, Key<?> key, MakeFile make) {
        Optional<JsonNode> value = key.echo(make);
        String name = key.echoName();
        int dot = name.indexOf('.');
        value.ifPresent(v -> {
            if (dot < 0) {
                out.set(name, v);
            } else {
                inside(out, name.substring(0, dot)).set(name.substring(dot + 1), v);
            }
        });
        key.echo().assumed().ifPresent(is -> out.put(name + "Assumed", is.apply(make)));
    }

    private static ObjectNode inside(ObjectNode out, String name) {
        return out.get(name) instanceof ObjectNode there ? there : out.putObject(name);
    }
}
