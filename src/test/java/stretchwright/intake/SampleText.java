package stretchwright.intake;

/** Make files for tests; invented. */
public final class SampleText {
    private SampleText() {}

    /** Everything the format has, as in the contract. */
    public static final String WHOLE = """
            stretchwright: 1
            name: Evening practice
            unit: cm
            wearer:
              name: Rowan
              figure: woman
              age: 31
              measurements:
                stature: 162.7
                waist girth: 74.2
                hip girth: 96.1
            fabric:
              name: Heavy performance knit, ink
              usable width: 147
              on hand: 1.6 m
              weight: 260 g/m2
              stretch across: 60 %
              stretch along: 45 %
              load across: [[20 %, 3.1 N], [40 %, 6.9 N], [60 %, 13 N]]
              load along:  [[20 %, 4.0 N], [40 %, 9.5 N]]
              recovery: 95 %
              shrinkage across: 1 %
              shrinkage along: 2 %
              one way: true
              repeat along: 0
              shows through at: 75 %
              price: 14.50 per m
            boot:
              kind: figure skate
              top girth: 29.0
              heel girth: 40.0
              hem girth: 38.5
              ankle to hem: 14.0
              dressing: leg first
            style:
              leg: over boot
              rise: waist
              side seam: none
              waistband: {shape: straight, height: 6.5, elastic: none}
              cuff: {height: 3.2}
              hold: medium
              seam allowance: 0.7
              lay: any
            machines: [overlocker, coverstitch]
            print: {paper: A4}
            """;

    /** The whole file with one line replaced (the old text must be in it). */
    public static String with(String old, String now) {
        if (!WHOLE.contains(old)) {
            throw new IllegalArgumentException("not in the sample: " + old);
        }
        return WHOLE.replace(old, now);
    }
}
