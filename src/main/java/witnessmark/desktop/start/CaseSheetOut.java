package witnessmark.desktop.start;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.domain.Incident;
import witnessmark.logbook.View;
import witnessmark.logbook.money.IncidentPage;
import witnessmark.logbook.money.SeeIncident;
import witnessmark.logbook.sharing.WriteCaseSheet;

/** Shares the incident in view, else the first of the list; first it shows the words that may go along. */
final class CaseSheetOut {
    private static final String NOT_IN_NAMES = "[^\\p{L}\\p{N}._-]+";

    private final StartContext context;
    private final Reports reports;
    private Supplier<Optional<Id<Incident>>> shown = Optional::empty;

    CaseSheetOut(StartContext context, Reports reports) {
        this.context = context;
        this.reports = reports;
    }

    /** Says which incident is in view. */
    void shown(Supplier<Optional<Id<Incident>>> incident) {
        shown = incident;
    }

    /** Shows what goes on the sheet of the incident in view; says so where there is none. */
    void ask() {
        View view = context.logbook().view();
        Optional<IncidentPage> page = shown.get().flatMap(id -> SeeIncident.of(view, id));
        if (page.isEmpty()) {
            List<IncidentPage> all = SeeIncident.all(view);
            page = all.isEmpty() ? Optional.empty() : Optional.of(all.get(0));
        }
        page.ifPresentOrElse(
                found -> reports.show(new CaseSheetPage(
                        context, view, found.incident(), asked -> out(found.incident(), asked), reports::dismiss)),
                () -> reports.say("casesheet.none"));
    }

    private void out(Entry<Incident> incident, WriteCaseSheet.Asked asked) {
        new FileOut(
                        context,
                        reports,
                        "casesheet",
                        ".pdf",
                        context.choosing()::caseSheetToWrite,
                        () -> file -> context.uses().caseSheet().write(context.logbook(), asked, file),
                        () -> incident.fact().mark().replaceAll(NOT_IN_NAMES, "-"))
                .writeOut();
    }
}
