/**
 * Pages for paper: what stands on a page, described without any PDF, and the PDF laid out from that. It differs from
 * {@link witnessmark.wording} in that it knows columns and page ends, and makes no sentence of its own; it fetches and
 * computes nothing. The same page always gives the same bytes. Open {@link witnessmark.report.JobSheet} first, then
 * {@link witnessmark.report.JobSheetPdf}.
 */
@NullMarked
package witnessmark.report;

import org.jspecify.annotations.NullMarked;
