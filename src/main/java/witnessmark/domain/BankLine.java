package witnessmark.domain;

import java.time.LocalDate;
import witnessmark.quantity.Money;

/**
 * A line of a bank statement or of the books, as it was read.
 *
 * @param account which account or book
 * @param day the day it was booked
 * @param amount what came in; below nothing for what went out
 * @param text who and what for, as printed
 * @param reference the bank's own number for it; empty when there is none
 * @param nth which one it is of those that read the same on one statement, from 1
 * @param source the file it was read from
 * @param aside why it is no business of this logbook; empty when it is
 */
public record BankLine(
        String account,
        LocalDate day,
        Money amount,
        String text,
        String reference,
        int nth,
        String source,
        String aside)
        implements Fact {
    public BankLine {
        if (nth < 1) {
            throw new IllegalArgumentException("lines that read the same count from 1");
        }
    }
}
