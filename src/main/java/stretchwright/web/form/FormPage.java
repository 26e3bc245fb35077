package stretchwright.web.form;

import java.util.List;
import org.jspecify.annotations.Nullable;
import stretchwright.ground.Finding;
import stretchwright.ground.Said;
import stretchwright.ground.Unit;
import stretchwright.ground.Voice;
import stretchwright.intake.Keys;
import stretchwright.intake.Kind.Input;
import stretchwright.intake.Table;

/** The form as the page shows it: values as typed, each finding where it belongs. */
public final class FormPage {
    private final Form form;
    private final Voice voice;
    private final List<Group> groups;
    private final List<Field> fields;
    private final Placed placed;

    public FormPage(Form form, List<Finding> findings) {
        this(form, findings, List.of());
    }

    /** @param left fields that still hold the example's values, to be asked about */
    public FormPage(Form form, List<Finding> findings, List<String> left) {
        this(form, findings, left, Table.keys());
    }

    public FormPage(Form form, List<Finding> findings, List<String> left, Keys table) {
        this.form = form;
        Unit unit = Unit.of(form.value("unit")).orElse(Unit.CM);
        this.voice = Voice.of(unit);
        this.groups = Groups.of(table, form);
        this.fields = groups.stream().flatMap(Group::all).toList();
        this.placed = new Placed(groups, unit);
        findings.forEach(placed::place);
    }

    /** A sentence of this room. */
    public static String said(String key) {
        return Voice.plain().say(Tell.said(key));
    }

    public String say(String key) {
        return voice.say(Tell.said(key));
    }

    public String say(Said said) {
        return voice.say(said);
    }

    public List<Group> groups() {
        return groups;
    }

    /** Folded away until something in it is typed or wrong. */
    public boolean isOpen(Group group) {
        return !group.closed()
                || group.parts().anyMatch(this::isFaulty)
                || group.all().anyMatch(f -> isFaulty(f) || form.has(f.key()));
    }

    public boolean hasFindings() {
        return placed.hasAny();
    }

    public List<String> onTop() {
        return placed.onTop();
    }

    /** The parts with a finding of their own, in the order of the page. */
    public List<Group> faultyParts() {
        return groups.stream().flatMap(Group::parts).filter(this::isFaulty).toList();
    }

    public String problem(Group part) {
        return placed.at(part.key());
    }

    public boolean isFaulty(Group part) {
        return !placed.at(part.key()).isEmpty();
    }

    /** The fields with a finding, in the order of the page. */
    public List<Field> faulty() {
        return fields.stream().filter(this::isFaulty).toList();
    }

    public String problem(Field field) {
        return placed.at(field.key());
    }

    public boolean isFaulty(Field field) {
        return !placed.at(field.key()).isEmpty();
    }

    /** The first field with a finding takes the focus. */
    public boolean isFirst(Field field) {
        return faulty().stream().findFirst().filter(field::equals).isPresent();
    }

    public String value(Field field) {
        return form.value(field.key());
    }

    public boolean ticked(Field field, String option) {
        return form.ticked(field.key(), option);
    }

    /** Whether the words of a field are all that it takes. */
    public boolean isChoice(Field field) {
        return field.input() == Input.CHOICE || field.input() == Input.CHECK;
    }

    /** What stands beside the field. */
    public String unit(Field field) {
        boolean words = !field.options().isEmpty();
        return words ? "" : field.isLength() ? form.value("unit") : field.symbol();
    }

    /** The words that explain the field, for a screen reader. */
    public @Nullable String describedBy(Field field) {
        return (isFaulty(field) ? field.id() + "-wrong " : "") + field.id() + "-hint";
    }
}
