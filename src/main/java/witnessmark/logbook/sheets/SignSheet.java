package witnessmark.logbook.sheets;

import static witnessmark.logbook.sheets.SheetField.choice;
import static witnessmark.logbook.sheets.SheetField.of;
import static witnessmark.logbook.sheets.SheetField.text;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Build;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.domain.SignOff;
import witnessmark.logbook.measuring.SeeBuildSheet;
import witnessmark.logbook.measuring.SheetPage;
import witnessmark.logbook.measuring.SignBuildSheet;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Moment;

/**
 * Signs a build sheet as it stands: every check is kept with it. What is outside can be signed; a lesson that is not met has
 * to be accepted first. It says that somebody looked and signed; never that an
 * engine may run.
 */
public final class SignSheet implements LogSheet {
    public static final SheetField BUILD = choice("signed_build", 2);
    public static final SheetField WHEN = of("when", FieldKind.DAY);
    public static final SheetField WHEN_TIME = of("when_time", FieldKind.CLOCK);
    public static final SheetField BY = text("signed_by", 2);
    public static final SheetField SECOND = text("second_eyes", 2);
    public static final SheetField WORDS = text("signed_words", 4);

    @Override
    public String key() {
        return "sign_sheet";
    }

    @Override
    public List<SheetGroup> groups() {
        return List.of(
                SheetGroup.of("sign_sheet", List.of(BUILD, WHEN, WHEN_TIME), List.of(BY, SECOND), List.of(WORDS)));
    }

    @Override
    public Map<SheetField, String> fresh(SheetSight sight) {
        return Map.of(WHEN, sight.today().toString(), BY, sight.who());
    }

    @Override
    public List<Choice> choices(SheetField field, SheetTyped typed, SheetSight sight) {
        return field.equals(BUILD)
                ? SeeBuildSheet.all(sight.view()).stream()
                        .map(build -> Choice.of(build.id().text(), name(sight, build.fact())))
                        .toList()
                : List.of();
    }

    private static SheetNote name(SheetSight sight, Build build) {
        return SheetNote.of(
                "of_build", sight.facts().of(Engine.class).get(build.engine()).number(), build.number());
    }

    @Override
    public void read(ReadSheet in) {
        @Nullable Entry<Build> build = in.chosen(BUILD, Build.class);
        Moment when = new ReadValues(in).moment(WHEN, WHEN_TIME);
        String by = in.needed(BY);
        in.note(SECOND, SheetNote.of("second_empty"));
        SheetPage page = build == null
                ? null
                : SeeBuildSheet.of(in.sight().view(), build.id()).orElse(null);
        if (page != null) {
            open(in, page);
        }
        if (page != null && when != null) {
            Lessons.stop(in, BUILD, page, when);
        }
        if (page == null || when == null || !in.fine()) {
            return;
        }
        Id<SignOff> signed = in.make(BY, new SignOff(page.build().id(), when, by, in.text(SECOND), in.text(WORDS)));
        SignBuildSheet.checks(page, signed).forEach(check -> in.make(BUILD, check));
    }

    /** Says first what is outside or not measured and that nobody accepted: it can be signed all the same. */
    private static void open(ReadSheet in, SheetPage page) {
        List<Object> kinds = page.leftOpen().stream()
                .map(check -> (Object) check.place().kind())
                .distinct()
                .toList();
        if (kinds.isEmpty()) {
            in.note(BUILD, SheetNote.of("nothing_open"));
        } else {
            in.wrong(BUILD, ProblemKind.SHEET_LEFT_OPEN, page.leftOpen().size(), new Choice("", kinds));
        }
    }

    @Override
    public List<String> about(SheetTyped typed, SheetSight sight) {
        Optional<Entry<Build>> build = sight.find(Build.class, typed.text(BUILD));
        return List.of(
                build.map(entry -> sight.name(Engine.class, entry.fact().engine()))
                        .orElse(""),
                build.map(entry -> String.valueOf(entry.fact().number())).orElse(""));
    }
}
