package stretchwright.web.frame;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import stretchwright.ground.Part;
import stretchwright.workroom.Differences;
import stretchwright.workroom.store.Saved;

/**
 * Two changed one make: the later is told, shown the difference, and may let either stand. Both are kept.
 *
 * @param mine the number of the later one in the history
 * @param next under which it would be kept
 */
public record Clashed(Frame frame, Opened make, String told, List<String> lines, long mine, int next) {
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm");

    public Clashed {
        lines = List.copyOf(lines);
    }

    static void show(Context ctx, Opened make, Saved.Clash clash, int next) {
        String at = CLOCK.format(Instant.ofEpochMilli(clash.theirs().at()).atZone(ZoneId.systemDefault()));
        List<String> lines = Differences.between(
                        clash.theirs().text(), clash.yours().text())
                .stream()
                .map(make.voice()::say)
                .toList();
        ctx.status(HttpStatus.CONFLICT);
        Pages.show(
                ctx,
                "clashed.jte",
                new Clashed(
                        Frame.of(make, Frame.Stop.DRAFT),
                        make,
                        make.voice().say(Tell.said("clashed.told", Part.text(at))),
                        lines,
                        clash.yours().number(),
                        next));
    }

    /** "Keep mine as version 5". */
    public String keepMine() {
        return make.voice().say(Tell.said("clashed.mine", Part.count(next)));
    }

    public String say(String key) {
        return make.voice().say(Tell.said(key));
    }
}
