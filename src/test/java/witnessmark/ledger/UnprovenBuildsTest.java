package witnessmark.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import witnessmark.domain.Build;
import witnessmark.domain.BuildProof;
import witnessmark.domain.Engine;
import witnessmark.domain.EngineDesign;
import witnessmark.domain.Entry;
import witnessmark.domain.Fact;
import witnessmark.domain.Fitment;
import witnessmark.domain.Id;
import witnessmark.domain.Part;
import witnessmark.domain.PartDesign;
import witnessmark.domain.PartKind;
import witnessmark.domain.Position;
import witnessmark.domain.ProofKind;
import witnessmark.domain.Standing;
import witnessmark.domain.TrackRepair;
import witnessmark.domain.Zone;
import witnessmark.ledger.result.Mark;
import witnessmark.ledger.result.MarkState;
import witnessmark.ledger.result.UnprovenBuild;
import witnessmark.quantity.Moment;

/** Which track repairs are not proven: told examples, and random histories lived through event by event. */
class UnprovenBuildsTest {
    private static final Instant FIRST = Instant.parse("2026-04-01T00:00:00Z");
    private static final int DAYS = 12;

    private final Story story = new Story();
    private final Id<EngineDesign> design = story.design("four");
    private final Id<Engine> engine = story.engine("A1", design);

    @Test
    void a_repair_is_unproven_with_its_list_until_the_day_it_is_measured() {
        Id<Position> where = story.position(design, PartKind.HEAD_GASKET, "head gasket", 1, true);
        Id<PartDesign> gasket = story.partDesign("gasket", PartKind.HEAD_GASKET, true);
        Id<Part> old = story.part("G-1", gasket);
        Id<Part> fresh = story.part("G-2", gasket);
        Moment opened = Story.at("2026-04-04T16:00Z");
        Moment closed = Story.at("2026-04-04T19:00Z");
        Id<Build> build = build(opened, closed);
        story.add(new TrackRepair(build, "springs", null, "Jo", ""));
        story.add(new Fitment(
                old,
                engine,
                null,
                where,
                Story.at("2026-03-01T00:00Z"),
                opened,
                null,
                build,
                "leaked",
                "burnt",
                false));
        story.add(new Fitment(fresh, engine, null, where, closed, null, build, null, "", "", false));
        story.run(engine, null, Story.at("2026-04-05T10:00Z"), 20);
        story.run(engine, null, Story.at("2026-04-04T10:00Z"), 30);
        story.add(new BuildProof(build, Story.at("2026-04-09T10:00Z"), ProofKind.MEASURED, "leak-down 4 %", "Jo"));

        assertThat(unproven("2026-04-03")).isEmpty();
        UnprovenBuild found = unproven("2026-04-05").get(0);
        assertThat(found.wentIn()).extracting(part -> part.fact().mark()).containsExactly("G-2");
        assertThat(found.cameOut()).extracting(part -> part.fact().mark()).containsExactly("G-1");
        assertThat(found.ran().total()).isEqualTo(20 * 60_000);
        assertThat(unproven("2026-04-08")).hasSize(1);
        assertThat(unproven("2026-04-09")).isEmpty();
    }

    /** Nobody measured it: it asks as much as what is over, before the team goes. */
    @Test
    void it_is_a_mark_on_the_engine_that_weighs_as_much_as_over() {
        Id<Build> build = build(Story.at("2026-04-04T16:00Z"), Story.at("2026-04-04T19:00Z"));
        story.add(new TrackRepair(build, "", null, "", ""));
        List<Mark> marks = new Marks(LifeLedger.of(story.facts(), Story.asOf("2026-04-05"))).ofEngine(engine);
        assertThat(marks).singleElement().satisfies(mark -> {
            assertThat(mark.state()).isEqualTo(MarkState.NOT_KNOWN);
            assertThat(mark.weight()).isEqualTo(MarkState.OVER.ordinal());
            assertThat(mark.part()).isNull();
        });
    }

    @Test
    void a_build_that_is_no_track_repair_asks_for_no_proof_and_one_that_is_open_is_apart() {
        build(Story.at("2026-04-04T16:00Z"), Story.at("2026-04-04T19:00Z"));
        Id<Build> open =
                story.add(new Build(engine, 2, Set.of(Zone.SUMP), Story.at("2026-04-05T16:00Z"), null, "", "seal"));
        story.add(new TrackRepair(open, "", null, "", ""));
        assertThat(unproven("2026-04-08")).isEmpty();
    }

    /** Sixty histories a seed, each looked at on every day. */
    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void random_histories_stand_as_living_through_them_says(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int history = 0; history < 60; history++) {
            Story told = new Story();
            Happened happened = random(told, random);
            for (int day = 0; day < DAYS; day++) {
                LocalDate today = LocalDate.of(2026, 4, 1).plusDays(day);
                AsOf asOf = new AsOf(today, Story.UTC);
                List<UnprovenBuild> found = new UnprovenBuilds(LifeLedger.of(told.facts(), asOf)).all();
                assertThat(found.stream().map(each -> each.build().id()).collect(Collectors.toSet()))
                        .as("history %d of seed %d on %s", history, seed, today)
                        .isEqualTo(happened.by(today));
                assertThat(found).isSortedAccordingTo(Comparator.comparing(UnprovenBuild::since));
            }
        }
    }

    /** What happens, moment by moment: a repair closed, a proof signed. */
    private record Happened(List<Happening> all) {
        Set<Id<Build>> by(LocalDate day) {
            Set<Id<Build>> standing = new HashSet<>();
            Set<Id<Build>> proven = new HashSet<>();
            all.stream()
                    .filter(each -> !each.at().day().isAfter(day))
                    .sorted(Comparator.comparing(Happening::at))
                    .forEach(each -> (each.closes() ? standing : proven).add(each.build()));
            standing.removeAll(proven);
            return standing;
        }
    }

    private record Happening(Moment at, boolean closes, Id<Build> build) {}

    private static Happened random(Story story, SplittableRandom random) {
        Id<EngineDesign> design = story.design("four");
        List<Id<Engine>> engines = List.of(story.engine("A1", design), story.engine("A2", design));
        List<Happening> all = new ArrayList<>();
        for (int number = 1; number <= 1 + random.nextInt(8); number++) {
            Moment opened = moment(random);
            boolean open = random.nextInt(6) == 0;
            Moment closed = Moment.of(opened.instant().plusSeconds(random.nextInt(72) * 3600L), Story.UTC);
            Build build = new Build(
                    engines.get(random.nextInt(2)), number, Set.of(Zone.HEAD), opened, open ? null : closed, "", "");
            boolean stands = random.nextInt(8) > 0;
            Id<Build> id = story.add(build, standing(stands));
            boolean repairStands = random.nextInt(8) > 0;
            if (random.nextInt(4) > 0) {
                story.add(new TrackRepair(id, "", null, "", ""), standing(repairStands));
                if (stands && repairStands && !open) {
                    all.add(new Happening(closed, true, id));
                }
            }
        }
        List<Entry<?>> builds = story.entries().stream()
                .filter(entry -> entry.fact() instanceof Build)
                .toList();
        for (Entry<?> build : builds) {
            for (int proof = random.nextInt(3); proof > 1 || proof == 1 && random.nextBoolean(); proof--) {
                Moment at = moment(random);
                boolean stands = random.nextInt(5) > 0;
                @SuppressWarnings("unchecked")
                Id<Build> id = (Id<Build>) (Id<? extends Fact>) build.id();
                story.add(new BuildProof(id, at, ProofKind.BY_HAND, "ran dry", "Jo"), standing(stands));
                if (stands) {
                    all.add(new Happening(at, false, id));
                }
            }
        }
        return new Happened(all);
    }

    private static Standing standing(boolean stands) {
        return stands ? Standing.IN_FORCE : Standing.STRUCK_OUT;
    }

    private static Moment moment(SplittableRandom random) {
        return Moment.of(FIRST.plusSeconds(random.nextInt(DAYS * 24) * 3600L), Story.UTC);
    }

    private Id<Build> build(Moment opened, Moment closed) {
        return story.add(new Build(engine, 1, Set.of(Zone.HEAD), opened, closed, "Ada", "gasket"));
    }

    private List<UnprovenBuild> unproven(String day) {
        return new UnprovenBuilds(LifeLedger.of(story.facts(), Story.asOf(day))).of(engine);
    }
}
