package witnessmark.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static witnessmark.ledger.Story.asOf;
import static witnessmark.ledger.Story.at;
import static witnessmark.ledger.Story.minutes;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import witnessmark.domain.Car;
import witnessmark.domain.Engine;
import witnessmark.domain.EngineDesign;
import witnessmark.domain.Entry;
import witnessmark.domain.Fitment;
import witnessmark.domain.HowKnown;
import witnessmark.domain.Id;
import witnessmark.domain.Limit;
import witnessmark.domain.LimitAction;
import witnessmark.domain.LimitRank;
import witnessmark.domain.Part;
import witnessmark.domain.PartDesign;
import witnessmark.domain.PartKind;
import witnessmark.domain.Position;
import witnessmark.domain.PriorKind;
import witnessmark.domain.Run;
import witnessmark.domain.RunOn;
import witnessmark.domain.Standing;
import witnessmark.domain.WorkKind;
import witnessmark.domain.WorkResult;
import witnessmark.domain.Zone;
import witnessmark.ledger.result.EffectOfRun;
import witnessmark.ledger.result.LimitUse;
import witnessmark.ledger.result.Mark;
import witnessmark.ledger.result.MarkChange;
import witnessmark.ledger.result.MarkState;
import witnessmark.quantity.Counter;
import witnessmark.quantity.Moment;

/** Which limits fall on what, what resets them, and how near they are. */
class LimitsTest {
    private static final long MINUTE = 60_000;
    private static final Moment MARCH = at("2026-03-01T08:00Z");
    private static final LocalDate FIRST = LocalDate.parse("2026-01-01");

    private final Story story = new Story();
    private final Id<EngineDesign> design = story.design("four");
    private final Id<Engine> engine = story.engine("A1", design);
    private final Id<Car> car = story.car("12");
    private final Id<PartDesign> forged = story.partDesign("forged rods", PartKind.RODS, false);
    private final Id<PartDesign> springs = story.partDesign("single springs", PartKind.VALVE_SPRINGS, false);
    private final Id<Position> rodsHere = story.position(design, PartKind.RODS, "rods", 1, true);
    private final Id<Position> springsHere = story.position(design, PartKind.VALVE_SPRINGS, "springs", 2, true);
    private final Id<Position> clutchHere = story.carPosition(car, PartKind.CLUTCH, "clutch", 1);
    private final Id<Part> rods = story.part("R-1", forged);
    private final Id<Part> spring = story.part("S-1", springs);

    LimitsTest() {
        story.put(engine, car, MARCH, null);
        story.fit(rods, engine, rodsHere, MARCH, null);
        story.fit(spring, engine, springsHere, MARCH, null);
    }

    private LimitUses limits() {
        return new LimitUses(LifeLedger.of(story.facts(), asOf("2026-06-30")));
    }

    /** A limit in minutes of running, standing since the first of the year. */
    private LimitDraft limit(LimitAction action, long minutes) {
        return new LimitDraft(action, Counter.RUNNING, minutes * MINUTE);
    }

    private record LimitDraft(
            LimitAction action,
            Counter counter,
            long amount,
            @Nullable Id<EngineDesign> design,
            @Nullable PartKind kind,
            @Nullable Id<PartDesign> partDesign,
            @Nullable Id<Part> part,
            @Nullable Id<Engine> engine,
            @Nullable Id<Car> car,
            LimitRank rank,
            @Nullable LocalDate validTo) {
        LimitDraft(LimitAction action, Counter counter, long amount) {
            this(action, counter, amount, null, null, null, null, null, null, LimitRank.OWN, null);
        }

        LimitDraft kind(PartKind is) {
            return new LimitDraft(action, counter, amount, design, is, partDesign, part, engine, car, rank, validTo);
        }

        LimitDraft inDesign(Id<EngineDesign> is) {
            return new LimitDraft(action, counter, amount, is, kind, partDesign, part, engine, car, rank, validTo);
        }

        LimitDraft partDesign(Id<PartDesign> is) {
            return new LimitDraft(action, counter, amount, design, kind, is, part, engine, car, rank, validTo);
        }

        LimitDraft part(Id<Part> is) {
            return new LimitDraft(action, counter, amount, design, kind, partDesign, is, engine, car, rank, validTo);
        }

        LimitDraft engine(Id<Engine> is) {
            return new LimitDraft(action, counter, amount, design, kind, partDesign, part, is, car, rank, validTo);
        }

        LimitDraft car(Id<Car> is) {
            return new LimitDraft(action, counter, amount, design, kind, partDesign, part, engine, is, rank, validTo);
        }

        LimitDraft rank(LimitRank is) {
            return new LimitDraft(action, counter, amount, design, kind, partDesign, part, engine, car, is, validTo);
        }

        LimitDraft until(LocalDate last) {
            return new LimitDraft(action, counter, amount, design, kind, partDesign, part, engine, car, rank, last);
        }

        Limit written() {
            return new Limit(
                    "due",
                    action,
                    design,
                    kind,
                    partDesign,
                    part,
                    engine,
                    car,
                    counter,
                    amount,
                    rank,
                    "",
                    FIRST,
                    validTo);
        }
    }

    private Id<Limit> add(LimitDraft draft) {
        return story.add(draft.written());
    }

    private List<Id<Limit>> onRods() {
        return limits().ofPart(rods).stream()
                .map(use -> use.limit().id())
                .sorted()
                .toList();
    }

    @Test
    void the_limit_that_names_its_subject_most_closely_holds() {
        LimitDraft look = limit(LimitAction.LOOK, 60);
        Id<Limit> kind = add(look.kind(PartKind.RODS));
        assertThat(onRods()).containsExactly(kind);
        Id<Limit> inDesign = add(look.kind(PartKind.RODS).inDesign(design));
        assertThat(onRods()).containsExactly(inDesign);
        Id<Limit> inEngine = add(look.kind(PartKind.RODS).engine(engine));
        assertThat(onRods()).containsExactly(inEngine);
        Id<Limit> partDesign = add(look.partDesign(forged));
        assertThat(onRods()).containsExactly(partDesign);
        Id<Limit> part = add(look.part(rods));
        assertThat(onRods()).containsExactly(part);
        add(look.partDesign(forged).engine(engine));
        add(look.kind(PartKind.RODS).engine(engine));
        assertThat(onRods()).containsExactly(part);
        assertThat(limits().ofPart(spring)).isEmpty();
    }

    @Test
    void a_closer_limit_puts_aside_only_its_own_action_and_counter() {
        Id<Limit> renew = add(limit(LimitAction.RENEW, 600).kind(PartKind.RODS));
        Id<Limit> starts = add(new LimitDraft(LimitAction.LOOK, Counter.RACE_STARTS, 10).kind(PartKind.RODS));
        Id<Limit> look = add(limit(LimitAction.LOOK, 60).part(rods));

        assertThat(onRods()).containsExactly(renew, starts, look);
    }

    @Test
    void the_rule_book_is_never_put_aside_by_a_closer_limit() {
        Id<Limit> rule = add(limit(LimitAction.RENEW, 300).kind(PartKind.RODS).rank(LimitRank.RULE_BOOK));
        Id<Limit> own = add(limit(LimitAction.RENEW, 600).part(rods));

        assertThat(onRods()).containsExactly(rule, own);
    }

    @Test
    void a_limit_for_another_design_engine_or_car_does_not_fall_here() {
        LimitDraft look = limit(LimitAction.LOOK, 60).kind(PartKind.RODS);
        add(look.inDesign(story.design("six")));
        add(look.engine(story.engine("A2", design)));
        add(look.car(story.car("14")));
        assertThat(onRods()).isEmpty();

        Id<Limit> here = add(look.car(car));
        assertThat(onRods()).containsExactly(here);
    }

    @Test
    void a_limit_stands_from_its_first_day_to_its_last_and_only_while_in_force() {
        LocalDate day = LocalDate.parse("2026-06-30");
        LimitDraft look = limit(LimitAction.LOOK, 60).kind(PartKind.RODS);
        add(look.until(day.minusDays(1)));
        story.add(look.written(), Standing.STRUCK_OUT);
        assertThat(onRods()).isEmpty();

        Id<Limit> lastDay = add(look.until(day));
        assertThat(onRods()).containsExactly(lastDay);
        assertThat(new LimitUses(LifeLedger.of(story.facts(), asOf("2025-12-31"))).ofPart(rods))
                .isEmpty();
    }

    @Test
    void exactly_as_much_as_the_limit_is_over_and_a_millisecond_less_is_within() {
        add(limit(LimitAction.RENEW, 60).part(rods));
        story.add(new RunDraft(engine, car, at("2026-03-10T10:00Z"), minutes(60)).written());
        assertThat(only(rods).state()).isEqualTo(MarkState.OVER);
        assertThat(only(rods).left()).isZero();

        add(new LimitDraft(LimitAction.RENEW, Counter.RUNNING, 60 * MINUTE + 1).part(spring));
        assertThat(only(spring).state()).isEqualTo(MarkState.WITHIN);
        assertThat(only(spring).left()).isEqualTo(1);
    }

    @Test
    void told_running_is_judged_at_its_high_end() {
        add(limit(LimitAction.RENEW, 60).part(rods));
        story.told(engine, at("2026-03-10T10:00Z"), at("2026-04-10T10:00Z"), 10, 20, 60);

        assertThat(only(rods).state()).isEqualTo(MarkState.OVER);
        assertThat(only(rods).used().total()).isEqualTo(20 * MINUTE);
    }

    @Test
    void what_is_not_known_in_full_is_not_within() {
        add(new LimitDraft(LimitAction.RENEW, Counter.OVER_REVS, 3).part(rods));
        story.run(engine, car, at("2026-03-10T10:00Z"), 20);
        assertThat(only(rods).state()).isEqualTo(MarkState.NOT_KNOWN);

        add(limit(LimitAction.RENEW, 60).part(spring));
        assertThat(only(spring).state()).isEqualTo(MarkState.WITHIN);
        story.prior(spring, Counter.RUNNING, PriorKind.UNKNOWN, 0, 0, 0, MARCH);
        assertThat(only(spring).state()).isEqualTo(MarkState.NOT_KNOWN);
    }

    @Test
    void what_is_over_by_what_is_known_is_over_whatever_is_not_known() {
        add(limit(LimitAction.RENEW, 60).part(rods));
        story.prior(rods, Counter.RUNNING, PriorKind.UNKNOWN, 0, 60 * MINUTE, 0, MARCH);

        assertThat(only(rods).state()).isEqualTo(MarkState.OVER);
    }

    @Test
    void looking_resets_a_limit_to_look_and_not_one_to_renew() {
        add(limit(LimitAction.RENEW, 600).part(rods));
        add(limit(LimitAction.LOOK, 600).part(rods));
        story.run(engine, car, at("2026-03-10T10:00Z"), 1);
        Moment looked = at("2026-03-11T10:00Z");
        story.work(rods, WorkKind.MEASURE, looked, WorkResult.DONE);
        story.work(rods, WorkKind.CLEAN, at("2026-03-13T10:00Z"), WorkResult.DONE);
        story.run(engine, car, at("2026-03-12T10:00Z"), 2);

        List<LimitUse> uses = limits().ofPart(rods);
        assertThat(uses).extracting(use -> use.used().total()).containsExactly(3 * MINUTE, 2 * MINUTE);
        assertThat(uses).extracting(LimitUse::since).containsExactly(null, looked);
    }

    /** Each counts since the last time of what it asks for, whatever else was done to the part meanwhile. */
    @Test
    void a_parts_limit_counts_since_new_since_its_skim_or_since_the_rebuild_of_its_engine() {
        for (LimitAction action : List.of(LimitAction.RENEW, LimitAction.SKIM, LimitAction.REBUILD)) {
            add(limit(action, 600).part(rods));
        }
        assertThat(used()).as("never skimmed nor rebuilt").containsExactly(0L, 0L, 0L);
        story.run(engine, car, at("2026-03-10T10:00Z"), 1);
        story.work(rods, WorkKind.SKIM, at("2026-03-11T10:00Z"), WorkResult.DONE);
        story.run(engine, car, at("2026-03-12T10:00Z"), 2);
        story.build(engine, 1, Set.of(Zone.BOTTOM_END), at("2026-03-13T10:00Z"), at("2026-03-14T10:00Z"));
        story.run(engine, car, at("2026-03-15T10:00Z"), 4);
        story.work(rods, WorkKind.LOOK, at("2026-03-16T10:00Z"), WorkResult.DONE);
        story.build(engine, 2, Set.of(Zone.HEAD), at("2026-03-16T10:00Z"), at("2026-03-17T10:00Z"));

        assertThat(used()).containsExactly(7 * MINUTE, 6 * MINUTE, 4 * MINUTE);
    }

    private List<Long> used() {
        return limits().ofPart(rods).stream().map(use -> use.used().total()).toList();
    }

    @Test
    void an_engines_limit_counts_since_its_bottom_end_was_last_closed() {
        Id<Limit> rebuild = add(limit(LimitAction.RENEW, 600).engine(engine));
        story.run(engine, car, at("2026-03-10T10:00Z"), 1);
        Moment closed = at("2026-03-12T10:00Z");
        story.build(engine, 1, Set.of(Zone.BOTTOM_END, Zone.SUMP), at("2026-03-11T10:00Z"), closed);
        story.build(engine, 2, Set.of(Zone.HEAD), at("2026-03-13T10:00Z"), at("2026-03-14T10:00Z"));
        story.run(engine, car, at("2026-03-15T10:00Z"), 2);

        List<LimitUse> uses = limits().of(engine);
        assertThat(uses).extracting(use -> use.limit().id()).containsExactly(rebuild);
        assertThat(uses.get(0).used().total()).isEqualTo(2 * MINUTE);
        assertThat(uses.get(0).since()).isEqualTo(closed);
        assertThat(uses.get(0).part()).isNull();
        assertThat(uses.get(0).car()).isEqualTo(car);
    }

    @Test
    void a_cars_limits_are_its_own_and_those_of_what_is_fitted_to_it() {
        Id<Part> clutch = story.part("C-1", story.partDesign("plate", PartKind.CLUTCH, false));
        story.fitToCar(clutch, car, clutchHere, at("2026-03-11T00:00Z"), null);
        Id<Limit> whole = add(limit(LimitAction.LOOK, 600).car(car));
        Id<Limit> plate = add(limit(LimitAction.RENEW, 600).kind(PartKind.CLUTCH));
        story.run(engine, car, at("2026-03-10T10:00Z"), 1);
        story.run(engine, car, at("2026-03-12T10:00Z"), 2);

        List<LimitUse> uses = limits().ofCar(car);
        assertThat(uses).extracting(use -> use.limit().id()).containsExactly(whole, plate);
        assertThat(uses).extracting(use -> use.used().total()).containsExactly(3 * MINUTE, 2 * MINUTE);
        assertThat(uses).extracting(LimitUse::position).containsExactly(null, clutchHere);
        assertThat(limits().of(engine)).isEmpty();
    }

    @Test
    void the_worst_comes_first_and_what_can_wreck_the_engine_counts_as_over_while_not_known() {
        Id<Limit> springNotKnown = add(new LimitDraft(LimitAction.LOOK, Counter.OVER_REVS, 3).part(spring));
        Id<Limit> carNotKnown = add(new LimitDraft(LimitAction.LOOK, Counter.OVER_REVS, 3).car(car));
        Id<Limit> rodsNotKnown = add(new LimitDraft(LimitAction.LOOK, Counter.OVER_REVS, 3).part(rods));
        Id<Limit> nearlyUsed = add(limit(LimitAction.LOOK, 21).part(spring));
        Id<Limit> hardlyUsed = add(limit(LimitAction.RENEW, 600).part(spring));
        Id<Limit> over = add(limit(LimitAction.RENEW, 20).part(rods));
        story.run(engine, car, at("2026-03-10T10:00Z"), 20);

        assertThat(limits().all())
                .extracting(use -> use.limit().id())
                .containsExactly(over, rodsNotKnown, springNotKnown, carNotKnown, nearlyUsed, hardlyUsed);
        assertThat(limits().of(engine))
                .extracting(use -> use.limit().id())
                .containsExactly(over, rodsNotKnown, springNotKnown, nearlyUsed, hardlyUsed);
    }

    @Test
    void a_part_on_the_shelf_has_the_limits_of_its_kind_and_design() {
        Id<Part> shelf = story.part("R-2", forged);
        Id<Limit> renew = add(limit(LimitAction.RENEW, 600).kind(PartKind.RODS));
        add(limit(LimitAction.LOOK, 60).kind(PartKind.RODS).inDesign(design));

        assertThat(limits().ofPart(shelf)).extracting(use -> use.limit().id()).containsExactly(renew);
        assertThat(limits().ofPart(shelf).get(0).engine()).isNull();
    }

    @Test
    void the_effect_of_a_run_is_what_it_adds_to_every_limit_it_touches() {
        Id<Limit> renew = add(limit(LimitAction.RENEW, 60).part(rods));
        add(new LimitDraft(LimitAction.RENEW, Counter.LAPS, 60).part(rods));
        Id<Limit> bySpring = add(limit(LimitAction.RENEW, 600).part(spring));
        story.add(new RunDraft(engine, car, at("2026-03-10T10:00Z"), minutes(50))
                .with(Counter.LAPS, 20)
                .written());
        LifeLedger before = LifeLedger.of(story.facts(), asOf("2026-06-30"));
        Run run = new RunDraft(engine, car, at("2026-03-11T10:00Z"), minutes(10))
                .with(Counter.LAPS, 0)
                .written();

        EffectOfRun effect = RunEffect.of(before, entry(run, Standing.IN_FORCE));
        assertThat(effect.marks())
                .extracting(each -> use(each.after()).limit().id())
                .contains(renew, bySpring);
        MarkChange onRods = effect.marks().get(0);
        assertThat(use(onRods.before()).used().total()).isEqualTo(50 * MINUTE);
        assertThat(use(onRods.after()).used().total()).isEqualTo(60 * MINUTE);
        assertThat(onRods.goesOver()).isTrue();
        assertThat(effect.marks()).extracting(MarkChange::goesOver).containsExactly(true, false, false);
        assertThat(effect.charged()).containsExactly(rods, spring);
        assertThat(effect.counters()).contains(Counter.RUNNING, Counter.OVER_REVS);
        assertThat(effect.engine().get(0).after().total()
                        - effect.engine().get(0).before().total())
                .isEqualTo(10 * MINUTE);
        assertThat(RunEffect.of(before, entry(run, Standing.STRUCK_OUT)))
                .isEqualTo(new EffectOfRun(List.of(), List.of(rods, spring), List.of(), List.of()));
    }

    @Test
    void correcting_a_runs_engine_gives_back_where_it_had_been_charged() {
        Id<Limit> renew = add(limit(LimitAction.RENEW, 60).part(rods));
        Id<Engine> other = story.engine("A2", design);
        Id<Run> written = story.run(engine, car, at("2026-03-10T10:00Z"), 50);
        LifeLedger before = LifeLedger.of(story.facts(), asOf("2026-06-30"));
        Entry<Run> corrected = new Entry<>(
                written,
                new RunDraft(other, null, at("2026-03-10T10:00Z"), minutes(50))
                        .knownBy(Counter.RUNNING, HowKnown.TRACE)
                        .written(),
                Standing.IN_FORCE,
                null,
                2);

        EffectOfRun effect = RunEffect.of(before, corrected);
        assertThat(effect.marks())
                .extracting(each -> use(each.after()).limit().id())
                .containsExactly(renew);
        assertThat(use(effect.marks().get(0).after()).used().total()).isZero();
        assertThat(effect.engine().get(0).after().known()).isEqualTo(50 * MINUTE);
    }

    private static LimitUse use(Mark mark) {
        return LimitUses.of(mark).orElseThrow();
    }

    private static Entry<Run> entry(Run run, Standing standing) {
        return new Entry<>(Id.parse("00000000-0000-7000-8000-00000000ffff"), run, standing, null, 1);
    }

    private LimitUse only(Id<Part> part) {
        List<LimitUse> uses = limits().ofPart(part);
        assertThat(uses).hasSize(1);
        return uses.get(0);
    }

    @Test
    void only_a_crack_test_resets_a_limit_to_crack_test() {
        add(limit(LimitAction.CRACK_TEST, 60).part(rods));
        story.run(engine, car, at("2026-03-10T10:00Z"), 40);
        story.work(rods, WorkKind.LOOK, at("2026-03-11T10:00Z"), WorkResult.DONE);
        assertThat(only(rods).used().total()).isEqualTo(40 * MINUTE);

        story.work(rods, WorkKind.CRACK_TEST, at("2026-03-12T10:00Z"), WorkResult.DONE);
        assertThat(only(rods).used().total()).isZero();
    }

    /** Sixty months from 31 August 2021 end on 31 August 2026; the year 2024 has its leap day in between. */
    @Test
    void age_counts_local_days_from_the_day_a_part_was_made() {
        Id<Part> damper = story.add(new Part(
                "D-1",
                story.partDesign("damper", PartKind.DAMPER, false),
                "",
                "",
                null,
                LocalDate.parse("2021-08-31"),
                null,
                null,
                null,
                null,
                ""));
        add(new LimitDraft(LimitAction.RENEW, Counter.AGE, 60).part(damper));

        LimitUse use = only(damper);

        assertThat(use.amount()).isEqualTo(1826);
        assertThat(use.used().total()).isEqualTo(1764);
        assertThat(use.left()).isEqualTo(62);
        assertThat(use.state()).isEqualTo(MarkState.WITHIN);
        assertThat(new LimitUses(LifeLedger.of(story.facts(), asOf("2026-08-31"))).ofPart(damper))
                .singleElement()
                .extracting(LimitUse::state)
                .isEqualTo(MarkState.OVER);
    }

    @Test
    void the_age_of_a_part_whose_making_nobody_wrote_down_is_not_known() {
        add(new LimitDraft(LimitAction.RENEW, Counter.AGE, 60).part(rods));

        assertThat(only(rods).state()).isEqualTo(MarkState.NOT_KNOWN);
    }

    @Test
    void a_use_is_used_when_the_part_comes_off_again() {
        Id<PartDesign> design = story.partDesign("steel gasket", PartKind.HEAD_GASKET, true);
        Id<Position> gasketHere = story.position(this.design, PartKind.HEAD_GASKET, "gasket", 3, true);
        Id<Part> gasket = story.part("G-1", design);
        add(new LimitDraft(LimitAction.RENEW, Counter.USES, 1).part(gasket));
        Id<Fitment> fitted = story.fit(gasket, engine, gasketHere, MARCH, null);
        assertThat(only(gasket).state()).as("in its only use").isEqualTo(MarkState.WITHIN);

        story.rewrite(
                fitted,
                new Fitment(
                        gasket, engine, null, gasketHere, MARCH, at("2026-05-01T08:00Z"), null, null, "", "", false),
                Standing.IN_FORCE);
        assertThat(only(gasket).state()).isEqualTo(MarkState.OVER);
    }

    @Test
    void going_on_past_a_limit_counts_for_the_part_it_was_signed_for_up_to_its_figure() {
        Id<Limit> limit = add(limit(LimitAction.RENEW, 60).kind(PartKind.RODS));
        story.run(engine, car, at("2026-03-10T10:00Z"), 70);
        assertThat(only(rods).state()).isEqualTo(MarkState.OVER);

        story.add(new RunOn(
                limit, null, rods, null, null, 80 * MINUTE, at("2026-03-11T10:00Z"), "OW", "", "", "no spare"));
        assertThat(only(rods).state()).isEqualTo(MarkState.RUN_ON);
        assertThat(only(rods).left()).as("the limit itself stays").isEqualTo(-10 * MINUTE);

        story.run(engine, car, at("2026-03-12T10:00Z"), 10);
        assertThat(only(rods).state()).isEqualTo(MarkState.OVER);
    }
}
