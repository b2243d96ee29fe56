package witnessmark.launch.casesheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.CaseAction;
import witnessmark.domain.Cause;
import witnessmark.domain.CauseCall;
import witnessmark.domain.CauseTest;
import witnessmark.domain.Engine;
import witnessmark.domain.EngineDesign;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Finding;
import witnessmark.domain.Id;
import witnessmark.domain.Incident;
import witnessmark.domain.IncidentPart;
import witnessmark.domain.Part;
import witnessmark.domain.PartDesign;
import witnessmark.domain.Speaks;
import witnessmark.domain.Weighing;
import witnessmark.logbook.money.LifeThen;
import witnessmark.logbook.proof.Evidence;
import witnessmark.logbook.sharing.CaseSheetFacts;
import witnessmark.logbook.sharing.Unnamed;
import witnessmark.quantity.Moment;
import witnessmark.report.CaseSheet;
import witnessmark.report.SeasonSheet.Cell;
import witnessmark.report.SeasonSheet.Column;
import witnessmark.report.SeasonSheet.Row;
import witnessmark.report.SeasonSheet.Section;
import witnessmark.report.SeasonSheet.Weight;
import witnessmark.study.result.ProofOfCase;
import witnessmark.wording.CauseWords;
import witnessmark.wording.FindingWords;
import witnessmark.wording.Measures;
import witnessmark.wording.NameLetters;
import witnessmark.wording.ProofWords;
import witnessmark.wording.RecordWords;
import witnessmark.wording.Texts;

/**
 * Words an incident for somebody outside the team. What people typed stands on it only where that is wanted, but for what its
 * causes are called, and everything that stands on it has gone through {@link Unnamed}.
 */
public final class CaseSheetWords implements Function<CaseSheetFacts, CaseSheet> {
    private final Texts texts;
    private final Measures measures;
    private final RecordWords records;
    private final FindingWords findings;
    private final ProofWords proofs;
    private final CauseWords causes;
    private final NameLetters letters;

    public CaseSheetWords(Texts texts, Measures measures) {
        this.texts = texts;
        this.measures = measures;
        this.records = new RecordWords(texts);
        this.findings = new FindingWords(texts, measures);
        this.proofs = new ProofWords(texts, measures);
        this.causes = new CauseWords(texts, measures);
        this.letters = new NameLetters(texts);
    }

    @Override
    public CaseSheet apply(CaseSheetFacts facts) {
        Unnamed unnamed = new Unnamed(facts.view().facts(), letters::of);
        Incident incident = facts.page().incident().fact();
        List<Section> tables = new ArrayList<>(List.of(evidence(facts), causes(facts), tests(facts)));
        tables.addAll(List.of(parts(facts), actions(facts), proof(facts)));
        return new CaseSheet(
                texts.get("casesheet.title", incident.mark()),
                texts.get(facts.page().open() ? "casesheet.open" : "casesheet.closed"),
                without(unnamed, under(facts)),
                texts.get("casesheet.edge"),
                texts.get("casesheet.day", measures.date(facts.view().day())),
                texts.get("casesheet.printed", measures.fullMoment(facts.printed())),
                facts.printed().instant(),
                texts.get("casesheet.caution"),
                tables.stream()
                        .filter(table -> !table.rows().isEmpty())
                        .map(table -> without(unnamed, table))
                        .toList(),
                facts.photos().stream()
                        .map(photo -> new CaseSheet.Picture(
                                photo.jpeg(),
                                unnamed.of(facts.words() ? photo.photo().caption() : "")))
                        .toList(),
                notes(facts));
    }

    private List<String> notes(CaseSheetFacts facts) {
        String left = texts.get(facts.words() ? "casesheet.left.names" : "casesheet.left.words");
        return facts.undrawn() == 0 ? List.of(left) : List.of(left, texts.get("casesheet.undrawn", facts.undrawn()));
    }

    private static List<String> without(Unnamed unnamed, List<String> lines) {
        return lines.stream().map(unnamed::of).toList();
    }

    private static Section without(Unnamed unnamed, Section table) {
        return new Section(
                table.heading(),
                table.columns(),
                table.rows().stream()
                        .map(row -> new Row(
                                row.weight(),
                                row.cells().stream()
                                        .map(cell -> new Cell(without(unnamed, cell.lines()), cell.bar()))
                                        .toList()))
                        .toList(),
                without(unnamed, table.notes()));
    }

    private List<String> under(CaseSheetFacts facts) {
        Incident incident = facts.page().incident().fact();
        List<String> lines = new ArrayList<>();
        if (facts.words()) {
            lines.add(incident.title());
        }
        List<String> row = new ArrayList<>();
        row.add(measures.date(incident.at().day()));
        row.add(records.word(incident.found()));
        row.add(records.word(incident.severity()));
        design(facts.view().facts(), incident).ifPresent(row::add);
        lines.add(measures.row(row));
        if (facts.words() && !incident.seen().isBlank()) {
            lines.add(texts.get("casesheet.seen", incident.seen()));
        }
        return lines;
    }

    private static Optional<String> design(Facts facts, Incident incident) {
        return Optional.ofNullable(incident.engine())
                .flatMap(engine -> facts.of(Engine.class).find(engine))
                .flatMap(engine ->
                        facts.of(EngineDesign.class).find(engine.fact().design()))
                .map(design -> design.fact().name());
    }

    private Section evidence(CaseSheetFacts facts) {
        List<Row> rows = new ArrayList<>();
        for (Entry<Finding> entry : facts.seen().evidence().findings()) {
            Finding finding = entry.fact();
            String found = facts.words() ? findings.words(finding) : findings.untyped(finding);
            rows.add(row(
                    number(rows.size()),
                    findings.position(finding).orElseGet(() -> texts.get("casesheet.nowhere")),
                    found.isEmpty() ? texts.get("casesheet.typed") : found,
                    measures.shortDate(finding.at().day())));
        }
        return new Section(
                texts.get("casesheet.evidence"),
                List.of(
                        Column.mark(""),
                        Column.name(texts.get("casesheet.where"), 2),
                        Column.words(texts.get("casesheet.found"), 4),
                        Column.mark(texts.get("casesheet.on"))),
                rows,
                List.of());
    }

    private String number(int index) {
        return texts.get("casesheet.number", index + 1);
    }

    private Section causes(CaseSheetFacts facts) {
        List<Row> rows = new ArrayList<>();
        for (Entry<Cause> entry : facts.seen().evidence().causes()) {
            Cause cause = entry.fact();
            List<CauseCall> calls = facts.seen().evidence().calls().getOrDefault(entry.id(), List.of());
            List<String> said = new ArrayList<>();
            if (calls.isEmpty()) {
                said.add(texts.get("cases.state.none"));
            }
            calls.stream().map(call -> call(facts, call)).forEach(said::add);
            said.addAll(speaks(facts, entry.id()));
            rows.add(new Row(
                    Weight.LINE,
                    List.of(
                            Cell.of(records.label(records.word(cause.area()))),
                            Cell.of(cause.statement()),
                            new Cell(said, 0))));
        }
        return new Section(
                texts.get("casesheet.causes"),
                List.of(
                        Column.name(texts.get("casesheet.area"), 2),
                        Column.words(texts.get("casesheet.statement"), 3),
                        Column.words(texts.get("casesheet.call"), 4)),
                rows,
                List.of());
    }

    /** What is to be tried or measured, on which cause, by when; one whose day is past is late. */
    private Section tests(CaseSheetFacts facts) {
        List<Row> rows = new ArrayList<>();
        for (Entry<CauseTest> entry : facts.seen().tests()) {
            CauseTest test = entry.fact();
            Moment done = facts.seen().known(test.done());
            Facts all = facts.view().facts();
            CauseWords.Line line = causes.test(all, test, done, facts.view().day());
            List<Cell> cells = new ArrayList<>();
            cells.add(Cell.of(all.of(Cause.class).get(test.cause()).statement()));
            if (facts.words()) {
                cells.add(new Cell(done == null ? List.of(test.what()) : List.of(test.what(), test.found()), 0));
            }
            cells.add(Cell.of(
                    done != null || line.figure().isEmpty()
                            ? measures.row(filled(line.lead(), line.figure()))
                            : line.figure()));
            rows.add(new Row(Weight.LINE, cells));
        }
        return new Section(
                texts.get("casesheet.tests"),
                withWhat(
                        facts,
                        Column.name(texts.get("casesheet.test.on"), 3),
                        Column.words(texts.get("casesheet.test.when"), 2)),
                rows,
                List.of());
    }

    /** Between the first column and the last what was typed, where that is wanted; else there is no such column. */
    private List<Column> withWhat(CaseSheetFacts facts, Column first, Column last) {
        return facts.words()
                ? List.of(first, Column.words(texts.get("casesheet.what"), 4), last)
                : List.of(first, last);
    }

    private static List<String> filled(String... maybeEmpty) {
        return Stream.of(maybeEmpty).filter(each -> !each.isEmpty()).toList();
    }

    private String call(CaseSheetFacts facts, CauseCall call) {
        String said = texts.get(
                "casesheet.called",
                records.word(call.state()),
                records.word(call.sure()),
                measures.shortDate(call.at().day()));
        return facts.words() && !call.because().isBlank() ? texts.get("casesheet.because", said, call.because()) : said;
    }

    /** "speaks for it: F1, F3"; each with its reason where what was typed is wanted. */
    private List<String> speaks(CaseSheetFacts facts, Id<Cause> cause) {
        List<String> said = new ArrayList<>();
        Evidence evidence = facts.seen().evidence();
        for (Speaks how : Speaks.values()) {
            List<String> numbers = new ArrayList<>();
            List<String> reasons = new ArrayList<>();
            for (int i = 0; i < evidence.findings().size(); i++) {
                Weighing weighing = evidence.of(evidence.findings().get(i).id(), cause)
                        .map(Entry::fact)
                        .filter(each -> each.speaks() == how)
                        .orElse(null);
                if (weighing != null) {
                    numbers.add(number(i));
                    if (facts.words() && !weighing.why().isBlank()) {
                        reasons.add(texts.get("casesheet.because", number(i), weighing.why()));
                    }
                }
            }
            if (!numbers.isEmpty()) {
                said.add(texts.get("casesheet.speaks", records.label(records.word(how)), measures.row(numbers)));
                said.addAll(reasons);
            }
        }
        return said;
    }

    private Section parts(CaseSheetFacts facts) {
        List<Row> rows = new ArrayList<>();
        Facts all = facts.view().facts();
        for (int i = 0; i < facts.page().parts().size(); i++) {
            IncidentPart part = facts.page().parts().get(i).fact();
            Part named = all.of(Part.class).get(part.part());
            LifeThen.Ran ran = facts.ran().get(i);
            rows.add(row(
                    named.mark(),
                    records.word(all.of(PartDesign.class).get(named.design()).kind()),
                    facts.words() && !part.note().isBlank()
                            ? measures.row(List.of(records.word(part.harm()), part.note()))
                            : records.word(part.harm()),
                    ran.atLeast() ? measures.atLeast(measures.hours(ran.ran())) : measures.hours(ran.ran())));
        }
        return new Section(
                texts.get("casesheet.parts"),
                List.of(
                        Column.name(texts.get("casesheet.part"), 1),
                        Column.words(texts.get("casesheet.kind"), 2),
                        Column.words(texts.get("casesheet.harm"), 4),
                        Column.figure(texts.get("casesheet.ran"))),
                rows,
                List.of());
    }

    private Section actions(CaseSheetFacts facts) {
        List<Row> rows = new ArrayList<>();
        for (Entry<CaseAction> entry : facts.seen().actions()) {
            CaseAction action = entry.fact();
            Moment done = facts.seen().known(action.done());
            String kind = records.label(records.word(action.kind()));
            rows.add(facts.words() ? row(kind, action.what(), day(done)) : row(kind, day(done)));
        }
        return new Section(
                texts.get("casesheet.actions"),
                withWhat(facts, Column.name(texts.get("casesheet.kind"), 1), Column.mark(texts.get("casesheet.done"))),
                rows,
                List.of());
    }

    private String day(@Nullable Moment done) {
        return done == null ? texts.get("casesheet.notDone") : measures.shortDate(done.day());
    }

    private Section proof(CaseSheetFacts facts) {
        ProofOfCase proof = facts.seen().proof();
        List<String> said = new ArrayList<>(
                List.of(facts.words() ? proofs.headline(proof) : "", proofs.counts(proof), proofs.running(proof)));
        if (facts.words()) {
            proof.lines().forEach(line -> said.add(proofs.line(proof, line)));
        }
        said.add(0, texts.get("incidents.proof." + proof.state().name().toLowerCase(Locale.ROOT)));
        return new Section(
                texts.get("casesheet.proof"),
                List.of(Column.words("", 1)),
                said.stream()
                        .filter(line -> !line.isBlank())
                        .map(line -> row(line))
                        .toList(),
                List.of());
    }

    private static Row row(String... cells) {
        return new Row(
                Weight.LINE, List.of(cells).stream().map(cell -> Cell.of(cell)).toList());
    }
}
