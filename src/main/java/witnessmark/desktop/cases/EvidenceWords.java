package witnessmark.desktop.cases;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import witnessmark.domain.Cause;
import witnessmark.domain.CauseCall;
import witnessmark.domain.CauseTest;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Finding;
import witnessmark.domain.Id;
import witnessmark.domain.Speaks;
import witnessmark.domain.Weighing;
import witnessmark.logbook.proof.CaseSeen;
import witnessmark.logbook.proof.Evidence;
import witnessmark.wording.CauseWords;
import witnessmark.wording.FindingWords;
import witnessmark.wording.Measures;
import witnessmark.wording.MoneyWords;
import witnessmark.wording.RecordWords;
import witnessmark.wording.Texts;

/** Words findings and causes for their table. */
final class EvidenceWords {
    private final Texts texts;
    private final Measures measures;
    private final RecordWords records;
    private final FindingWords findings;
    private final MoneyWords money;
    private final CauseWords causes;

    EvidenceWords(Texts texts, Measures measures) {
        this.texts = texts;
        this.measures = measures;
        this.records = new RecordWords(texts);
        this.findings = new FindingWords(texts, measures);
        this.money = new MoneyWords(texts, measures);
        this.causes = new CauseWords(texts, measures);
    }

    EvidenceLines lines(Facts facts, CaseSeen seen) {
        Evidence evidence = seen.evidence();
        List<EvidenceLines.Head> heads = new ArrayList<>();
        for (int i = 0; i < evidence.causes().size(); i++) {
            heads.add(head(i + 1, evidence.causes().get(i), seen));
        }
        List<EvidenceLines.Row> rows = evidence.findings().stream()
                .map(finding -> row(facts, finding, evidence))
                .toList();
        return new EvidenceLines(heads, rows, said(heads, rows));
    }

    /** "7 findings against 3 causes. 1, oil surge once more, ruled out: 0 for, 3 against." */
    private String said(List<EvidenceLines.Head> heads, List<EvidenceLines.Row> rows) {
        List<String> all = new ArrayList<>();
        all.add(texts.get("cases.evidence.said", rows.size(), heads.size()));
        for (int i = 0; i < heads.size(); i++) {
            int at = i;
            EvidenceLines.Head head = heads.get(i);
            all.add(texts.get(
                    "cases.evidence.said.cause",
                    head.number(),
                    head.statement(),
                    head.stateWord(),
                    rows.stream().filter(row -> weight(row.cells().get(at)) > 0).count(),
                    rows.stream().filter(row -> weight(row.cells().get(at)) < 0).count()));
        }
        return String.join(" ", all);
    }

    private static int weight(EvidenceLines.Cell cell) {
        return cell.speaks() == null ? 0 : cell.speaks().weight();
    }

    private EvidenceLines.Head head(int number, Entry<Cause> entry, CaseSeen seen) {
        Cause cause = entry.fact();
        CauseCall call = seen.evidence().call(entry.id());
        List<CauseTest> tests = seen.tests().stream()
                .map(Entry::fact)
                .filter(test -> test.cause().equals(entry.id()))
                .toList();
        List<CauseTest> open =
                tests.stream().filter(test -> seen.known(test.done()) == null).toList();
        String key = call == null ? "none" : call.state().name().toLowerCase(Locale.ROOT);
        LocalDate today = seen.until().day();
        LocalDate due = open.stream()
                .map(CauseTest::due)
                .flatMap(day -> Optional.ofNullable(day).stream())
                .min(Comparator.naturalOrder())
                .orElse(null);
        return new EvidenceLines.Head(
                entry.id(),
                Integer.toString(number),
                cause.statement(),
                call == null ? null : call.state(),
                texts.get("cases.state." + key),
                texts.get("cases.state.short." + key),
                cause.share() == null ? texts.get("cases.no_share") : money.percent(cause.share()),
                call == null ? texts.get("cases.not_called") : records.word(call.sure()),
                call == null ? "" : measures.shortDate(call.at().day()),
                tests.isEmpty() ? texts.get("cases.no_test") : texts.get("cases.tests", open.size()),
                causes.due(due, today),
                causes.dueShort(due, today),
                called(number, cause, seen.evidence(), entry.id()),
                tested(number, cause, seen, tests));
    }

    /** {@code 2, debris: contributing, seen, 25 Jun: cooler full of flakes. Before that open, guess, 18 Jun: as in April}. */
    private String called(int number, Cause cause, Evidence evidence, Id<Cause> id) {
        List<String> calls = causes.calls(evidence.calls().getOrDefault(id, List.of()));
        return texts.get(
                "cases.called",
                Integer.toString(number),
                cause.statement(),
                calls.isEmpty() ? texts.get("cases.state.none") : String.join("; ", calls));
    }

    private String tested(int number, Cause cause, CaseSeen seen, List<CauseTest> tests) {
        List<String> said = tests.stream()
                .map(test -> seen.known(test.done()) == null
                        ? texts.get(
                                "cases.test.open",
                                measures.row(Stream.of(
                                                test.what(),
                                                causes.due(
                                                        test.due(), seen.until().day()))
                                        .filter(each -> !each.isEmpty())
                                        .toList()))
                        : texts.get("cases.test.done", test.what(), test.found()))
                .toList();
        return texts.get(
                "cases.called",
                Integer.toString(number),
                cause.statement(),
                said.isEmpty() ? texts.get("cases.no_test.said") : String.join("; ", said));
    }

    private EvidenceLines.Row row(Facts facts, Entry<Finding> entry, Evidence evidence) {
        Finding finding = entry.fact();
        return new EvidenceLines.Row(
                entry.id(),
                findings.lead(finding),
                findings.words(finding),
                measures.shortDate(finding.at().day()),
                findings.whole(facts, finding),
                IntStream.range(0, evidence.causes().size())
                        .mapToObj(i -> cell(
                                finding,
                                i + 1,
                                evidence.causes().get(i).fact(),
                                evidence.of(entry.id(), evidence.causes().get(i).id())))
                        .toList());
    }

    private EvidenceLines.Cell cell(Finding finding, int number, Cause cause, Optional<Entry<Weighing>> weighing) {
        if (weighing.isEmpty()) {
            return new EvidenceLines.Cell(null, "", "", causes.unweighed(finding, number, cause));
        }
        Weighing said = weighing.get().fact();
        return new EvidenceLines.Cell(
                said.speaks(),
                texts.get("cases.word." + sign(said.speaks())),
                said.why(),
                causes.says(finding, number, cause, said));
    }

    private static String sign(Speaks speaks) {
        return speaks.weight() > 0 ? "for" : speaks.weight() < 0 ? "against" : "neither";
    }
}
