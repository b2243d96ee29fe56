package witnessmark.desktop.traceview;

import org.jspecify.annotations.Nullable;

/**
 * Time at one band of speed.
 *
 * @param band which, from 0 rpm up
 * @param words how it reads
 * @param millis time in it
 * @param minutes how that reads
 * @param share of the longest of those shown
 * @param over the same of the run laid over it; null where there is none
 * @param overMinutes how that reads
 * @param overShare of the longest of those shown
 */
record BandLine(
        int band,
        String words,
        long millis,
        String minutes,
        double share,
        @Nullable Long over,
        String overMinutes,
        double overShare) {}
