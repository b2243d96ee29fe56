/**
 * Every sentence people see: labels, problems, measures as shown. Sentences live in bundles under {@code i18n}, one
 * for each place of the program, one key for each sentence. Open {@link witnessmark.wording.Texts} first.
 */
@NullMarked
package witnessmark.wording;

import org.jspecify.annotations.NullMarked;
