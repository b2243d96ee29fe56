package witnessmark.ledger.result;

import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Build;
import witnessmark.domain.Entry;
import witnessmark.domain.Joint;
import witnessmark.domain.Part;
import witnessmark.domain.Tool;
import witnessmark.domain.TrackRepair;
import witnessmark.quantity.Moment;

/**
 * A build closed at the track that nobody has measured since, nor taken as proven by hand.
 *
 * @param build what was opened, closed and signed
 * @param repair what went back, with what it was tightened, who looked
 * @param tool with what it was tightened, or null when not known
 * @param joints what was tightened in it, in the order it was written
 * @param since when it was closed
 * @param wentIn the parts it fitted, in the order it was written
 * @param cameOut the parts it took off, in the order it was written
 * @param ran the engine's running time since
 */
public record UnprovenBuild(
        Entry<Build> build,
        Entry<TrackRepair> repair,
        @Nullable Entry<Tool> tool,
        List<Entry<Joint>> joints,
        Moment since,
        List<Entry<Part>> wentIn,
        List<Entry<Part>> cameOut,
        Life ran)
        implements MarkReason {
    public UnprovenBuild {
        joints = List.copyOf(joints);
        wentIn = List.copyOf(wentIn);
        cameOut = List.copyOf(cameOut);
    }

    /** Nobody knows how it stands. */
    @Override
    public MarkState state() {
        return MarkState.NOT_KNOWN;
    }
}
