package witnessmark.logbook.strip;

import java.time.LocalDate;
import witnessmark.domain.Facts;
import witnessmark.quantity.Moment;

/**
 * What the printed report of a strip is worded from.
 *
 * @param facts what is written down
 * @param page the strip
 * @param logbook whose it is
 * @param day the day looked at
 * @param printed the moment it is printed
 */
public record StripSheetFacts(Facts facts, StripPage page, String logbook, LocalDate day, Moment printed) {}
