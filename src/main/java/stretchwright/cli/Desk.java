package stretchwright.cli;

import stretchwright.ground.Findings;

/** What a command has at hand, whichever it is; the door behind it is none of its business. */
interface Desk {
    Console console();

    /** Takes the folder for this run; a finding where another run has it. */
    boolean hold(OutFolder folder, Findings findings);

    /** What makers mean by names. */
    Named named();
}
