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

    /** After a transaction that wrote: what it wrote is where a crash cannot reach it. */
    void settle(Jdbi writing);

    /** What was deleted is gone from the disk too. */
    void sweep(Jdbi writing);

    /** The whole database is read and found sound; false where it is damaged. */
    boolean isSound(Jdbi reading);
}
