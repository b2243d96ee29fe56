package witnessmark.logbook;

import java.time.LocalDate;
import java.time.ZoneId;
import witnessmark.domain.Facts;
import witnessmark.ledger.LifeLedger;

/**
 * The logbook as of one day at one revision.
 *
 * @param facts everything written
 * @param day the day it is seen as of
 * @param zone the team's zone
 * @param ledger the lives as of that day
 * @param readOnly whether the day is an earlier one
 */
public record View(Facts facts, LocalDate day, ZoneId zone, LifeLedger ledger, boolean readOnly) {}
