package witnessmark.logbook.run;

import java.util.List;

/**
 * What stands in the line under a field when nothing is wrong.
 *
 * @param kind which, from the closed list
 * @param facts what the sentence needs, in the order {@link Kind} states
 */
public record Note(Kind kind, List<Object> facts) {
    /** The closed list; the comment of each names its facts in order. */
    public enum Kind {
        /** Value as understood. */
        UNDERSTOOD,
        /** Value of the last run of this engine. */
        LAST_RUN,
        /** No run before has this value. */
        NOT_RECORDED_BEFORE,
        /** How many, time a lap takes by the time on the track. */
        A_LAP,
        /** Shortest and longest time a lap usually takes, by earlier runs. */
        USUAL_PACE,
        /** Engine, since when in the car, its life in running time since its last rebuild. */
        ENGINE_SINCE,
        /** Engine, its life in running time since its last rebuild: on the dyno. */
        ENGINE_ON_DYNO,
        /** Engine, since when in the car, its whole life in running time: no rebuild is written down. */
        ENGINE_RUN,
        /** No car is written down yet. */
        NO_CAR_YET,
        /** Engine that took the run. */
        ENGINE_RAN,
        FROM_CALENDAR,
        /** Name of the next event, its first day. */
        NEXT_EVENT,
        FIRST_IN_TIMETABLE,
        NEXT_IN_TIMETABLE,
        /** Planned runs of the event are all logged for this car. */
        TIMETABLE_DONE,
        DAY_DONE,
        NO_TIMETABLE,
        SAME_AS_LAST_RUN,
        /** The day, which is today. */
        TODAY,
        /** Days before today, the day. */
        DAYS_AGO,
        TIMETABLE,
        /** Start as typed. */
        TYPED,
        /** Start as estimated. */
        ESTIMATED,
        /** Empty: not read. */
        NOT_READ,
        /** Limiter's engine speed. */
        LIMITER,
        /** How many, speed that counts as an over-rev. */
        OVER_REV_ABOVE,
        /** Share left of the running time. */
        LEAVES,
        /** What is taken to be so until something else is chosen. */
        UNLESS_CHOSEN,
        NONE
    }

    public Note {
        facts = List.copyOf(facts);
    }

    public static Note of(Kind kind, Object... facts) {
        return new Note(kind, List.of(facts));
    }
}
