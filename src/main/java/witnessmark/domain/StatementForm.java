package witnessmark.domain;

/**
 * How the columns of a bank's or bookkeeper's file are to be read, so that the next one is read alike.
 *
 * @param name what it is called; unique
 * @param headings the headings it has, one a line
 * @param dayColumn the heading of the day
 * @param dayPattern how days are written, like d.M.uuuu
 * @param amountColumn the heading of the amount; empty when money in and out have columns of their own
 * @param inColumn the heading of money in; empty when there is one amount
 * @param outColumn the heading of money out; empty when there is one amount
 * @param textColumns the headings of the words, one a line
 * @param referenceColumn the heading of the bank's own number; empty when there is none
 * @param currencyColumn the heading of the currency; empty when all is in one
 * @param currency the currency of what names none, ISO 4217
 * @param decimalSign a point or a comma
 */
public record StatementForm(
        String name,
        String headings,
        String dayColumn,
        String dayPattern,
        String amountColumn,
        String inColumn,
        String outColumn,
        String textColumns,
        String referenceColumn,
        String currencyColumn,
        String currency,
        String decimalSign)
        implements Fact {
    @Override
    public String knownAs() {
        return name;
    }
}
