package stretchwright.ground;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import stretchwright.ground.Part.Join;
import stretchwright.ground.Part.Told;

/**
 * Words what was said, in a maker's unit and in the program's language. Only the doors (page, command, paper, report) have
 * a voice.
 *
 * <p>In: {@link Said} and the parts in it. Out: text. Numbers are written the same in every country; inches are told as a
 * tape reads them, in sixteenths.
 */
public final class Voice {
    /** English, or the language that the program was started in: the code of its bundles (decision 0008). */
    private static final Locale LANGUAGE = Locale.forLanguageTag(
            System.getProperty("stretchwright.language", "").replace('_', '-'));

    private static final Map<String, Wording> ROOMS = new ConcurrentHashMap<>();

    private static final double PASCALS_PER_MMHG = 133.322;

    /** Lengths that are sewn shorter than this are stitches and needles, which nobody measures in sixteenths, mm. */
    private static final double SHORTEST_SEWN = 3;

    /** What lies so near to a whole one is one: computing leaves so much. */
    private static final double TRACE = 1e-6;

    private static final int SIXTEENTHS = 16;
    private static final int EIGHTHS = 8;

    private final Unit unit;

    private Voice(Unit unit) {
        this.unit = unit;
    }

    public static Voice of(Unit unit) {
        return new Voice(unit);
    }

    /** In millimetres. */
    public static Voice plain() {
        return new Voice(Unit.MM);
    }

    /** The program's own, as a bundle is asked for. */
    public static Locale language() {
        return LANGUAGE;
    }

    /** The same as readers of pages and documents are told it: "en". */
    public static String tag() {
        return LANGUAGE.getLanguage().isEmpty() ? Locale.ENGLISH.toLanguageTag() : LANGUAGE.toLanguageTag();
    }

    public Unit unit() {
        return unit;
    }

    /** The sentences of a room in the program's language. */
    public static Wording sentences(String room) {
        return ROOMS.computeIfAbsent(room, r -> new Wording("stretchwright." + r + ".words", LANGUAGE));
    }

    public String say(Part part) {
        if (part instanceof Said said) {
            return said(said);
        } else if (part instanceof Part.Length length) {
            return length(length);
        } else if (part instanceof Part.Span span) {
            return span(span);
        } else if (part instanceof Part.Share share) {
            return ground("share", signed(100 * share.share(), share.decimals(), share.signed()));
        } else if (part instanceof Part.Pressure p) {
            return ground("pressure", fixed(p.kilopascals() * 1000 / PASCALS_PER_MMHG, p.decimals()));
        } else if (part instanceof Part.Force force) {
            return ground("force", fixed(force.newtons(), force.decimals()));
        } else if (part instanceof Part.Minutes minutes) {
            return ground("minutes", number(minutes.minutes(), minutes.decimals()));
        } else if (part instanceof Part.Number number) {
            return number(number.value(), number.decimals());
        } else if (part instanceof Part.Fixed f) {
            return fixed(f.value(), f.decimals());
        } else if (part instanceof Part.Text text) {
            return text.text();
        } else if (part instanceof Part.Listed listed) {
            return listed(listed);
        } else if (part instanceof Part.Clause clause) {
            return clause(clause.said());
        }
        return capital(say(((Part.Capital) part).part()));
    }

    private String said(Said said) {
        String first = said.isNothing() ? "" : sentence(said);
        return said.then().isEmpty()
                ? first
                : first + " " + said.then().stream().map(this::said).collect(Collectors.joining(" "));
    }

    private String sentence(Said said) {
        return sentences(said.room())
                .of(said.key(), said.parts().stream().map(this::say).toArray(String[]::new));
    }

    private static String ground(String key, String... filled) {
        return sentences("ground").of(key, filled);
    }

    private String length(Part.Length l) {
        return switch (l.told()) {
            case MM -> withUnit(l, Unit.MM);
            case OWN, WRITTEN -> withUnit(l, unit);
            case BARE -> bare(l, unit);
            case CLOTH -> cloth(l.mm());
            case SEWN -> {
                String mm = number(l.mm(), l.decimals()) + " " + Unit.MM.symbol();
                yield unit == Unit.IN && l.mm() >= SHORTEST_SEWN ? ground("sewn", mm, ruler(l.mm())) : mm;
            }
        };
    }

    /** A length in the maker's unit without its sign, where one word says it for all. */
    public String bare(Part.Length l) {
        return bare(l, unit);
    }

    private static String withUnit(Part.Length l, Unit unit) {
        return bare(l, unit) + " " + unit.symbol();
    }

    private static String bare(Part.Length l, Unit unit) {
        if (unit == Unit.IN) {
            long sixteenths = Math.round(rounded(l.mm() / 25.4 * SIXTEENTHS, 0, l.rounded()));
            String sign = sixteenths == 0 ? "" : sixteenths < 0 ? "-" : l.signed() ? "+" : "";
            return sign + parts(Math.abs(sixteenths), SIXTEENTHS);
        }
        if (l.told() == Told.WRITTEN) {
            double value = rounded(unit.fromMm(l.mm()), l.decimals(), l.rounded());
            return (l.signed() && l.mm() > 0 ? "+" : "") + number(value, l.decimals());
        }
        int decimals = unit == Unit.MM ? l.decimals() : 1;
        return signed(rounded(unit.fromMm(l.mm()), decimals, l.rounded()), decimals, l.signed());
    }

    /** A limit on its last decimal, so that what is told keeps it; the nearest is found where it is written. */
    private static double rounded(double value, int decimals, Part.Rounded how) {
        double scale = Math.pow(10, decimals);
        return switch (how) {
            case NEAREST -> value;
            case UP -> Math.ceil(value * scale - TRACE) / scale;
            case DOWN -> Math.floor(value * scale + TRACE) / scale;
        };
    }

    private String span(Part.Span span) {
        Told how = span.from().told();
        Unit told = how == Told.OWN || how == Told.WRITTEN ? unit : Unit.MM;
        String from = bare(span.from(), told);
        String to = bare(span.to(), told);
        String mm = from.equals(to) ? withUnit(span.to(), told) : ground("span", from, to, told.symbol());
        boolean sewn =
                span.from().told() == Told.SEWN && unit == Unit.IN && span.to().mm() >= SHORTEST_SEWN;
        return sewn ? ground("sewn", mm, say(ownOf(span))) : mm;
    }

    private static Part.Span ownOf(Part.Span span) {
        return Part.span(span.from().mm(), span.to().mm());
    }

    /** In metres with two decimals; in yards to the nearest eighth. */
    private String cloth(double mm) {
        return unit == Unit.IN
                ? parts(Math.round(Unit.YD.fromMm(mm) * EIGHTHS), EIGHTHS) + " " + Unit.YD.symbol()
                : fixed(Unit.M.fromMm(mm), 2) + " " + Unit.M.symbol();
    }

    /** In inches as a ruler has them, to the nearest sixteenth: 7 mm is "1/4 in" (by 0.65 mm). */
    public static String ruler(double mm) {
        return bare(Part.length(mm), Unit.IN) + " " + Unit.IN.symbol();
    }

    /** So many parts of a whole, shortened: 111 of 8 are "13 7/8". Parts of a power of two. */
    public static String parts(long count, int parts) {
        long whole = count / parts;
        long rest = count % parts;
        if (rest == 0) {
            return Long.toString(whole);
        }
        long common = Long.lowestOneBit(rest);
        String part = rest / common + "/" + parts / common;
        return whole == 0 ? part : whole + " " + part;
    }

    private String listed(Part.Listed listed) {
        List<String> words = listed.parts().stream().map(this::say).toList();
        return switch (listed.join()) {
            case COMMA -> String.join(ground("list.comma"), words);
            case SEMICOLON -> String.join(ground("list.semicolon"), words);
            case EITHER -> String.join(ground("list.either"), words);
            case AND, OR -> {
                String last = ground(listed.join() == Join.AND ? "list.and" : "list.or");
                yield words.size() < 2
                        ? String.join("", words)
                        : String.join(ground("list.comma"), words.subList(0, words.size() - 1))
                                + last
                                + words.get(words.size() - 1);
            }
        };
    }

    private String clause(Said said) {
        String sentence = say(new Said(said.room(), said.key(), said.parts(), List.of()));
        return sentence.endsWith(".") ? sentence.substring(0, sentence.length() - 1) : sentence;
    }

    private static String capital(String words) {
        int first = words.isEmpty() ? 0 : words.offsetByCodePoints(0, 1);
        return words.substring(0, first).toUpperCase(Locale.ROOT) + words.substring(first);
    }

    private static String signed(double value, int decimals, boolean signed) {
        String digits = fixed(value, decimals);
        return signed && value > 0 ? "+" + digits : digits;
    }

    /** Always so many decimals; never "-0". */
    public static String fixed(double value, int decimals) {
        String digits = String.format(Locale.ROOT, "%." + decimals + "f", value);
        return digits.matches("-0(\\.0+)?") ? digits.substring(1) : digits;
    }

    /** Up to so many decimals, without idle zeros. */
    public static String number(double value, int decimals) {
        String text = fixed(value, decimals);
        return text.contains(".") ? text.replaceAll("\\.?0+$", "") : text;
    }
}
