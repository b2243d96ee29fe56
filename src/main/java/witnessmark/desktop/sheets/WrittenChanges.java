package witnessmark.desktop.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import witnessmark.desktop.task.Latest;
import witnessmark.logbook.engines.Amended;
import witnessmark.logbook.engines.SeeHistory;
import witnessmark.logbook.sheets.CorrectSheet;
import witnessmark.logbook.sheets.SheetField;
import witnessmark.logbook.sheets.WrittenSheet;
import witnessmark.quantity.Moment;
import witnessmark.wording.Texts;

/** What can be done to a written entry besides correcting it, and what is told of it. Event thread only. */
final class WrittenChanges {
    private static final Logger LOG = LoggerFactory.getLogger(WrittenChanges.class);

    private final SheetsContext context;
    private final Texts texts;
    private final WrittenSheet<?> written;
    private final SheetModel model;
    private final SheetActions actions;
    private final String named;
    private final Latest looking;
    private final List<Runnable> listeners = new ArrayList<>();
    private String by = "";

    /** @param named what it is called */
    WrittenChanges(
            SheetsContext context, WrittenSheet<?> written, SheetModel model, SheetActions actions, String named) {
        this.context = context;
        this.texts = context.texts();
        this.written = written;
        this.model = model;
        this.actions = actions;
        this.named = named;
        this.looking = new Latest(context.tasks());
    }

    void onChange(Runnable listener) {
        listeners.add(listener);
    }

    boolean isStruckOut() {
        return written.isStruckOut();
    }

    /** Who wrote it and who changed it last; empty until that is read. */
    String by() {
        return by;
    }

    /** What has to be known before anybody types. */
    String strip() {
        String because = written.entry().struckBecause();
        return isStruckOut() ? texts.get("sheets.struck", because == null ? "" : because) : "";
    }

    /** Reads who wrote it. */
    void look() {
        looking.run(
                texts.get("sheets.looking"),
                () -> SeeHistory.of(context.book().logbook(), written.entry()),
                this::looked,
                thrown -> LOG.error("the history of an entry could not be read", thrown));
    }

    /**
     * Takes it out of every figure, for the reason on the sheet.
     *
     * @param stopped told the field in which the reason is missing
     */
    void strikeOut(Consumer<SheetField> stopped, Runnable done) {
        String because = model.text(CorrectSheet.BECAUSE).strip();
        if (because.isEmpty()) {
            model.needs(CorrectSheet.BECAUSE);
            stopped.accept(CorrectSheet.BECAUSE);
            return;
        }
        String why = texts.get("sheets.striking", named);
        actions.perform(why, () -> written.strikeOut(because, why), texts.get("sheets.struck_now", named), done);
    }

    void restore(Runnable done) {
        String why = texts.get("sheets.restoring", named);
        actions.perform(why, () -> written.restore(why), texts.get("sheets.restored", named), done);
    }

    private void looked(List<Amended> history) {
        if (!history.isEmpty()) {
            Amended first = history.get(history.size() - 1);
            Amended last = history.get(0);
            by = history.size() == 1
                    ? texts.get("sheets.written.by", first.who(), when(first))
                    : texts.get(
                            "sheets.written.by.changed", first.who(), when(first), last.who(), when(last), last.why());
            List.copyOf(listeners).forEach(Runnable::run);
        }
    }

    private String when(Amended amended) {
        return context.measures()
                .fullMoment(Moment.of(amended.at(), context.book().view().zone()));
    }
}
