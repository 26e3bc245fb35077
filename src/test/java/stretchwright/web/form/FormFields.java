package stretchwright.web.form;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import stretchwright.ground.Voice;
import stretchwright.intake.Keys;

/** The form of any table of keys, for tests of other rooms. */
public final class FormFields {
    private FormFields() {}

    /** Of each field its label, by its key. */
    public static Map<String, String> labels(Keys table) {
        Map<String, String> out = new LinkedHashMap<>();
        Groups.of(table, Form.empty()).stream()
                .flatMap(Group::all)
                .forEach(f -> out.put(f.key(), Voice.plain().say(f.label())));
        return out;
    }

    /** The make file that says what was typed into one field. */
    public static String makeText(Keys table, String key, String typed) {
        return new Form(Map.of(key, List.of(typed))).makeText(table);
    }
}
