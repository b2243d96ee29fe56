package witnessmark.desktop.start;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import witnessmark.desktop.task.Latest;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.domain.Incident;
import witnessmark.logbook.View;
import witnessmark.logbook.money.IncidentPage;
import witnessmark.logbook.money.SeeIncident;
import witnessmark.logbook.sharing.TypedWords;
import witnessmark.logbook.sharing.Unnamed;
import witnessmark.logbook.sharing.WriteCaseSheet;
import witnessmark.wording.NameLetters;

/** Shares the incident in view, else the first of the list; first it shows the words that may go along. */
final class CaseSheetOut {
    private static final String NOT_IN_NAMES = "[^\\p{L}\\p{N}._-]+";

    private final StartContext context;
    private final Reports reports;
    private final Latest reading;
    private Supplier<Optional<Id<Incident>>> shown = Optional::empty;

    /** An incident and what stands on its sheet as typed, names taken out. */
    private record Read(List<Entry<Incident>> all, Entry<Incident> incident, CaseSheetPage.Typed typed) {}

    CaseSheetOut(StartContext context, Reports reports) {
        this.context = context;
        this.reports = reports;
        this.reading = new Latest(context.tasks());
    }

    /** Says which incident is in view. */
    void shown(Supplier<Optional<Id<Incident>>> incident) {
        shown = incident;
    }

    /** Shows what goes on the sheet of the incident in view; says so where there is none. */
    void ask() {
        ask(shown.get(), false, true);
    }

    private void ask(Optional<Id<Incident>> asked, boolean words, boolean photos) {
        reading.run(
                reports.texts().get("casesheet.reading"),
                () -> read(asked),
                found -> found.ifPresentOrElse(read -> show(read, words, photos), () -> reports.say("casesheet.none")),
                reports::failed);
    }

    private Optional<Read> read(Optional<Id<Incident>> asked) {
        View view = context.logbook().view();
        List<IncidentPage> all = SeeIncident.all(view);
        return asked.flatMap(id -> SeeIncident.of(view, id))
                .or(() -> all.stream().findFirst())
                .map(IncidentPage::incident)
                .map(incident -> {
                    Unnamed unnamed = new Unnamed(view.facts(), new NameLetters(reports.texts())::of);
                    return new Read(
                            all.stream().map(IncidentPage::incident).toList(),
                            incident,
                            new CaseSheetPage.Typed(
                                    unnamed(unnamed, TypedWords.always(view, incident)),
                                    unnamed(unnamed, TypedWords.of(view, incident))));
                });
    }

    private static List<String> unnamed(Unnamed unnamed, List<String> typed) {
        return typed.stream().map(unnamed::of).toList();
    }

    private void show(Read read, boolean words, boolean photos) {
        Entry<Incident> incident = read.incident();
        reports.show(new CaseSheetPage(
                reports.texts(),
                read.all(),
                incident,
                read.typed(),
                new WriteCaseSheet.Asked(incident.id(), words, photos),
                new CaseSheetPage.Asked() {
                    @Override
                    public void another(WriteCaseSheet.Asked instead) {
                        ask(Optional.of(instead.incident()), instead.words(), instead.photos());
                    }

                    @Override
                    public void out(WriteCaseSheet.Asked asked) {
                        CaseSheetOut.this.out(incident, asked);
                    }

                    @Override
                    public void leave() {
                        reports.dismiss();
                    }
                }));
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
