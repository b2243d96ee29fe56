package witnessmark.quantity;

/**
 * Speed of the crankshaft. Never negative.
 *
 * @param rpm revolutions a minute, 0 or more
 */
public record EngineSpeed(int rpm) implements Comparable<EngineSpeed> {
    public EngineSpeed {
        if (rpm < 0) {
            throw new IllegalArgumentException("an engine speed is 0 rpm or more, not " + rpm);
        }
    }

    /**
     * Reads back what {@link #text()} wrote.
     *
     * @throws NumberFormatException if the text is no whole number
     */
    public static EngineSpeed parse(String text) {
        return new EngineSpeed(Integer.parseInt(text.strip()));
    }

    public String text() {
        return Integer.toString(rpm);
    }

    @Override
    public int compareTo(EngineSpeed other) {
        return Integer.compare(rpm, other.rpm);
    }
}
