/** The page of a trace. */
@org.jspecify.annotations.NullMarked
package witnessmark.desktop.traceview;
