package witnessmark.launch.seasonsheet;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import witnessmark.cost.result.BarsBy;
import witnessmark.cost.result.SeasonSpan;
import witnessmark.logbook.money.SeasonPage;
import witnessmark.logbook.money.SeasonSheetFacts;
import witnessmark.report.SeasonSheet;
import witnessmark.report.SeasonSheet.Part;
import witnessmark.report.SeasonSheet.Section;
import witnessmark.wording.Measures;
import witnessmark.wording.Texts;

/**
 * Words a season for its pages: first what the season ledger shows, then every line a figure is made of, so that each
 * printed sum can be added up by hand from printed lines. The same facts always give the same sheet.
 */
public final class SeasonSheetWords implements Function<SeasonSheetFacts, SeasonSheet> {
    private final Texts texts;
    private final Measures measures;

    public SeasonSheetWords(Texts texts, Measures measures) {
        this.texts = texts;
        this.measures = measures;
    }

    @Override
    public SeasonSheet apply(SeasonSheetFacts facts) {
        SeasonInk ink = new SeasonInk(texts, measures, facts);
        return new SeasonSheet(
                title(ink, facts),
                facts.logbook(),
                ink.say("day", measures.date(facts.day())),
                ink.say("printed", measures.fullMoment(facts.printed())),
                facts.printed().instant(),
                ink.say("caution"),
                Stream.of(figures(ink, facts), new LinesPart(ink, facts).part())
                        .filter(part -> !part.sections().isEmpty())
                        .toList());
    }

    private static String title(SeasonInk ink, SeasonSheetFacts facts) {
        return ink.say("title", facts.page().cost().season().name());
    }

    private Part figures(SeasonInk ink, SeasonSheetFacts facts) {
        SeasonPage page = facts.page();
        List<Section> sections = new ArrayList<>();
        MoneySections money = new MoneySections(ink, facts);
        FailureSections failures = new FailureSections(ink, facts);
        BesideSections beside = new BesideSections(ink, page);
        sections.add(money.season());
        sections.add(failures.failures());
        for (BarsBy by : BarsBy.values()) {
            sections.add(new BarSection(ink, facts).by(by));
        }
        sections.add(new KindSections(ink, page).kinds());
        sections.add(new LifeSection(ink, facts).life());
        sections.add(new DecisionSection(ink, page).decisions());
        sections.add(failures.prevention());
        sections.add(new SettleSection(ink, page.settle()).settle());
        sections.add(beside.seasons());
        sections.add(money.rates());
        sections.add(money.noRate());
        sections.add(beside.budget());
        sections.removeIf(section -> section.rows().isEmpty() && section.notes().isEmpty());
        return new Part(title(ink, facts), board(ink, page), under(ink, facts), sections);
    }

    private String board(SeasonInk ink, SeasonPage page) {
        boolean empty = page.failures().isEmpty()
                && page.cost().spent().isNone()
                && page.cost().budget().isNone();
        return empty ? ink.say("board.empty") : ink.say("board", page.failures().size(), measures.money(page.total()));
    }

    private List<String> under(SeasonInk ink, SeasonSheetFacts facts) {
        SeasonPage page = facts.page();
        SeasonSpan season = page.cost().season();
        List<String> under = new ArrayList<>();
        under.add(ink.season()
                .finding(
                        page.costs(),
                        page.switches(),
                        page.cost(),
                        facts.bars().getOrDefault(BarsBy.PART_KIND, List.of()),
                        facts.facts()));
        under.add(ink.say(
                "under",
                facts.logbook(),
                ink.say("day", measures.date(facts.day())),
                measures.date(season.first()),
                measures.date(season.last()),
                page.total().currency().getCurrencyCode()));
        under.addAll(ink.season().notes(page.costs(), page.span(), page.switches(), page.cost()));
        ink.season().unwritten(facts.facts(), page.costs(), page.switches()).ifPresent(under::add);
        return under;
    }
}
