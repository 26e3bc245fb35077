package stretchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stretchwright.workroom.Incoming;
import stretchwright.workroom.Workroom;
import stretchwright.workroom.store.Address;
import stretchwright.workroom.store.Thing;

/** What a name means to one command. */
@Tag("slow")
class NamedTest {
    /** A make takes seconds: what somebody else saves in between is another version, and what was made does not belong to it. */
    @Test
    void aMakeIsTheVersionThatWasFirstSeen(@TempDir Path folder) throws IOException {
        Address at = new Address.Folder(folder.resolve("room"));
        try (Named named = new Named(() -> at);
                Workroom other = Workroom.open(at)) {
            Thing make = other.incoming("e.yaml", Files.readAllBytes(Path.of("examples/evening-practice.yaml")))
                    .take(Incoming.Same.ASK);
            Workroom.Stored first = named.make("Evening practice").orElseThrow();
            other.change("save", make, first.version().text().replace("hold: medium", "hold: firm"));
            assertThat(named.make("Evening practice")).contains(first);
            named.room().store().figures(first.thing(), "{}", "0");
            assertThat(other.store().version(make.id(), 1).orElseThrow().figures())
                    .contains("{}");
            assertThat(other.store().version(make.id(), 2).orElseThrow().figures())
                    .isEmpty();
        }
    }
}
