package stretchwright.workroom.store;

import com.zaxxer.hikari.HikariConfig;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;

/** In what the two databases differ. */
interface Engine {
    /** How to connect for reading: one transaction sees one moment. */
    HikariConfig reading();

    /** How to connect for writing. */
    HikariConfig writing();

    /** At the start of a transaction that writes: the others that write wait until its end. */
    void alone(Handle handle);

    /** At the start of a transaction that reads. */
    void oneMoment(Handle handle);

    /** After a transaction that wrote: a crash cannot reach what it wrote. Never fails: that it stands is certain already. */
    void settle(Jdbi writing);

    /** In a transaction that deletes: its traces are to be swept, now or when next opened. */
    void owe(Handle handle);

    /** Whether traces of what was deleted are still on the disk. */
    boolean owes(Jdbi writing);

    /** What was deleted is gone from the disk too, as far as that can be done now. */
    void sweep(Jdbi writing);

    /** The whole database is read and found sound; false where it is damaged. */
    boolean isSound(Jdbi reading);
}
