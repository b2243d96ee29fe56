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
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Moment;

/** Closes an open build: when, and who signed it. */
public final class CloseBuild implements LogSheet {
    public static final SheetField BUILD = choice("open_build", 1);
    public static final SheetField CLOSED = of("build_closed", FieldKind.DAY);
    public static final SheetField CLOSED_TIME = of("build_closed_time", FieldKind.CLOCK);
    public static final SheetField SIGNED = text("build_signed", 1);
    public static final SheetField NOTE = text("close_note", 4);

    @Override
    public String key() {
        return "close_build";
    }

    @Override
    public List<SheetGroup> groups() {
        return List.of(SheetGroup.of("close_build", List.of(BUILD, CLOSED, CLOSED_TIME, SIGNED), List.of(NOTE)));
    }

    @Override
    public Map<SheetField, String> fresh(SheetSight sight) {
        List<Entry<Build>> open = open(sight);
        return Map.of(
                BUILD,
                open.size() == 1 ? open.get(0).id().text() : "",
                CLOSED,
                sight.today().toString());
    }

    @Override
    public Map<SheetField, String> picksFor(Id<Engine> engine, SheetSight sight) {
        return open(sight).stream()
                .filter(build -> build.fact().engine().equals(engine))
                .reduce((earlier, later) -> later)
                .map(build -> Map.of(BUILD, build.id().text()))
                .orElse(Map.of());
    }

    @Override
    public List<Choice> choices(SheetField field, SheetTyped typed, SheetSight sight) {
        return field.equals(BUILD)
                ? open(sight).stream()
                        .map(build -> Choice.of(
                                build.id().text(),
                                SheetNote.of(
                                        "build_opened",
                                        sight.name(Engine.class, build.fact().engine()),
                                        build.fact().number(),
                                        build.fact().opened())))
                        .toList()
                : List.of();
    }

    @Override
    public void read(ReadSheet in) {
        if (open(in.sight()).isEmpty()) {
            in.note(BUILD, SheetNote.of("no_build_open"));
        }
        @Nullable Entry<Build> build = in.chosen(BUILD, Build.class);
        Moment closed = new ReadValues(in).moment(CLOSED, CLOSED_TIME);
        in.note(SIGNED, SheetNote.of("nothing_signed"));
        if (build == null || closed == null) {
            return;
        }
        in.note(BUILD, SheetNote.of("build_opened", build.fact().opened()));
        if (closed.isBefore(build.fact().opened())) {
            in.wrong(
                    CLOSED,
                    ProblemKind.ENDS_BEFORE_IT_BEGINS,
                    in.sight().name(Engine.class, build.fact().engine()),
                    build.fact().opened(),
                    closed);
        }
        if (!in.text(SIGNED).isEmpty()) {
            Lessons.stop(in, SIGNED, build.id(), closed);
        }
        if (in.fine()) {
            in.change(CLOSED, build, closed(build.fact(), closed, in.text(SIGNED), in.text(NOTE)));
        }
    }

    /** What was written when it was opened stays, where nothing else is said. */
    private static Build closed(Build build, Moment closed, String signed, String note) {
        String both = build.note().isEmpty() || note.isEmpty() ? build.note() + note : build.note() + "; " + note;
        return new Build(
                build.engine(),
                build.number(),
                build.zones(),
                build.opened(),
                closed,
                signed.isEmpty() ? build.signedBy() : signed,
                both);
    }

    @Override
    public List<String> about(SheetTyped typed, SheetSight sight) {
        Optional<Build> build = sight.find(Build.class, typed.text(BUILD)).map(Entry::fact);
        return List.of(
                build.map(each -> sight.name(Engine.class, each.engine())).orElse(""),
                build.map(Build::knownAs).orElse(""));
    }

    private static List<Entry<Build>> open(SheetSight sight) {
        return sight.facts().of(Build.class).where(build -> build.closed() == null);
    }
}
