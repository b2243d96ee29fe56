package witnessmark.desktop.incidents;

import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.swing.JButton;
import javax.swing.JComponent;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import witnessmark.desktop.cases.CaseDoing;
import witnessmark.desktop.cases.CaseView;
import witnessmark.desktop.form.Buttons;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.form.SheetTools;
import witnessmark.desktop.photos.PhotoStrip;
import witnessmark.desktop.shell.Desk;
import witnessmark.desktop.shell.ListInView;
import witnessmark.desktop.shell.Place;
import witnessmark.desktop.shell.PlaceId;
import witnessmark.desktop.task.Latest;
import witnessmark.domain.Engine;
import witnessmark.domain.Id;
import witnessmark.domain.Incident;
import witnessmark.logbook.View;
import witnessmark.logbook.money.SeeIncident;
import witnessmark.logbook.photos.PhotosOf;
import witnessmark.logbook.proof.SeeCase;
import witnessmark.logbook.proof.WeighFinding;
import witnessmark.wording.Measures;
import witnessmark.wording.Texts;

/** Incidents: reads the list and the one in hand off the event thread and shows them. */
public final class IncidentsPlace implements Place {
    private static final Logger LOG = LoggerFactory.getLogger(IncidentsPlace.class);

    private final Texts texts;
    private final Supplier<View> view;
    private final IncidentsModel model;
    private final Latest reading;
    private final Latest readingPage;
    private final IncidentsPanel panel;
    private final JButton again;
    private final ListInView list;
    private Consumer<@Nullable PhotosOf> photos = of -> {};

    /**
     * @param window the window's desk
     * @param view the logbook as of the day looked at; asked off the event thread
     * @param asked what the page leads to
     * @param weigh writes how findings speak
     * @param undo takes back what was written last
     */
    public IncidentsPlace(
            SheetTools tools,
            Measures measures,
            Desk window,
            Supplier<View> view,
            IncidentsAsked asked,
            WeighFinding weigh,
            Runnable undo) {
        this.texts = tools.texts();
        this.view = view;
        this.model = new IncidentsModel(texts, measures);
        this.reading = new Latest(tools.tasks());
        this.readingPage = new Latest(tools.tasks());
        CaseView cases =
                new CaseView(new CaseDoing(tools, measures, window, view, weigh, undo, asked.write(), asked.correct()));
        this.panel = new IncidentsPanel(tools, asked, cases);
        this.list = new ListInView(
                window, PlaceId.INCIDENTS, tools.tasks(), panel.table().sheet()::select);
        this.again = Buttons.plain(Caption.of(texts.get("incidents.again")), this::refresh);
        panel.table().sheet().onSelect(this::chosen);
    }

    /** The incident in hand, whether or not this place is in view. */
    public Optional<Id<Incident>> shown() {
        IncidentLine line = panel.table().sheet().selected();
        return line == null ? Optional.empty() : Optional.of(Id.parse(line.id()));
    }

    /** The engine of the incident in hand, while this place is in view. */
    public Optional<Id<Engine>> engineInView() {
        IncidentLine line = panel.isShowing() ? panel.table().sheet().selected() : null;
        return line == null || line.engine().isEmpty() ? Optional.empty() : Optional.of(Id.parse(line.engine()));
    }

    /** Puts the photos of the incident in hand on its page. */
    public void with(PhotoStrip strip) {
        panel.view().with(strip);
        photos = strip::show;
    }

    @Override
    public PlaceId id() {
        return PlaceId.INCIDENTS;
    }

    @Override
    public JComponent component() {
        return panel;
    }

    @Override
    public JComponent firstFocus() {
        return panel.firstFocus();
    }

    @Override
    public void refresh() {
        reading.run(
                texts.get("incidents.reading"),
                () -> {
                    View now = view.get();
                    return model.lines(now, SeeIncident.all(now));
                },
                this::show,
                this::failed);
    }

    @Override
    public void recount() {
        list.recount(texts.get("incidents.reading"), () -> SeeIncident.open(view.get()));
    }

    /** Brings an incident into view. */
    @Override
    public void open(String record) {
        list.open(record);
    }

    private void show(IncidentsLines lines) {
        panel.show(lines);
        list.shown(lines.day(), lines.open());
        chosen(panel.table().sheet().selected());
    }

    private void chosen(@Nullable IncidentLine line) {
        photos.accept(line == null ? null : PhotosOf.incident(Id.parse(line.id())));
        if (line == null) {
            readingPage.drop();
            panel.view().none();
            return;
        }
        readingPage.run(
                texts.get("incidents.reading"),
                () -> {
                    View now = view.get();
                    return SeeIncident.of(now, Id.<Incident>parse(line.id()))
                            .map(page -> model.page(
                                    now, page, SeeIncident.ranThen(now, page), SeeCase.of(now, page.incident())));
                },
                page -> page.ifPresent(panel::show),
                this::failed);
    }

    private void failed(Throwable failure) {
        LOG.error("the incidents could not be put together", failure);
        panel.failed(texts.get("incidents.failed"), again);
    }

    IncidentsPanel panel() {
        return panel;
    }
}
