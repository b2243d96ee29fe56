package witnessmark.desktop.beforewego;

import java.util.List;

/**
 * The next run of a car, in words.
 *
 * @param title "Car 41, engine K03"
 * @param run "Race 2, Sun 5 Jul, 14:40; 3 not looked at"
 * @param countdown how long until it goes out
 * @param ticks what is to be looked at
 */
record NextRunLines(String title, String run, Countdown countdown, List<Tick> ticks) {
    NextRunLines {
        ticks = List.copyOf(ticks);
    }

    /**
     * One of these.
     *
     * @param car the text of the car's identity
     * @param what what a look at it is written under
     * @param said the same in words
     * @param note who looked when and saw what, or that nobody has
     * @param run the text of the identity of the run it was told of; empty for anything else
     * @param record the text of the identity of the look; empty when nobody has
     */
    record Tick(String car, String what, String said, String note, String run, String record) {
        boolean isDone() {
            return !record.isEmpty();
        }
    }
}
