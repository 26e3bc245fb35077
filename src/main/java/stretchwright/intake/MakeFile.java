package stretchwright.intake;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import stretchwright.body.Figure;
import stretchwright.body.Measure;
import stretchwright.body.Measured;
import stretchwright.boot.Boot;
import stretchwright.fabric.Fabric;
import stretchwright.ground.Unit;
import stretchwright.pattern.Crosswise;
import stretchwright.pattern.Machine;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Piece;
import stretchwright.pattern.Style;
import stretchwright.sewing.SewingTerms;

/**
 * A make file that was read without a finding.
 *
 * @param file as the user named it
 * @param name of the make
 * @param unit of bare numbers in the file, and of what people are shown
 * @param wearer a name or code; may be empty
 * @param measured what was measured of the wearer, in mm
 * @param fabric as it was tested; the accessor gives it as it is worn
 * @param contrasts other colours of the fabric, and what is cut from them
 * @param sewing what there is to sew with, and what else was said about it
 * @param print how it is put on paper
 * @param seed of the search for the lay
 * @param worn what was changed after wearing, oldest first; the style holds it already
 * @param answers what the file says, key by key; of keys without a place in the records above the only one
 */
public record MakeFile(
        String file,
        String name,
        Unit unit,
        String wearer,
        Measured measured,
        Fabric fabric,
        List<Contrast> contrasts,
        Optional<Boot> boot,
        Style style,
        SewingTerms sewing,
        PrintTerms print,
        long seed,
        List<WearingEntry> worn,
        Answers answers) {

    /** Version of the format that is read here. */
    public static final int VERSION = 1;

    /** Larger files are refused unread: a make file has two or three thousand bytes. */
    public static final int LARGEST = 1024 * 1024;

    public MakeFile {
        contrasts = List.copyOf(contrasts);
        worn = List.copyOf(worn);
    }

    /** As it is worn: across goes round the leg. */
    @Override
    public Fabric fabric() {
        return asWorn(fabric);
    }

    /** A cloth of this make, told as it is worn. */
    public Fabric asWorn(Fabric tested) {
        return crosswise() ? tested.turned() : tested;
    }

    /** As it was tested and lies on the table: along runs with the selvage. */
    public Fabric cloth() {
        return fabric;
    }

    private boolean crosswise() {
        return style.lay().crosswise();
    }

    public MakeFile with(Style other) {
        return new MakeFile(
                file, name, unit, wearer, measured, fabric, contrasts, boot, other, sewing, print, seed, worn, answers);
    }

    /** The same make in another cloth, told as it is worn. */
    public MakeFile with(Fabric other) {
        Fabric tested = crosswise() ? other.turned() : other;
        return new MakeFile(
                file, name, unit, wearer, measured, tested, contrasts, boot, style, sewing, print, seed, worn, answers);
    }

    /** The same make for other measures. */
    MakeFile with(Measured other) {
        return new MakeFile(
                file, name, unit, wearer, other, fabric, contrasts, boot, style, sewing, print, seed, worn, answers);
    }

    public MakeFile with(Boot other) {
        return new MakeFile(
                file,
                name,
                unit,
                wearer,
                measured,
                fabric,
                contrasts,
                Optional.of(other),
                style,
                sewing,
                print,
                seed,
                worn,
                answers);
    }

    public MakeFile with(Set<Machine> other) {
        return new MakeFile(
                file,
                name,
                unit,
                wearer,
                measured,
                fabric,
                contrasts,
                boot,
                style,
                sewing.with(other),
                print,
                seed,
                worn,
                answers);
    }

    /** The same with another answer under a key that no record has a place for. */
    MakeFile with(Answers other) {
        return new MakeFile(
                file, name, unit, wearer, measured, fabric, contrasts, boot, style, sewing, print, seed, worn, other);
    }

    /** The same make, put on paper otherwise. */
    public MakeFile with(PrintTerms other) {
        return new MakeFile(
                file, name, unit, wearer, measured, fabric, contrasts, boot, style, sewing, other, seed, worn, answers);
    }

    /** With one more change after wearing, already in the style. */
    public MakeFile worn(Style changed, List<WearingEntry> history) {
        return new MakeFile(
                file, name, unit, wearer, measured, fabric, contrasts, boot, changed, sewing, print, seed, history,
                answers);
    }

    /** The pieces cut from the fabric itself. */
    public List<Piece> ownPieces(Pattern pattern) {
        return pattern.pieces().stream()
                .filter(p -> contrasts.stream()
                        .noneMatch(c -> c.pieces().contains(p.name().word())))
                .toList();
    }

    /** The same as they lie on the cloth. */
    public List<Piece> laidPieces(Pattern pattern) {
        return laid(ownPieces(pattern));
    }

    /** Pieces as they lie on the cloth. */
    public List<Piece> laid(List<Piece> pieces) {
        return crosswise() ? pieces.stream().map(Crosswise::laid).toList() : pieces;
    }

    /** In the order of the file; never empty. */
    public Set<Machine> machines() {
        return sewing.machines();
    }

    public Figure figure() {
        return measured.figure();
    }

    public OptionalDouble age() {
        return measured.age();
    }

    /** Of each measure taken its mean, mm. */
    public Map<Measure, Double> given() {
        return measured.means();
    }
}
