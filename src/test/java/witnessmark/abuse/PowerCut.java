package witnessmark.abuse;

import java.util.Arrays;
import java.util.Random;

/** What becomes, at a power cut, of what was written and not yet brought to the disk. */
enum PowerCut {
    /** All of it is there, as after the program alone was killed. */
    KEPT(1, 1, false),
    /** Nothing of it is there. */
    DROPPED(0, 0, false),
    /** New names are there, their content is not. */
    NAMES_WITHOUT_CONTENT(0, 1, false),
    /** Content of files that had their names before is there, new names are not. */
    CONTENT_WITHOUT_NAMES(1, 0, false),
    /** Any writes are there and any are not, whatever their order was. */
    REORDERED(0.5, 0.5, false),
    /** Any sectors of any writes are there and any are not. */
    TORN(0.5, 0.5, true),
    /** Nearly all sectors are there. */
    BARELY_TORN(0.95, 1, true),
    /** Hardly any are. */
    MOSTLY_DROPPED(0.05, 0.5, true);

    private static final int SECTOR = 512;

    private final double content;
    private final double names;
    private final boolean bySector;

    PowerCut(double content, double names, boolean bySector) {
        this.content = content;
        this.names = names;
        this.bySector = bySector;
    }

    boolean keepsWhole(Random random) {
        return random.nextDouble() < content;
    }

    /** How many of so many acts on the names of a folder are there; file systems keep these in order. */
    int names(int pending, Random random) {
        return names == 1 ? pending : names == 0 ? 0 : random.nextInt(pending + 1);
    }

    /** A file's content with what is there of one write. */
    byte[] with(byte[] before, DiskLog.Act act, Random random) {
        if (act.kind() == DiskLog.Kind.TRUNCATE) {
            return keepsWhole(random) ? Arrays.copyOf(before, (int) act.offset()) : before;
        }
        if (!bySector) {
            return keepsWhole(random) ? written(before, act.data(), 0, act.data().length, act.offset()) : before;
        }
        byte[] after = before;
        int from = 0;
        while (from < act.data().length) {
            int inSector = (int) ((act.offset() + from) % SECTOR);
            int length = Math.min(SECTOR - inSector, act.data().length - from);
            if (keepsWhole(random)) {
                after = written(after, act.data(), from, length, act.offset() + from);
            }
            from += length;
        }
        return after;
    }

    /** Content with a write in it, in the same array where there is room. */
    static byte[] written(byte[] content, byte[] data, int from, int length, long offset) {
        int end = (int) offset + length;
        byte[] longEnough = end > content.length ? Arrays.copyOf(content, end) : content;
        System.arraycopy(data, from, longEnough, (int) offset, length);
        return longEnough;
    }
}
