package witnessmark.desktop.start;

import java.util.Optional;
import java.util.function.Supplier;
import witnessmark.domain.Engine;
import witnessmark.domain.Id;
import witnessmark.logbook.View;
import witnessmark.logbook.sharing.WriteTags;

/** Writes tags for the parts of the engine in view; where none is, of the one that failed last or is apart. */
final class TagsOut {
    private static final String NOT_IN_NAMES = "[^\\p{L}\\p{N}._-]+";

    private final StartContext context;
    private final Reports reports;
    private Supplier<Optional<Id<Engine>>> shown = Optional::empty;

    TagsOut(StartContext context, Reports reports) {
        this.context = context;
        this.reports = reports;
    }

    /** Says which engine is in view. */
    void shown(Supplier<Optional<Id<Engine>>> engine) {
        shown = engine;
    }

    /** Asks where to, and writes them; says so where there is no engine to take. */
    void writeOut() {
        View view = context.logbook().view();
        shown.get()
                .or(() -> WriteTags.usual(view))
                .ifPresentOrElse(engine -> out(view, engine).writeOut(), () -> reports.say("tags.none"));
    }

    private FileOut out(View view, Id<Engine> engine) {
        return new FileOut(
                context,
                reports,
                "tags",
                ".pdf",
                context.choosing()::tagsToWrite,
                () -> file -> context.uses().tags().write(context.logbook(), engine, file),
                () -> view.facts().of(Engine.class).get(engine).number().replaceAll(NOT_IN_NAMES, "-"));
    }
}
