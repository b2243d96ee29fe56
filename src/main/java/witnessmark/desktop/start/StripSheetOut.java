package witnessmark.desktop.start;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import witnessmark.domain.Build;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.logbook.View;
import witnessmark.logbook.strip.SeeStrip;

/** Writes the report of the strip on the bench as pages to print; where nobody was there yet, of the engine that is apart or was last. */
final class StripSheetOut {
    private final StartContext context;
    private final Reports reports;
    private Supplier<Optional<Id<Build>>> shown = Optional::empty;

    StripSheetOut(StartContext context, Reports reports) {
        this.context = context;
        this.reports = reports;
    }

    /** Says of which build the strip is on the bench. */
    void shown(Supplier<Optional<Id<Build>>> build) {
        shown = build;
    }

    /** Asks where to, and writes the report that is shown by then; says so where there is none. */
    void writeOut() {
        View view = context.logbook().view();
        List<Entry<Build>> all = SeeStrip.builds(view);
        shown.get()
                .flatMap(id ->
                        all.stream().filter(build -> build.id().equals(id)).findFirst())
                .or(() -> all.stream().findFirst())
                .ifPresentOrElse(build -> out(view, build).writeOut(), () -> reports.say("stripsheet.none"));
    }

    private FileOut out(View view, Entry<Build> build) {
        return new FileOut(
                context,
                reports,
                "stripsheet",
                ".pdf",
                context.choosing()::stripSheetToWrite,
                () -> file -> context.uses().stripSheet().write(context.logbook(), build.id(), file),
                () -> BuildSheetOut.name(view, build.fact()));
    }
}
