/**
 * Every sentence people see: labels, problems, measures as shown. Sentences live in bundles under {@code i18n}, one
 * for each place of the program, one key for each sentence. What people type is read elsewhere, in
 * {@link witnessmark.quantity.typed}.
 *
 * <p>Open {@link witnessmark.wording.Texts} first, then {@link witnessmark.wording.Measures} for figures with their
 * units, {@link witnessmark.wording.LifeWords} for lives and how well they are known,
 * {@link witnessmark.wording.Problems} for what went wrong, and {@link witnessmark.wording.RecordWords} for names.
 */
@NullMarked
package witnessmark.wording;

import org.jspecify.annotations.NullMarked;
