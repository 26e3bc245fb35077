package stretchwright.make;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import stretchwright.exchange.Exchange;
import stretchwright.exchange.Handover;
import stretchwright.pattern.Pattern;
import stretchwright.print.Document;

/** Joins the pattern in open formats to what is printed. */
final class OpenFormats {
    private OpenFormats() {}

    static List<Document> added(List<Document> printed, MakeFile make, Pattern pattern) {
        Stream<Document> open = Exchange.files(handover(make, pattern)).stream()
                .map(f -> new Document(f.name(), f.kind(), 1, f.content()));
        return Stream.concat(printed.stream(), open).toList();
    }

    static Handover handover(MakeFile make, Pattern pattern) {
        Map<String, String> cloths = new HashMap<>();
        make.contrasts()
                .forEach(c -> c.pieces().forEach(p -> cloths.put(p, c.fabric().name())));
        return new Handover(
                pattern,
                make.name(),
                make.wearer(),
                make.fabric().name(),
                cloths,
                make.fabric().stretchAcross(),
                make.fabric().stretchAlong());
    }
}
