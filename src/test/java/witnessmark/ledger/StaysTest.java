package witnessmark.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import witnessmark.domain.Entry;
import witnessmark.domain.Fitment;
import witnessmark.domain.Id;
import witnessmark.domain.Part;
import witnessmark.domain.PartKind;
import witnessmark.ledger.result.Stay;
import witnessmark.quantity.Moment;

/** Where a part has been. */
class StaysTest {
    static LongStream seeds() {
        return LongStream.rangeClosed(1, 100);
    }

    /** Every stay says what {@link LifeLedger#whereIs} says of each moment in it, and outside of all it is nowhere. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void the_stays_are_where_it_is_at_every_moment(long seed) {
        History history = HistoryGenerator.history(seed);
        LifeLedger ledger = LifeLedger.of(history.story().facts(), history.asOf());
        Moment last = history.asOf().last();
        SplittableRandom random = new SplittableRandom(seed);
        for (Id<Part> part : history.parts()) {
            List<Stay> stays = ledger.stays(part);
            for (int i = 0; i < 20; i++) {
                long back = random.nextLong(400L * 24 * 3_600_000);
                Moment at = Moment.of(last.instant().minusMillis(back), last.zone());
                List<Id<Fitment>> there = stays.stream()
                        .filter(stay -> !stay.from().isAfter(at) && (stay.to() == null || at.isBefore(stay.to())))
                        .map(stay -> stay.fitment().id())
                        .toList();
                Id<Fitment> is = ledger.whereIs(part, at).map(Entry::id).orElse(null);
                if (is == null) {
                    assertThat(there).isEmpty();
                } else {
                    assertThat(there).contains(is);
                }
            }
        }
    }

    @Test
    void a_member_was_where_its_set_was_until_it_was_split_off() {
        Story story = new Story();
        var design = story.design("in-line");
        var one = story.engine("K1", design);
        var two = story.engine("K2", design);
        var position = story.position(design, PartKind.RODS, "rods", 1, true);
        var rods = story.partDesign("rods", PartKind.RODS, false);
        Id<Part> set = story.part("RS-1", rods);
        Id<Part> member = story.split("RS-1-3", rods, set, Story.at("2026-03-05T12:00Z"));
        Id<Fitment> before = story.fit(set, one, position, Story.at("2026-02-01T12:00Z"), null);
        Id<Fitment> after = story.fit(member, two, position, Story.at("2026-03-06T12:00Z"), null);

        List<Stay> stays =
                LifeLedger.of(story.facts(), Story.asOf("2026-04-01")).stays(member);
        assertThat(stays).extracting(stay -> stay.fitment().id()).containsExactly(before, after);
        assertThat(stays.get(0).to()).isEqualTo(Story.at("2026-03-05T12:00Z"));
        assertThat(stays.get(1).to()).isNull();
        assertThat(LifeLedger.of(story.facts(), Story.asOf("2026-03-01")).stays(member))
                .singleElement()
                .satisfies(stay -> assertThat(stay.to()).isNull());
        assertThat(LifeLedger.of(story.facts(), Story.asOf("2026-04-01")).stays(set))
                .singleElement()
                .satisfies(stay -> assertThat(stay.to()).isNull());
    }
}
