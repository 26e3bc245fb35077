package stretchwright.workroom.store;

import java.util.List;

/** A thing of another workroom with all its versions, that is to be here as it was there. */
public record Adopted(Thing thing, List<Version> versions) {
    public Adopted {
        versions = List.copyOf(versions);
    }
}
