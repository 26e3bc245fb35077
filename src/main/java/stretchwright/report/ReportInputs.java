package stretchwright.report;

import java.util.List;
import java.util.Locale;
import java.util.TreeMap;
import stretchwright.boot.Boot;
import stretchwright.fabric.Fabric;
import stretchwright.fabric.LoadCurve;
import stretchwright.ground.Numbers;
import stretchwright.ground.Polygon;
import stretchwright.intake.BandReader;
import stretchwright.intake.BootReader;
import stretchwright.intake.Contrast;
import stretchwright.intake.LayReader;
import stretchwright.pattern.Parts;
import stretchwright.pattern.Style;
import stretchwright.pattern.TopEnd;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** What the make was made from, repeated in the report with the values that were assumed marked as such. */
public final class ReportInputs {
    private ReportInputs() {}

    public static void fabric(ObjectNode out, Fabric fabric) {
        out.put("name", fabric.roll().name());
        out.put("usableWidth", Numbers.mm(fabric.roll().usableWidth()));
        fabric.roll().onHand().ifPresent(v -> out.put("onHand", Numbers.mm(v)));
        fabric.quality().weight().ifPresent(v -> out.put("weight", Numbers.mm(v)));
        out.put("stretchAcross", Numbers.share(fabric.test().stretchAcross()));
        out.put("stretchAlong", Numbers.share(fabric.test().stretchAlong()));
        out.put("stretchAcrossAssumed", fabric.test().assumed().across());
        out.put("stretchAlongAssumed", fabric.test().assumed().along());
        fabric.test().wrapped().ifPresent(v -> out.put("wrapped", Numbers.share(v)));
        load(out.putObject("loadAcross"), fabric.test().loadAcross());
        load(out.putObject("loadAlong"), fabric.test().loadAlong());
        fabric.test().recovery().ifPresent(v -> out.put("recovery", Numbers.share(v)));
        out.put("shrinkageAcross", Numbers.share(fabric.quality().shrinkageAcross()));
        out.put("shrinkageAlong", Numbers.share(fabric.quality().shrinkageAlong()));
        out.put("oneWay", fabric.roll().oneWay());
        out.put("repeatAlong", Numbers.mm(fabric.roll().repeatAlong()));
        if (fabric.roll().shape().selvage() > 0) {
            out.put("selvage", Numbers.mm(fabric.roll().shape().selvage()));
        }
        fabric.roll().shape().outline().ifPresent(o -> corners(out.putArray("outline"), o));
        if (!fabric.roll().shape().flaws().isEmpty()) {
            ArrayNode flaws = out.putArray("flaws");
            fabric.roll().shape().flaws().forEach(f -> corners(flaws.addArray(), f));
        }
        fabric.test().showsThroughAt().ifPresent(v -> out.put("showsThroughAt", Numbers.share(v)));
    }

    /** Of a contrast only what may differ from the fabric. */
    static void contrasts(ArrayNode out, List<Contrast> contrasts) {
        for (Contrast c : contrasts) {
            ObjectNode one = out.addObject();
            one.put("name", c.fabric().roll().name());
            ArrayNode pieces = one.putArray("pieces");
            c.pieces().forEach(pieces::add);
            one.put("usableWidth", Numbers.mm(c.fabric().roll().usableWidth()));
            one.put("oneWay", c.fabric().roll().oneWay());
            one.put("repeatAlong", Numbers.mm(c.fabric().roll().repeatAlong()));
        }
    }

    /** Readings as [stretch, N/m]. */
    private static void load(ObjectNode out, LoadCurve curve) {
        out.put("assumed", curve.isAssumed());
        ArrayNode readings = out.putArray("readings");
        for (LoadCurve.Reading r : curve.readings()) {
            readings.addArray().add(Numbers.share(r.extension())).add(Numbers.mm(r.tension()));
        }
    }

    public static void boot(ObjectNode out, Boot boot) {
        out.put("kind", boot.kind());
        out.put("topGirth", Numbers.mm(boot.topGirth()));
        out.put("heelGirth", Numbers.mm(boot.heelGirth()));
        out.put("hemGirth", Numbers.mm(boot.hemGirth()));
        out.put("ankleToHem", Numbers.mm(boot.ankleToHem()));
        out.put("ankleToTop", Numbers.mm(boot.ankleToTop()));
        out.put("ankleToTopAssumed", boot.topEstimated());
        out.put("dressing", BootReader.word(boot.dressing()));
        boot.guardGirth().ifPresent(v -> out.put("guardGirth", Numbers.mm(v)));
        boot.sole().ankleToSole().ifPresent(v -> out.put("ankleToSole", Numbers.mm(v)));
        boot.sole().length().ifPresent(v -> out.put("soleLength", Numbers.mm(v)));
        boot.sole().width().ifPresent(v -> out.put("soleWidth", Numbers.mm(v)));
        boot.sole().arch().ifPresent(v -> out.put("archWidth", Numbers.mm(v)));
        boot.sole().gap().ifPresent(v -> out.put("gapBetweenMounts", Numbers.mm(v)));
        boot.sole().plate().ifPresent(v -> out.put("plateLength", Numbers.mm(v)));
    }

    public static void style(ObjectNode out, Style style) {
        out.put("leg", style.leg().name().toLowerCase(Locale.ROOT).replace('_', ' '));
        out.put("dropBelowWaist", Numbers.mm(style.dropBelowWaist()));
        out.put("bandHeight", Numbers.mm(style.bandHeight()));
        top(out, style.top());
        style.cuffHeight().ifPresent(v -> out.put("cuffHeight", Numbers.mm(v)));
        if (style.leg() == Style.Leg.OVER_BOOT) {
            out.put("hem", style.lower().hem().word());
        }
        if (style.lower().hemDrop() > 0) {
            out.put("hemDrop", Numbers.mm(style.lower().hemDrop()));
        }
        style.lower().strapWidth().ifPresent(v -> out.put("strapWidth", Numbers.mm(v)));
        if (style.lower().growth() > 0) {
            out.put("growth", Numbers.mm(style.lower().growth()));
        }
        parts(out, style.parts());
        out.put("hold", style.hold().words());
        out.put("allowance", Numbers.mm(style.allowance()));
        ObjectNode exceptions = out.putObject("allowances");
        new TreeMap<>(style.allowances())
                .forEach((role, mm) ->
                        exceptions.put(role.name().toLowerCase(Locale.ROOT).replace('_', ' '), Numbers.mm(mm)));
        out.put("lay", LayReader.word(style.layWay()));
        if (style.lay().gap() > 0) {
            out.put("scissorGap", Numbers.mm(style.lay().gap()));
        }
        if (style.lay().tilt() > 0) {
            out.put("grainTolerance", Numbers.mm(style.lay().tilt()));
        }
        style.lay().matchAt().ifPresent(n -> out.put("matchPrintAt", n));
    }

    private static void corners(ArrayNode out, Polygon polygon) {
        polygon.points().forEach(p -> out.addArray().add(Numbers.mm(p.x())).add(Numbers.mm(p.y())));
    }

    private static void top(ObjectNode out, TopEnd top) {
        out.put("frontWaist", Numbers.mm(top.frontRaise()));
        out.put("backWaist", Numbers.mm(top.backRaise()));
        out.put("back", top.back().name().toLowerCase(Locale.ROOT).replace('_', ' '));
        ObjectNode band = out.putObject("waistband");
        band.put("shape", BandReader.word(top.band().shape()));
        top.band().elastic().ifPresent(v -> band.put("elastic", Numbers.mm(v)));
        band.put("drawstring", top.band().drawstring());
        top.band().keyPocket().ifPresent(v -> band.put("keyPocket", Numbers.mm(v)));
    }

    private static void parts(ObjectNode out, Parts parts) {
        out.put("sideSeam", parts.sideSeam().name().toLowerCase(Locale.ROOT));
        parts.panelWidth().ifPresent(v -> out.put("panelWidth", Numbers.mm(v)));
        parts.gusset()
                .ifPresent(g -> out.putObject("gusset")
                        .put("length", Numbers.mm(g.length()))
                        .put("width", Numbers.mm(g.width())));
        out.put("kneeShaping", parts.kneeShaping());
        ArrayNode pockets = out.putArray("pockets");
        for (Parts.Pocket p : parts.pockets()) {
            pockets.addObject()
                    .put("kind", p.kind().word())
                    .put("width", Numbers.mm(p.width()))
                    .put("height", Numbers.mm(p.height()))
                    .put("thickness", Numbers.mm(p.thickness()));
        }
    }
}
