package witnessmark.fit.result;

/**
 * What a build sheet comes to, counted once for all who say it: the bench, the page of the build, paper and the command
 * line. A figure is a check at one place, measured or worked out.
 *
 * @param outside figures outside their limits that nobody accepted
 * @param missing figures a limit asks for that were not measured, or rest on what was not, and that nobody accepted
 * @param accepted figures outside their limits that are accepted as they are
 * @param acceptedUnmeasured figures accepted though they were not measured
 * @param lessons lessons that are not met or not answered, and that nobody accepted so
 */
public record SheetCounts(int outside, int missing, int accepted, int acceptedUnmeasured, int lessons) {
    /** The counts of a sheet on which nothing is asked. */
    public static final SheetCounts NONE = new SheetCounts(0, 0, 0, 0, 0);
}
