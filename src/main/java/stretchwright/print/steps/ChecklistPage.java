package stretchwright.print.steps;

import java.util.List;
import java.util.stream.Stream;
import stretchwright.ground.Voice;
import stretchwright.print.kit.Job;
import stretchwright.print.kit.Phrases;
import stretchwright.print.kit.SvgCanvas;
import stretchwright.sewing.SewingPlan.Operation;

/**
 * What the checklist's template shows.
 *
 * @param key under which the place is remembered
 */
public record ChecklistPage(
        String key, String policy, String style, String script, String make, String title, List<Step> steps) {
    public ChecklistPage {
        key = SvgCanvas.visible(key);
        make = SvgCanvas.visible(make);
        title = SvgCanvas.visible(title);
        steps = List.copyOf(steps);
    }

    /**
     * One step; what is empty is not shown.
     *
     * @param before lines above the drawing
     * @param drawing as SVG; empty where there is none
     */
    public record Step(
            int number,
            String title,
            String tick,
            List<String> before,
            String drawing,
            String action,
            List<String> after) {
        public Step {
            title = SvgCanvas.visible(title);
            action = SvgCanvas.visible(action);
            before = before.stream().map(SvgCanvas::visible).toList();
            after = after.stream().map(SvgCanvas::visible).toList();
        }

        static Step of(Job job, Operation o) {
            StepWords words = StepWords.of(job);
            return new Step(
                    o.step(),
                    words.title(o),
                    Phrases.of("checklist.step-done", String.valueOf(o.step())),
                    said(words.work(o), words.setting(o), words.allowance(o)),
                    StepDrawing.shows(job, o) ? StepDrawing.inline(job, o) : "",
                    words.instruction(o),
                    said(
                            words.spread(o),
                            words.check(o),
                            words.mistake(o),
                            words.undo(o),
                            words.demand(o),
                            words.why(o)));
        }

        private static List<String> said(String... words) {
            return Stream.of(words).filter(w -> !w.isEmpty()).toList();
        }
    }

    public String language() {
        return Voice.tag();
    }

    public String count() {
        return Phrases.of("checklist.count", String.valueOf(steps.size()));
    }

    /** With gaps that the script fills. */
    public String at() {
        return Phrases.of("checklist.at", "{0}", "{1}", "{2}");
    }

    /** With a gap that the script fills. */
    public String allDone() {
        return Phrases.of("checklist.all-done", "{0}");
    }

    public String progress() {
        return Phrases.of("checklist.progress");
    }

    public String done() {
        return Phrases.of("checklist.done");
    }

    public String stepsWord() {
        return Phrases.of("checklist.steps");
    }

    public String back() {
        return Phrases.of("checklist.back");
    }

    public String next() {
        return Phrases.of("checklist.next");
    }
}
