package stretchwright.web.sew;

import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import stretchwright.sewing.SewingPlan.Operation;
import stretchwright.web.frame.Opened;

/** The drawing of a step, among the files of its make, with its own description. */
final class StepPictures {
    private static final Pattern DESCRIPTION = Pattern.compile("<desc>([^<]*)</desc>");

    private StepPictures() {}

    static Optional<SewPage.Drawing> of(Opened make, Operation step) {
        return make.session()
                .step(step.step())
                .map(d -> new SewPage.Drawing(
                        make.address() + "/sew/" + step.step() + "/picture.svg",
                        shows(new String(d.bytes(), StandardCharsets.UTF_8))));
    }

    private static String shows(String svg) {
        Matcher m = DESCRIPTION.matcher(svg);
        return m.find() ? plain(m.group(1)) : "";
    }

    private static String plain(String escaped) {
        return escaped.replace("&lt;", "<")
                .replace("&gt;", ">")
                .replace("&quot;", "\"")
                .replace("&apos;", "'")
                .replace("&amp;", "&");
    }
}
