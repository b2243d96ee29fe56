package witnessmark.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import witnessmark.domain.Build;
import witnessmark.domain.Coded;
import witnessmark.domain.Engine;
import witnessmark.domain.EngineDesign;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.domain.Joint;
import witnessmark.domain.JointMethod;
import witnessmark.domain.Measurement;
import witnessmark.domain.Part;
import witnessmark.domain.PartDesign;
import witnessmark.domain.PartKind;
import witnessmark.domain.Position;
import witnessmark.domain.Quarantine;
import witnessmark.domain.StockBatch;
import witnessmark.domain.StockMove;
import witnessmark.domain.StockMoveKind;
import witnessmark.domain.Zone;
import witnessmark.ledger.result.BuildGap;
import witnessmark.ledger.result.BuildPosition;
import witnessmark.ledger.result.FreePart;
import witnessmark.ledger.result.JointGroup;
import witnessmark.ledger.result.ProposedPart;
import witnessmark.quantity.Moment;

/** What a build is made of: told examples, and random engines opened at random, against plain lists of what was done. */
class PartsOfABuildTest {
    private static final Moment MARCH = Moment.of(Instant.parse("2026-03-01T08:00:00Z"), Story.UTC);
    private static final Moment APRIL = Moment.of(Instant.parse("2026-04-01T08:00:00Z"), Story.UTC);
    private static final Moment MAY = Moment.of(Instant.parse("2026-05-01T08:00:00Z"), Story.UTC);
    private static final AsOf JUNE = new AsOf(LocalDate.of(2026, 6, 1), Story.UTC);

    private final Story story = new Story();
    private final Id<EngineDesign> design = story.design("four");
    private final Id<Engine> engine = story.engine("B3", design);

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 200);
    }

    // trade handbook 9.2, work grouped by how deep the strip is: what each depth includes
    @ParameterizedTest
    @CsvSource({
        "covers, valve springs;camshafts;oil and filter, head gasket;crank",
        "sump, big-end shells;main shells;oil pump, head gasket;pistons",
        "head, head gasket;inlet valves;exhaust valves, crank;big-end shells",
        "front, timing chain;damper, pistons;head gasket",
        "bottom end, crank;rods;pistons;rings;main shells, head gasket;clutch"
    })
    void a_zone_brings_within_reach_what_the_trade_says(String zone, String reached, String not) {
        Zone opened = Coded.find(Zone.class, zone).orElseThrow();
        kinds(reached)
                .forEach(
                        kind -> assertThat(opened.reaches(kind)).as(kind.code()).isTrue());
        kinds(not)
                .forEach(
                        kind -> assertThat(opened.reaches(kind)).as(kind.code()).isFalse());
    }

    @Test
    void a_full_strip_brings_everything_within_reach() {
        for (PartKind kind : PartKind.values()) {
            assertThat(Arrays.stream(Zone.values()).anyMatch(zone -> zone.reaches(kind)))
                    .as(kind.code())
                    .isTrue();
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void every_position_within_reach_stands_once_and_a_part_in_one_place(long seed) {
        Shop shop = new Shop(seed);
        LifeLedger ledger = LifeLedger.of(shop.made.facts(), JUNE);
        Marks marks = new Marks(ledger);
        List<BuildPosition> all = new BuildPositions(ledger, marks).of(shop.build);
        assertThat(all.stream().map(each -> each.position().id()))
                .as("seed " + seed)
                .containsExactlyInAnyOrderElementsOf(shop.reached());
        List<Id<Part>> fitted = all.stream()
                .filter(each -> each.in() != null)
                .map(each -> each.in().fact().part())
                .toList();
        assertThat(fitted).as("seed " + seed).doesNotHaveDuplicates();
        assertThat(all.stream()
                        .flatMap(each -> each.out().stream())
                        .map(out -> out.fact().part()))
                .as("seed " + seed)
                .containsExactlyInAnyOrderElementsOf(shop.cameOut());
        FreeParts free = new FreeParts(ledger, marks);
        for (BuildPosition each : all) {
            Set<Id<Part>> shelf = new HashSet<>();
            for (FreePart part : free.of(shop.build.fact(), each.position())) {
                assertThat(part.design().fact().kind())
                        .isEqualTo(each.position().fact().kind());
                if (part.part() != null) {
                    assertThat(shelf.add(part.part().id())).isTrue();
                }
            }
            assertThat(shelf)
                    .as("seed " + seed + ", " + each.position().fact().name())
                    .isEqualTo(shop.onShelf(each.position().fact().kind()));
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void a_copied_parts_list_names_the_same_makes_and_takes_nothing_twice(long seed) {
        Shop shop = new Shop(seed);
        LifeLedger ledger = LifeLedger.of(shop.made.facts(), JUNE);
        Marks marks = new Marks(ledger);
        List<Entry<Position>> wanted = new BuildPositions(ledger, marks)
                .of(shop.build).stream()
                        .filter(each -> each.in() == null)
                        .map(BuildPosition::position)
                        .toList();
        List<ProposedPart> copied = new PartsOfBuild(ledger, new FreeParts(ledger, marks))
                .copy(shop.before, shop.build.fact(), wanted, Set.of());
        Map<Id<Position>, Id<PartDesign>> was = shop.before();
        assertThat(copied.stream().map(each -> each.position().id()))
                .as("seed " + seed)
                .containsExactlyElementsOf(
                        wanted.stream().map(Entry::id).filter(was::containsKey).toList());
        Set<Id<Part>> taken = new HashSet<>();
        Map<Id<StockBatch>, Integer> used = new HashMap<>();
        for (ProposedPart each : copied) {
            assertThat(each.design().id()).isEqualTo(was.get(each.position().id()));
            FreePart part = each.part();
            if (part != null) {
                assertThat(part.design().id()).isEqualTo(each.design().id());
                assertThat(part.held()).isFalse();
                if (part.part() != null) {
                    assertThat(taken.add(part.part().id())).as("seed " + seed).isTrue();
                } else {
                    used.merge(part.batch().batch().id(), 1, Integer::sum);
                }
            }
        }
        used.forEach((batch, count) -> assertThat(count).as("seed " + seed).isLessThanOrEqualTo(shop.stock));
    }

    @Test
    void copying_carries_no_measurement_and_no_torque() {
        // what a proposal can hold at all: a position, a make, a part; nothing that was measured or tightened
        List<Class<?>> seen = new ArrayList<>(List.of(ProposedPart.class));
        for (int i = 0; i < seen.size(); i++) {
            if (seen.get(i).isRecord()) {
                Arrays.stream(seen.get(i).getRecordComponents())
                        .flatMap(each -> java.util.stream.Stream.concat(
                                java.util.stream.Stream.of(each.getType()), arguments(each.getGenericType())))
                        .filter(type -> type.getName().startsWith("witnessmark") && !seen.contains(type))
                        .forEach(seen::add);
            }
        }
        assertThat(seen).contains(FreePart.class).doesNotContain(Joint.class, Measurement.class, JointGroup.class);
    }

    private static java.util.stream.Stream<Class<?>> arguments(java.lang.reflect.Type type) {
        return type instanceof java.lang.reflect.ParameterizedType generic
                ? Arrays.stream(generic.getActualTypeArguments())
                        .filter(Class.class::isInstance)
                        .map(each -> (Class<?>) each)
                : java.util.stream.Stream.empty();
    }

    // common practice, no source: a head that was off is pulled down anew, big ends that were apart are too
    @Test
    void what_was_opened_asks_for_its_fasteners_by_the_names_they_had_and_not_by_their_values() {
        story.position(design, PartKind.HEAD_STUDS, "head studs", 1, false);
        Entry<Build> first = build(story, engine, 1, EnumSet.allOf(Zone.class), MARCH, MARCH);
        tighten(story, engine, first.id(), PartKind.HEAD_STUDS, "all ten", "95 N·m", MARCH);
        tighten(story, engine, first.id(), PartKind.OTHER, "main caps", "65 N·m", MARCH);
        Entry<Build> head = build(story, engine, 2, EnumSet.of(Zone.HEAD), MAY, null);
        List<JointGroup> joints = joints(head);
        assertThat(joints).singleElement().satisfies(group -> {
            assertThat(group.which()).isEqualTo("all ten");
            assertThat(group.tightened()).isEmpty();
            assertThat(group.before().id()).isEqualTo(first.id());
        });
        tighten(story, engine, head.id(), PartKind.HEAD_STUDS, "All ten", "90 N·m", MAY);
        assertThat(joints(head)).singleElement().satisfies(group -> {
            assertThat(group.tightened()).hasSize(1);
            assertThat(group.dry()).isTrue();
            assertThat(group.seenByOne()).isTrue();
        });
    }

    @Test
    void the_gaps_come_worst_first() {
        story.position(design, PartKind.RODS, "rods", 1, true);
        Entry<Build> open = build(story, engine, 1, EnumSet.of(Zone.BOTTOM_END), MARCH, null);
        LifeLedger ledger = LifeLedger.of(story.facts(), JUNE);
        List<BuildPosition> positions = new BuildPositions(ledger, new Marks(ledger)).of(open);
        List<BuildGap> gaps = BuildGaps.of(
                open.fact(),
                positions,
                new BuildJoints(ledger).of(open, positions),
                new FoundMarked(ledger),
                2,
                0,
                0,
                null);
        assertThat(gaps)
                .extracting(BuildGap::kind)
                .containsExactly(
                        BuildGap.Kind.EMPTY, BuildGap.Kind.OUTSIDE, BuildGap.Kind.NOT_CLOSED, BuildGap.Kind.NOT_SIGNED);
    }

    private List<JointGroup> joints(Entry<Build> build) {
        LifeLedger ledger = LifeLedger.of(story.facts(), JUNE);
        return new BuildJoints(ledger).of(build, new BuildPositions(ledger, new Marks(ledger)).of(build));
    }

    private static Entry<Build> build(
            Story into, Id<Engine> engine, int number, Set<Zone> zones, Moment opened, Moment closed) {
        Id<Build> id = into.add(new Build(engine, number, zones, opened, closed, "", ""));
        return into.facts().of(Build.class).find(id).orElseThrow();
    }

    private static void tighten(
            Story into, Id<Engine> engine, Id<Build> build, PartKind kind, String which, String value, Moment at) {
        into.add(new Joint(engine, build, kind, which, "", JointMethod.TORQUE, value, "", null, at, true, "Ada", ""));
    }

    private static List<PartKind> kinds(String listed) {
        return Arrays.stream(listed.split(";"))
                .map(code -> Coded.find(PartKind.class, code).orElseThrow())
                .toList();
    }

    /** An engine built in March, opened in April, some of it stripped and some of that fitted anew by May. */
    private static final class Shop {
        private final Story made = new Story();
        private final SplittableRandom random;
        private final Map<Id<Position>, PartKind> positions = new HashMap<>();
        private final Map<Id<Position>, Id<PartDesign>> first = new HashMap<>();
        private final Map<Id<Part>, PartKind> shelf = new HashMap<>();
        private final List<Id<Part>> out = new ArrayList<>();
        private final Set<Zone> zones = EnumSet.noneOf(Zone.class);
        private final int stock;
        private final Entry<Build> before;
        private final Entry<Build> build;

        Shop(long seed) {
            random = new SplittableRandom(seed);
            Id<EngineDesign> four = made.design("four");
            Id<Engine> engine = made.engine("B3", four);
            before = build(made, engine, 1, EnumSet.allOf(Zone.class), MARCH, MARCH);
            for (Zone zone : Zone.values()) {
                if (random.nextInt(3) == 0) {
                    zones.add(zone);
                }
            }
            zones.add(Zone.values()[random.nextInt(Zone.values().length)]);
            stock = 1 + random.nextInt(2);
            int turn = 0;
            for (PartKind kind : PartKind.values()) {
                for (int i = random.nextInt(3); i > 0; i--) {
                    position(four, engine, kind, turn++);
                }
            }
            build = build(made, engine, 2, zones, APRIL, null);
        }

        private void position(Id<EngineDesign> four, Id<Engine> engine, PartKind kind, int turn) {
            Id<Position> position = made.position(four, kind, kind.code() + " " + turn, turn, false);
            positions.put(position, kind);
            Id<PartDesign> design = made.partDesign("make " + turn, kind, false);
            spares(design, kind, turn);
            if (random.nextInt(5) == 0) {
                return;
            }
            Id<Part> part = made.part("P-" + turn, design);
            first.put(position, design);
            boolean strips = random.nextInt(2) == 0 && reaches(kind);
            made.fit(part, engine, position, MARCH, strips ? APRIL : null);
            if (strips) {
                out.add(part);
                if (random.nextInt(3) == 0) {
                    made.add(new Quarantine(part, "", APRIL, "blue", "Ada", null, "", ""));
                } else {
                    shelf.put(part, kind);
                }
                if (random.nextInt(2) == 0) {
                    made.fit(made.part("N-" + turn, design), engine, position, MAY, null);
                }
            }
        }

        private void spares(Id<PartDesign> design, PartKind kind, int turn) {
            for (int i = random.nextInt(3); i > 0; i--) {
                shelf.put(made.part("S-" + turn + "-" + i, design), kind);
            }
            if (random.nextInt(4) == 0) {
                Id<StockBatch> batch = made.add(new StockBatch(design, "L" + turn, "", null, "", 0, ""));
                made.add(new StockMove(batch, MARCH, stock, StockMoveKind.BOUGHT, null, null, "Ada", ""));
            }
        }

        private boolean reaches(PartKind kind) {
            return zones.stream().anyMatch(zone -> zone.reaches(kind));
        }

        List<Id<Position>> reached() {
            return positions.entrySet().stream()
                    .filter(each -> reaches(each.getValue()))
                    .map(Map.Entry::getKey)
                    .toList();
        }

        List<Id<Part>> cameOut() {
            return out;
        }

        Set<Id<Part>> onShelf(PartKind kind) {
            Set<Id<Part>> all = new HashSet<>();
            shelf.forEach((part, of) -> {
                if (of == kind) {
                    all.add(part);
                }
            });
            return all;
        }

        Map<Id<Position>, Id<PartDesign>> before() {
            return first;
        }
    }
}
