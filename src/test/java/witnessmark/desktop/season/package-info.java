/** Tests of the place Season ledger, on the sample season in its middle and told to its end. */
@org.jspecify.annotations.NullMarked
package witnessmark.desktop.season;
