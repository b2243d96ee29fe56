package witnessmark.trace.kept;

/**
 * Where a stretch of a channel's samples is kept, and what is between its least and most.
 *
 * @param at of its packed bytes
 * @param length of them
 * @param checksum CRC-32C of them
 * @param samples how many
 * @param from time of the first, microseconds within the part
 * @param until time of the last
 * @param least NaN when it has no figure
 * @param most NaN as above
 * @param envelopeAt of the packed bytes of its envelope
 * @param envelopeLength of them
 * @param envelopeChecksum of them
 */
record Block(
        long at,
        int length,
        int checksum,
        int samples,
        long from,
        long until,
        double least,
        double most,
        long envelopeAt,
        int envelopeLength,
        int envelopeChecksum) {
    /** Samples of a block. */
    static final int SAMPLES = 4096;

    /** Samples of which the least and most are kept. */
    static final int BUCKET = 64;

    void write(Numbers into) {
        into.unsigned(at);
        into.unsigned(length);
        into.unsigned(checksum & 0xFFFFFFFFL);
        into.unsigned(samples);
        into.signed(from);
        into.signed(until);
        into.bits(least);
        into.bits(most);
        into.unsigned(envelopeAt);
        into.unsigned(envelopeLength);
        into.unsigned(envelopeChecksum & 0xFFFFFFFFL);
    }

    static Block read(Numbers.Reading from) throws KeptDamaged {
        return new Block(
                from.unsigned(),
                from.count(Integer.MAX_VALUE),
                (int) from.unsigned(),
                from.count(SAMPLES),
                from.signed(),
                from.signed(),
                from.bits(),
                from.bits(),
                from.unsigned(),
                from.count(Integer.MAX_VALUE),
                (int) from.unsigned());
    }
}
