package witnessmark.trace.result;

import java.util.List;

/**
 * Something a trace does not say, or says in two ways. It is answered by another {@link TraceForm}; nothing is assumed in
 * silence.
 *
 * @param kind which, from the closed list
 * @param column the column it is about, or −1
 * @param facts what the sentence needs, in the order {@link Kind} states
 */
public record Question(Kind kind, int column, List<Object> facts) {
    /** The closed list; the comment of each names its facts in order. */
    public enum Kind {
        /** No column says the time, nor any line how many samples there are a second. */
        SAMPLE_RATE(0, true),
        /** column heading, its usual step as written, the units it may be in. */
        TIME_UNIT(3, true),
        /** column heading, samples a second by that column, samples a second as the file states. */
        RATE_SAYS_OTHERWISE(3, true),
        /** a cell as written: its comma or point may be a decimal mark or part thousands. */
        DECIMAL_MARK(1, true),
        /** a date as written: day or month may come first. */
        DAY_OR_MONTH(1, false),
        /** the date of the file's clock, which was not set. */
        CLOCK_NOT_SET(1, false),
        /** column heading, kind of channel, unit taken, lowest, highest, units that would fit better. */
        UNIT(6, true),
        /** kind of channel, headings that may all be it. */
        WHICH_CHANNEL(2, true),
        /** headings of the file: none is known as engine speed. */
        NO_ENGINE_SPEED(1, false),
        /** how many texts an archive has, their names as written. */
        WHICH_TEXT(2, true);

        private final int facts;
        private final boolean stops;

        Kind(int facts, boolean stops) {
            this.facts = facts;
            this.stops = stops;
        }

        public int facts() {
            return facts;
        }

        /** Whether figures would be wrong without an answer. */
        public boolean stops() {
            return stops;
        }
    }

    public Question {
        facts = List.copyOf(facts);
        if (facts.size() != kind.facts()) {
            throw new IllegalArgumentException(kind + " carries " + kind.facts() + " facts, got " + facts);
        }
    }

    public static Question of(Kind kind, int column, Object... facts) {
        return new Question(kind, column, List.of(facts));
    }
}
