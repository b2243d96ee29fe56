package witnessmark.logbook.sheets;

import witnessmark.quantity.Counter;

/**
 * What a field is called where its name is put together, instead of a name of its own in the bundles.
 *
 * @param words the phrase above it
 * @param counter what its figure counts, for the unit at its edge
 */
public record SheetLabel(SheetNote words, Counter counter) {}
