package stretchwright.workroom.archive;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stretchwright.workroom.store.Adopted;
import stretchwright.workroom.store.Edit;
import stretchwright.workroom.store.Everything;
import stretchwright.workroom.store.Links;
import stretchwright.workroom.store.Place;
import stretchwright.workroom.store.Saved;
import stretchwright.workroom.store.Store;
import stretchwright.workroom.store.Thing;
import stretchwright.workroom.store.Version;

/**
 * Another workroom on its way into this one: what is new, what says something else, what is the same. A thing is the same one by
 * its id, or else by its kind and name. What was undone or deleted over there is left there; what was here is here again.
 */
public final class Merge {
    /** One that is in both and says something else. */
    public record Other(Thing here, Version standing, Thing there, Version coming) {}

    private final Store here;
    private final Store there;
    private final List<Thing> fresh = new ArrayList<>();
    private final List<Other> others = new ArrayList<>();
    /** Of a thing over there the one it is here. */
    private final Map<String, String> ids = new HashMap<>();

    private Merge(Store here, Store there) {
        this.here = here;
        this.there = there;
    }

    public static Merge of(Store here, Store there) {
        Merge merge = new Merge(here, there);
        List<Thing> coming = new ArrayList<>();
        Everything.of(there, all -> all.things(coming::add));
        coming.stream().filter(t -> t.place() == Place.HERE).forEach(merge::look);
        return merge;
    }

    private void look(Thing coming) {
        Optional<Thing> same = here.thing(coming.id())
                .filter(t -> t.place() == Place.HERE)
                .or(() -> coming.kind().named() ? here.named(coming.kind(), coming.name()) : Optional.empty());
        ids.put(coming.id(), same.map(Thing::id).orElse(coming.id()));
        if (same.isEmpty()) {
            fresh.add(coming);
            return;
        }
        Version theirs = there.now(coming).orElseThrow();
        here.now(same.get())
                .filter(v -> !v.text().equals(theirs.text()))
                .ifPresent(v -> others.add(new Other(same.get(), v, coming, theirs)));
    }

    public List<Thing> fresh() {
        return List.copyOf(fresh);
    }

    public List<Other> others() {
        return List.copyOf(others);
    }

    /**
     * Stores it as one step; none where nothing is new.
     *
     * @param replace whether those that say something else get the coming text as their newest version
     */
    public List<Saved> take(boolean replace) {
        List<Adopted> adopted = fresh.stream().map(this::adopted).toList();
        List<Edit> edits = replace
                ? others.stream()
                        .map(o -> Edit.after(
                                        o.here(), o.here().name(), o.coming().text())
                                .with(linked(o.coming().links())))
                        .toList()
                : List.of();
        return adopted.isEmpty() && edits.isEmpty() ? List.of() : here.adopt("import", adopted, edits);
    }

    private Adopted adopted(Thing t) {
        List<Version> versions =
                there.versions(t.id()).stream().map(this::linked).toList();
        return new Adopted(
                new Thing(t.id(), t.kind(), t.name(), t.now(), t.place(), linked(t.links()), t.changed()), versions);
    }

    private Version linked(Version v) {
        return new Version(
                v.thing(), v.number(), v.name(), v.text(), linked(v.links()), v.figures(), v.program(), v.at());
    }

    private Links linked(Links l) {
        return new Links(id(l.origin()), id(l.wearer()), id(l.fabric()), id(l.boot()), id(l.style()));
    }

    private String id(String there) {
        return ids.getOrDefault(there, there);
    }
}
