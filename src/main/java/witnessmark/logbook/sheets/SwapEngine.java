package witnessmark.logbook.sheets;

import static witnessmark.logbook.sheets.SheetField.choice;
import static witnessmark.logbook.sheets.SheetField.of;
import static witnessmark.logbook.sheets.SheetField.text;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Car;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.domain.Part;
import witnessmark.domain.PartDesign;
import witnessmark.domain.PartKind;
import witnessmark.domain.Run;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Moment;

/**
 * Changes the engine of a car: which goes in, when, on what oil, through what cooler and lines. The old stay ends and the
 * new one begins in one change, and runs of the car written on the other engine meanwhile go with it.
 */
public final class SwapEngine implements LogSheet {
    public static final SheetField CAR = choice("swap_car", 1);
    public static final SheetField ENGINE = choice("goes_in", 2);
    public static final SheetField WHEN = choice("swap_when", 1);
    public static final SheetField DAY = of("swap_day", FieldKind.DAY);
    public static final SheetField TIME = of("swap_time", FieldKind.CLOCK);
    public static final SheetField OIL = choice("swap_oil", 1);
    public static final SheetField COOLER = choice("swap_cooler", 1);
    /** Runs of the car that are written on another engine, and came after this. */
    public static final SheetField RUNS = choice("swap_runs", 2);

    /** Why it goes in with all that speaks against it. */
    public static final SheetField ANYWAY = text("swap_anyway", 4);

    /** What is written beside the stay, in the words of the crew. */
    private static final Map<String, String> WRITTEN = Map.of(
            SheetWord.OIL_FRESH.key(), "oil fresh",
            SheetWord.OIL_KEPT.key(), "oil kept",
            SheetWord.COOLER_CLEANED.key(), "cooler and lines cleaned",
            SheetWord.COOLER_AS_IT_WAS.key(), "cooler and lines as they were");

    private static final String MOVE = "move";
    private static final int RUNS_OFFERED = 6;

    @Override
    public String key() {
        return "swap_engine";
    }

    @Override
    public List<SheetGroup> groups() {
        return List.of(
                SheetGroup.of("swap_engine", List.of(CAR, ENGINE), List.of(ANYWAY)),
                SheetGroup.of("swap_when", List.of(WHEN, DAY, TIME), List.of(RUNS)),
                SheetGroup.of("swap_oil", List.of(OIL, COOLER)));
    }

    @Override
    public Map<SheetField, String> fresh(SheetSight sight) {
        Map<SheetField, String> out = new HashMap<>();
        List<Choice> cars = sight.all(Car.class, car -> true);
        if (cars.size() == 1) {
            out.put(CAR, cars.get(0).key());
        }
        out.put(WHEN, SheetWord.AT_TIME.key());
        out.put(DAY, sight.today().toString());
        out.put(COOLER, SheetWord.NOT_SAID.key());
        return out;
    }

    @Override
    public Map<SheetField, String> picksFor(Id<Engine> engine, SheetSight sight) {
        return Map.of(ENGINE, engine.text());
    }

    @Override
    public List<Choice> choices(SheetField field, SheetTyped typed, SheetSight sight) {
        if (field.equals(CAR)) {
            return sight.all(Car.class, car -> true);
        }
        if (field.equals(ENGINE)) {
            return SpareEngine.choices(sight, car(typed, sight).map(Entry::id).orElse(null), at(typed, sight));
        }
        if (field.equals(WHEN)) {
            return moments(typed, sight);
        }
        if (field.equals(OIL)) {
            return List.of(SheetWord.OIL_FRESH.choice(), SheetWord.OIL_KEPT.choice());
        }
        if (field.equals(COOLER)) {
            return List.of(
                    SheetWord.NOT_SAID.choice(),
                    SheetWord.COOLER_CLEANED.choice(),
                    SheetWord.COOLER_AS_IT_WAS.choice());
        }
        return field.equals(RUNS)
                ? swap(typed, sight).stream()
                        .map(swap -> Choice.of(MOVE, SheetNote.of("ran_with", sight.name(Engine.class, swap.takes()))))
                        .toList()
                : List.of();
    }

    @Override
    public boolean asks(SheetField field, SheetTyped typed, SheetSight sight) {
        if (field.equals(DAY) || field.equals(TIME)) {
            return typed.is(WHEN, SheetWord.AT_TIME);
        }
        if (field.equals(RUNS)) {
            return swap(typed, sight).filter(swap -> !swap.runs().isEmpty()).isPresent();
        }
        return !field.equals(ANYWAY) || !against(typed, sight).isEmpty();
    }

    @Override
    public void read(ReadSheet in) {
        Entry<Car> car = in.chosen(CAR, Car.class);
        Entry<Engine> engine = in.chosen(ENGINE, Engine.class);
        Moment at = when(in);
        SheetField moment = in.is(WHEN, SheetWord.AT_TIME) ? TIME : WHEN;
        in.blame(moment, ProblemKind.CHANGE_INSIDE_RUN, ProblemKind.ENGINE_NOT_IN_CAR, ProblemKind.TWO_ENGINES_IN_CAR);
        in.blame(ENGINE, ProblemKind.ENGINE_IN_TWO_CARS);
        String oil = in.needed(OIL);
        if (car == null || engine == null || at == null) {
            return;
        }
        EngineSwap swap = new EngineSwap(in.sight().facts(), engine.id(), car.id(), at);
        say(in, swap, car, engine, moment);
        if (in.is(OIL, SheetWord.OIL_FRESH)) {
            oilInIt(in.sight(), engine.id(), at).ifPresent(mark -> in.note(OIL, SheetNote.of("oil_counts_on", mark)));
        }
        List<SheetNote> against = new SpareEngine(in.sight(), engine, at).against();
        if (!against.isEmpty()) {
            in.note(ANYWAY, new SheetNote("line", List.copyOf(against), true));
            in.needed(ANYWAY);
        }
        List<Entry<Run>> runs = swap.runs();
        if (!runs.isEmpty()) {
            in.note(
                    RUNS,
                    SheetNote.of(
                            "runs_after",
                            runs.size(),
                            name(in, runs.get(0).fact().engine())));
            in.needed(RUNS);
        }
        if (!in.fine()) {
            return;
        }
        swap.write(in, moment, note(oil, in.text(COOLER), against.isEmpty() ? "" : in.text(ANYWAY)));
        for (Entry<Run> run : runs) {
            in.change(RUNS, run, run.fact().onEngine(swap.takes()));
        }
    }

    /** The oil and filter counted in an engine: fresh oil begins no new count until it is fitted. */
    private static Optional<String> oilInIt(SheetSight sight, Id<Engine> engine, Moment at) {
        return sight.view().ledger().fittedAt(engine, at).values().stream()
                .map(fitted -> sight.facts().of(Part.class).get(fitted.fact().part()))
                .filter(part ->
                        sight.facts().of(PartDesign.class).get(part.design()).kind() == PartKind.OIL_AND_FILTER)
                .map(Part::mark)
                .findFirst();
    }

    private static void say(ReadSheet in, EngineSwap swap, Entry<Car> car, Entry<Engine> engine, SheetField moment) {
        String number = engine.fact().number();
        in.note(
                CAR,
                swap.comesOut()
                        .map(stay ->
                                SheetNote.of("comes_out", name(in, stay.fact().engine())))
                        .orElse(SheetNote.of("car_empty")));
        swap.moved()
                .ifPresent(stay ->
                        in.note(ENGINE, SheetNote.of("change_moved", stay.fact().from())));
        swap.leaves()
                .filter(stay -> swap.moved().isEmpty())
                .ifPresent(stay -> in.wrong(
                        ENGINE,
                        ProblemKind.ENGINE_LEAVES_CAR,
                        number,
                        in.sight().name(Car.class, stay.fact().car())));
        swap.already()
                .ifPresent(stay -> in.wrong(
                        ENGINE,
                        ProblemKind.ENGINE_IN_TWO_CARS,
                        number,
                        car.fact().name(),
                        car.fact().name(),
                        stay.fact().from()));
        swap.cutToNothing()
                .filter(stay -> swap.already().isEmpty())
                .ifPresent(stay -> in.wrong(
                        moment,
                        ProblemKind.ENGINE_IN_CAR_LATER,
                        in.sight().name(Car.class, stay.fact().car()),
                        name(in, stay.fact().engine()),
                        stay.fact().from()));
    }

    @Override
    public List<String> about(SheetTyped typed, SheetSight sight) {
        return List.of(
                sight.find(Engine.class, typed.text(ENGINE))
                        .map(engine -> engine.fact().number())
                        .orElse(""),
                car(typed, sight).map(car -> car.fact().name()).orElse(""));
    }

    private static String name(ReadSheet in, Id<Engine> engine) {
        return in.sight().name(Engine.class, engine);
    }

    private static String note(String oil, String cooler, String anyway) {
        List<String> said = new ArrayList<>(List.of(WRITTEN.getOrDefault(oil, "")));
        said.add(WRITTEN.getOrDefault(cooler, ""));
        said.add(anyway);
        said.removeIf(String::isEmpty);
        return String.join("; ", said);
    }

    /** At a time, or after one of the car's last runs. */
    private static List<Choice> moments(SheetTyped typed, SheetSight sight) {
        List<Choice> choices = new ArrayList<>(List.of(SheetWord.AT_TIME.choice()));
        car(typed, sight)
                .ifPresent(car -> lastRuns(car, sight)
                        .forEach(run -> choices.add(Choice.of(
                                run.id().text(),
                                SheetNote.of(
                                        "after_run",
                                        run.fact().name().isEmpty()
                                                ? run.fact().kind()
                                                : run.fact().name(),
                                        run.fact().back())))));
        return choices;
    }

    private static List<Entry<Run>> lastRuns(Entry<Car> car, SheetSight sight) {
        return sight.facts().of(Run.class).where(run -> car.id().equals(run.car())).stream()
                .filter(run -> !run.fact().start().isAfter(sight.now()))
                .sorted(Comparator.comparing((Entry<Run> run) -> run.fact().start())
                        .reversed())
                .limit(RUNS_OFFERED)
                .toList();
    }

    private static @Nullable Moment when(ReadSheet in) {
        if (in.is(WHEN, SheetWord.AT_TIME)) {
            return new ReadValues(in).moment(DAY, TIME);
        }
        Entry<Run> run = in.chosen(WHEN, Run.class);
        return run == null ? null : run.fact().back();
    }

    private static Moment at(SheetTyped typed, SheetSight sight) {
        return typed.is(WHEN, SheetWord.AT_TIME)
                ? SheetMoments.of(typed, DAY, TIME, sight).orElse(sight.now())
                : sight.find(Run.class, typed.text(WHEN))
                        .map(run -> run.fact().back())
                        .orElse(sight.now());
    }

    private static Optional<Entry<Car>> car(SheetTyped typed, SheetSight sight) {
        return sight.find(Car.class, typed.text(CAR));
    }

    private static Optional<EngineSwap> swap(SheetTyped typed, SheetSight sight) {
        Optional<Entry<Engine>> engine = sight.find(Engine.class, typed.text(ENGINE));
        Optional<Entry<Car>> car = car(typed, sight);
        return engine.isEmpty() || car.isEmpty()
                ? Optional.empty()
                : Optional.of(new EngineSwap(
                        sight.facts(), engine.get().id(), car.get().id(), at(typed, sight)));
    }

    private static List<SheetNote> against(SheetTyped typed, SheetSight sight) {
        return sight.find(Engine.class, typed.text(ENGINE))
                .map(engine -> new SpareEngine(sight, engine, at(typed, sight)).against())
                .orElse(List.of());
    }
}
