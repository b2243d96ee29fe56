package witnessmark.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static witnessmark.ledger.Story.asOf;
import static witnessmark.ledger.Story.at;
import static witnessmark.ledger.Story.minutes;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import witnessmark.domain.Car;
import witnessmark.domain.Engine;
import witnessmark.domain.EngineDesign;
import witnessmark.domain.EngineInCar;
import witnessmark.domain.Entry;
import witnessmark.domain.Event;
import witnessmark.domain.Fitment;
import witnessmark.domain.Id;
import witnessmark.domain.Part;
import witnessmark.domain.PartDesign;
import witnessmark.domain.PartKind;
import witnessmark.domain.PlannedRun;
import witnessmark.domain.Position;
import witnessmark.domain.Run;
import witnessmark.domain.RunKind;
import witnessmark.domain.Standing;
import witnessmark.ledger.result.Clash;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Counter;
import witnessmark.quantity.Moment;
import witnessmark.quantity.RunningTime;

/** What can be true together and what cannot: each kind of contradiction, and what is just short of one. */
class CoherenceTest {
    private static final Moment MARCH = at("2026-03-01T08:00Z");
    private static final Moment APRIL = at("2026-04-01T08:00Z");
    private static final AsOf TODAY = asOf("2026-06-30");

    private final Story story = new Story();
    private final Id<EngineDesign> design = story.design("four");
    private final Id<Engine> engine = story.engine("A1", design);
    private final Id<Engine> other = story.engine("A2", design);
    private final Id<Car> car = story.car("12");
    private final Id<Car> spareCar = story.car("14");
    private final Id<Position> rodsHere = story.position(design, PartKind.RODS, "rods", 1, true);
    private final Id<Position> damperHere = story.position(design, PartKind.DAMPER, "damper", 2, false);
    private final Id<PartDesign> forged = story.partDesign("forged rods", PartKind.RODS, false);
    private final Id<Part> rods = story.part("R-1", forged);
    private final Id<Part> otherRods = story.part("R-2", forged);
    private final Id<Fitment> fitted = story.fit(rods, engine, rodsHere, MARCH, null);
    private final Id<EngineInCar> stay = story.put(engine, car, MARCH, null);

    private List<Problem> problems(Id<?>... changed) {
        return story.problems(TODAY, changed);
    }

    private static Problem problem(ProblemKind kind, Object... facts) {
        return Problem.of(kind, facts);
    }

    private RunDraft draft(String start, long minutes) {
        return new RunDraft(engine, car, at(start), minutes(minutes));
    }

    @Test
    void a_run_of_a_complete_engine_in_its_car_is_good() {
        Id<Run> run = story.run(engine, car, at("2026-03-10T10:00Z"), 20);
        assertThat(problems(run)).isEmpty();
        assertThat(problems(run, fitted, stay)).isEmpty();
        assertThat(Coherence.forRun(story.facts(), entry(run), TODAY)).isEmpty();
    }

    @Test
    void a_run_may_go_out_the_moment_another_comes_back() {
        story.run(engine, car, at("2026-03-10T10:00Z"), 20);
        assertThat(problems(story.run(engine, car, at("2026-03-10T10:20Z"), 19)))
                .isEmpty();
        assertThat(problems(story.run(engine, car, at("2026-03-10T09:42Z"), 18)))
                .isEmpty();
    }

    @Test
    void runs_of_one_engine_do_not_overlap() {
        Moment in = at("2026-03-10T10:30Z");
        story.add(draft("2026-03-10T10:00Z", 20).named("Practice 1").in(in).written());
        Id<Run> within = story.run(engine, car, at("2026-03-10T10:29:59.999Z"), 15);

        assertThat(problems(within))
                .containsExactly(problem(ProblemKind.RUNS_OVERLAP, "A1", "Practice 1", at("2026-03-10T10:00Z"), in));
    }

    @Test
    void of_two_changed_runs_that_overlap_the_later_is_named_once() {
        Id<Run> first = story.run(engine, car, at("2026-03-10T10:00Z"), 20);
        Id<Run> second = story.run(engine, car, at("2026-03-10T10:10Z"), 25);
        Id<Run> third = story.run(engine, car, at("2026-03-11T10:10Z"), 25);

        List<Clash> clashes =
                Coherence.clashes(story.facts(), List.of(entry(second), entry(third), entry(first)), TODAY);
        assertThat(clashes).extracting(Clash::entry).containsExactly(entry(second));
        assertThat(problems(first)).extracting(Problem::kind).containsExactly(ProblemKind.RUNS_OVERLAP);
    }

    @Test
    void a_long_run_written_late_overlaps_the_short_ones_within_it() {
        story.run(engine, car, at("2026-03-10T10:10Z"), 5);
        story.run(engine, car, at("2026-03-10T10:20Z"), 5);
        Id<Run> around = story.run(engine, car, at("2026-03-10T10:00Z"), 60);

        assertThat(problems(around)).extracting(Problem::kind).containsExactly(ProblemKind.RUNS_OVERLAP);
    }

    @Test
    void runs_of_two_engines_struck_out_or_set_aside_overlap_nothing() {
        Id<Run> first = story.run(engine, car, at("2026-03-10T10:00Z"), 20);
        Id<Run> aside =
                story.add(draft("2026-03-10T10:05Z", 17).perhapsSame(first).written());
        Id<Run> struck = story.add(draft("2026-03-10T10:06Z", 18).written(), Standing.STRUCK_OUT);
        story.put(other, spareCar, MARCH, null);
        story.fit(otherRods, other, rodsHere, MARCH, null);
        Id<Run> elsewhere = story.run(other, spareCar, at("2026-03-10T10:07Z"), 19);

        assertThat(problems(first, aside, struck, elsewhere)).isEmpty();
    }

    @Test
    void two_runs_alike_within_a_minute_are_perhaps_one() {
        Id<Run> first =
                story.add(draft("2026-03-10T10:00Z", 20).named("Practice 1").written());
        Id<Run> second = story.run(engine, car, at("2026-03-10T10:01Z"), 20);

        assertThat(problems(second))
                .contains(problem(
                        ProblemKind.PERHAPS_SAME_RUN, "A1", "Practice 1", at("2026-03-10T10:00Z"), minutes(20)));
        assertThat(problems(first)).extracting(Problem::kind).contains(ProblemKind.PERHAPS_SAME_RUN);
        assertThat(problems(first, second))
                .filteredOn(problem -> problem.kind() == ProblemKind.PERHAPS_SAME_RUN)
                .hasSize(1);
    }

    @Test
    void two_dyno_runs_alike_are_perhaps_one_and_one_set_aside_is_nobodys_twin() {
        Id<Run> first = story.add(new RunDraft(engine, null, at("2026-03-10T10:00Z"), minutes(20)).written());
        story.add(new RunDraft(engine, null, at("2026-03-10T12:00Z"), minutes(10)).written());
        story.add(new RunDraft(engine, null, at("2026-03-10T09:00Z"), minutes(30)).written());
        Id<Run> second = story.add(new RunDraft(engine, null, at("2026-03-10T10:00:10Z"), minutes(20)).written());
        assertThat(problems(second)).extracting(Problem::kind).contains(ProblemKind.PERHAPS_SAME_RUN);

        story.rewrite(
                second,
                new RunDraft(engine, null, at("2026-03-10T10:00:10Z"), minutes(20))
                        .perhapsSame(first)
                        .written(),
                Standing.IN_FORCE);
        assertThat(problems(first, second)).isEmpty();
    }

    @Test
    void a_run_back_the_moment_it_went_out_takes_up_no_time() {
        story.run(engine, car, at("2026-03-10T10:00Z"), 20);
        Moment within = at("2026-03-10T10:10Z");
        assertThat(problems(story.add(draft("2026-03-10T10:10Z", 5).in(within).written())))
                .isEmpty();
    }

    @Test
    void runs_of_other_length_or_more_than_a_minute_apart_are_two() {
        story.run(engine, car, at("2026-03-10T10:00Z"), 20);
        Id<Run> longer = story.run(engine, car, at("2026-03-10T10:00:30Z"), 21);
        Id<Run> later = story.run(engine, car, at("2026-03-10T10:01:00.001Z"), 20);

        assertThat(problems(longer, later)).extracting(Problem::kind).containsOnly(ProblemKind.RUNS_OVERLAP);
    }

    @Test
    void a_run_in_one_car_is_perhaps_that_car_s_run_with_another_engine_typed() {
        story.run(engine, car, at("2026-03-10T10:00Z"), 20);
        Id<Run> wrongEngine = story.run(other, car, at("2026-03-10T10:00:20Z"), 20);

        assertThat(problems(wrongEngine)).extracting(Problem::kind).contains(ProblemKind.PERHAPS_SAME_RUN);
    }

    @Test
    void a_planned_run_is_taken_once_by_each_car() {
        Id<Event> event = story.add(new Event(
                "Round 1", "here", LocalDate.parse("2026-03-10"), LocalDate.parse("2026-03-11"), Story.UTC, null, ""));
        Id<PlannedRun> race =
                story.add(new PlannedRun(event, 1, RunKind.RACE, "Race 1", LocalDate.parse("2026-03-10"), null, null));
        Id<Run> first = story.add(draft("2026-03-10T10:00Z", 20)
                .named("Race 1")
                .planned(event, race)
                .written());
        Id<Run> again =
                story.add(draft("2026-03-10T15:00Z", 25).planned(event, race).written());
        story.put(other, spareCar, MARCH, null);
        story.fit(otherRods, other, rodsHere, MARCH, null);
        Id<Run> otherCar = story.add(new RunDraft(other, spareCar, at("2026-03-10T10:00Z"), minutes(20))
                .planned(event, race)
                .written());

        assertThat(problems(again))
                .containsExactlyInAnyOrder(
                        problem(ProblemKind.PLANNED_RUN_TAKEN, "Race 1", "12", at("2026-03-10T10:00Z")),
                        problem(ProblemKind.PERHAPS_SAME_RUN, "A1", "Race 1", at("2026-03-10T10:00Z"), minutes(20)));
        assertThat(problems(first)).extracting(Problem::kind).contains(ProblemKind.PLANNED_RUN_TAKEN);
        assertThat(problems(first, again))
                .filteredOn(problem -> problem.kind() == ProblemKind.PLANNED_RUN_TAKEN)
                .hasSize(1);
        assertThat(problems(otherCar)).isEmpty();
    }

    @Test
    void a_run_on_the_last_hour_of_today_is_no_future() {
        Id<Run> today = story.run(engine, car, at("2026-06-30T23:59:59.999Z"), 20);
        Id<Run> tomorrow = story.run(engine, car, at("2026-07-01T00:20Z"), 20);

        assertThat(problems(today)).isEmpty();
        assertThat(problems(tomorrow))
                .containsExactly(problem(ProblemKind.RUN_IN_FUTURE, at("2026-07-01T00:20Z"), TODAY.day()));
    }

    @Test
    void a_run_shorter_than_three_minutes_or_longer_than_three_hours_is_queried() {
        RunningTime least = minutes(3);
        RunningTime most = minutes(180);
        assertThat(problems(lasting("2026-03-10T10:00Z", 179_999)))
                .containsExactly(problem(ProblemKind.RUN_LENGTH_UNUSUAL, new RunningTime(179_999), least, most));
        assertThat(problems(lasting("2026-03-11T10:00Z", 180_000))).isEmpty();
        assertThat(problems(lasting("2026-03-12T10:00Z", 10_800_000))).isEmpty();
        assertThat(problems(lasting("2026-03-13T10:00Z", 10_800_001)))
                .containsExactly(problem(ProblemKind.RUN_LENGTH_UNUSUAL, new RunningTime(10_800_001), least, most));
        assertThat(problems(lasting("2026-03-14T10:00Z", 86_399_999)))
                .extracting(Problem::stops)
                .containsExactly(false);
        assertThat(problems(lasting("2026-03-16T10:00Z", 86_400_000)))
                .containsExactly(
                        problem(ProblemKind.RUN_TOO_LONG, new RunningTime(86_400_000), new RunningTime(86_400_000)));
    }

    @Test
    void no_share_of_a_run_is_longer_than_the_run() {
        Id<Run> whole = story.add(draft("2026-03-10T10:00Z", 20)
                .track(minutes(20))
                .warmUp(minutes(20))
                .with(Counter.LOADED, 1_200_000)
                .with(Counter.HIGH_SPEED, 1_200_000)
                .written());
        Id<Run> more = story.add(draft("2026-03-11T10:00Z", 20)
                .track(new RunningTime(1_200_001))
                .warmUp(new RunningTime(1_200_002))
                .with(Counter.LOADED, 1_200_003)
                .with(Counter.HIGH_SPEED, 1_200_004)
                .written());

        assertThat(problems(whole)).isEmpty();
        assertThat(problems(more))
                .containsExactly(
                        problem(ProblemKind.LONGER_THAN_RUN, "track", new RunningTime(1_200_001), minutes(20)),
                        problem(ProblemKind.LONGER_THAN_RUN, "warmUp", new RunningTime(1_200_002), minutes(20)),
                        problem(ProblemKind.LONGER_THAN_RUN, "loaded", new RunningTime(1_200_003), minutes(20)),
                        problem(ProblemKind.LONGER_THAN_RUN, "highSpeed", new RunningTime(1_200_004), minutes(20)));
    }

    @Test
    void an_engine_runs_in_the_car_it_is_in() {
        Id<Run> wrongCar = story.run(engine, spareCar, at("2026-03-10T10:00Z"), 20);
        Id<Run> tooEarly = story.run(engine, car, at("2026-03-01T07:00Z"), 20);
        Id<Run> justIn = story.run(engine, car, MARCH, 20);
        Id<Run> dyno = story.run(engine, null, at("2026-03-11T10:00Z"), 20);

        assertThat(problems(wrongCar))
                .containsExactly(problem(ProblemKind.ENGINE_NOT_IN_CAR, "A1", "14", at("2026-03-10T10:00Z")));
        assertThat(problems(tooEarly)).extracting(Problem::kind).contains(ProblemKind.ENGINE_NOT_IN_CAR);
        assertThat(problems(justIn, dyno)).isEmpty();
    }

    @Test
    void taking_an_engine_out_of_its_car_too_early_leaves_a_run_without_a_car() {
        Moment start = at("2026-03-10T10:00Z");
        story.run(engine, car, start, 20);
        story.rewrite(stay, new EngineInCar(engine, car, MARCH, start, ""), Standing.IN_FORCE);
        assertThat(problems(stay)).containsExactly(problem(ProblemKind.ENGINE_NOT_IN_CAR, "A1", "12", start));

        story.rewrite(stay, new EngineInCar(engine, car, MARCH, at("2026-03-10T10:20Z"), ""), Standing.IN_FORCE);
        assertThat(problems(stay)).isEmpty();
        story.rewrite(stay, new EngineInCar(engine, car, MARCH, null, ""), Standing.STRUCK_OUT);
        assertThat(problems(stay)).extracting(Problem::kind).containsExactly(ProblemKind.ENGINE_NOT_IN_CAR);
    }

    @Test
    void nothing_is_fitted_or_taken_off_inside_a_run() {
        Id<Run> run = story.add(draft("2026-03-10T10:00Z", 20).named("Race 1").written());
        Moment inside = at("2026-03-10T10:19:59.999Z");
        story.rewrite(fitted, fitment(rods, engine, MARCH, inside), Standing.IN_FORCE);
        Problem refused = problem(
                ProblemKind.CHANGE_INSIDE_RUN, "Race 1", at("2026-03-10T10:00Z"), at("2026-03-10T10:20Z"), inside);
        assertThat(problems(fitted)).containsExactly(refused);
        assertThat(problems(run)).containsExactly(refused);
        assertThat(problems(run, fitted)).containsExactly(refused);

        story.rewrite(fitted, fitment(rods, engine, MARCH, at("2026-03-10T10:20Z")), Standing.IN_FORCE);
        assertThat(problems(fitted)).isEmpty();
        story.rewrite(fitted, fitment(rods, engine, at("2026-03-10T10:00Z"), null), Standing.IN_FORCE);
        assertThat(problems(run, fitted)).isEmpty();
        story.rewrite(fitted, fitment(rods, engine, at("2026-03-10T10:00:00.001Z"), null), Standing.IN_FORCE);
        assertThat(problems(fitted)).extracting(Problem::kind).containsExactly(ProblemKind.CHANGE_INSIDE_RUN);
    }

    @Test
    void no_engine_comes_out_and_nothing_is_fitted_to_a_car_inside_its_run() {
        Id<Run> run = story.run(engine, car, at("2026-03-10T10:00Z"), 20);
        Moment inside = at("2026-03-10T10:10Z");
        Id<Position> clutchHere = story.carPosition(car, PartKind.CLUTCH, "clutch", 1);
        Id<Part> clutch = story.part("C-1", story.partDesign("plate", PartKind.CLUTCH, false));
        Id<Fitment> plate = story.fitToCar(clutch, car, clutchHere, inside, null);
        assertThat(problems(plate)).extracting(Problem::kind).containsExactly(ProblemKind.CHANGE_INSIDE_RUN);
        assertThat(problems(run)).extracting(Problem::kind).containsExactly(ProblemKind.CHANGE_INSIDE_RUN);

        story.rewrite(
                plate,
                new Fitment(clutch, null, car, clutchHere, MARCH, null, null, null, "", "", false),
                Standing.IN_FORCE);
        story.rewrite(stay, new EngineInCar(engine, car, MARCH, inside, ""), Standing.IN_FORCE);
        assertThat(problems(stay)).extracting(Problem::kind).containsExactly(ProblemKind.CHANGE_INSIDE_RUN);
        assertThat(problems(plate)).isEmpty();
    }

    @Test
    void a_part_is_fitted_on_the_day_it_was_bought_or_later() {
        Id<Part> bought =
                story.part("D-1", story.partDesign("damper", PartKind.DAMPER, false), LocalDate.parse("2026-03-02"));
        Id<Fitment> before = story.fit(bought, engine, damperHere, MARCH, at("2026-03-01T09:00Z"));
        Id<Fitment> sameDay = story.fit(bought, engine, damperHere, at("2026-03-02T00:00Z"), null);

        assertThat(problems(sameDay)).isEmpty();
        assertThat(problems(before))
                .containsExactly(problem(
                        ProblemKind.FITTED_BEFORE_BOUGHT,
                        "D-1",
                        LocalDate.parse("2026-03-01"),
                        LocalDate.parse("2026-03-02")));
        assertThat(problems(bought)).extracting(Problem::kind).containsExactly(ProblemKind.FITTED_BEFORE_BOUGHT);
    }

    @Test
    void a_position_holds_one_part_at_a_time() {
        Id<Fitment> second = story.fit(otherRods, engine, rodsHere, APRIL, null);
        assertThat(problems(second))
                .containsExactly(problem(ProblemKind.TWO_PARTS_IN_POSITION, "rods", "A1", "R-1", "R-2", APRIL));
        assertThat(problems(fitted))
                .containsExactly(problem(ProblemKind.TWO_PARTS_IN_POSITION, "rods", "A1", "R-2", "R-1", APRIL));

        story.rewrite(fitted, fitment(rods, engine, MARCH, APRIL), Standing.IN_FORCE);
        assertThat(problems(second, fitted)).isEmpty();
        assertThat(problems(story.fit(story.part("R-3", forged), other, rodsHere, APRIL, null)))
                .isEmpty();
        Id<Position> clutchHere = story.carPosition(car, PartKind.CLUTCH, "clutch", 1);
        Id<PartDesign> plates = story.partDesign("plate", PartKind.CLUTCH, false);
        story.fitToCar(story.part("C-1", plates), car, clutchHere, MARCH, null);
        assertThat(problems(story.fitToCar(story.part("C-2", plates), car, clutchHere, APRIL, null)))
                .containsExactly(problem(ProblemKind.TWO_PARTS_IN_POSITION, "clutch", "12", "C-1", "C-2", APRIL));
    }

    @Test
    void a_part_is_in_one_place_at_a_time() {
        Id<Fitment> second = story.fit(rods, other, rodsHere, APRIL, null);
        assertThat(problems(second)).containsExactly(problem(ProblemKind.PART_IN_TWO_PLACES, "R-1", "A1", "A2", APRIL));

        story.rewrite(fitted, fitment(rods, engine, MARCH, APRIL), Standing.IN_FORCE);
        assertThat(problems(second, fitted)).isEmpty();
    }

    @Test
    void a_member_is_in_its_set_until_it_is_split_off() {
        story.rewrite(fitted, fitment(rods, engine, MARCH, APRIL), Standing.IN_FORCE);
        Id<Part> member = story.split("R-1/3", forged, rods, APRIL);
        Moment early = at("2026-03-31T08:00Z");
        Id<Fitment> tooEarly = story.fit(member, other, rodsHere, early, APRIL);
        assertThat(problems(tooEarly))
                .containsExactly(problem(ProblemKind.PART_IN_TWO_PLACES, "R-1/3", "R-1", "A2", early));

        assertThat(problems(story.fit(member, other, rodsHere, APRIL, null))).isEmpty();
    }

    @Test
    void a_single_use_part_is_fitted_once() {
        Id<Position> gasketHere = story.position(design, PartKind.HEAD_GASKET, "head gasket", 3, false);
        Id<PartDesign> gaskets = story.partDesign("gasket", PartKind.HEAD_GASKET, true);
        Id<Part> gasket = story.part("G-1", gaskets);
        Id<Fitment> first = story.fit(gasket, engine, gasketHere, MARCH, APRIL);
        assertThat(problems(first)).isEmpty();

        Id<Fitment> again = story.fit(gasket, other, gasketHere, APRIL, null);
        assertThat(problems(again)).containsExactly(problem(ProblemKind.SINGLE_USE_AGAIN, "G-1", "A1"));
        assertThat(problems(first)).containsExactly(problem(ProblemKind.SINGLE_USE_AGAIN, "G-1", "A1"));
        assertThat(problems(first, again)).hasSize(1);

        Id<Part> member = story.split("G-1/2", gaskets, gasket, APRIL);
        assertThat(problems(story.fit(member, engine, gasketHere, APRIL, null)))
                .containsExactly(problem(ProblemKind.SINGLE_USE_AGAIN, "G-1/2", "A1"));
        Id<Part> spare = story.part("G-2", gaskets);
        Id<Part> unused = story.split("G-2/1", gaskets, spare, APRIL);
        story.fit(spare, engine, damperHere, APRIL, null);
        assertThat(problems(story.fit(unused, other, damperHere, APRIL, null))).isEmpty();
        story.rewrite(fitted, fitment(rods, engine, MARCH, APRIL), Standing.IN_FORCE);
        assertThat(problems(story.fit(rods, other, rodsHere, APRIL, null))).isEmpty();
    }

    @Test
    void an_engine_is_in_one_car_and_a_car_has_one_engine_at_a_time() {
        Id<EngineInCar> twoCars = story.put(engine, spareCar, APRIL, at("2026-04-02T08:00Z"));
        assertThat(problems(twoCars)).containsExactly(problem(ProblemKind.ENGINE_IN_TWO_CARS, "A1", "12", "14", APRIL));
        Id<EngineInCar> twoEngines = story.put(other, car, APRIL, null);
        assertThat(problems(twoEngines))
                .containsExactly(problem(ProblemKind.TWO_ENGINES_IN_CAR, "12", "A1", "A2", APRIL));

        story.rewrite(stay, new EngineInCar(engine, car, MARCH, APRIL, ""), Standing.IN_FORCE);
        assertThat(problems(stay, twoCars, twoEngines)).isEmpty();
    }

    @Test
    void the_same_stay_written_twice_is_an_engine_in_two_cars_and_not_also_two_engines() {
        assertThat(problems(story.put(engine, car, APRIL, null)))
                .extracting(Problem::kind)
                .containsExactly(ProblemKind.ENGINE_IN_TWO_CARS);
    }

    @Test
    void a_position_belongs_to_the_design_or_the_car() {
        Id<EngineDesign> six = story.design("six");
        Id<Engine> big = story.engine("B1", six);
        Id<Position> clutchHere = story.carPosition(car, PartKind.CLUTCH, "clutch", 1);
        Id<Part> clutch = story.part("C-1", story.partDesign("plate", PartKind.CLUTCH, false));

        assertThat(problems(story.fit(otherRods, big, rodsHere, MARCH, null)))
                .containsExactly(problem(ProblemKind.POSITION_OF_ANOTHER_DESIGN, "rods", "four", "B1"));
        assertThat(problems(story.fitToCar(clutch, spareCar, clutchHere, MARCH, MARCH.plus(minutes(1)))))
                .containsExactly(problem(ProblemKind.POSITION_OF_ANOTHER_DESIGN, "clutch", "12", "14"));
        assertThat(problems(story.fitToCar(clutch, car, clutchHere, APRIL, null)))
                .isEmpty();
    }

    @Test
    void an_engine_that_ran_with_a_needed_position_empty_is_asked_about() {
        story.rewrite(fitted, fitment(rods, engine, APRIL, null), Standing.IN_FORCE);
        Id<Run> empty = story.run(engine, car, at("2026-03-10T10:00Z"), 20);
        Id<Run> full = story.run(engine, car, APRIL, 20);

        assertThat(problems(full)).isEmpty();
        assertThat(problems(empty)).containsExactly(problem(ProblemKind.ENGINE_INCOMPLETE, "A1", List.of("rods")));
        story.position(design, PartKind.HEAD, "head", 0, true);
        assertThat(problems(empty))
                .containsExactly(problem(ProblemKind.ENGINE_INCOMPLETE, "A1", List.of("head", "rods")));
    }

    @Test
    void a_candidate_stands_in_for_what_was_written_under_its_id() {
        Id<Run> written = story.run(engine, car, at("2026-03-10T10:00Z"), 20);
        Entry<Run> corrected =
                new Entry<>(written, draft("2026-03-10T10:05Z", 20).written(), Standing.IN_FORCE, null, 2);

        assertThat(Coherence.forRun(story.facts(), corrected, TODAY)).isEmpty();
    }

    private Id<Run> lasting(String start, long millis) {
        return story.add(new RunDraft(engine, car, at(start), new RunningTime(millis)).written());
    }

    private Fitment fitment(Id<Part> part, Id<Engine> in, Moment from, Moment to) {
        return new Fitment(part, in, null, rodsHere, from, to, null, null, "", "", false);
    }

    @SuppressWarnings("unchecked") // the test knows what it wrote
    private Entry<Run> entry(Id<Run> run) {
        return (Entry<Run>) story.entries().stream()
                .filter(entry -> entry.id().equals(run))
                .findFirst()
                .orElseThrow();
    }
}
