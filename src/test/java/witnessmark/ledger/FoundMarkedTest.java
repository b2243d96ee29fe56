package witnessmark.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static witnessmark.ledger.Story.asOf;
import static witnessmark.ledger.Story.at;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import witnessmark.domain.Build;
import witnessmark.domain.Engine;
import witnessmark.domain.EngineDesign;
import witnessmark.domain.Entry;
import witnessmark.domain.Finding;
import witnessmark.domain.FindingMark;
import witnessmark.domain.FindingPlace;
import witnessmark.domain.HowMarked;
import witnessmark.domain.Id;
import witnessmark.domain.Part;
import witnessmark.domain.PartKind;
import witnessmark.domain.Position;
import witnessmark.domain.Zone;
import witnessmark.ledger.result.BuildGap;
import witnessmark.ledger.result.BuildPosition;
import witnessmark.quantity.Moment;

/** What was found far gone on a part that is still in (common practice, no source). */
class FoundMarkedTest {
    private final Story story = new Story();
    private final Id<EngineDesign> design = story.design("Four");
    private final Id<Engine> engine = story.engine("A1", design);
    private final Id<Position> place = story.position(design, PartKind.BIG_END_SHELLS, "big-end shells", 1, true);
    private final Id<Part> shells = story.part("BE-1", story.partDesign("shell", PartKind.BIG_END_SHELLS, false));
    private final Id<Build> first =
            story.build(engine, 1, Set.of(Zone.BOTTOM_END), at("2026-03-01T10:00Z[UTC]"), at("2026-03-05T10:00Z[UTC]"));
    private final Id<Build> second =
            story.build(engine, 2, Set.of(Zone.BOTTOM_END), at("2026-05-01T10:00Z[UTC]"), null);

    private void found(Id<Build> build, int number, String spot, HowMarked how, String when) {
        story.add(new Finding(
                null,
                engine,
                build,
                shells,
                "",
                FindingPlace.BIG_END_SHELL,
                number,
                spot,
                how == HowMarked.NONE ? FindingMark.NO_MARK : FindingMark.WIPED,
                how,
                null,
                null,
                null,
                null,
                Moment.parse(when),
                "",
                "",
                null,
                null));
    }

    private List<String> on(String day) {
        return new FoundMarked(LifeLedger.of(story.facts(), asOf(day)))
                .on(shells).stream()
                        .map(each -> each.fact().number() + " " + each.fact().spot() + " "
                                + each.fact().how().code())
                        .toList();
    }

    @Test
    void only_what_is_far_gone_counts_the_worst_first() {
        found(second, 1, "upper", HowMarked.HEAVY, "2026-05-01T11:00Z[UTC]");
        found(second, 1, "lower", HowMarked.NONE, "2026-05-01T12:00Z[UTC]");
        found(second, 2, "upper", HowMarked.FAILED, "2026-05-01T12:00Z[UTC]");
        found(second, 3, "upper", HowMarked.CLEAR, "2026-05-01T12:00Z[UTC]");
        assertThat(on("2026-05-02")).containsExactly("2 upper failed", "1 upper heavy");
        assertThat(on("2026-04-30")).isEmpty();
    }

    @Test
    void what_was_seen_better_at_a_later_strip_is_no_longer_told_and_what_was_not_looked_at_again_is() {
        found(first, 1, "upper", HowMarked.HEAVY, "2026-03-02T11:00Z[UTC]");
        found(first, 2, "upper", HowMarked.HEAVY, "2026-03-02T11:00Z[UTC]");
        found(second, 1, "", HowMarked.LIGHT, "2026-05-02T11:00Z[UTC]");
        assertThat(on("2026-05-03")).containsExactly("2 upper heavy");
    }

    @Test
    void a_look_at_one_side_says_nothing_of_the_other() {
        found(first, 3, "upper near the parting line", HowMarked.HEAVY, "2026-03-02T11:00Z[UTC]");
        found(second, 3, "lower", HowMarked.NONE, "2026-05-02T11:00Z[UTC]");
        assertThat(on("2026-05-03")).containsExactly("3 upper near the parting line heavy");
        found(second, 3, "upper", HowMarked.LIGHT, "2026-05-02T12:00Z[UTC]");
        assertThat(on("2026-05-03")).isEmpty();
    }

    @Test
    void a_part_that_is_still_in_is_a_gap_of_its_build_until_it_comes_out() {
        story.fit(shells, engine, place, at("2026-03-04T10:00Z[UTC]"), at("2026-05-04T10:00Z[UTC]"));
        found(second, 2, "upper", HowMarked.HEAVY, "2026-05-01T11:00Z[UTC]");
        assertThat(gaps("2026-05-02"))
                .filteredOn(gap -> gap.kind() == BuildGap.Kind.MARKED)
                .singleElement()
                .satisfies(gap -> assertThat(gap.found()).hasSize(1));
        assertThat(gaps("2026-05-05")).extracting(BuildGap::kind).doesNotContain(BuildGap.Kind.MARKED);
    }

    @Test
    void what_lies_free_says_so_and_comes_after_what_nothing_was_found_on() {
        Id<Part> clean =
                story.part("BE-2", story.facts().of(Part.class).get(shells).design());
        found(first, 2, "upper", HowMarked.FAILED, "2026-03-02T11:00Z[UTC]");
        LifeLedger ledger = LifeLedger.of(story.facts(), asOf("2026-05-02"));
        assertThat(new FreeParts(ledger, new Marks(ledger))
                        .of(
                                story.facts().of(Build.class).get(second),
                                story.facts().of(Position.class).find(place).orElseThrow()))
                .extracting(free -> free.part().id(), free -> free.marked().size())
                .containsExactly(tuple(clean, 0), tuple(shells, 1));
    }

    private List<BuildGap> gaps(String day) {
        LifeLedger ledger = LifeLedger.of(story.facts(), asOf(day));
        Entry<Build> build = story.facts().of(Build.class).find(second).orElseThrow();
        List<BuildPosition> positions = new BuildPositions(ledger, new Marks(ledger)).of(build);
        return BuildGaps.of(
                build.fact(),
                positions,
                new BuildJoints(ledger).of(build, positions),
                new FoundMarked(ledger),
                0,
                0,
                0,
                null);
    }
}
