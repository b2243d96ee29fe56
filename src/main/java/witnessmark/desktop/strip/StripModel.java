package witnessmark.desktop.strip;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import witnessmark.domain.Build;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Finding;
import witnessmark.domain.Id;
import witnessmark.logbook.View;
import witnessmark.logbook.strip.SeeStrip;
import witnessmark.logbook.strip.StripPage;
import witnessmark.study.result.FailureMode;
import witnessmark.study.result.StripCell;
import witnessmark.study.result.StripLine;
import witnessmark.study.result.StripReport;
import witnessmark.study.result.StripRow;
import witnessmark.wording.FindingWords;
import witnessmark.wording.Measures;
import witnessmark.wording.PromptWords;
import witnessmark.wording.RecordWords;
import witnessmark.wording.StripWords;
import witnessmark.wording.Texts;

/** What stands on the page of a strip, worked out from the logbook. */
final class StripModel {
    private final Texts texts;
    private final Measures measures;
    private final StripWords words;
    private final FindingWords findings;
    private final RecordWords records;
    private final PromptWords prompts;
    private final PartReading parts;

    StripModel(Texts texts, Measures measures) {
        this.texts = texts;
        this.measures = measures;
        this.words = new StripWords(texts, measures);
        this.findings = new FindingWords(texts, measures);
        this.records = new RecordWords(texts);
        this.prompts = new PromptWords(texts);
        this.parts = new PartReading(texts, words);
    }

    /**
     * The whole page.
     *
     * @param builds to choose from
     * @param build the one shown
     * @param headline what is said above the table
     * @param incidents of which something may be evidence, none first
     * @param readOnly whether nothing can be written
     */
    record Shown(
            List<StripChoice.Of> builds,
            StripChoice.Of build,
            String headline,
            StripLines lines,
            List<StripChoice.Of> incidents,
            boolean readOnly) {
        Shown {
            builds = List.copyOf(builds);
            incidents = List.copyOf(incidents);
        }
    }

    /** @param wanted the build asked for; where there is none such, the first. Empty where no engine was ever opened. */
    Optional<Shown> read(View view, String wanted) {
        List<Entry<Build>> builds = SeeStrip.builds(view);
        Optional<Entry<Build>> chosen = builds.stream()
                .filter(build -> build.id().text().equals(wanted))
                .findFirst()
                .or(() -> builds.stream().findFirst());
        return chosen.flatMap(build -> SeeStrip.of(view, build.id()))
                .map(page -> new Shown(
                        builds.stream().map(build -> choice(view, build)).toList(),
                        choice(view, page.report().build()),
                        String.join(" ", words.headline(page.report())),
                        lines(view, page),
                        incidents(page),
                        view.readOnly()));
    }

    private StripChoice.Of choice(View view, Entry<Build> build) {
        return new StripChoice.Of(
                build.id().text(),
                texts.get(
                        SeeStrip.open(view, build) ? "strip.page.build.open" : "strip.page.build.closed",
                        view.facts().of(Engine.class).get(build.fact().engine()).number(),
                        measures.number(build.fact().number()),
                        measures.date(build.fact().opened().day())));
    }

    private List<StripChoice.Of> incidents(StripPage page) {
        return Stream.concat(
                        Stream.of(new StripChoice.Of("", texts.get("strip.page.incident.none"))),
                        page.incidents().stream()
                                .map(each -> new StripChoice.Of(
                                        each.id().text(),
                                        texts.get(
                                                "strip.page.incident",
                                                each.fact().mark(),
                                                measures.date(each.fact().at().day())))))
                .toList();
    }

    private StripLines lines(View view, StripPage page) {
        StripReport report = page.report();
        List<String> heads = new ArrayList<>(List.of(texts.get("strip.page.all")));
        IntStream.rangeClosed(1, report.numbers()).forEach(number -> heads.add(measures.number(number)));
        List<StripLines.Row> rows = new ArrayList<>();
        StripLine.Area area = null;
        for (StripRow row : report.rows()) {
            rows.add(row(
                    view,
                    page,
                    row,
                    row.line().area() == area ? "" : words.area(row.line().area())));
            area = row.line().area();
        }
        return new StripLines(heads, rows, String.join(" ", words.headline(report)));
    }

    private StripLines.Row row(View view, StripPage page, StripRow row, String area) {
        return new StripLines.Row(
                row.line(),
                area,
                new StripLines.Title(words.line(row.line()), note(row)),
                new StripLines.Title(
                        findings.place(row.line()),
                        Stream.of(findings.side(row.line()), note(row))
                                .filter(each -> !each.isEmpty())
                                .collect(Collectors.joining(", "))),
                Stream.concat(Stream.of(row.whole()), row.cells().stream())
                        .map(cell -> cell(view, page, row, cell))
                        .toList());
    }

    private String note(StripRow row) {
        return Stream.of(words.brief(row), words.partBriefly(row))
                .flatMap(Optional::stream)
                .collect(Collectors.joining(". "));
    }

    private StripLines.Cell cell(View view, StripPage page, StripRow row, StripCell cell) {
        return new StripLines.Cell(
                cell.number(),
                cell.furthestFirst().stream()
                        .map(finding -> seen(view, row, cell, finding))
                        .toList(),
                cell.worse(),
                parts.of(row, cell, null, finding -> findings.build(view.facts(), finding)),
                said(view, page, row, cell));
    }

    private StripLines.Seen seen(View view, StripRow row, StripCell cell, Entry<Finding> finding) {
        Finding seen = finding.fact();
        return new StripLines.Seen(
                finding.id(),
                findings.words(seen),
                seen.how(),
                seen.mark(),
                seen.mark() == null ? texts.get("strip.page.words") : records.word(seen.mark()),
                row.line().beyondSide(seen.spot()),
                seen.words(),
                seen.incident() == null ? "" : seen.incident().text(),
                parts.of(row, cell, finding, each -> findings.build(view.facts(), each)));
    }

    /** Where, what was found, what was there before, on which part, what stands out, and what the trade asks then. */
    private List<String> said(View view, StripPage page, StripRow row, StripCell cell) {
        List<String> said = new ArrayList<>();
        said.add(words.position(row.line(), cell.number()));
        cell.found().forEach(finding -> said.add(found(page, finding)));
        if (cell.found().isEmpty()) {
            said.add(texts.get("strip.page.untouched"));
        }
        words.before(view.facts(), cell).ifPresent(said::add);
        words.part(row).ifPresent(said::add);
        words.pattern(row).ifPresent(said::add);
        Arrays.stream(FailureMode.values())
                .filter(mode -> cell.found().stream().map(Entry::fact).anyMatch(mode::shownBy))
                .forEach(mode -> said.add(
                        texts.get("strip.page.asked", prompts.name(mode), String.join(" ", prompts.ask(mode)))));
        return said;
    }

    private String found(StripPage page, Entry<Finding> finding) {
        Id<Finding> id = finding.id();
        long photos = page.photos().getOrDefault(id, 0L);
        String seen = texts.get(
                "strip.page.found",
                findings.words(finding.fact()),
                measures.shortDate(finding.fact().at().day()),
                finding.fact().by());
        return photos == 0 ? seen : texts.get("strip.page.photos", seen, photos);
    }
}
