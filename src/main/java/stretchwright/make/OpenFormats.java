package stretchwright.make;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.stream.Stream;
import stretchwright.exchange.Exchange;
import stretchwright.exchange.Handover;
import stretchwright.exchange.OpenFile;
import stretchwright.ground.Document;
import stretchwright.intake.MakeFile;
import stretchwright.pattern.Nest;
import stretchwright.pattern.Pattern;
import stretchwright.print.Printable;
import stretchwright.print.kit.ClothName;
import stretchwright.print.kit.FileGroup;

/** Joins the pattern in open formats to what is printed. */
public final class OpenFormats {
    private OpenFormats() {}

    static List<Printable> added(List<Printable> printed, MakeFile make, Pattern pattern) {
        Handover handover = handover(make, pattern);
        OptionalInt preview = make.print().preview();
        Stream<Printable> open = Exchange.NAMES.stream()
                .map(name -> new Printable(
                        name, FileGroup.EXCHANGE, () -> document(Exchange.file(name, handover, preview))));
        return Stream.concat(printed.stream(), open).toList();
    }

    public static Document nest(Nest nest, List<Handover> sizes) {
        return document(Exchange.nest(nest, sizes));
    }

    private static Document document(OpenFile file) {
        return new Document(file.name(), file.kind(), 1, file.content());
    }

    public static Handover handover(MakeFile make, Pattern pattern) {
        return handover(make, pattern, make.wearer());
    }

    /** Names of the contrasts by the names of the pieces cut from them. */
    public static Map<String, String> cloths(MakeFile make) {
        Map<String, String> cloths = new HashMap<>();
        make.contrasts().forEach(c -> c.pieces().forEach(p -> cloths.put(p, ClothName.whole(c.fabric()))));
        return cloths;
    }

    /** @param wearer or the name of the size */
    public static Handover handover(MakeFile make, Pattern pattern, String wearer) {
        return new Handover(
                pattern,
                make.name(),
                wearer,
                ClothName.whole(make.fabric()),
                cloths(make),
                make.cloth().test().stretchAcross(),
                make.cloth().test().stretchAlong());
    }
}
