package witnessmark.desktop.season;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.cost.result.SeasonCost;
import witnessmark.domain.Season;
import witnessmark.logbook.money.SeasonPage;
import witnessmark.quantity.Money;
import witnessmark.quantity.RunningTime;
import witnessmark.wording.Measures;
import witnessmark.wording.Texts;

/** Words seasons beside each other: as reported when they were closed, and as the logbook has them now. */
final class BesideModel {
    private final Texts texts;
    private final Measures measures;

    BesideModel(Texts texts, Measures measures) {
        this.texts = texts;
        this.measures = measures;
    }

    List<BesideLine> lines(SeasonPage page) {
        List<BesideLine> lines = new ArrayList<>();
        for (SeasonPage.Beside beside : page.beside()) {
            String name = beside.season().name();
            if (beside.reported() != null) {
                lines.add(reported(name, beside.reported().fact()));
            }
            lines.add(now(name, beside.now()));
        }
        return lines;
    }

    private BesideLine reported(String name, Season season) {
        return new BesideLine(
                name + " reported",
                name,
                season.closed() == null
                        ? texts.get("season.beside.reported")
                        : texts.get(
                                "season.beside.reportedOn",
                                measures.date(season.closed().day())),
                List.of(
                        amount(season.reportedBudget()),
                        amount(season.reportedSpent()),
                        amount(season.reportedIncome()),
                        amount(season.reportedCash()),
                        amount(season.reportedLabour()),
                        amount(season.reportedMissed())),
                hours(season.reportedRunning()));
    }

    private BesideLine now(String name, SeasonCost now) {
        return new BesideLine(
                name + " now",
                name,
                texts.get("season.beside.now"),
                List.of(
                        amount(now.budget()),
                        amount(now.spent()),
                        amount(now.income()),
                        amount(now.cash()),
                        amount(now.labour()),
                        amount(now.missed())),
                hours(now.running()));
    }

    private Amount amount(@Nullable Money money) {
        return money == null
                ? new Amount(texts.get("season.notWritten"), Long.MIN_VALUE)
                : new Amount(measures.amount(money), money.minor());
    }

    private Amount hours(@Nullable RunningTime time) {
        return time == null
                ? new Amount(texts.get("season.notWritten"), Long.MIN_VALUE)
                : new Amount(measures.hours(time), time.millis());
    }
}
