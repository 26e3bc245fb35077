package stretchwright.web.form;

import java.util.Objects;
import stretchwright.ground.Findings;
import stretchwright.ground.Unit;
import stretchwright.intake.Key;
import stretchwright.intake.Tree;
import stretchwright.intake.YamlTree;

/** What stands in a field as an example. */
final class Sample {
    private Sample() {}

    /** The example of a row as it would be typed into its field: "20 % = 3.1 N; 40 % = 6.9 N". */
    static String typed(Key<?> row, Unit unit) {
        String text = row.name() + ": " + row.example(unit);
        Tree.Keys one = YamlTree.read(text, new Findings("example")).orElseThrow();
        return String.join(
                "; ", Written.typed(Objects.requireNonNull(one.entries().get(row.name())), row.input()));
    }
}
