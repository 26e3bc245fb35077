package stretchwright.advice;

import stretchwright.fit.FitReport.Tried;
import stretchwright.fit.FitReport.Verdict;
import stretchwright.intake.MakeFile;

/**
 * A change that turns a verdict.
 *
 * @param verdict which
 * @param tried the change as told, and what the fit check says then
 * @param make the make so changed
 */
public record Remedy(Verdict verdict, Tried tried, MakeFile make) {}
