package stretchwright.intake;

/** Whether makes that are laid on one roll must say the same under a key. */
public enum Roll {
    /** They may differ. */
    ANY,
    /** They must agree; what is left out counts as its usual value. */
    SAME,
    /** They must agree where both say it. */
    SAME_WHERE_TOLD
}
