package witnessmark.domain.image;

/**
 * One column of a record's table.
 *
 * @param name in the logbook file, unit last ({@code running_ms})
 * @param storage how it is kept; a value is a {@link Long}, a {@link String} or null
 * @param nullable whether it may be null
 */
public record Column(String name, Storage storage, boolean nullable) {}
