package stretchwright.web;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import stretchwright.ground.Finding;

/** The form as the page shows it: values as typed, each finding at its field, the others on top. */
public final class FormPage {
    private final Form form;
    private final Map<String, List<String>> atField = new LinkedHashMap<>();
    private final List<String> onTop = new ArrayList<>();
    private final List<Field> faulty;

    FormPage(Form form, List<Finding> findings) {
        this.form = form;
        List<String> keys = Fields.all().stream().map(Field::key).toList();
        for (Finding f : findings) {
            // lines of a file that nobody sees say nothing here
            String words = (f.problem().replaceFirst("^line \\d+: ", "") + " " + f.remedy()).strip();
            if (keys.contains(f.key())) {
                atField.computeIfAbsent(f.key(), k -> new ArrayList<>()).add(words);
            } else {
                onTop.add(f.key().isEmpty() ? words : f.key() + ": " + words);
            }
        }
        faulty = Fields.all().stream().filter(f -> atField.containsKey(f.key())).toList();
    }

    public List<Fields.Group> groups() {
        return Fields.GROUPS;
    }

    public boolean hasFindings() {
        return !onTop.isEmpty() || !faulty.isEmpty();
    }

    public List<String> onTop() {
        return onTop;
    }

    /** The fields with a finding, in the order of the page. */
    public List<Field> faulty() {
        return faulty;
    }

    public String problem(Field field) {
        return String.join(" ", atField.getOrDefault(field.key(), List.of()));
    }

    public boolean isFaulty(Field field) {
        return atField.containsKey(field.key());
    }

    /** The first field with a finding takes the focus. */
    public boolean isFirst(Field field) {
        return !faulty.isEmpty() && faulty.get(0).equals(field);
    }

    public String value(Field field) {
        return form.value(field.key());
    }

    public boolean ticked(Field field, String option) {
        return form.ticked(field.key(), option);
    }

    /** What stands beside the field. */
    public String unit(Field field) {
        return field.unit().equals(Field.LENGTH) ? form.value("unit") : field.unit();
    }

    /** The words that explain the field, for a screen reader; absent where there are none. */
    public @Nullable String describedBy(Field field) {
        String hint = field.hint().isEmpty() ? "" : field.id() + "-hint";
        String ids = (isFaulty(field) ? field.id() + "-wrong " : "") + hint;
        return ids.isBlank() ? null : ids.strip();
    }
}
