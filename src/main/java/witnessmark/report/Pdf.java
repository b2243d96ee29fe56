package witnessmark.report;

/**
 * Pages laid out.
 *
 * @param bytes the whole file
 * @param pages how many pages it has
 */
public record Pdf(byte[] bytes, int pages) {}
