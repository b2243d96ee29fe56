package witnessmark.cost;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Random;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.BudgetLine;
import witnessmark.domain.Car;
import witnessmark.domain.Cause;
import witnessmark.domain.CauseArea;
import witnessmark.domain.CostBasis;
import witnessmark.domain.CostCategory;
import witnessmark.domain.CostLine;
import witnessmark.domain.CostShare;
import witnessmark.domain.Entry;
import witnessmark.domain.Event;
import witnessmark.domain.Fact;
import witnessmark.domain.Facts;
import witnessmark.domain.FoundWhen;
import witnessmark.domain.Id;
import witnessmark.domain.Incident;
import witnessmark.domain.MissedHow;
import witnessmark.domain.MissedRun;
import witnessmark.domain.MissedShare;
import witnessmark.domain.PlannedRun;
import witnessmark.domain.RunKind;
import witnessmark.domain.Severity;
import witnessmark.domain.Standing;
import witnessmark.domain.Team;
import witnessmark.quantity.EngineSpeed;
import witnessmark.quantity.Moment;
import witnessmark.quantity.Money;

/** A seeded year and a half of money: events, cars, incidents, missed weekends, and costs in three currencies. */
public final class CostGenerator {
    static final ZoneId ZONE = ZoneId.of("Europe/London");
    private static final List<String> CODES = List.of("EUR", "JPY", "KWD");

    private final Random random;
    private final int lines;
    private final Currency home;
    private final List<Entry<?>> entries = new ArrayList<>();
    private final List<Id<Car>> cars = new ArrayList<>();
    private final List<Id<Event>> events = new ArrayList<>();
    private final List<Id<Incident>> incidents = new ArrayList<>();

    CostGenerator(long seed) {
        this(seed, 60);
    }

    /** @param lines how many costs there are */
    public CostGenerator(long seed, int lines) {
        this.random = new Random(seed);
        this.lines = lines;
        this.home = Currency.getInstance(pick(CODES));
    }

    public Facts facts() {
        EngineSpeed any = new EngineSpeed(500);
        add(new Team("Team", ZONE, home.getCurrencyCode(), any, any, any));
        for (int i = 0; i < 3; i++) {
            cars.add(add(new Car("car " + i, "")));
            events.add(add(new Event("event " + i, "", day(), LocalDate.of(2028, 1, 1), ZONE, null, "")));
        }
        for (int i = 0; i < 4; i++) {
            Id<Incident> id = new Id<>(new UUID(random.nextLong(), random.nextLong()));
            Incident incident = new Incident(
                    "I" + i,
                    "broke",
                    at(day()),
                    FoundWhen.ON_A_RUN,
                    null,
                    perhaps(events),
                    perhaps(cars),
                    null,
                    Severity.RETIRED,
                    "",
                    null,
                    "",
                    null,
                    "",
                    "",
                    "");
            boolean struck = random.nextInt(6) == 0;
            entries.add(new Entry<>(
                    id, incident, struck ? Standing.STRUCK_OUT : Standing.IN_FORCE, struck ? "wrong" : null, 1));
            incidents.add(id);
            for (int k = random.nextInt(3); k > 0; k--) {
                add(new Cause(id, "cause", pick(List.of(CauseArea.values())), 1 + random.nextInt(5000), "", "", null));
            }
        }
        for (int i = 0; i < 4; i++) {
            missed();
        }
        for (int i = 0; i < lines; i++) {
            line();
        }
        for (int i = 0; i < 10; i++) {
            Money amount = money(pick(CODES), 100_000);
            add(new BudgetLine(day(), perhaps(events), perhaps(cars), CostCategory.ENTRY, amount, rate(amount), ""));
        }
        return Facts.none().with(entries);
    }

    private void missed() {
        Id<Event> event = pick(events);
        Id<PlannedRun> planned = random.nextBoolean()
                ? null
                : add(new PlannedRun(event, 1, RunKind.RACE, "race " + entries.size(), day(), null, null));
        Id<MissedRun> missed = add(new MissedRun(event, pick(cars), null, planned, at(day()), MissedHow.WITHDRAWN, ""));
        for (int k = random.nextInt(3); k > 0; k--) {
            add(new MissedShare(missed, null, pick(incidents), 1 + random.nextInt(Cause.WHOLE), ""));
        }
    }

    private void line() {
        Money paid = random.nextInt(8) == 0 ? money(pick(CODES), 9_000).negated() : money(pick(CODES), 100_000);
        boolean back = paid.minor() > 0 && random.nextInt(3) == 0;
        long recovered = back ? random.nextLong(paid.minor() + 1) : 0;
        long carried = back && random.nextBoolean() ? random.nextLong(paid.minor() - recovered + 1) : 0;
        LocalDate day = day();
        boolean used = carried > 0 && random.nextInt(3) == 0;
        Id<Car> car = perhaps(cars);
        Id<CostLine> line = add(new CostDraft(day, "cost", paid)
                .as(pick(List.of(CostCategory.values())), pick(List.of(CostBasis.values())))
                .at(perhaps(events), car)
                .because(random.nextInt(3) == 0 ? pick(incidents) : null)
                .spent(random.nextInt(4) == 0, random.nextInt(4) == 0)
                .gotBack(new Money(recovered, paid.currency()))
                .kept(
                        new Money(carried, paid.currency()),
                        random.nextBoolean() ? day.plusDays(random.nextInt(200)) : null)
                .used(used ? day.plusDays(random.nextInt(200)) : null, used ? perhaps(events) : null)
                .rated(rate(paid))
                .line());
        if (car == null) {
            for (int k = random.nextInt(3); k > 0; k--) {
                add(new CostShare(line, pick(cars), 1 + random.nextInt(5)));
            }
        }
    }

    private Money money(String code, int most) {
        return new Money(random.nextInt(most), Currency.getInstance(code));
    }

    private @Nullable BigDecimal rate(Money money) {
        boolean forgotten = random.nextInt(6) == 0;
        return money.currency().equals(home) || forgotten
                ? null
                : BigDecimal.valueOf(1 + random.nextInt(50_000), 1 + random.nextInt(4));
    }

    LocalDate day() {
        return LocalDate.of(2026, 1, 1).plusDays(random.nextInt(540));
    }

    private static Moment at(LocalDate day) {
        return Moment.of(day.atTime(11, 0), ZONE);
    }

    private <T> T pick(List<T> from) {
        return from.get(random.nextInt(from.size()));
    }

    private <T> @Nullable T perhaps(List<T> from) {
        return random.nextInt(4) == 0 ? null : pick(from);
    }

    private <F extends Fact> Id<F> add(F fact) {
        Id<F> id = new Id<>(new UUID(random.nextLong(), random.nextLong()));
        entries.add(new Entry<>(id, fact, Standing.IN_FORCE, null, 1));
        return id;
    }
}
