/**
 * Logger and dyno traces: read in one pass and reduced while they are read, in bounded memory whatever their size. This
 * room knows no files, clocks or threads; it is given bytes and says what they hold.
 *
 * <p>Begin with {@code trace.text.Recognition}, which understands the beginning of a file, and
 * {@code trace.text.TraceReader}, which reads all of it and hands each sample to a
 * {@link witnessmark.trace.SampleSink}: to {@code trace.reduce.Reducer} for what an engine did, to
 * {@code trace.kept.KeptWriter} to keep the samples. {@code trace.packed} opens gzip and zip. What comes of it is in
 * {@code trace.result}.
 */
@NullMarked
package witnessmark.trace;

import org.jspecify.annotations.NullMarked;
