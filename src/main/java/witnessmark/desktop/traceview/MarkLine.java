package witnessmark.desktop.traceview;

import witnessmark.chart.TraceRows;
import witnessmark.desktop.form.SeamState;

/**
 * A mark of a trace as a row of a list.
 *
 * @param at when, as read
 * @param seconds when
 * @param state whether the engine did it, or the logger
 * @param what it is
 * @param figure its worst figure
 * @param lasted how long
 * @param known in which channel, and what else is known
 * @param mark on the chart
 */
record MarkLine(
        String at,
        double seconds,
        SeamState state,
        String what,
        String figure,
        String lasted,
        String known,
        TraceRows.Mark mark) {}
