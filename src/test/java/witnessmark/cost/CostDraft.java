package witnessmark.cost;

import java.math.BigDecimal;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Car;
import witnessmark.domain.CostBasis;
import witnessmark.domain.CostCategory;
import witnessmark.domain.CostLine;
import witnessmark.domain.Event;
import witnessmark.domain.Id;
import witnessmark.domain.Incident;
import witnessmark.domain.Part;
import witnessmark.quantity.Money;

/** A cost about to be written: cash for parts, for no event, and nothing of it got back, unless told otherwise. */
public final class CostDraft {
    private final LocalDate day;
    private final String what;
    private final Money paid;
    private CostCategory category = CostCategory.PARTS;
    private CostBasis basis = CostBasis.CASH;
    private @Nullable Id<Event> event;
    private @Nullable Id<Car> car;
    private @Nullable Id<Incident> incident;
    private @Nullable Id<Part> part;
    private boolean planned;
    private boolean allocated;
    private @Nullable Money tax;
    private Money recovered;
    private Money carried;
    private @Nullable LocalDate carriedUntil;
    private @Nullable LocalDate carriedUsed;
    private @Nullable Id<Event> carriedTo;
    private @Nullable BigDecimal rate;
    private String supplier = "";
    private String invoice = "";
    private @Nullable LocalDate refundBy;
    private String customer = "";

    public CostDraft(LocalDate day, String what, Money paid) {
        this.day = day;
        this.what = what;
        this.paid = paid;
        this.recovered = Money.none(paid.currency());
        this.carried = Money.none(paid.currency());
    }

    public CostDraft as(CostCategory kind, CostBasis how) {
        category = kind;
        basis = how;
        return this;
    }

    public CostDraft at(@Nullable Id<Event> meeting, @Nullable Id<Car> whose) {
        event = meeting;
        car = whose;
        return this;
    }

    public CostDraft because(@Nullable Id<Incident> failure) {
        incident = failure;
        return this;
    }

    public CostDraft of(Id<Part> bought) {
        part = bought;
        return this;
    }

    /**
     * @param anyway it was due anyway
     * @param eitherWay it is spent either way
     */
    public CostDraft spent(boolean anyway, boolean eitherWay) {
        planned = anyway;
        allocated = eitherWay;
        return this;
    }

    public CostDraft taxed(@Nullable Money onTop) {
        tax = onTop;
        return this;
    }

    public CostDraft gotBack(Money back) {
        recovered = back;
        return this;
    }

    public CostDraft kept(Money on, @Nullable LocalDate until) {
        carried = on;
        carriedUntil = until;
        return this;
    }

    public CostDraft used(@Nullable LocalDate on, @Nullable Id<Event> there) {
        carriedUsed = on;
        carriedTo = there;
        return this;
    }

    public CostDraft rated(@Nullable BigDecimal home) {
        rate = home;
        return this;
    }

    public CostDraft invoiced(String number, String by) {
        invoice = number;
        supplier = by;
        return this;
    }

    public CostDraft refundBy(@Nullable LocalDate last) {
        refundBy = last;
        return this;
    }

    public CostDraft forCustomer(String whose) {
        customer = whose;
        return this;
    }

    public CostLine line() {
        return new CostLine(
                day,
                what,
                category,
                basis,
                event,
                car,
                null,
                incident,
                part,
                null,
                null,
                planned,
                allocated,
                paid,
                tax,
                recovered,
                carried,
                carriedUntil,
                carriedUsed,
                carriedTo,
                rate,
                null,
                supplier,
                invoice,
                refundBy,
                customer,
                null,
                "");
    }
}
