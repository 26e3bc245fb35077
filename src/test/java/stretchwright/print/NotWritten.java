package stretchwright.print;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import stretchwright.body.Measure;
import stretchwright.body.PoseLength;
import stretchwright.body.SkinExtension;
import stretchwright.pattern.Dimension;
import stretchwright.pattern.LowerEnd;
import stretchwright.pattern.Machine;
import stretchwright.pattern.MarkName;
import stretchwright.pattern.Parts;
import stretchwright.pattern.Shift;
import stretchwright.pattern.Stitch;
import stretchwright.sewing.StepKind;
import stretchwright.sewing.Threading;

/** Letters in the code that look like English and are not told to people, or are the same in every language; why, and which. */
final class NotWritten {
    static final Map<String, List<String>> ALL = Map.ofEntries(
            Map.entry(
                    "keys of the make file, the same in every language",
                    List.of(
                            "fold across: [100 mm,",
                            "fold along: [100 mm,",
                            "hang across: [112 mm, 125 mm, 148 mm]",
                            "hang along: [[500 g, 134 mm]]",
                            "strip: {width across: 43 mm,",
                            "back across: [131 mm, 116 mm],",
                            "after 30 min: 151 mm}",
                            "wrap hip:",
                            "wrap calf:",
                            "pose lengths: {back waist to front waist: [70, 78]}",
                            "reaches pose: true",
                            "other papers",
                            "on hand",
                            "usable width",
                            "after wearing",
                            "after wearing:",
                            "date: ",
                            "symptom: ",
                            "change: ",
                            "name: ",
                            "stitch length",
                            "first pair.")),
            Map.entry(
                    "keys of the make file that are read off a cloth, or a first pair",
                    List.of(
                            "stitch length",
                            "fabric.on hand",
                            "fabric.hang across",
                            "fabric.hang along",
                            "fabric.wrap hip",
                            "fabric.wrap calf",
                            "fabric.shows through at",
                            "fabric.shrinkage across",
                            "fabric.shrinkage along",
                            "fabric.strip.back across",
                            "fabric.strip.width across",
                            "fabric.strip.after 30 min",
                            "fabric.strip.back along",
                            "fabric.strip.width along",
                            "fabric.reaches pose",
                            "first pair.")),
            Map.entry(
                    "classes of drawings and pages, and how a month is written",
                    List.of("lab est halo", "small halo", "thing new", "LLLL uuuu")),
            Map.entry(
                    "terms in the make file and the report that are written otherwise than their constants",
                    Stream.of(
                                    Stream.of("own profile", "%.1f %% off every girth"),
                                    Stream.of(Dimension.What.values())
                                            .map(Dimension.What::word)
                                            .filter(w -> w.matches(".*[-,:].*")),
                                    Stream.of(LowerEnd.Hem.values()).map(LowerEnd.Hem::word),
                                    Stream.of(Machine.values())
                                            .map(Machine::word)
                                            .filter(w -> w.contains(" ")),
                                    Stream.of(Parts.Pocket.Kind.values())
                                            .map(Parts.Pocket.Kind::word)
                                            .filter(w -> w.contains(" ")),
                                    Stream.of(Stitch.values())
                                            .map(Stitch::plainName)
                                            .filter(w -> w.contains(" ")),
                                    Stream.of(Shift.values()).map(Shift::word).filter(w -> w.contains("-")),
                                    Stream.of(MarkName.KEY_POCKET.word()))
                            .flatMap(words -> words)
                            .toList()),
            Map.entry(
                    "names of measures and lengths in the make file, of poses in the report: the same in every language",
                    Stream.of(
                                    Stream.of(Measure.values()).map(Measure::term),
                                    Stream.of(PoseLength.Course.values()).map(PoseLength.Course::word),
                                    SkinExtension.table().stream().map(SkinExtension::pose))
                            .flatMap(words -> words)
                            .filter(word -> word.contains(" "))
                            .distinct()
                            .toList()),
            Map.entry("folders as a system calls them", List.of("Library", "Application Support")),
            Map.entry("what a database or a disk is told, and says", List.of(" LIMIT ", "No space left")),
            Map.entry("of files that come with the program", List.of("alone mm", "navel ")),
            Map.entry(
                    "names of steps and threads in the make file and the report, the same in every language",
                    Stream.of(
                                    Stream.of("test "),
                                    Stream.of(StepKind.values()).map(StepKind::word),
                                    Stream.of(Threading.values())
                                            .map(Threading::word)
                                            .filter(w -> w.contains(" ")))
                            .flatMap(words -> words)
                            .toList()),
            Map.entry("names of paper", List.of("Letter", "Tabloid", "roll 420 mm", "roll ")),
            Map.entry(
                    "what is written into a make file: its keys",
                    List.of(
                            "[\\\"']?after wearing[\\\"']?\\\\s*:.*",
                            "answer: \\\"",
                            "\\\"answer\\\": \\\"",
                            "\\\"after wearing\\\": [{\\\"date\\\": \\\"",
                            "\\\", \\\"symptom\\\": \\\"",
                            "\\\"change\\\": {")),
            Map.entry("a mark of the program, a name inside it", List.of("Stretchwright", "stretchwright ", " again")),
            Map.entry(
                    "of pages and drawings, never seen",
                    List.of(
                            "a area",
                            "cut ",
                            "sew ",
                            "-wrong ",
                            "chalktext halo",
                            "small halo",
                            "lab est halo",
                            "big least",
                            "mark look",
                            "num est",
                            "thing new",
                            "LLLL uuuu",
                            "px \\\"Liberation Sans\\\",Arial,Helvetica,sans-serif}\\n",
                            "default-src 'none'; style-src 'sha256-",
                            "'; script-src 'sha256-",
                            "'; base-uri 'none'; form-action 'none'")),
            Map.entry(
                    "words of a file format",
                    List.of(
                            "ASTM/D13Proposal 1 Version: D 6673-04",
                            "Author: Stretchwright",
                            "Style Name: ",
                            "Sample Size: ",
                            "Units: METRIC",
                            "Piece Name: ",
                            "Size: ",
                            "Quantity: ",
                            "Material: ",
                            "Solid line",
                            "Artifact",
                            "Tabs")),
            Map.entry(
                    "words of the report and of tables, for other programs",
                    List.of(
                            "left and right",
                            "as drawn",
                            "as drawn and mirrored",
                            "hair loop",
                            "boot cover half",
                            "pad pocket",
                            "test strip across",
                            "test strip along",
                            " half",
                            "spare ",
                            "width ",
                            "seam ",
                            "taken across",
                            "taken along",
                            "taken crotch",
                            "taken waistband",
                            "taken hem",
                            "dimensions per size",
                            "row,name,figure,age,unit,stature,stature origin,stature spread",
                            " origin,",
                            " spread",
                            "over boot",
                            "figure skate")),
            Map.entry(
                    "headers of answers",
                    List.of(
                            "Host",
                            "Origin",
                            "Connection",
                            "text/html; charset=utf-8",
                            "default-src 'none'; img-src 'self'; style-src 'self'; script-src 'self'; connect-src 'self'; worker-src 'self'; form-action 'self';",
                            "camera=(), microphone=(), geolocation=(), payment=(), usb=(), serial=(), midi=(), hid=()",
                            " base-uri 'none'; frame-ancestors 'none'",
                            "default-src 'none'; style-src 'unsafe-inline'; frame-ancestors 'none'",
                            "default-src 'none'; style-src 'unsafe-inline'; script-src 'unsafe-inline';",
                            " base-uri 'none'; form-action 'none'; frame-ancestors 'none'")),
            Map.entry("a second cloth without a name, as the report calls it", List.of("Contrast ")),
            Map.entry("what the reader of files calls a text to itself", List.of("make file")),
            Map.entry("headings of notes of the program's own, which nobody sees", List.of("new make")),
            Map.entry(
                    "what is wrong with a lay, for who mends the program; the page has words of its own for it",
                    List.of(
                            "%.2f mm lie double of a spread %.2f mm wide",
                            "cloth with a direction or a repeat is folded crosswise",
                            "the lay is %.2f mm wide, the cloth %.2f mm",
                            "the floor of %.2f mm lies above the length of %.2f mm",
                            "%s %d reaches beyond the cloth",
                            "the grain of %s %d lies %s from the selvage, not %s",
                            "%s %d is turned by %.1f degrees",
                            "%s %d is wrongly %s",
                            "%s %d does not lie on the fold",
                            "%s %d goes through %d layers",
                            "%s %d lies on a flaw",
                            "%s %d reaches beyond the remnant",
                            "%s is nearer to %s than %.1f mm",
                            "the notch %s lies at %d heights of the print",
                            "%s overlaps %s",
                            "%s %d lies there twice",
                            "%s: %d as drawn and %d mirrored are cut, wanted are %d%s",
                            " in mirrored pairs")),
            Map.entry(
                    "kinds of lines and keys of flaws on the page's lay, never seen",
                    List.of(
                            " laid",
                            "chalked folded",
                            "chalked dots",
                            "chalked ends",
                            "from left",
                            "from end",
                            " held",
                            "paper over",
                            " picked",
                            " wrongly",
                            "name oncard onpaper",
                            "oncard onpaper f13 strong",
                            "oncard onpaper strong ",
                            "oncard onpaper ")),
            Map.entry("patterns of days", List.of("d.M. HH:mm", "d LLLL uuuu")),
            Map.entry(
                    "what the draft's additions and lines are called in the make and in the style sheet",
                    List.of("contrast panel", "side panel", "name onpiece", "grip quiet", "chalktext onpiece")),
            Map.entry("what only developers see", List.of(" pages, ", " bytes)", "no finding")),
            Map.entry(
                    "what the system says",
                    List.of(
                            "Broken pipe",
                            "No space left on device",
                            "Disk quota exceeded",
                            "File name too long",
                            "Read-only file system")),
            Map.entry(
                    "steps and threads inside the program",
                    List.of("write ", "lay aside", "lay worker", "lay worker ", "strip lay")));

    private NotWritten() {}
}
