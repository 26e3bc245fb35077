package stretchwright.web.draft;

import stretchwright.web.draw.Outline;
import stretchwright.web.form.Form;

/** A slab of chalk: a slider for finger, mouse and keys that says its value in words. */
record Slab(Spread spread, Form form, double target) {
    private static final String LARGE =
            "M-12 -12H11Q15 -12 15.5 -8L17 7Q17.3 12 13 12H-13Q-17.3 12 -17 7L-15.5 -8Q-15 -12 -11 -12Z";

    /** At a level: there are many, and they are to be quiet. */
    private static final String SMALL =
            "M-8 -8H7.5Q10 -8 10.3 -5.5L11.3 4.5Q11.6 8 8.7 8H-8.7Q-11.6 8 -11.3 4.5L-10.3 -5.5Q-10 -8 -7.5 -8Z";

    private static final String UP_DOWN = "M0 -6.5V6.5M-4 -3L0 -7L4 -3M-4 3L0 7L4 3";
    private static final String ACROSS = "M-7 0H7M-3.5 -4L-7.5 0L-3.5 4M3.5 -4L7.5 0L3.5 4";
    private static final String ACROSS_SMALL = "M-5 0H5M-2.5 -3L-5.5 0L-2.5 3M2.5 -3L5.5 0L2.5 3";

    void draw(Handle handle, double x, double y, double pxPerMm) {
        double now = handle.value(form);
        String told = spread.make().voice().say(handle.now(now));
        boolean small = Handle.LEVELS.contains(handle);
        boolean across = handle.way() == Handle.Way.OUT;
        spread.svg()
                .open(
                        "g",
                        "class",
                        small ? "grip quiet" : "grip",
                        "transform",
                        "translate(" + Outline.px(x) + " " + Outline.px(y) + ")",
                        "role",
                        "slider",
                        "tabindex",
                        "0",
                        "id",
                        "grip-" + handle.id() + (spread.sheet().wide() ? "" : "-small"),
                        "aria-label",
                        spread.make().voice().say(handle.spoken()),
                        "aria-orientation",
                        across ? "horizontal" : "vertical",
                        "aria-valuemin",
                        Long.toString(Math.round(handle.least())),
                        "aria-valuemax",
                        Long.toString(Math.round(handle.most())),
                        "aria-valuenow",
                        Long.toString(Math.round(now)),
                        "aria-valuetext",
                        told,
                        "data-key",
                        handle.key(),
                        "data-mm",
                        Double.toString(now),
                        "data-usual",
                        Double.toString(handle.usual()),
                        "data-px",
                        Outline.px(pxPerMm * 1000),
                        "data-way",
                        handle.way().name());
        String half = Outline.px(-target / 2);
        String whole = Outline.px(target);
        spread.svg().empty("rect", "class", "hit", "x", half, "y", half, "width", whole, "height", whole);
        spread.svg().path("slab", small ? SMALL : LARGE);
        spread.svg().path("arrow", small ? ACROSS_SMALL : across ? ACROSS : UP_DOWN);
        spread.svg().close("g");
        if (!handle.isUsual(now) && spread.sheet().wide()) {
            told(handle, x, y, told);
        }
    }

    /** After a slab that moves up and down; before the band's, whose line rises behind; on the piece before one that moves outwards. */
    private void told(Handle handle, double x, double y, String told) {
        boolean after = handle.way() != Handle.Way.OUT && handle != Handle.BAND;
        double up = handle == Handle.AT_HEM ? -10 : after ? 22 : 5;
        spread.svg()
                .text(
                        handle.way() == Handle.Way.OUT ? "chalktext onpiece" : "chalktext halo",
                        after ? x + 24 : x - (handle == Handle.BAND ? 24 : 30),
                        y + up,
                        after ? "start" : "end",
                        told);
    }
}
