/**
 * The life ledger: what every part, engine and car has run, summed in integers from what was written down, with every
 * entry behind each figure. Pure: the day counted to is an argument, and two ledgers of the same facts are equal however
 * they came about.
 *
 * <p>{@code ledger.result} holds the answers, which sentences, pages and screens may see; the sums are made here.
 * Lives are told in {@link witnessmark.ledger.LifeLedger}, how much of a limit is used in {@code Limits}, what holds in
 * {@code Holds}, how everything stands in {@code Marks}, what contradicts itself in {@code Coherence}; what is to come
 * is in {@code ledger.ahead}. Open {@link witnessmark.ledger.LifeLedger} first, then {@link witnessmark.ledger.result.Life}.
 */
@NullMarked
package witnessmark.ledger;

import org.jspecify.annotations.NullMarked;
