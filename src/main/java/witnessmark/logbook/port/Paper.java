package witnessmark.logbook.port;

/**
 * Pages laid out, ready to be kept as a file.
 *
 * @param bytes the whole file
 * @param pages how many pages it has, 1 or more
 */
public record Paper(byte[] bytes, int pages) {}
