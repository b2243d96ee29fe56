package witnessmark.desktop.shelf;

import java.util.List;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.swing.JButton;
import javax.swing.JComponent;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import witnessmark.desktop.form.Buttons;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.form.SheetTools;
import witnessmark.desktop.shell.Aside;
import witnessmark.desktop.shell.AsideStage;
import witnessmark.desktop.shell.Desk;
import witnessmark.desktop.shell.ListInView;
import witnessmark.desktop.shell.Place;
import witnessmark.desktop.shell.PlaceId;
import witnessmark.desktop.task.Latest;
import witnessmark.logbook.View;
import witnessmark.logbook.shelf.SeeShelf;
import witnessmark.wording.Measures;
import witnessmark.wording.Texts;

/** Parts shelf: reads where every part is off the event thread and shows it. */
public final class ShelfPlace implements Place {
    private static final Logger LOG = LoggerFactory.getLogger(ShelfPlace.class);

    private final Texts texts;
    private final Supplier<View> view;
    private final ShelfModel model;
    private final Latest reading;
    private final ShelfPanel panel;
    private final JButton again;
    private final ListInView list;
    private final AsideStage stage;

    /**
     * @param window the window's desk
     * @param view the logbook as of the day looked at; asked off the event thread
     * @param asked what the page leads to
     */
    public ShelfPlace(SheetTools tools, Measures measures, Desk window, Supplier<View> view, ShelfAsked asked) {
        this.texts = tools.texts();
        this.view = view;
        this.model = new ShelfModel(texts, measures);
        this.reading = new Latest(tools.tasks());
        this.panel = new ShelfPanel(tools, asked);
        this.stage = new AsideStage(window, PlaceId.PARTS_SHELF, panel, window::goAside);
        this.list = new ListInView(window, PlaceId.PARTS_SHELF, tools.tasks(), panel::choose);
        this.again = Buttons.plain(Caption.of(texts.get("shelf.again")), this::refresh);
    }

    @Override
    public PlaceId id() {
        return PlaceId.PARTS_SHELF;
    }

    @Override
    public JComponent component() {
        return stage.component();
    }

    /** Says what opens the trial of the design of a part, by the text form of the part's identity. */
    public void onTrial(Consumer<String> opens) {
        panel.parts().onTrial(opens);
    }

    /** Puts another page in the place of the shelf until {@link #dismiss} is called. */
    public void stepAside(Aside other) {
        stage.show(other);
    }

    /** Brings the shelf back, or what the other page was called from. */
    public void dismiss() {
        if (stage.leave()) {
            refresh();
            firstFocus().requestFocusInWindow();
        }
    }

    @Override
    public void again() {
        if (stage.isAskedFor()) {
            dismiss();
        }
    }

    @Override
    public List<String> help() {
        return stage.shown().map(Aside::help).orElse(List.of(id().helpKey()));
    }

    @Override
    public JComponent firstFocus() {
        return stage.shown().map(Aside::firstFocus).orElseGet(panel::firstFocus);
    }

    @Override
    public void refresh() {
        stage.shown().ifPresent(Aside::changed);
        reading.run(texts.get("shelf.reading"), () -> model.lines(SeeShelf.of(view.get())), this::show, failure -> {
            LOG.error("where the parts are could not be worked out", failure);
            panel.failed(texts.get("shelf.failed"), again);
        });
    }

    @Override
    public void recount() {
        list.recount(texts.get("shelf.reading"), () -> SeeShelf.needHand(view.get()));
    }

    /** Brings a part or a batch into view. */
    @Override
    public void open(String record) {
        stage.dismiss();
        list.open(record);
    }

    private void show(ShelfLines lines) {
        panel.show(lines);
        if (stage.shown().isPresent()) {
            return; // the title is that page's
        }
        list.shown(lines.day(), lines.needHand());
    }

    ShelfPanel panel() {
        return panel;
    }
}
