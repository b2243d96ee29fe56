package witnessmark.domain;

import java.math.BigDecimal;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import witnessmark.quantity.Money;

/**
 * Money that went, will go, or stands for own work.
 *
 * <p>What counts as spent is paid less recovered less carried on. What an invoice adds as tax that is got back is not
 * part of it.
 *
 * @param day the day it counts for
 * @param what what it was for
 * @param category what kind of cost
 * @param basis whether it has gone, will go, or is own work at the team's rate
 * @param event for which event, or null
 * @param car for which car, or null when shared or for none
 * @param engine for which engine, or null
 * @param incident the incident that caused it, or null
 * @param part the part whose price it is, or that it replaced, or null
 * @param work the work it pays for, or null
 * @param build the build it belongs to, or null
 * @param planned would have been spent anyway, though an incident brought it
 * @param allocated a share of something that is spent either way, as of a truck that goes for another car
 * @param paid paid or owed, without tax that is got back; below nothing for a credit note
 * @param tax tax on top that is got back, or null
 * @param recovered got back, or nothing
 * @param carried still to be used and not lost, or nothing
 * @param carriedUntil the last day what is carried on can be used, or null when it keeps
 * @param carriedUsed the day what was carried on was used, or null
 * @param carriedTo the event it was used at, or null
 * @param rate units of the home currency for one of this, that day; null in the home currency
 * @param minutes minutes of own work, or null
 * @param supplier who was paid; empty when not written down
 * @param invoice number of the invoice; empty when there is none
 * @param refundBy the last day to ask for it back, or null
 * @param customer the customer it is to be charged to; empty for the team itself
 * @param chargedOn the day it was charged to the customer, or null
 * @param note anything else
 */
public record CostLine(
        LocalDate day,
        String what,
        CostCategory category,
        CostBasis basis,
        @Nullable Id<Event> event,
        @Nullable Id<Car> car,
        @Nullable Id<Engine> engine,
        @Nullable Id<Incident> incident,
        @Nullable Id<Part> part,
        @Nullable Id<Work> work,
        @Nullable Id<Build> build,
        boolean planned,
        boolean allocated,
        Money paid,
        @Nullable Money tax,
        Money recovered,
        Money carried,
        @Nullable LocalDate carriedUntil,
        @Nullable LocalDate carriedUsed,
        @Nullable Id<Event> carriedTo,
        @Nullable BigDecimal rate,
        @Nullable Integer minutes,
        String supplier,
        String invoice,
        @Nullable LocalDate refundBy,
        String customer,
        @Nullable LocalDate chargedOn,
        String note)
        implements Fact {
    public CostLine {
        if (what.isBlank()) {
            throw new IllegalArgumentException("a cost says what it was for");
        }
        if (tax != null && !tax.currency().equals(paid.currency())
                || !recovered.currency().equals(paid.currency())
                || !carried.currency().equals(paid.currency())) {
            throw new IllegalArgumentException("one line is in one currency");
        }
        if (recovered.minor() < 0
                || carried.minor() < 0
                || (recovered.minor() > 0 || carried.minor() > 0)
                        && recovered.minor() > paid.minor() - carried.minor()) {
            throw new IllegalArgumentException("no more is got back and carried on than was paid");
        }
        if (rate != null && rate.signum() <= 0) {
            throw new IllegalArgumentException("a rate is more than 0");
        }
        if (carriedUsed != null && carriedUsed.isBefore(day)) {
            throw new IllegalArgumentException("what was carried on is used after it was paid");
        }
        if (minutes != null && minutes < 0) {
            throw new IllegalArgumentException("minutes of work are 0 or more");
        }
        rate = rate == null ? null : Decimals.plain(rate);
    }
}
