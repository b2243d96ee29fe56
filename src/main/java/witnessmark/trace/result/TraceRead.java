package witnessmark.trace.result;

import java.util.List;

/**
 * What reading a whole trace came to, whatever was made of its samples.
 *
 * @param bytes read, after unpacking
 * @param rows samples handed on
 * @param parts how often time began, 1 or more
 * @param lasted from the first sample to the last of each part, microseconds
 * @param late questions that only the whole file raises, such as a unit that does not fit
 * @param defects of rows and cells
 */
public record TraceRead(long bytes, long rows, int parts, List<Long> lasted, List<Question> late, Defects defects) {
    public TraceRead {
        lasted = List.copyOf(lasted);
        late = List.copyOf(late);
    }
}
