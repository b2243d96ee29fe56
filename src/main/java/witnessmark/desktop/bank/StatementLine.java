package witnessmark.desktop.bank;

import java.time.LocalDate;

/**
 * A row of a statement as it will be taken, or cannot be.
 *
 * @param number its turn, from 1
 * @param day the day as shown, or where the row stands when it cannot be read
 * @param when the day, by which rows are sorted
 * @param amount as shown; empty when it cannot be read
 * @param minor by which amounts are sorted
 * @param words of the bank, or why it cannot be read
 */
record StatementLine(int number, String day, LocalDate when, String amount, long minor, String words) {}
