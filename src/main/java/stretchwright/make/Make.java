package stretchwright.make;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.ForkJoinTask;
import stretchwright.body.Body;
import stretchwright.fit.FitReport;
import stretchwright.ground.BadInput;
import stretchwright.ground.Findings;
import stretchwright.ground.Part;
import stretchwright.ground.Progress;
import stretchwright.ground.Said;
import stretchwright.ground.Voice;
import stretchwright.intake.FirstPairKeys;
import stretchwright.intake.MakeFile;
import stretchwright.intake.MakeReader;
import stretchwright.intake.Tree;
import stretchwright.intake.YamlTree;
import stretchwright.lay.ClothLay;
import stretchwright.lay.Lay;
import stretchwright.print.Printing;
import stretchwright.sewing.SewingPlan;

/** A make file through all stages: read it, then run it. Pure: bytes in, values and bytes out. */
public final class Make {
    private static final Stages ROOMS = new Rooms();

    private Make() {}

    /**
     * Reads a make file.
     *
     * @param fileName as the user named it; for the findings
     * @throws BadInput with everything that is wrong, not the first only
     */
    public static MakeFile read(String fileName, byte[] bytes) {
        Findings findings = new Findings(fileName);
        Optional<MakeFile> make = text(bytes, findings)
                .flatMap(text -> YamlTree.read(text, findings))
                .flatMap(keys -> MakeReader.read(fileName, keys, findings));
        findings.throwIfAny();
        return make.orElseThrow();
    }

    /**
     * The same make with what was read of its first pair in another file.
     *
     * @param bytes of a make file that reads without a finding
     * @param marks file to which findings belong
     */
    public static MakeFile read(String fileName, byte[] bytes, String marks, byte[] marked) {
        Findings findings = new Findings(marks);
        Optional<Tree.Keys> own = text(bytes, findings).flatMap(text -> YamlTree.read(text, findings));
        Optional<Tree.Keys> other = text(marked, findings).flatMap(text -> YamlTree.read(text, findings));
        Optional<MakeFile> make =
                own.flatMap(o -> other.flatMap(m -> MakeReader.read(fileName, FirstPairKeys.with(o, m), findings)));
        findings.throwIfAny();
        return make.orElseThrow();
    }

    /**
     * Measure, draft, check the fit, lay, plan the sewing, print.
     *
     * @throws BadInput where the measures or the cloth cannot become a pattern
     */
    public static Made run(MakeFile make, Progress progress) {
        return run(make, progress, ROOMS);
    }

    public static Optional<String> text(byte[] bytes, Findings findings) {
        if (bytes.length > MakeFile.LARGEST) {
            findings.add("", Tell.said("file.large"), Tell.said("file.few-thousand"));
            return Optional.empty();
        }
        return utf8(bytes, findings);
    }

    /** UTF-8, strictly; a byte order mark is let through. */
    public static Optional<String> utf8(byte[] bytes, Findings findings) {
        CharsetDecoder decoder = StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
        ByteBuffer in = ByteBuffer.wrap(bytes);
        CharBuffer out = CharBuffer.allocate(bytes.length + 1);
        CoderResult result = decoder.decode(in, out, true);
        if (result.isError()) {
            findings.add("", Tell.said("file.not-utf8", Part.count(in.position())), Tell.said("file.save"));
            return Optional.empty();
        }
        String text = out.flip().toString();
        return Optional.of(text.startsWith("\uFEFF") ? text.substring(1) : text);
    }

    static Made run(MakeFile make, Progress progress, Stages stages) {
        Voice voice = Voice.of(make.unit());
        Session session = Session.of(make, stages);
        ForkJoinTask<?> prepared = ForkJoinPool.commonPool().submit(Printing::prepare);
        progress.say(voice.say(measured(session.body())));
        progress.say(voice.say(Tell.said(
                "progress.draft",
                Part.count(session.pattern().pieces().size()),
                Part.count(session.pattern().seams().size()))));
        // nothing of verdicts and sewing hangs on the lay, nor the other way round
        ForkJoinTask<FitReport> advised = ForkJoinPool.commonPool().submit(session::advised);
        ForkJoinTask<SewingPlan> planned = ForkJoinPool.commonPool().submit(session::sewing);
        List<ClothLay> lays = session.lays();
        advised.quietlyJoin();
        progress.say(voice.say(Tell.said("progress.fit", session.advised().count())));
        lays.forEach(l -> progress.say(voice.say(laid(l.lay()))));
        planned.quietlyJoin();
        progress.say(voice.say(Tell.said(
                "progress.sewing",
                Part.count(session.sewing().operations().size()),
                new Part.Minutes(session.sewing().minutes(), 1))));
        prepared.quietlyJoin();
        Made made = session.made(make.print().files());
        int files = made.documents().size();
        progress.say(voice.say(
                files == 1 ? Tell.said("progress.print-one") : Tell.said("progress.print", Part.count(files))));
        return made;
    }

    private static Said measured(Body body) {
        long given = body.values().keySet().stream().filter(body::isGiven).count();
        Part estimated = Part.count(body.values().size() - given);
        return given == 1
                ? Tell.said("progress.measure-one", estimated)
                : Tell.said("progress.measure", Part.count(given), estimated);
    }

    private static Said laid(Lay lay) {
        return Tell.said("progress.lay", lay.method().said(), Part.cloth(lay.length()), Part.share(lay.use(), 1));
    }
}
