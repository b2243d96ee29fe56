package witnessmark.logbook.sheets;

import static witnessmark.logbook.sheets.SheetField.choice;
import static witnessmark.logbook.sheets.SheetField.of;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Car;
import witnessmark.domain.CostBasis;
import witnessmark.domain.CostCategory;
import witnessmark.domain.CostLine;
import witnessmark.domain.CostShare;
import witnessmark.domain.Entry;
import witnessmark.domain.Event;
import witnessmark.domain.Id;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Money;

/**
 * What one car's weekend cost, a field for each usual kind of cost, filled with what the car's last event took. What stays
 * empty is not written. What was shared with other cars last time stands whole in its field and is shared the same way.
 */
public final class WeekendCosts implements LogSheet {
    public static final SheetField EVENT = choice("event", 2);
    public static final SheetField CAR = choice("car", 1);
    public static final SheetField DAY = of("day", FieldKind.DAY);
    public static final SheetField BASIS = choice("cost_basis", 1);

    private static final int COLUMNS = 4;
    private static final Map<CostCategory, SheetField> AMOUNTS = amounts();

    private static Map<CostCategory, SheetField> amounts() {
        Map<CostCategory, SheetField> amounts = new LinkedHashMap<>();
        for (CostCategory kind : List.of(
                CostCategory.ENTRY,
                CostCategory.TEST_DAY,
                CostCategory.TRAVEL,
                CostCategory.TRANSPORT,
                CostCategory.ACCOMMODATION,
                CostCategory.CREW_FOOD,
                CostCategory.CREW,
                CostCategory.HELPER,
                CostCategory.TYRES,
                CostCategory.FUEL,
                CostCategory.CONSUMABLES,
                CostCategory.HIRE)) {
            String key = "weekend_" + kind.code().replace(' ', '_').toLowerCase(Locale.ROOT);
            amounts.put(kind, SheetField.text(key, 1));
        }
        return amounts;
    }

    /** The field of a kind of cost. */
    public static SheetField amount(CostCategory kind) {
        return Objects.requireNonNull(AMOUNTS.get(kind));
    }

    @Override
    public String key() {
        return "weekend_costs";
    }

    @Override
    public List<SheetGroup> groups() {
        List<SheetField> all = List.copyOf(AMOUNTS.values());
        return List.of(
                SheetGroup.of("weekend", List.of(EVENT, CAR), List.of(DAY, BASIS)),
                SheetGroup.of(
                        "weekend_amounts",
                        all.subList(0, COLUMNS),
                        all.subList(COLUMNS, 2 * COLUMNS),
                        all.subList(2 * COLUMNS, all.size())));
    }

    @Override
    public Map<SheetField, String> fresh(SheetSight sight) {
        Map<SheetField, String> out = new HashMap<>();
        out.put(BASIS, CostBasis.CASH.code());
        Optional<Entry<Event>> event = unwritten(sight);
        event.ifPresent(found -> {
            out.put(EVENT, found.id().text());
            List<Entry<Car>> cars = SharesTyped.cars(sight, found.id().text());
            cars.stream()
                    .filter(car -> new CarWeekend(sight, found, car.id()).own().isEmpty())
                    .findFirst()
                    .or(() -> cars.stream().findFirst())
                    .ifPresent(car -> out.put(CAR, car.id().text()));
        });
        out.putAll(follows(EVENT, new SheetTyped(out), sight));
        return out;
    }

    @Override
    public Map<SheetField, String> follows(SheetField picked, SheetTyped typed, SheetSight sight) {
        if (!picked.equals(EVENT) && !picked.equals(CAR)) {
            return Map.of();
        }
        Map<SheetField, String> out = new HashMap<>();
        Optional<Entry<Event>> event = sight.find(Event.class, typed.text(EVENT));
        Optional<Entry<Car>> car = sight.find(Car.class, typed.text(CAR));
        event.ifPresent(found -> out.put(
                DAY,
                (found.fact().firstDay().isAfter(sight.today())
                                ? sight.today()
                                : found.fact().firstDay())
                        .toString()));
        AMOUNTS.forEach((kind, field) -> out.put(
                field,
                event.isEmpty() || car.isEmpty()
                        ? ""
                        : lastTime(new CarWeekend(sight, event.get(), car.get().id()), kind, sight)));
        return out;
    }

    /** The amount of last time; empty where it took none, or where some of that kind is written already. */
    private static String lastTime(CarWeekend weekend, CostCategory kind, SheetSight sight) {
        return weekend.of(kind).isEmpty()
                ? weekend.before(kind)
                        .map(before -> TypedAmount.text(before.line().fact().paid(), sight))
                        .orElse("")
                : "";
    }

    @Override
    public Set<SheetField> kept() {
        return Set.of(EVENT, BASIS);
    }

    @Override
    public boolean oneAfterTheOther() {
        return true;
    }

    @Override
    public List<Choice> choices(SheetField field, SheetTyped typed, SheetSight sight) {
        return switch (field.key()) {
            case "event" -> EnterCar.events(sight);
            case "car" ->
                SharesTyped.cars(sight, typed.text(EVENT)).stream()
                        .map(car -> Choice.of(car.id().text(), car.fact()))
                        .toList();
            case "cost_basis" -> MoneyChoices.basis(false);
            default -> List.of();
        };
    }

    @Override
    public void read(ReadSheet in) {
        Entry<Event> event = in.chosen(EVENT, Event.class);
        Entry<Car> car = in.chosen(CAR, Car.class);
        CostBasis basis = in.word(BASIS, CostBasis.class);
        ReadValues values = new ReadValues(in);
        LocalDate day = basis == CostBasis.COMMITTED ? values.plannedDay(DAY) : values.neededDay(DAY);
        MoneyChoices.season(in, DAY, EVENT, day);
        Map<CostCategory, Money> amounts = new LinkedHashMap<>();
        AMOUNTS.forEach((kind, field) -> {
            Money money = amount(in, kind, field, event, car);
            if (money != null) {
                amounts.put(kind, money);
            }
        });
        if (in.fine() && amounts.isEmpty()) {
            SheetField first = amount(CostCategory.ENTRY);
            in.wrong(first, ProblemKind.NEEDED, first);
        }
        if (!in.fine() || event == null || car == null || basis == null || day == null) {
            return;
        }
        CarWeekend weekend = new CarWeekend(in.sight(), event, car.id());
        amounts.forEach((kind, money) -> {
            CarWeekend.Before before = weekend.before(kind).orElse(null);
            Id<Car> whose = before != null && before.shared() ? null : car.id();
            Id<CostLine> line = in.make(
                    amount(kind),
                    line(
                            kind,
                            money,
                            basis,
                            day,
                            event.id(),
                            whose,
                            before == null ? null : before.line().fact()));
            if (before != null) {
                before.shares()
                        .forEach(share -> in.make(amount(kind), new CostShare(line, share.car(), share.parts())));
            }
        });
    }

    private static @Nullable Money amount(
            ReadSheet in, CostCategory kind, SheetField field, @Nullable Entry<Event> event, @Nullable Entry<Car> car) {
        Money money = new ReadValues(in).money(field);
        if (money != null && !money.currency().equals(in.sight().currency())) {
            in.wrong(
                    field,
                    ProblemKind.OTHER_CURRENCY,
                    field,
                    in.sight().currency().getCurrencyCode());
            return null;
        }
        if (event == null || car == null) {
            return money;
        }
        CarWeekend weekend = new CarWeekend(in.sight(), event, car.id());
        weekend.before(kind)
                .filter(before -> money == null
                        || before.shared()
                        || before.line().fact().paid().equals(money))
                .ifPresent(before -> in.note(field, note(in, before)));
        weekend.of(kind).stream()
                .map(line -> line.fact().paid())
                .reduce((one, other) -> one.currency().equals(other.currency()) ? one.plus(other) : one)
                .ifPresent(there -> {
                    if (money == null) {
                        in.note(field, SheetNote.of("there_already", there));
                    } else {
                        in.wrong(field, ProblemKind.WRITTEN_FOR_IT_ALREADY, kind, there);
                    }
                });
        return money;
    }

    private static SheetNote note(ReadSheet in, CarWeekend.Before before) {
        String event = named(in, before.line());
        return before.shared()
                ? SheetNote.of("last_time_shared", before.said(in.sight()), event)
                : SheetNote.of("last_time", before.line().fact().paid(), event);
    }

    private static String named(ReadSheet in, Entry<CostLine> line) {
        Id<Event> event = line.fact().event();
        return event == null ? "" : in.sight().name(Event.class, event).split(",", 2)[0];
    }

    /** The same as last time but for the amount: what it was called, who was paid, whether it is spent either way. */
    private static CostLine line(
            CostCategory kind,
            Money paid,
            CostBasis basis,
            LocalDate day,
            Id<Event> event,
            @Nullable Id<Car> car,
            @Nullable CostLine last) {
        Money none = Money.none(paid.currency());
        return new CostLine(
                day,
                last == null ? kind.code() : last.what(),
                kind,
                basis,
                event,
                car,
                null,
                null,
                null,
                null,
                null,
                false,
                last != null && last.allocated(),
                paid,
                null,
                none,
                none,
                null,
                null,
                null,
                null,
                null,
                last == null ? "" : last.supplier(),
                "",
                null,
                "",
                null,
                "");
    }

    /** The last event that has begun, or the next one where everything is written for that. */
    private static Optional<Entry<Event>> unwritten(SheetSight sight) {
        List<Entry<Event>> all = events(sight);
        Optional<Entry<Event>> last = all.stream()
                .filter(event -> !event.fact().firstDay().isAfter(sight.today()))
                .findFirst();
        Optional<Entry<Event>> next = all.stream()
                .filter(event -> event.fact().firstDay().isAfter(sight.today()))
                .reduce((later, sooner) -> sooner);
        boolean written = last.isPresent()
                && SharesTyped.cars(sight, last.get().id().text()).stream()
                        .noneMatch(car -> new CarWeekend(sight, last.get(), car.id())
                                .own()
                                .isEmpty());
        return written && next.isPresent() ? next : last.or(() -> next);
    }

    /** The latest first. */
    private static List<Entry<Event>> events(SheetSight sight) {
        return sight.facts().of(Event.class).where(event -> true).stream()
                .sorted(Comparator.comparing(
                                (Entry<Event> event) -> event.fact().firstDay())
                        .reversed())
                .toList();
    }

    @Override
    public List<String> about(SheetTyped typed, SheetSight sight) {
        return List.of(
                sight.find(Event.class, typed.text(EVENT))
                        .map(event -> event.fact().name())
                        .orElse(""),
                sight.find(Car.class, typed.text(CAR))
                        .map(car -> car.fact().name())
                        .orElse(""));
    }
}
