package witnessmark.logbook.port;

/**
 * Does pieces of work in the order they are given, on a thread beside that of the one who gives them or before {@link #take}
 * returns. What a piece writes is seen by the next.
 */
@FunctionalInterface
public interface Beside {
    /** @param piece throws nothing */
    void take(Runnable piece);

    /** Where there is no other thread: each piece is done at once. */
    static Beside none() {
        return Runnable::run;
    }
}
