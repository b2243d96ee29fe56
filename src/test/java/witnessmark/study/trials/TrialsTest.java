package witnessmark.study.trials;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static witnessmark.ledger.Story.at;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import witnessmark.domain.Engine;
import witnessmark.domain.EngineDesign;
import witnessmark.domain.Fitment;
import witnessmark.domain.FoundWhen;
import witnessmark.domain.Id;
import witnessmark.domain.Incident;
import witnessmark.domain.IncidentPart;
import witnessmark.domain.Limit;
import witnessmark.domain.LimitAction;
import witnessmark.domain.LimitRank;
import witnessmark.domain.Part;
import witnessmark.domain.PartDesign;
import witnessmark.domain.PartHarm;
import witnessmark.domain.PartKind;
import witnessmark.domain.Position;
import witnessmark.domain.PriorKind;
import witnessmark.domain.Severity;
import witnessmark.domain.Trial;
import witnessmark.ledger.LifeLedger;
import witnessmark.ledger.Story;
import witnessmark.quantity.Counter;
import witnessmark.quantity.Moment;
import witnessmark.statistics.LogRank;
import witnessmark.study.result.TrialAnswer;
import witnessmark.study.result.TrialLife;
import witnessmark.study.result.TrialSide;

/** Lives side by side against a shop that is played through day by day and adds its minutes up as they are run. */
class TrialsTest {
    private static final LocalDate FIRST = LocalDate.parse("2026-01-01");
    private static final int DAYS = 80;
    private static final long MINUTE = 60_000;

    private final Story story = new Story();
    private final Id<EngineDesign> design = story.design("Four");
    private final Id<Position> position = story.position(design, PartKind.VALVE_SPRINGS, "valve springs", 1, true);
    private final Id<PartDesign> tried = story.partDesign("new springs", PartKind.VALVE_SPRINGS, false);
    private final Id<PartDesign> usual = story.partDesign("old springs", PartKind.VALVE_SPRINGS, false);
    private final Id<PartDesign> third = story.partDesign("third springs", PartKind.VALVE_SPRINGS, false);
    private final Id<PartDesign> other = story.partDesign("rods", PartKind.RODS, false);
    private int incidents;

    /** A life as the shop saw it. */
    private record Lived(String mark, long entry, long exit, TrialLife.End end) {}

    private static Moment on(int day, int hour) {
        return at(FIRST.plusDays(day) + (hour < 10 ? "T0" : "T") + hour + ":00Z[UTC]");
    }

    private Id<Trial> trial(@Nullable Id<PartDesign> against) {
        return story.add(new Trial("t", tried, against, "longer", FIRST, "", null, null, "", ""));
    }

    private TrialAnswer answer(Id<Trial> trial, int day) {
        LifeLedger ledger =
                LifeLedger.of(story.facts(), Story.asOf(FIRST.plusDays(day).toString()));
        return new Trials(ledger).of(story.facts().of(Trial.class).find(trial).orElseThrow());
    }

    private void broke(Id<Part> part, Id<Engine> engine, Moment moment, PartHarm harm) {
        incidents++;
        Id<Incident> incident = story.add(new Incident(
                "I" + incidents,
                "broke",
                moment,
                FoundWhen.AT_A_CHECK,
                null,
                null,
                null,
                engine,
                Severity.LOST_TIME,
                "",
                null,
                "",
                null,
                "",
                "",
                ""));
        story.add(new IncidentPart(incident, part, "", harm, null, false, null, ""));
    }

    /** One engine of the shop, with the part that is in it and since when. */
    private static final class Bay {
        private final Id<Engine> engine;
        private @Nullable Id<Part> part;
        private int since;
        private long entry;

        Bay(Id<Engine> engine) {
            this.engine = engine;
        }
    }

    /** A season played day by day: parts go in new or used, run, come off, break. */
    private final class Shop {
        private final Random random;
        private final Map<Id<Part>, Long> age = new HashMap<>();
        private final Map<Id<Part>, String> marks = new HashMap<>();
        private final Map<Id<Part>, Id<PartDesign>> designs = new HashMap<>();
        private final List<Id<Part>> shelf = new ArrayList<>();
        private final List<Id<Part>> tomorrow = new ArrayList<>();
        private final Map<Id<PartDesign>, List<Lived>> lived = new HashMap<>();
        private final List<Bay> bays = new ArrayList<>();

        Shop(long seed) {
            random = new Random(seed);
            for (int i = 0; i < 5; i++) {
                bays.add(new Bay(story.engine("A" + i, design)));
            }
            for (int i = 0; i < 24; i++) {
                Id<PartDesign> of = List.of(tried, usual, third).get(i % 3);
                String mark = "S" + i;
                Id<Part> part = story.part(mark, of);
                long before = random.nextInt(3) == 0 ? random.nextInt(400) * MINUTE : 0;
                story.prior(
                        part, Counter.RUNNING, PriorKind.KNOWN, before, before, before, at("2025-12-31T12:00Z[UTC]"));
                age.put(part, before);
                marks.put(part, mark);
                designs.put(part, of);
                shelf.add(part);
            }
        }

        void play() {
            for (int day = 0; day < DAYS; day++) {
                for (Bay bay : bays) {
                    day(bay, day);
                }
                shelf.addAll(tomorrow);
                tomorrow.clear();
            }
            bays.forEach(bay -> off(bay, DAYS, TrialLife.End.STILL_IN));
        }

        private void day(Bay bay, int day) {
            if (bay.part == null && !shelf.isEmpty()) {
                bay.part = shelf.remove(random.nextInt(shelf.size()));
                bay.since = day;
                bay.entry = age.get(bay.part);
            }
            if (bay.part == null) {
                return;
            }
            if (random.nextInt(3) > 0) {
                long minutes = 10L + random.nextInt(50);
                story.run(bay.engine, null, on(day, 10), minutes);
                age.merge(bay.part, minutes * MINUTE, Long::sum);
            }
            int fate = random.nextInt(24);
            if (fate == 0) {
                Id<Part> named = random.nextBoolean() ? bay.part : split(bay.part, day);
                broke(named, bay.engine, on(day, 12), PartHarm.FAILED);
                off(bay, day, TrialLife.End.FAILED);
            } else if (fate < 3) {
                if (fate == 1) {
                    broke(bay.part, bay.engine, on(day, 12), PartHarm.DAMAGED);
                }
                Id<Part> part = bay.part;
                off(bay, day, TrialLife.End.CAME_OFF);
                tomorrow.add(random.nextInt(3) > 0 ? part : split(part, day));
            }
        }

        /** One of a set gets a mark of its own at the strip, with the life the set has; of the rest nothing is fitted again. */
        private Id<Part> split(Id<Part> set, int day) {
            String mark = marks.get(set) + "/" + day;
            Id<Part> member = story.split(mark, designs.get(set), set, on(day, 19));
            age.put(member, age.get(set));
            marks.put(member, mark);
            designs.put(member, designs.get(set));
            return member;
        }

        /** Of what was bought, how many never went in. */
        private long waiting(List<Id<PartDesign>> asked) {
            return shelf.stream()
                    .filter(part -> asked.contains(designs.get(part)))
                    .map(marks::get)
                    .filter(mark -> !mark.contains("/"))
                    .filter(mark ->
                            of(asked).stream().noneMatch(life -> life.mark().equals(mark)))
                    .count();
        }

        private void off(Bay bay, int day, TrialLife.End end) {
            Id<Part> part = bay.part;
            if (part == null) {
                return;
            }
            Moment to = end == TrialLife.End.STILL_IN ? null : on(day, 18);
            story.add(new Fitment(part, bay.engine, null, position, on(bay.since, 8), to, null, null, "", "", false));
            lived.computeIfAbsent(designs.get(part), id -> new ArrayList<>())
                    .add(new Lived(marks.get(part), bay.entry, age.get(part), end));
            bay.part = null;
        }

        List<Lived> of(List<Id<PartDesign>> asked) {
            return asked.stream()
                    .flatMap(each -> lived.getOrDefault(each, List.of()).stream())
                    .toList();
        }
    }

    private static List<Lived> shown(TrialSide side) {
        return side.lives().stream()
                .map(life -> new Lived(life.part().fact().mark(), life.entry(), life.exit(), life.end()))
                .toList();
    }

    private static List<LogRank.Life> compared(List<Lived> lives) {
        return lives.stream()
                .filter(life -> life.exit() > life.entry())
                .map(life ->
                        new LogRank.Life(life.entry() / 3.6e6, life.exit() / 3.6e6, life.end() == TrialLife.End.FAILED))
                .toList();
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void lives_are_what_the_shop_ran_and_the_test_is_of_them(long seed) {
        Shop shop = new Shop(seed);
        shop.play();

        for (boolean all : new boolean[] {false, true}) {
            TrialAnswer answer = answer(trial(all ? null : usual), DAYS + 1);
            List<Lived> first = shop.of(List.of(tried));
            List<Lived> second = shop.of(all ? List.of(usual, third) : List.of(usual));
            assertThat(shown(answer.tried())).containsExactlyInAnyOrderElementsOf(first);
            assertThat(shown(answer.usual())).containsExactlyInAnyOrderElementsOf(second);
            assertThat(shown(answer.usual()))
                    .isSortedAccordingTo(Comparator.comparingLong(Lived::exit).reversed());
            assertThat(answer.tried().ran())
                    .isEqualTo(first.stream()
                            .mapToLong(life -> life.exit() - life.entry())
                            .sum());
            assertThat(answer.tried().leftOut()).isZero();
            assertThat(answer.tried().neverFitted()).isEqualTo(shop.waiting(List.of(tried)));
            LogRank test = LogRank.of(compared(first), compared(second));
            assertThat(answer.test()).isNotNull();
            assertThat(answer.test().chiSquare()).isCloseTo(test.chiSquare(), within(1e-12));
            assertThat(answer.test().p()).isCloseTo(test.p(), within(1e-12));
            assertThat(answer.test().failures()).isEqualTo(test.failures());
            assertThat(answer.test().enough()).isEqualTo(test.room() >= 5);
        }
    }

    /** Whatever the day looked at, ages only grow, and what was taken off later is still in. */
    @Test
    void an_earlier_day_sees_the_same_lives_shorter() {
        Shop shop = new Shop(11);
        shop.play();
        Id<Trial> trial = trial(usual);
        Map<String, Long> before = new HashMap<>();

        for (int day = 0; day <= DAYS; day += 8) {
            for (TrialLife life : answer(trial, day).tried().lives()) {
                String key = life.part().fact().mark() + life.stay().from();
                assertThat(life.exit()).isGreaterThanOrEqualTo(before.getOrDefault(key, 0L));
                before.put(key, life.exit());
            }
        }
        assertThat(before).isNotEmpty();
    }

    @Test
    void what_is_told_or_not_known_before_stands_beside_and_in_no_comparison() {
        Id<Engine> engine = story.engine("A1", design);
        Id<Part> told = story.part("S1", tried);
        Id<Part> unknown = story.part("S2", usual);
        story.fit(told, engine, position, on(0, 8), on(10, 8));
        story.told(engine, on(1, 8), on(2, 8), 30, 60, 90);
        story.fit(unknown, engine, position, on(11, 8), null);
        story.prior(unknown, Counter.RUNNING, PriorKind.UNKNOWN, 30 * MINUTE, 30 * MINUTE, 0, on(11, 8));
        story.run(engine, null, on(12, 8), 20);

        TrialAnswer answer = answer(trial(usual), 20);

        TrialLife first = answer.tried().lives().get(0);
        assertThat(first.doubt()).isEqualTo(TrialLife.Doubt.TOLD);
        assertThat(first.ran()).isEqualTo(60 * MINUTE);
        TrialLife second = answer.usual().lives().get(0);
        assertThat(second.doubt()).isEqualTo(TrialLife.Doubt.BEFORE_NOT_KNOWN);
        assertThat(second.entry()).isEqualTo(30 * MINUTE);
        assertThat(second.exit()).isEqualTo(50 * MINUTE);
        assertThat(answer.test()).isNull();
        assertThat(answer.tried().leftOut()).isEqualTo(1);
        assertThat(answer.usual().leftOut()).isEqualTo(1);
    }

    /** A part that broke on one occasion and was damaged on another: the failure ends only the time it belongs to. */
    @Test
    void a_failure_ends_the_time_in_which_it_happened_and_not_the_one_before() {
        Id<Engine> engine = story.engine("A1", design);
        Id<Part> part = story.part("S1", tried);
        story.fit(part, engine, position, on(0, 8), on(5, 8));
        story.fit(part, engine, position, on(6, 8), on(20, 8));
        story.run(engine, null, on(1, 10), 30);
        story.run(engine, null, on(7, 10), 40);
        broke(part, engine, on(2, 12), PartHarm.DAMAGED);
        broke(part, engine, on(8, 12), PartHarm.FAILED);
        story.run(engine, null, on(9, 10), 5); // ran on with it

        List<TrialLife> lives = answer(trial(usual), 30).tried().lives();

        assertThat(lives).extracting(TrialLife::end).containsExactly(TrialLife.End.FAILED, TrialLife.End.CAME_OFF);
        assertThat(lives.get(0).entry()).isEqualTo(30 * MINUTE);
        assertThat(lives.get(0).exit()).isEqualTo(70 * MINUTE);
        assertThat(lives.get(1).exit()).isEqualTo(30 * MINUTE);
        assertThat(lives.get(1).harms()).hasSize(1);
    }

    /** A bolt that is found broken at the strip and split off then broke in its set; damage after that is the bolt's own. */
    @Test
    void what_broke_in_a_set_ends_the_life_of_the_set() {
        Id<Engine> engine = story.engine("A1", design);
        Id<Part> set = story.part("S1", tried);
        story.fit(set, engine, position, on(0, 8), on(5, 8));
        story.run(engine, null, on(1, 10), 30);
        Id<Part> broken = story.split("S1/3", tried, set, on(5, 9));
        Id<Part> kept = story.split("S1/4", tried, set, on(5, 9));
        broke(broken, engine, on(4, 12), PartHarm.FAILED);
        story.fit(kept, engine, position, on(6, 8), null);
        story.run(engine, null, on(7, 10), 10);
        broke(kept, engine, on(8, 12), PartHarm.FAILED);
        broke(story.split("S1/5", tried, set, on(5, 9)), engine, on(5, 10), PartHarm.DAMAGED);

        TrialSide side = answer(trial(usual), 30).tried();

        assertThat(shown(side))
                .containsExactly(
                        new Lived("S1/4", 30 * MINUTE, 40 * MINUTE, TrialLife.End.FAILED),
                        new Lived("S1", 0, 30 * MINUTE, TrialLife.End.FAILED));
        assertThat(side.lives().get(1).harms())
                .as("what was seen at the strip of one that never ran by itself is the set's too")
                .hasSize(2);
        assertThat(side.neverFitted()).isZero();
    }

    @Test
    void what_is_bought_later_does_not_wait_yet() {
        story.part("S1", tried, FIRST.plusDays(9));
        story.part("S2", tried, FIRST.plusDays(10));

        assertThat(answer(trial(usual), 9).tried().neverFitted()).isEqualTo(1);
        assertThat(answer(trial(usual), 10).tried().neverFitted()).isEqualTo(2);
    }

    @Test
    void both_are_lifed_by_what_their_limit_counts() {
        Id<Part> part = story.part("S1", tried);
        Id<Engine> engine = story.engine("A1", design);
        story.fit(part, engine, position, on(0, 8), null);
        assertThat(answer(trial(usual), 3).counter()).isEqualTo(Counter.RUNNING);
        story.add(new Limit(
                "renew springs",
                LimitAction.RENEW,
                null,
                PartKind.VALVE_SPRINGS,
                null,
                null,
                null,
                null,
                Counter.LOADED,
                8 * 60 * MINUTE,
                LimitRank.MAKER,
                "",
                FIRST,
                null));

        TrialAnswer answer = answer(trial(usual), 3);

        assertThat(answer.counter()).isEqualTo(Counter.LOADED);
        assertThat(answer.limit()).isEqualTo(8 * 60 * MINUTE);
        assertThat(answer.usual().lives()).as("no rods among springs").isEmpty();
        assertThat(story.facts().of(PartDesign.class).find(other)).isPresent();
    }

    @Test
    void it_is_judged_on_its_day_and_goes_on_the_day_before() {
        Id<Trial> trial = story.add(new Trial(
                "t",
                tried,
                null,
                "",
                FIRST,
                "",
                FIRST.plusDays(10),
                witnessmark.domain.TrialVerdict.NOT_TOLD,
                "too few",
                ""));

        assertThat(answer(trial, 9).judged()).isFalse();
        assertThat(answer(trial, 10).judged()).isTrue();
    }
}
