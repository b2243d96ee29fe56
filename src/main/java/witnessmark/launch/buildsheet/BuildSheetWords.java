package witnessmark.launch.buildsheet;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Build;
import witnessmark.domain.SignOff;
import witnessmark.logbook.measuring.BuildSheetFacts;
import witnessmark.logbook.measuring.SheetPage;
import witnessmark.report.BuildSheet;
import witnessmark.report.BuildSheet.ByHand;
import witnessmark.wording.BuildWords;
import witnessmark.wording.FitWords;
import witnessmark.wording.Measures;
import witnessmark.wording.Texts;

/**
 * Words a build sheet for its pages: what it comes to, every figure in measuring order with room to write where there is
 * none, then how they stand. The same facts always give the same sheet.
 */
public final class BuildSheetWords implements Function<BuildSheetFacts, BuildSheet> {
    private final Texts texts;
    private final Measures measures;
    private final FitWords fit;
    private final BuildWords builds;
    private final FigureBoxes boxes;
    private final StandsWords stands;
    private final AskedWords lessons;

    public BuildSheetWords(Texts texts, Measures measures) {
        this.texts = texts;
        this.measures = measures;
        this.fit = new FitWords(texts, measures);
        this.builds = new BuildWords(texts, measures);
        this.boxes = new FigureBoxes(texts, measures);
        this.stands = new StandsWords(texts, measures);
        this.lessons = new AskedWords(texts, measures);
    }

    @Override
    public BuildSheet apply(BuildSheetFacts facts) {
        SheetPage page = facts.page();
        return new BuildSheet(
                texts.get(
                        "buildsheet.title",
                        builds.name(page.engine().fact(), page.build().fact())),
                page.design().name(),
                under(facts),
                facts.logbook(),
                texts.get("buildsheet.day", measures.date(facts.day())),
                texts.get("buildsheet.printed", measures.fullMoment(facts.printed())),
                facts.printed().instant(),
                texts.get("buildsheet.caution", texts.get("fit.caution.computed"), texts.get("fit.caution.fasteners")),
                lessons.of(facts.book(), page.lessons()),
                lessons.byHand(facts.book(), page.lessons()),
                boxes.measured(page, facts.tools()),
                page.figures().isEmpty() ? null : stands.of(page, boxes.workedOut(page)),
                isToSign(facts) ? toSign() : null);
    }

    private List<String> under(BuildSheetFacts facts) {
        SheetPage page = facts.page();
        Build build = page.build().fact();
        @Nullable SignOff signed = page.signed() == null ? null : page.signed().fact();
        List<String> under = new ArrayList<>();
        under.add(fit.headline(page.counts()));
        page.contradictions().forEach(found -> under.add(fit.contradiction(found)));
        if (page.strongerLink() != null) {
            under.add(fit.strongerLink(page.strongerLink()));
        }
        if (page.figures().isEmpty()) {
            under.add(texts.get("buildsheet.blank"));
        }
        String opened = measures.date(build.opened().day());
        under.add(
                facts.open() || build.closed() == null
                        ? texts.get("buildsheet.open", opened)
                        : texts.get(
                                "buildsheet.closed",
                                opened,
                                measures.date(build.closed().day())));
        if (!build.note().isBlank()) {
            under.add(build.note());
        }
        under.add(builds.signed(signed, build));
        if (signed != null && !signed.words().isBlank()) {
            under.add(signed.words());
        }
        under.add(texts.get("buildsheet.boxes"));
        return under;
    }

    /** What somebody closed under his name before sheets were signed here is not signed again on paper. */
    private static boolean isToSign(BuildSheetFacts facts) {
        return facts.page().signed() == null
                && (facts.open() || facts.page().build().fact().signedBy().isBlank());
    }

    private ByHand toSign() {
        return new ByHand(
                List.of(
                        texts.get("buildsheet.hand.signed"),
                        texts.get("buildsheet.hand.second"),
                        texts.get("buildsheet.hand.day")),
                texts.get("buildsheet.hand.note"));
    }
}
