package witnessmark.study.result;

/**
 * The same read at the places beside, on the same day.
 *
 * @param others how many, at least two
 * @param middle the middle one of them
 * @param off by how much this place is above it
 * @param standsOff whether that is more than readings differ by
 */
public record Neighbours(int others, double middle, double off, boolean standsOff) {}
