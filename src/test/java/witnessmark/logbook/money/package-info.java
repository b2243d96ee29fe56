/** Tests of the season in money. */
@org.jspecify.annotations.NullMarked
package witnessmark.logbook.money;
