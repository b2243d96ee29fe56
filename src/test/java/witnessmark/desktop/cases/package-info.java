/** Tests of the investigation of an incident on its page. */
@org.jspecify.annotations.NullMarked
package witnessmark.desktop.cases;
