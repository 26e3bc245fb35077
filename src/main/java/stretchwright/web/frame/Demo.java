package stretchwright.web.frame;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import java.util.Optional;
import stretchwright.workroom.Workroom;
import stretchwright.workroom.store.Kind;
import stretchwright.workroom.store.Links;
import stretchwright.workroom.store.Place;
import stretchwright.workroom.store.Thing;
import stretchwright.workroom.store.Version;

/** A finished make of an invented wearer, to look at. It is in no workroom, so it never mixes with what is the maker's own. */
public final class Demo {
    public static final String ID = "demo";

    private static final String TEXT = text();

    private Demo() {}

    static Workroom.Stored stored() {
        String name = TEXT.lines()
                .filter(l -> l.startsWith("name: "))
                .findFirst()
                .orElseThrow()
                .substring("name: ".length());
        return new Workroom.Stored(
                new Thing(ID, Kind.MAKE, name, 1, Place.HERE, Links.NONE, 0),
                new Version(ID, 1, name, TEXT, Links.NONE, Optional.empty(), "", 0));
    }

    private static String text() {
        try (InputStream in = Objects.requireNonNull(Demo.class.getResourceAsStream("/stretchwright/web/demo.yaml"))) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
