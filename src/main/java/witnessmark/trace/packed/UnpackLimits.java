package witnessmark.trace.packed;

/**
 * How far something packed is followed. A logger's text packs to a fifth or a tenth; one of nothing but the same figure to
 * perhaps a hundredth. Deflate itself cannot do better than 1 to 1032.
 *
 * @param bytes it may unpack to
 * @param times it may be larger than packed, once {@link #free} bytes have come out
 * @param free bytes that may come out before the ratio is looked at
 * @param entries an archive may have
 */
public record UnpackLimits(long bytes, int times, long free, int entries) {
    /** 32 GB, two hundred and fifty times, from 8 MB on; a thousand entries. */
    public static UnpackLimits usual() {
        return new UnpackLimits(32L << 30, 250, 8 << 20, 1000);
    }
}
