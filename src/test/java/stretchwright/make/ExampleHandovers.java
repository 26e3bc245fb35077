package stretchwright.make;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import stretchwright.body.Body;
import stretchwright.exchange.Handover;
import stretchwright.ground.Findings;
import stretchwright.intake.MakeFile;
import stretchwright.pattern.Pattern;

/** The patterns of all examples, as they are handed to other programs. Drafted once. */
public final class ExampleHandovers {
    private static final Map<String, Handover> ALL = drafted();

    private ExampleHandovers() {}

    public static Map<String, Handover> all() {
        return ALL;
    }

    private static Map<String, Handover> drafted() {
        Map<String, Handover> out = new LinkedHashMap<>();
        try (Stream<Path> files = Files.list(Path.of("examples"))) {
            List<Path> makes =
                    files.filter(f -> f.toString().endsWith(".yaml")).sorted().toList();
            Stages rooms = new Rooms();
            for (Path file : makes) {
                MakeFile make = Make.read(file.toString(), Files.readAllBytes(file));
                Findings findings = new Findings("test");
                Body body = rooms.body(make.measured(), findings).orElseThrow();
                Pattern pattern = rooms.draft(body, make, findings).orElseThrow();
                out.put(file.getFileName().toString(), OpenFormats.handover(make, pattern));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out;
    }
}
