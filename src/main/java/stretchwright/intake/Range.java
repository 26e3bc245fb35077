package stretchwright.intake;

import stretchwright.ground.Said;

/**
 * From least to most, both allowed. Wide on purpose: ranges catch slips of unit and comma, not unusual people or cloths.
 *
 * @param least mm, a share, or a number in the unit of its quantity
 * @param why key of the reason, which is told to people
 */
public record Range(double least, double most, String why) {
    public boolean holds(double value) {
        return value >= least && value <= most;
    }

    Said reason() {
        return Tell.said(why);
    }
}
