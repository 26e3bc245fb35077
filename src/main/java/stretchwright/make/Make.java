package stretchwright.make;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.ForkJoinTask;
import stretchwright.body.Body;
import stretchwright.ground.BadInput;
import stretchwright.ground.Findings;
import stretchwright.ground.Numbers;
import stretchwright.ground.Progress;
import stretchwright.intake.MakeFile;
import stretchwright.intake.MakeReader;
import stretchwright.intake.YamlTree;
import stretchwright.lay.Lay;
import stretchwright.pattern.Pattern;
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
     * Measure, draft, check the fit, lay, plan the sewing, print.
     *
     * @throws BadInput where the measures or the cloth cannot become a pattern
     */
    public static Made run(MakeFile make, Progress progress) {
        return run(make, progress, ROOMS);
    }

    public static Optional<String> text(byte[] bytes, Findings findings) {
        if (bytes.length > MakeFile.LARGEST) {
            findings.add(
                    "", "the file is larger than 1 MB.", "A make file has a few thousand bytes; is it the right one?");
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
            findings.add(
                    "",
                    "the file is not UTF-8: byte " + in.position() + " (counted from 0) fits no letter.",
                    "Save it as text in UTF-8.");
            return Optional.empty();
        }
        String text = out.flip().toString();
        return Optional.of(text.startsWith("\uFEFF") ? text.substring(1) : text);
    }

    static Made run(MakeFile make, Progress progress, Stages stages) {
        Session session = Session.of(make, stages);
        ForkJoinTask<?> prepared = ForkJoinPool.commonPool().submit(Printing::prepare);
        Body body = session.body();
        long given = body.values().keySet().stream().filter(body::isGiven).count();
        progress.say("measure: " + given + " measures given, " + (body.values().size() - given) + " estimated");
        Pattern pattern = session.pattern();
        progress.say("draft: " + pattern.pieces().size() + " pieces, "
                + pattern.seams().size() + " seams");
        progress.say("fit: " + Verdicts.count(session.advised()));
        // nothing of the sewing hangs on the lay, nor the other way round
        ForkJoinTask<SewingPlan> planned = ForkJoinPool.commonPool().submit(session::sewing);
        session.lays().forEach(l -> progress.say(said(l.lay())));
        planned.quietlyJoin();
        SewingPlan sewing = session.sewing();
        progress.say("sewing: " + sewing.operations().size() + " operations, " + Numbers.plain(sewing.minutes())
                + " minutes");
        prepared.quietlyJoin();
        Made made = session.made(make.print().files());
        progress.say("print: " + made.documents().size() + " files");
        return made;
    }

    private static String said(Lay lay) {
        return "lay: " + lay.method().word() + ", " + Numbers.plain(lay.length() / 1000) + " m, "
                + Numbers.plain(lay.use() * 100) + " % of the cloth used";
    }
}
