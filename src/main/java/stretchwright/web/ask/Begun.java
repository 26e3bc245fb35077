package stretchwright.web.ask;

import java.util.Optional;
import java.util.stream.Stream;
import stretchwright.ground.Part;
import stretchwright.ground.Said;
import stretchwright.web.form.Form;
import stretchwright.web.frame.Bench;
import stretchwright.workroom.store.Kind;
import stretchwright.workroom.store.Place;
import stretchwright.workroom.store.Store;
import stretchwright.workroom.store.Thing;

/**
 * A new make whose questions were left before the last one.
 *
 * @param address of the question that comes next
 * @param said whose it is, and how far it is
 * @param at when it was last answered, in milliseconds since 1970
 */
public record Begun(String address, Said said, long at) {
    /** Notes with other words around those of the heading are passed by. */
    private static final int LOOKED_THROUGH = 20;

    /** The one that was answered last; empty where none was left. */
    public static Optional<Begun> of(Bench bench) {
        Store store = bench.room().store();
        return store.list(Kind.NOTE, Place.HERE, Answers.HEADING, 0, LOOKED_THROUGH).stream()
                .filter(t -> t.name().equals(Answers.HEADING))
                .findFirst()
                .map(note -> of(store, note));
    }

    private static Begun of(Store store, Thing note) {
        Form form = Answers.of(store, note.id()).form();
        Question next = Stream.of(Question.values())
                .filter(q -> q.keys().stream().anyMatch(form::has))
                .reduce((one, later) -> later)
                .flatMap(q -> q.next(form))
                .orElse(Question.WHO);
        Part number = Part.count(next.number());
        Part all = Part.count(Question.count(form));
        String who = form.value("wearer.name");
        Said said = who.isBlank()
                ? Tell.said("start.begun", number, all)
                : Tell.said("start.begun-for", Part.text(who), number, all);
        return new Begun("/new/" + next.number() + "?of=" + note.id(), said, note.changed());
    }
}
