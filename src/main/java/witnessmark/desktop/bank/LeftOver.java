package witnessmark.desktop.bank;

import java.time.LocalDate;

/**
 * A cost or an income that is on no statement.
 *
 * @param number its turn, from 1
 * @param day as shown
 * @param when by which it is sorted
 * @param amount as shown; what went out below nothing
 * @param minor by which amounts are sorted
 * @param what it was for
 */
record LeftOver(int number, String day, LocalDate when, String amount, long minor, String what) {}
