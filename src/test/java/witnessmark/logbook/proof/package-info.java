/** Tests of the investigation of incidents. */
@org.jspecify.annotations.NullMarked
package witnessmark.logbook.proof;
