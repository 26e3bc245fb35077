package stretchwright.web.form;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import stretchwright.ground.Finding;
import stretchwright.ground.Part;
import stretchwright.ground.Said;
import stretchwright.ground.Unit;
import stretchwright.intake.Echo;
import stretchwright.intake.Keys;
import stretchwright.intake.Kind.Input;
import stretchwright.intake.Nearest;

/** What was sent that the form does not ask for: fields that it does not have, and several values where a field takes one. */
public final class Strangers {
    /** Said by the buttons and the hidden mark of the page itself. */
    private static final List<String> OF_PAGE = List.of("seen");

    /** So many are asked what they may have meant; a browser sends none. */
    private static final int MOST_MEANT = 20;

    /** The longest key of a field has some 50 letters. */
    private static final int LONGEST = 80;

    private final Form form;
    private final Map<String, Field> fields = new LinkedHashMap<>();

    private Strangers(Form form, Keys table) {
        this.form = form;
        Groups.of(table, form).stream().flatMap(Group::all).forEach(f -> fields.put(f.key(), f));
    }

    /** Everything that cannot be put into the make file. */
    public static List<Finding> in(Form form, Keys table) {
        Strangers strangers = new Strangers(form, table);
        List<Finding> all = new ArrayList<>(strangers.unknown());
        all.addAll(strangers.twice());
        return all;
    }

    /** Fields that say the same as those in the section that may stand instead of them: one hold, and another by level. */
    private List<Finding> twice() {
        return fields.keySet().stream()
                .filter(key -> !form.value(key).isBlank()
                        && form.typed().keySet().stream().anyMatch(k -> k.startsWith(key + ".")))
                .map(key -> finding(key, Tell.said("field.twice"), Tell.said("field.twice-help")))
                .toList();
    }

    private List<Finding> unknown() {
        List<Finding> out = new ArrayList<>();
        form.typed().forEach((key, values) -> {
            Field field = fields.get(key);
            if (field == null && !OF_PAGE.contains(key)) {
                Said meant = out.size() < MOST_MEANT ? meant(key) : Said.NOTHING;
                out.add(finding(Echo.shortened(key, LONGEST), Tell.said("field.unknown"), meant));
            } else if (field != null && field.input() != Input.MANY && values.size() > 1) {
                out.add(finding(key, Tell.said("field.more"), Tell.said("field.twice-help")));
            }
        });
        return out;
    }

    private Said meant(String key) {
        return Nearest.to(key, fields.keySet())
                .map(near -> Tell.said("field.meant", Part.text(near)))
                .orElse(Said.NOTHING);
    }

    private static Finding finding(String key, Said wrong, Said right) {
        return new Finding("form", key, 0, wrong, right, Unit.CM);
    }
}
