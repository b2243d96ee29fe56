package witnessmark.logbook.building;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Build;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Fact;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.Position;
import witnessmark.domain.SignOff;
import witnessmark.fit.result.LessonCheck;
import witnessmark.ledger.result.BuildGap;
import witnessmark.ledger.result.BuildPosition;
import witnessmark.ledger.result.FreePart;
import witnessmark.ledger.result.JointGroup;

/**
 * A build with all that belongs to it.
 *
 * @param facts the logbook it was seen in
 * @param build as it stands, or as it is to be written
 * @param engine of which engine
 * @param day as of which day parts stand: the day it was closed, or the day looked at while it is open
 * @param positions every position within reach, once
 * @param joints the groups of fasteners it tightens
 * @param gaps what is still open, worst first
 * @param free what lies on the shelf for each position, the likeliest first; empty for a build that is closed
 * @param lessons what lessons ask of its sheet, in the order they were learned
 * @param signed the last signing of its sheet, or null
 */
public record BuildPage(
        Facts facts,
        Entry<Build> build,
        Entry<Engine> engine,
        LocalDate day,
        List<BuildPosition> positions,
        List<JointGroup> joints,
        List<BuildGap> gaps,
        Map<Id<Position>, List<FreePart>> free,
        List<LessonCheck> lessons,
        @Nullable Entry<SignOff> signed) {
    public BuildPage {
        positions = List.copyOf(positions);
        joints = List.copyOf(joints);
        gaps = List.copyOf(gaps);
        free = Map.copyOf(free);
        lessons = List.copyOf(lessons);
    }

    /** Whether it goes on on the day looked at. */
    public boolean open() {
        return build.fact().closed() == null;
    }

    public List<FreePart> free(Id<Position> position) {
        return free.getOrDefault(position, List.of());
    }

    public Optional<BuildPosition> position(Id<Position> id) {
        return positions.stream()
                .filter(each -> each.position().id().equals(id))
                .findFirst();
    }

    /** What an entry says that something here refers to. */
    public <F extends Fact> F get(Class<F> kind, Id<F> id) {
        return facts.of(kind).get(id);
    }
}
