package witnessmark.desktop.incidents;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import witnessmark.cost.result.Switches;
import witnessmark.desktop.cases.CaseModel;
import witnessmark.desktop.form.SeamState;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Incident;
import witnessmark.logbook.View;
import witnessmark.logbook.money.IncidentPage;
import witnessmark.logbook.money.LifeThen;
import witnessmark.logbook.proof.CaseSeen;
import witnessmark.logbook.sheets.Prefilled;
import witnessmark.quantity.Money;
import witnessmark.wording.IncidentWords;
import witnessmark.wording.Measures;
import witnessmark.wording.MoneyWords;
import witnessmark.wording.Texts;

/** Words the incidents. The same answer always gives the same lines. */
final class IncidentsModel {
    private final Texts texts;
    private final Measures measures;
    private final IncidentWords words;
    private final CostWords costs;
    private final MoneyWords money;
    private final SectionWords sections;
    private final CaseModel cases;

    IncidentsModel(Texts texts, Measures measures) {
        this.texts = texts;
        this.measures = measures;
        this.words = new IncidentWords(texts, measures);
        this.costs = new CostWords(texts, measures);
        this.money = new MoneyWords(texts, measures);
        this.sections = new SectionWords(texts, measures);
        this.cases = new CaseModel(texts, measures);
    }

    IncidentsLines lines(View view, List<IncidentPage> all) {
        return new IncidentsLines(
                measures.date(view.day()),
                (int) all.stream().filter(IncidentPage::open).count(),
                all.stream().map(page -> line(view, page)).toList());
    }

    private IncidentLine line(View view, IncidentPage page) {
        Incident incident = page.incident().fact();
        Money together = page.cost().total(Switches.USUAL);
        return new IncidentLine(
                page.incident().id().text(),
                incident.mark(),
                incident.title(),
                measures.row(on(view.facts(), incident)),
                measures.shortDate(incident.at().day()),
                incident.at(),
                stands(page, view.day()),
                state(page),
                page.cost().hasTotal(Switches.USUAL)
                        ? measures.money(together)
                        : money.together(page.cost(), Switches.USUAL),
                together.minor(),
                incident.engine() == null ? "" : incident.engine().text(),
                Prefilled.about(page.incident()));
    }

    private static SeamState state(IncidentPage page) {
        return page.open() ? SeamState.DUE : SeamState.WITHIN;
    }

    private String stands(IncidentPage page, LocalDate today) {
        int days = (int) ChronoUnit.DAYS.between(page.incident().fact().at().day(), today);
        return page.open()
                ? words.open(days)
                : texts.get(page.again().isEmpty() ? "incidents.closed" : "incidents.came_back");
    }

    /** {@code 57, K05}. */
    private static List<String> on(Facts facts, Incident incident) {
        return Stream.of(IncidentWords.car(facts, incident), IncidentWords.engine(facts, incident))
                .filter(Objects::nonNull)
                .toList();
    }

    /**
     * @param ran what its parts had run by then as the logbook has it now, in their order
     * @param seen its investigation
     */
    PageLines page(View view, IncidentPage page, List<LifeThen.Ran> ran, CaseSeen seen) {
        Entry<Incident> entry = page.incident();
        Incident incident = entry.fact();
        return new PageLines(
                entry.id().text(),
                incident.mark(),
                incident.title(),
                stands(page, view.day()),
                state(page),
                words.told(view.facts(), incident),
                page.open() ? "" : words.closed(incident),
                incident.seen(),
                page.cost().home().getCurrencyCode(),
                costs.columns(view.facts(), page.cost()),
                Prefilled.costOf(entry),
                costs.span(page.cost()),
                cases.lines(view, entry, seen),
                sections.holds(page, seen),
                sections.ofCauses(view, page, seen),
                sections.of(view, page, ran));
    }
}
