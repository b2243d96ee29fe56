package witnessmark.desktop.start;

import java.util.Optional;
import java.util.function.Supplier;
import witnessmark.domain.Build;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.logbook.View;
import witnessmark.logbook.measuring.SeeBuildSheet;

/** Writes the build sheet on the bench as pages to print; where nobody was there yet, the one that comes up first. */
final class BuildSheetOut {
    private static final String NOT_IN_NAMES = "[^\\p{L}\\p{N}._-]+";

    private final StartContext context;
    private final Reports reports;
    private Supplier<Optional<Id<Build>>> shown = Optional::empty;

    BuildSheetOut(StartContext context, Reports reports) {
        this.context = context;
        this.reports = reports;
    }

    /** Says which build is on the bench. */
    void shown(Supplier<Optional<Id<Build>>> build) {
        shown = build;
    }

    /** Asks where to, and writes the sheet that is shown by then; says so where there is none. */
    void writeOut() {
        View view = context.logbook().view();
        shown.get()
                .flatMap(id -> view.facts().of(Build.class).find(id))
                .or(() -> SeeBuildSheet.all(view).stream().findFirst())
                .ifPresentOrElse(build -> out(view, build).writeOut(), () -> reports.say("buildsheet.none"));
    }

    private FileOut out(View view, Entry<Build> build) {
        return new FileOut(
                context,
                reports,
                "buildsheet",
                ".pdf",
                context.choosing()::buildSheetToWrite,
                () -> file -> context.uses().buildSheet().write(context.logbook(), build.id(), file),
                () -> name(view, build.fact()));
    }

    /** {@code K05-3}, of what any system takes in the name of a file. */
    static String name(View view, Build build) {
        String engine = view.facts().of(Engine.class).get(build.engine()).number();
        return engine.replaceAll(NOT_IN_NAMES, "-") + "-" + build.number();
    }
}
