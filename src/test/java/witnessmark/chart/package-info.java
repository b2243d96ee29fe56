/** Charts drawn. */
@org.jspecify.annotations.NullMarked
package witnessmark.chart;
