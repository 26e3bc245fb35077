package stretchwright.ground;

import java.util.List;

/** What fills a gap of a sentence: a value with its kind, so that each door can word it in its own unit and language. */
public sealed interface Part
        permits Said,
                Part.Length,
                Part.Span,
                Part.Share,
                Part.Pressure,
                Part.Force,
                Part.Minutes,
                Part.Number,
                Part.Fixed,
                Part.Text,
                Part.Listed,
                Part.Capital,
                Part.Clause {

    /** In which unit a length is told. */
    enum Told {
        /** Of bodies, pieces, boots: in the maker's own unit. */
        OWN,
        /** As OWN, without the unit: it stands right before, "960 mm (give or take 12)". */
        BARE,
        /** To be sewn or cut by: in mm, for makers in inches with what their ruler shows behind it. */
        SEWN,
        /** Of needles, stitches, paper: in mm everywhere. */
        MM,
        /** Of cloth along the roll: in metres, or in yards for makers in inches. */
        CLOTH,
        /** As the maker would write it: in the maker's own unit with no more decimals than it has, two at most. */
        WRITTEN
    }

    /**
     * A length.
     *
     * @param mm millimetres
     * @param decimals of millimetres, where they are told in mm
     * @param signed with its sign, also above zero
     * @param rounded to the nearest, or as a limit so that what is told keeps it
     */
    record Length(double mm, Told told, int decimals, boolean signed, Rounded rounded) implements Part {
        public Length(double mm, Told told, int decimals, boolean signed) {
            this(mm, told, decimals, signed, Rounded.NEAREST);
        }

        /** As the least that is allowed: what is told is no less. */
        public Length atLeast() {
            return new Length(mm, told, decimals, signed, Rounded.UP);
        }

        /** As the most that is allowed: what is told is no more. */
        public Length atMost() {
            return new Length(mm, told, decimals, signed, Rounded.DOWN);
        }
    }

    /** How a length becomes one that a tape shows. */
    enum Rounded {
        NEAREST,
        UP,
        DOWN
    }

    /** From one length to another: "572 to 602 mm". */
    record Span(Length from, Length to) implements Part {}

    /** 0.15 is "15 %". */
    record Share(double share, int decimals, boolean signed) implements Part {}

    /** @param kilopascals told in mmHg, as people who wear pressure know it */
    record Pressure(double kilopascals, int decimals) implements Part {}

    record Force(double newtons, int decimals) implements Part {}

    record Minutes(double minutes, int decimals) implements Part {}

    /** A count, or a plain number of another kind; up to so many decimals, without idle zeros. */
    record Number(double value, int decimals) implements Part {}

    /** A plain number with just so many decimals: its zeros tell how exact it is. */
    record Fixed(double value, int decimals) implements Part {}

    /** Words of the maker's own, such as a name: never translated. */
    record Text(String text) implements Part {}

    /** Several, joined as the language joins them. */
    record Listed(List<Part> parts, Join join) implements Part {
        public Listed {
            parts = List.copyOf(parts);
        }
    }

    enum Join {
        /** a, b, c */
        COMMA,
        /** a, b and c */
        AND,
        /** a, b or c */
        OR,
        /** a; or b; or c */
        EITHER,
        /** a; b; c */
        SEMICOLON
    }

    /** The same with a capital, at the beginning of a sentence. */
    record Capital(Part part) implements Part {}

    /** The first sentence of what was said, without its full stop, inside another sentence. */
    record Clause(Said said) implements Part {}

    /** Told in the maker's own unit, in whole millimetres. */
    static Length length(double mm) {
        return new Length(mm, Told.OWN, 0, false);
    }

    static Length length(double mm, int decimals) {
        return new Length(mm, Told.OWN, decimals, false);
    }

    /** As it is written in the maker's own file: "6 cm", "2.32 cm", "7/8 in". */
    static Length written(double mm) {
        return written(mm, false);
    }

    /** @param signed with its sign, also above zero */
    static Length written(double mm, boolean signed) {
        return new Length(mm, Told.WRITTEN, 2, signed);
    }

    /** Without the unit, which stands right before. */
    static Length bare(double mm) {
        return new Length(mm, Told.BARE, 0, false);
    }

    /** With its sign: "+20 mm". */
    static Length signed(double mm) {
        return new Length(mm, Told.OWN, 0, true);
    }

    static Length sewn(double mm) {
        return new Length(mm, Told.SEWN, 1, false);
    }

    static Length millimetres(double mm, int decimals) {
        return new Length(mm, Told.MM, decimals, false);
    }

    static Length cloth(double mm) {
        return new Length(mm, Told.CLOTH, 2, false);
    }

    static Span span(double from, double to) {
        return new Span(length(from), length(to));
    }

    /** In whole percent. */
    static Share share(double share) {
        return new Share(share, 0, false);
    }

    static Share share(double share, int decimals) {
        return new Share(share, decimals, false);
    }

    static Number count(long count) {
        return new Number(count, 0);
    }

    static Number number(double value, int decimals) {
        return new Number(value, decimals);
    }

    static Fixed fixed(double value, int decimals) {
        return new Fixed(value, decimals);
    }

    static Text text(String text) {
        return new Text(text);
    }

    static Listed listed(Join join, List<? extends Part> parts) {
        return new Listed(List.copyOf(parts), join);
    }
}
