package witnessmark.desktop.season;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.cost.result.Refund;
import witnessmark.domain.Car;
import witnessmark.domain.CostLine;
import witnessmark.domain.Entry;
import witnessmark.domain.Event;
import witnessmark.domain.Facts;
import witnessmark.logbook.money.SeasonPage;
import witnessmark.quantity.Money;
import witnessmark.wording.Measures;
import witnessmark.wording.Texts;

/** Words what money is not settled yet: what can be asked back, what is to be charged, what is kept for later. */
final class SettleModel {
    private final Texts texts;
    private final Measures measures;
    private final Facts facts;

    SettleModel(Texts texts, Measures measures, Facts facts) {
        this.texts = texts;
        this.measures = measures;
        this.facts = facts;
    }

    /** What has a last day first, the nearest on top. */
    List<SettleLine> lines(SeasonPage page) {
        List<SettleLine> all = new ArrayList<>();
        page.refunds()
                .forEach(refund ->
                        all.add(line(refund.line(), texts.get(refundKey(refund)), refund.by(), refund.still())));
        page.toCharge()
                .forEach(line -> all.add(line(
                        line,
                        texts.get("season.settle.charge", line.fact().customer()),
                        null,
                        line.fact().paid())));
        page.kept()
                .forEach(line -> all.add(line(
                        line,
                        texts.get("season.settle.kept"),
                        line.fact().carriedUntil(),
                        line.fact().carried())));
        all.sort(Comparator.comparing(line -> line.last() == null ? LocalDate.MAX : line.last()));
        return all;
    }

    private static String refundKey(Refund refund) {
        return refund.late()
                ? "season.settle.refund.late"
                : refund.begun() ? "season.settle.refund.rest" : "season.settle.refund";
    }

    private SettleLine line(Entry<CostLine> line, String what, @Nullable LocalDate last, Money amount) {
        return new SettleLine(
                line.id().text(),
                what,
                line.fact().what(),
                where(line.fact()),
                last == null ? "" : measures.date(last),
                last,
                new Amount(measures.money(amount), amount.minor()));
    }

    private String where(CostLine line) {
        List<String> where = new ArrayList<>();
        if (line.event() != null) {
            where.add(facts.of(Event.class).get(line.event()).name());
        }
        if (line.car() != null) {
            where.add(texts.get(
                    "season.forCar", facts.of(Car.class).get(line.car()).name()));
        }
        return where.isEmpty() ? "" : measures.row(where);
    }
}
