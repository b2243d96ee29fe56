package witnessmark.desktop.incidents;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import witnessmark.cost.result.LostLife;
import witnessmark.cost.result.Switches;
import witnessmark.desktop.incidents.PageLines.Row;
import witnessmark.desktop.incidents.PageLines.Section;
import witnessmark.domain.Cause;
import witnessmark.domain.CauseState;
import witnessmark.domain.Decision;
import witnessmark.domain.DecisionOption;
import witnessmark.domain.Entry;
import witnessmark.domain.Event;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.Incident;
import witnessmark.domain.IncidentPart;
import witnessmark.domain.MissedRun;
import witnessmark.domain.MissedShare;
import witnessmark.domain.Part;
import witnessmark.domain.PlannedRun;
import witnessmark.domain.Prevention;
import witnessmark.domain.Run;
import witnessmark.logbook.View;
import witnessmark.logbook.money.Decided;
import witnessmark.logbook.money.Failure;
import witnessmark.logbook.money.IncidentPage;
import witnessmark.logbook.money.LifeThen;
import witnessmark.logbook.proof.CaseSeen;
import witnessmark.logbook.sheets.Prefilled;
import witnessmark.quantity.Money;
import witnessmark.wording.CauseWords;
import witnessmark.wording.IncidentWords;
import witnessmark.wording.Measures;
import witnessmark.wording.MoneyWords;
import witnessmark.wording.RecordWords;
import witnessmark.wording.Texts;

/** Everything that hangs on an incident but its costs, section by section. */
final class SectionWords {
    private static final BigDecimal HOUR = BigDecimal.valueOf(60);

    private final Texts texts;
    private final Measures measures;
    private final RecordWords records;
    private final MoneyWords money;
    private final CaseSections cases;
    private final CauseWords causes;
    private final IncidentWords incidents;
    private final LessonSection lessons;

    SectionWords(Texts texts, Measures measures) {
        this.texts = texts;
        this.measures = measures;
        this.records = new RecordWords(texts);
        this.money = new MoneyWords(texts, measures);
        this.cases = new CaseSections(texts, measures);
        this.causes = new CauseWords(texts, measures);
        this.incidents = new IncidentWords(texts, measures);
        this.lessons = new LessonSection(texts, measures);
    }

    /** What is said of the causes and decides on them, under what was found. */
    List<Section> ofCauses(View view, IncidentPage page, CaseSeen seen) {
        List<Section> all = new ArrayList<>();
        all.add(section("causes", causes(page, seen), "", null));
        all.addAll(cases.rest(
                view.facts(), seen, Prefilled.actingOn(page.incident().id()), testing(seen)));
        return all;
    }

    /** A test on the cause that is still open, or else on the first; null while there is none. */
    private static @Nullable Prefilled testing(CaseSeen seen) {
        List<Entry<Cause>> causes = seen.evidence().causes();
        return causes.stream()
                .filter(cause -> seen.evidence().state(cause.id()) == CauseState.OPEN)
                .findFirst()
                .or(() -> causes.stream().findFirst())
                .map(cause -> Prefilled.testing(cause.id()))
                .orElse(null);
    }

    /** Whether it holds. */
    List<Section> holds(IncidentPage page, CaseSeen seen) {
        return cases.proof(seen, Prefilled.proving(page.incident().id()));
    }

    /** Everything else. */
    List<Section> of(View view, IncidentPage page, List<LifeThen.Ran> ran) {
        Facts facts = view.facts();
        Id<Incident> id = page.incident().id();
        return List.of(
                section("parts", parts(facts, page, ran), "", Prefilled.namingPart(id)),
                section("prevention", preventions(page), kept(page), Prefilled.preventing(id)),
                section(
                        "missed",
                        page.missed().stream()
                                .map(share -> missed(facts, share.fact()))
                                .toList(),
                        "",
                        Prefilled.sharing(id)),
                section("before", rows(page.before(), this::link), "", null),
                section("again", rows(page.again(), this::link), "", null),
                section(
                        "decisions",
                        page.decisions().stream()
                                .map(each -> decided(page, each))
                                .toList(),
                        "",
                        null),
                lessons.of(view, id));
    }

    private Section section(String key, List<Row> rows, String sum, @Nullable Prefilled add) {
        String none = "incidents.none." + key;
        return new Section(
                texts.get("incidents.section." + key),
                rows,
                sum,
                texts.has(none) ? texts.get(none) : "",
                add,
                add == null ? "" : texts.get("incidents.add." + key));
    }

    private static <T> List<Row> rows(List<T> all, Function<? super T, Row> row) {
        return all.stream().map(row).toList();
    }

    // Parts

    private List<Row> parts(Facts facts, IncidentPage page, List<LifeThen.Ran> ran) {
        List<Row> rows = new ArrayList<>();
        for (int i = 0; i < page.parts().size(); i++) {
            IncidentPart part = page.parts().get(i).fact();
            List<String> under = new ArrayList<>();
            under.add(part.note());
            under.add(since(part, ran.get(i)));
            under.addAll(page.lost().stream()
                    .filter(lost -> lost.part().equals(part.part()))
                    .map(this::lost)
                    .toList());
            under.removeIf(String::isEmpty);
            rows.add(new Row(
                    facts.of(Part.class).get(part.part()).mark(),
                    measures.row(
                            part.member().isEmpty()
                                    ? List.of(records.word(part.harm()))
                                    : List.of(records.word(part.harm()), part.member())),
                    incidents.had(part),
                    measures.row(under),
                    ""));
        }
        return rows;
    }

    private String since(IncidentPart part, LifeThen.Ran now) {
        return now.ran().equals(part.ran()) ? "" : texts.get("incidents.ran.now", measures.hours(now.ran()));
    }

    private String lost(LostLife lost) {
        Money gone = lost.lost();
        return gone == null
                ? texts.get("incidents.lost.not_known", measures.money(lost.price()))
                : texts.get("incidents.lost", measures.money(lost.price()), measures.money(gone));
    }

    // Causes

    private List<Row> causes(IncidentPage page, CaseSeen seen) {
        List<Row> rows = new ArrayList<>();
        for (Entry<Cause> entry : seen.evidence().causes()) {
            CauseWords.Line line = causes.cause(
                    rows.size() + 1, entry.fact(), seen.evidence().calls().getOrDefault(entry.id(), List.of()));
            rows.add(new Row(line.lead(), line.what(), line.figure(), measures.row(line.under()), ""));
        }
        if (!rows.isEmpty() && page.shareLeft() > 0) {
            rows.add(new Row("", texts.get("incidents.nobody"), money.percent(page.shareLeft()), "", ""));
        }
        return rows;
    }

    // Prevention

    private List<Row> preventions(IncidentPage page) {
        return rows(page.preventions(), entry -> {
            Prevention prevention = entry.fact();
            Money price = prevention.money();
            Integer minutes = prevention.minutes();
            return new Row(
                    price == null ? texts.get("incidents.no_price") : measures.money(price),
                    prevention.what(),
                    minutes == null ? texts.get("incidents.no_hours") : hours(minutes),
                    prevention.note(),
                    "");
        });
    }

    private String hours(int minutes) {
        return texts.get(
                "incidents.hours",
                measures.number(BigDecimal.valueOf(minutes).divide(HOUR, 1, RoundingMode.HALF_UP), 1));
    }

    /** What all of it would have taken, beside what the incident cost. */
    private String kept(IncidentPage page) {
        Failure.Kept kept = page.kept();
        if (kept.count() == 0) {
            return "";
        }
        String key = kept.complete() ? "incidents.kept" : "incidents.kept.least";
        String took = measures.money(kept.money());
        if (!page.cost().hasTotal(Switches.USUAL)) {
            String why = page.cost().isUnwritten() ? ".unwritten" : ".leftOut";
            return texts.get(key + why, took, hours(kept.minutes()));
        }
        return texts.get(
                key, took, hours(kept.minutes()), measures.money(page.cost().total(Switches.USUAL)));
    }

    // What was missed

    private Row missed(Facts facts, MissedShare share) {
        Optional<MissedRun> missed = Optional.ofNullable(share.missed())
                .map(id -> facts.of(MissedRun.class).get(id));
        String lead;
        String words;
        if (missed.isPresent()) {
            Id<PlannedRun> planned = missed.get().planned();
            lead = planned == null
                    ? texts.get("incidents.whole_event")
                    : facts.of(PlannedRun.class).get(planned).name();
            words = measures.row(List.of(
                    facts.of(Event.class).get(missed.get().event()).name(),
                    records.word(missed.get().how())));
        } else {
            Run run = facts.of(Run.class).get(Objects.requireNonNull(share.run()));
            lead = run.name().isEmpty() ? records.label(records.word(run.kind())) : run.name();
            words = measures.row(List.of(
                    run.event() == null
                            ? measures.date(run.start().day())
                            : facts.of(Event.class).get(run.event()).name(),
                    texts.get("incidents.run_lost")));
        }
        return new Row(lead, words, money.percent(share.share()), share.note(), "");
    }

    // What it is like, and what was decided

    private Row link(Entry<Incident> other) {
        return new Row(
                other.fact().mark(),
                other.fact().title(),
                measures.shortDate(other.fact().at().day()),
                "",
                other.id().text());
    }

    private Row decided(IncidentPage page, Decided decided) {
        Decision decision = decided.decision().fact();
        String taken = decided.options().stream()
                .map(Entry::fact)
                .filter(DecisionOption::taken)
                .map(DecisionOption::name)
                .findFirst()
                .orElse("");
        List<String> under = new ArrayList<>();
        under.add(texts.get(page.incident().id().equals(decision.ledTo()) ? "incidents.led_to" : "incidents.answered"));
        under.add(
                decision.decided() == null
                        ? texts.get("incidents.undecided")
                        : texts.get("incidents.decided", decision.decidedBy(), taken));
        under.add(decision.outcome());
        under.removeIf(String::isBlank);
        return new Row(
                decision.mark(),
                decision.question(),
                measures.shortDate(decision.asked().day()),
                measures.row(under),
                "");
    }
}
