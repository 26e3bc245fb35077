package stretchwright.workroom.store;

import java.util.List;

/** A thing of another workroom with all its versions, that is to be here as it was there. */
public record Adopted(Thing thing, List<Version> versions) {
    public Adopted {
        versions = List.copyOf(versions);
    }

    /** What stands of it, as what follows one that was here before. */
    Edit back(Thing known) {
        Version standing = versions.stream()
                .filter(v -> v.number() == thing.now())
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no version of " + thing.id() + " stands"));
        return new Edit(
                known.id(),
                known.kind(),
                known.now(),
                thing.name(),
                standing.text(),
                thing.links(),
                standing.figures(),
                standing.program(),
                thing.place());
    }
}
