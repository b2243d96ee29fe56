package witnessmark.ledger;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Build;
import witnessmark.domain.Entry;
import witnessmark.domain.Finding;
import witnessmark.domain.Fitment;
import witnessmark.domain.SignOff;
import witnessmark.ledger.result.BuildGap;
import witnessmark.ledger.result.BuildGap.Kind;
import witnessmark.ledger.result.BuildPosition;
import witnessmark.ledger.result.JointGroup;
import witnessmark.ledger.result.Mark;
import witnessmark.ledger.result.MarkState;

/** What is still open in a build, worst first. That nothing is says that nothing was found open, and no more. */
public final class BuildGaps {
    private BuildGaps() {}

    /**
     * @param marked what was found on the parts that are in
     * @param outside figures of its sheet that are outside their limits and that nobody accepted
     * @param missing figures that a limit asks for and that nobody measured or accepted
     * @param lessons lessons that are not met or not answered and that nobody accepted so
     * @param signed the last signing of its sheet, or null
     */
    public static List<BuildGap> of(
            Build build,
            List<BuildPosition> positions,
            List<JointGroup> joints,
            FoundMarked marked,
            int outside,
            int missing,
            int lessons,
            @Nullable SignOff signed) {
        List<BuildGap> all = new ArrayList<>();
        positions.forEach(each -> position(all, each, marked));
        joints.forEach(each -> joint(all, each));
        count(all, Kind.LESSON, lessons);
        count(all, Kind.OUTSIDE, outside);
        count(all, Kind.NOT_MEASURED, missing);
        if (build.closed() == null) {
            count(all, Kind.NOT_CLOSED, 1);
        }
        if (signed == null) {
            count(all, Kind.NOT_SIGNED, 1);
        } else if (!signed.seenByTwo()) {
            count(all, Kind.SIGNED_BY_ONE, 1);
        }
        all.sort(Comparator.comparing(BuildGap::kind));
        return all;
    }

    private static void position(List<BuildGap> all, BuildPosition each, FoundMarked marked) {
        if (each.empty()) {
            all.add(new BuildGap(Kind.EMPTY, each, null, List.of(), 1));
        }
        Entry<Fitment> in = each.in();
        List<Entry<Finding>> found =
                in == null ? List.of() : marked.on(in.fact().part());
        if (!found.isEmpty()) {
            all.add(new BuildGap(Kind.MARKED, each, null, found, 1));
        }
        Mark mark = each.worst();
        Kind kind = mark == null ? null : kind(mark);
        if (kind != null) {
            all.add(new BuildGap(kind, each, null, List.of(), 1));
        }
    }

    private static @Nullable Kind kind(Mark mark) {
        return switch (mark.state()) {
            case HELD -> Kind.HELD;
            case OVER -> Kind.OVER;
            case DUE -> Kind.DUE;
            case NOT_KNOWN -> mark.weight() == MarkState.OVER.ordinal() ? Kind.NOT_KNOWN : null;
            case RUN_ON, WITHIN -> null;
        };
    }

    private static void joint(List<BuildGap> all, JointGroup each) {
        if (each.tightened().isEmpty()) {
            all.add(new BuildGap(Kind.NOT_TIGHTENED, null, each, List.of(), 1));
        }
        if (each.dry()) {
            all.add(new BuildGap(Kind.NO_LUBRICANT, null, each, List.of(), 1));
        }
        if (each.seenByOne()) {
            all.add(new BuildGap(Kind.SEEN_BY_ONE, null, each, List.of(), 1));
        }
    }

    private static void count(List<BuildGap> all, Kind kind, int count) {
        if (count > 0) {
            all.add(new BuildGap(kind, null, null, List.of(), count));
        }
    }
}
