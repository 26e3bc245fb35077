package stretchwright.make;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import stretchwright.fabric.Fabric;
import stretchwright.ground.Findings;
import stretchwright.ground.Part;
import stretchwright.intake.Contrast;
import stretchwright.intake.ContrastKeys;
import stretchwright.intake.Echo;
import stretchwright.intake.MakeFile;
import stretchwright.intake.Nearest;
import stretchwright.lay.ClothLay;
import stretchwright.lay.Placed;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Piece;

/** Which pieces of a make are cut from which of its cloths, and the lays on them: the fabric's first, then the contrasts'. */
public final class Cloths {
    private static final String MATCH = "style.lay.match print at";

    private Cloths() {}

    /** Empty, with findings, where a contrast names what the pattern does not have, or a piece fits on no cloth. */
    static Optional<List<ClothLay>> laid(Pattern pattern, MakeFile make, Stages stages, Findings findings) {
        List<Piece> own = make.laidPieces(pattern);
        mustMatch(pattern, make, findings);
        if (!findings.isEmpty()) {
            return Optional.empty();
        }
        List<ClothLay> out = new ArrayList<>();
        lay(own, make.cloth(), make, stages, findings).map(l -> worn(l, make)).ifPresent(out::add);
        for (int i = 0; i < make.contrasts().size(); i++) {
            Contrast c = make.contrasts().get(i);
            List<Piece> pieces = make.laid(c.pieces(pattern));
            Findings here = new Findings(make.file(), make.unit());
            lay(pieces, c.fabric(), make, stages, here).map(l -> worn(l, make)).ifPresent(out::add);
            String key = key(i);
            here.all().forEach(f -> findings.add(f.key().replaceFirst("^fabric", key), f.wrong(), f.right()));
        }
        return findings.isEmpty() ? Optional.of(out) : Optional.empty();
    }

    /** The same with the pieces put as they were kept, wherever that holds. */
    static List<ClothLay> put(List<ClothLay> usual, Map<Integer, Placed> places, MakeFile make, Stages stages) {
        List<ClothLay> out = new ArrayList<>(usual);
        places.forEach((cloth, placed) -> {
            if (cloth < usual.size()) {
                ClothLay at = usual.get(cloth);
                Fabric fabric = fabric(cloth, make);
                new Laid(at, fabric, make.style().lay())
                        .instead(placed)
                        .map(lay -> new ClothLay(
                                at.fabric(), at.pieces(), lay, stages.cloth(at.pieces(), fabric, make, lay)))
                        .ifPresent(lay -> out.set(cloth, lay));
            }
        });
        return List.copyOf(out);
    }

    /** The fabric, or the contrast with that number less one. */
    static Fabric fabric(int cloth, MakeFile make) {
        return cloth == 0 ? make.cloth() : make.contrasts().get(cloth - 1).fabric();
    }

    /** Findings where what is asked of the cloths names what the pattern does not have. */
    public static void mustMatch(Pattern pattern, MakeFile make, Findings findings) {
        mustBeThere(pattern, make, findings);
        printMustMeet(pattern, make, findings);
        if (make.ownPieces(pattern).isEmpty()) {
            findings.add(ContrastKeys.CONTRASTS.path(), Tell.said("contrast.all"), Tell.said("contrast.leave-out"));
        }
    }

    private static Optional<ClothLay> lay(
            List<Piece> pieces, Fabric fabric, MakeFile make, Stages stages, Findings findings) {
        return stages.lay(pieces, fabric, make, findings)
                .map(lay -> new ClothLay(fabric, pieces, lay, stages.cloth(pieces, fabric, make, lay)));
    }

    private static ClothLay worn(ClothLay laid, MakeFile make) {
        return new ClothLay(make.asWorn(laid.fabric()), laid.pieces(), laid.lay(), laid.use());
    }

    private static String key(int contrast) {
        return ContrastKeys.CONTRASTS.path() + "." + (contrast + 1);
    }

    /** The notch at which a print is to meet: on some piece of the pattern, and there must be a print. */
    private static void printMustMeet(Pattern pattern, MakeFile make, Findings findings) {
        Optional<String> notch = make.style().lay().matchAt();
        if (notch.isEmpty()) {
            return;
        }
        List<String> known = pattern.pieces().stream()
                .flatMap(p -> p.notches().stream())
                .map(n -> n.name().word())
                .distinct()
                .sorted()
                .toList();
        if (!known.contains(notch.get())) {
            findings.add(MATCH, Tell.said("notch.unknown"), Tell.said("notch.choose", words(known)));
        }
        boolean print = Stream.concat(
                        Stream.of(make.fabric()), make.contrasts().stream().map(Contrast::fabric))
                .anyMatch(f -> f.roll().repeatAlong() > 0);
        if (!print) {
            findings.add(MATCH, Tell.said("print.none"), Tell.said("print.repeat"));
        }
    }

    private static Part words(List<String> names) {
        return Part.listed(Part.Join.COMMA, names.stream().map(Part::text).toList());
    }

    private static void mustBeThere(Pattern pattern, MakeFile make, Findings findings) {
        List<String> names = pattern.pieces().stream().map(p -> p.name().word()).toList();
        for (int i = 0; i < make.contrasts().size(); i++) {
            for (String name : make.contrasts().get(i).pieces()) {
                if (!names.contains(name)) {
                    findings.add(
                            key(i) + ".pieces",
                            Tell.said("piece.unknown", Part.text(Echo.quoted(name))),
                            Nearest.to(name, names)
                                    .map(n -> Tell.said("piece.meant", Part.text(n)))
                                    .orElse(Tell.said("piece.known", words(names))));
                }
            }
        }
    }
}
