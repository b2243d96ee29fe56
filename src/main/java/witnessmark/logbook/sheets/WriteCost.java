package witnessmark.logbook.sheets;

import static witnessmark.logbook.sheets.SheetField.choice;
import static witnessmark.logbook.sheets.SheetField.of;
import static witnessmark.logbook.sheets.SheetField.text;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import witnessmark.cost.SeasonTotals;
import witnessmark.cost.Work;
import witnessmark.domain.Car;
import witnessmark.domain.CostBasis;
import witnessmark.domain.CostCategory;
import witnessmark.domain.CostLine;
import witnessmark.domain.CostShare;
import witnessmark.domain.Engine;
import witnessmark.domain.Event;
import witnessmark.domain.Fact;
import witnessmark.domain.HourRate;
import witnessmark.domain.Id;
import witnessmark.domain.Incident;
import witnessmark.domain.RateKind;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Money;
import witnessmark.quantity.RunningTime;

/** Writes down a cost: what, for what, how much, and what of it comes back or is carried on. */
public final class WriteCost implements LogSheet {
    public static final SheetField DAY = of("day", FieldKind.DAY);
    public static final SheetField WHAT = text("cost_what", 2);
    public static final SheetField KIND = choice("cost_kind", 1);
    public static final SheetField EVENT = choice("event", 1);
    public static final SheetField CAR = choice("car", 1);
    public static final SheetField ENGINE = choice("engine", 1);
    public static final SheetField INCIDENT = choice("cost_incident", 1);
    public static final SheetField SHARES = text("cost_shares", 2);
    public static final SheetField BASIS = choice("cost_basis", 1);
    public static final SheetField AMOUNT = text("cost_amount", 1);
    public static final SheetField HOURS = of("cost_hours", FieldKind.HOURS);
    public static final SheetField RATE = text("cost_rate", 1);
    public static final SheetField TAX = text("cost_tax", 1);
    public static final SheetField BACK = text("cost_back", 1);
    public static final SheetField CARRIED = text("cost_carried", 1);
    public static final SheetField UNTIL = of("cost_until", FieldKind.DAY);
    public static final SheetField USED = of("cost_used", FieldKind.DAY);
    public static final SheetField USED_AT = choice("cost_used_at", 1);
    public static final SheetField DUE = choice("cost_due", 1);
    public static final SheetField EITHER_WAY = choice("cost_either_way", 1);
    public static final SheetField SUPPLIER = text("cost_supplier", 1);
    public static final SheetField INVOICE = text("cost_invoice", 1);
    public static final SheetField REFUND_BY = of("cost_refund_by", FieldKind.DAY);
    public static final SheetField CUSTOMER = text("cost_customer", 1);
    public static final SheetField CHARGED = of("cost_charged", FieldKind.DAY);
    public static final SheetField NOTE = text("note", 4);

    private static final Set<SheetField> OF_MONEY = Set.of(AMOUNT, TAX, BACK, CARRIED, REFUND_BY, SUPPLIER, INVOICE);
    /** What is said in plain words under a field whose name is the trade's. */
    private static final Map<SheetField, String> PLAIN = Map.of(
            INCIDENT, "cost_owed",
            TAX, "cost_tax_apart",
            BACK, "cost_got_back",
            CARRIED, "cost_left_over",
            DUE, "cost_due_anyway",
            EITHER_WAY, "cost_spent_anyway",
            CUSTOMER, "cost_charge_on");

    private static final Set<SheetField> OF_CARRIED = Set.of(UNTIL, USED, USED_AT);

    @Override
    public String key() {
        return "write_cost";
    }

    @Override
    public List<SheetGroup> groups() {
        return List.of(
                SheetGroup.of("cost", List.of(WHAT, KIND, DAY), List.of(EVENT, CAR, ENGINE, INCIDENT), List.of(SHARES)),
                SheetGroup.of(
                        "cost_money",
                        List.of(BASIS, AMOUNT, TAX, RATE),
                        List.of(HOURS),
                        List.of(BACK, CARRIED, UNTIL, USED),
                        List.of(USED_AT)),
                SheetGroup.of(
                        "cost_more",
                        List.of(SUPPLIER, INVOICE, REFUND_BY),
                        List.of(CUSTOMER, CHARGED, DUE, EITHER_WAY),
                        List.of(NOTE)));
    }

    @Override
    public Map<SheetField, String> fresh(SheetSight sight) {
        return Map.of(
                DAY,
                sight.today().toString(),
                KIND,
                CostCategory.PARTS.code(),
                BASIS,
                CostBasis.CASH.code(),
                DUE,
                SheetWord.NO.key(),
                EITHER_WAY,
                SheetWord.NO.key());
    }

    @Override
    public Map<SheetField, String> picksFor(Id<Engine> engine, SheetSight sight) {
        return Map.of(ENGINE, engine.text());
    }

    /** What a cost of an incident is on: its car, engine and event, as far as they are known. */
    static Map<SheetField, String> onWhat(Incident incident) {
        Map<SheetField, String> texts = new HashMap<>();
        texts.put(CAR, incident.car() == null ? "" : incident.car().text());
        texts.put(ENGINE, incident.engine() == null ? "" : incident.engine().text());
        texts.put(EVENT, incident.event() == null ? "" : incident.event().text());
        texts.values().removeIf(String::isEmpty);
        return texts;
    }

    @Override
    public Map<SheetField, String> follows(SheetField picked, SheetTyped typed, SheetSight sight) {
        return picked.equals(INCIDENT)
                ? sight.find(Incident.class, typed.text(INCIDENT))
                        .map(incident -> onWhat(incident.fact()))
                        .orElse(Map.of())
                : Map.of();
    }

    @Override
    public Set<SheetField> kept() {
        return Set.of(DAY, EVENT, CAR, ENGINE, INCIDENT, KIND, SHARES, SUPPLIER, INVOICE);
    }

    @Override
    public boolean oneAfterTheOther() {
        return true;
    }

    @Override
    public boolean asks(SheetField field, SheetTyped typed, SheetSight sight) {
        boolean valued = typed.text(BASIS).equals(CostBasis.VALUED.code());
        if (field.equals(HOURS)) {
            return valued;
        }
        if (field.equals(SHARES)) {
            return typed.is(CAR, SheetWord.SHARED);
        }
        if (field.equals(RATE)) {
            return !valued && TypedAmount.isForeign(AMOUNT, typed, sight);
        }
        if (field.equals(CHARGED)) {
            return !typed.text(CUSTOMER).isEmpty();
        }
        if (OF_CARRIED.contains(field)) {
            return !valued && !typed.text(CARRIED).isEmpty();
        }
        return !valued || !OF_MONEY.contains(field);
    }

    @Override
    public List<Choice> choices(SheetField field, SheetTyped typed, SheetSight sight) {
        return switch (field.key()) {
            case "cost_kind" -> Choice.words(CostCategory.values());
            case "cost_basis" -> MoneyChoices.basis(true);
            case "event", "cost_used_at" -> MoneyChoices.events(sight);
            case "engine" -> MoneyChoices.engines(sight);
            case "cost_incident" -> MoneyChoices.incidents(sight);
            case "cost_due", "cost_either_way" -> MoneyChoices.yesNo();
            case "car" -> {
                List<Choice> cars = new ArrayList<>(MoneyChoices.cars(sight));
                cars.add(1, SheetWord.SHARED.choice());
                yield cars;
            }
            default -> List.of();
        };
    }

    @Override
    public void read(ReadSheet in) {
        in.note(WHAT, SheetNote.of("cost_what_example"));
        PLAIN.forEach((field, note) -> in.note(field, SheetNote.of(note)));
        String what = in.needed(WHAT);
        CostCategory kind = in.word(KIND, CostCategory.class);
        CostBasis basis = in.word(BASIS, CostBasis.class);
        if (basis != null) {
            in.note(BASIS, SheetNote.of("cost_is_" + basis.code()));
        }
        LocalDate day = day(in, basis);
        boolean shared = in.is(CAR, SheetWord.SHARED);
        List<SharesTyped.Share> shares = shared ? SharesTyped.read(in, SHARES, EVENT) : List.of();
        if (shared && in.isCorrecting()) {
            in.wrong(CAR, ProblemKind.SHARED_ANEW);
        }
        boolean valued = basis == CostBasis.VALUED;
        Integer minutes = valued ? minutes(in) : null;
        Money paid = valued ? valued(in, day, minutes) : TypedAmount.needed(in, AMOUNT);
        CostMoney money = CostMoney.read(in, valued, paid, day);
        if (!in.fine() || kind == null || basis == null || day == null || paid == null || money == null) {
            return;
        }
        Id<CostLine> line = in.make(WHAT, line(in, what, kind, basis, day, paid, money, minutes));
        shares.forEach(share -> in.make(SHARES, new CostShare(line, share.car().id(), share.parts())));
    }

    private static CostLine line(
            ReadSheet in,
            String what,
            CostCategory kind,
            CostBasis basis,
            LocalDate day,
            Money paid,
            CostMoney money,
            @Nullable Integer minutes) {
        return new CostLine(
                day,
                what,
                kind,
                basis,
                MoneyChoices.picked(in, EVENT, Event.class),
                in.is(CAR, SheetWord.SHARED) ? null : MoneyChoices.picked(in, CAR, Car.class),
                MoneyChoices.picked(in, ENGINE, Engine.class),
                MoneyChoices.picked(in, INCIDENT, Incident.class),
                null,
                null,
                null,
                in.is(DUE, SheetWord.YES),
                in.is(EITHER_WAY, SheetWord.YES),
                paid,
                money.tax(),
                money.back(),
                money.carried(),
                money.until(),
                money.used(),
                money.usedAt(),
                money.rate(),
                minutes,
                basis == CostBasis.VALUED ? "" : in.text(SUPPLIER),
                basis == CostBasis.VALUED ? "" : in.text(INVOICE),
                money.refundBy(),
                in.text(CUSTOMER),
                money.charged(),
                in.text(NOTE));
    }

    /** What was paid lies back; what is still to be paid may lie ahead. */
    private static @Nullable LocalDate day(ReadSheet in, @Nullable CostBasis basis) {
        ReadValues values = new ReadValues(in);
        LocalDate day = basis == CostBasis.COMMITTED ? values.plannedDay(DAY) : values.neededDay(DAY);
        MoneyChoices.season(in, DAY, EVENT, day);
        return day;
    }

    private static @Nullable Integer minutes(ReadSheet in) {
        in.needed(HOURS);
        RunningTime time = new ReadValues(in).hours(HOURS);
        return PlanJob.minutes(time);
    }

    /** Own work at the team's rate of that day. */
    private static @Nullable Money valued(ReadSheet in, @Nullable LocalDate day, @Nullable Integer minutes) {
        if (day == null) {
            return null;
        }
        Optional<HourRate> rate = SeasonTotals.rate(in.sight().facts(), RateKind.OWN_LABOUR, day);
        if (rate.isEmpty()) {
            in.wrong(HOURS, ProblemKind.NO_HOUR_RATE, day);
            return null;
        }
        if (minutes == null) {
            return null;
        }
        Money hour = rate.get().amount();
        Money worth = Work.valued(hour, RunningTime.ofMinutes(java.math.BigDecimal.valueOf(minutes)));
        in.note(HOURS, SheetNote.echo("hours_worth", worth, hour));
        return worth;
    }

    /** A shared one is corrected share by share. */
    @Override
    public Optional<Map<SheetField, String>> written(Fact fact, SheetSight sight) {
        if (!(fact instanceof CostLine line) || line.car() == null && isShared(line, sight)) {
            return Optional.empty();
        }
        if (line.basis() == CostBasis.VALUED && !CostMoney.isWorthItsHours(line, sight)) {
            return Optional.empty();
        }
        Map<SheetField, String> out = new HashMap<>();
        out.put(DAY, line.day().toString());
        out.put(WHAT, line.what());
        out.put(KIND, line.category().code());
        out.put(EVENT, MoneyChoices.text(line.event()));
        out.put(CAR, MoneyChoices.text(line.car()));
        out.put(ENGINE, MoneyChoices.text(line.engine()));
        out.put(INCIDENT, MoneyChoices.text(line.incident()));
        out.put(BASIS, line.basis().code());
        out.put(DUE, AsText.yes(line.planned()));
        out.put(EITHER_WAY, AsText.yes(line.allocated()));
        out.put(NOTE, line.note());
        CostMoney.write(line, out, sight);
        return Optional.of(out);
    }

    /** Whether any cost alike is shared: the sight is without the one that is corrected, its shares are there still. */
    private static boolean isShared(CostLine line, SheetSight sight) {
        return sight.facts()
                .of(CostShare.class)
                .inForce()
                .anyMatch(share -> sight.facts()
                        .of(CostLine.class)
                        .find(share.fact().line())
                        .filter(entry -> entry.fact().equals(line))
                        .isPresent());
    }

    @Override
    public List<String> about(SheetTyped typed, SheetSight sight) {
        return List.of(typed.text(WHAT));
    }
}
