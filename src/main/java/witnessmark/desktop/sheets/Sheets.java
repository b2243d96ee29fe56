package witnessmark.desktop.sheets;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.beforewego.Aside;
import witnessmark.desktop.shell.Command;
import witnessmark.logbook.sheets.LogSheet;
import witnessmark.logbook.sheets.WriteSheet;

/**
 * The sheets of the window: for each a command in a part of the Record menu, shown as a page over the first place. Tell it with
 * {@link #showIn} where pages are shown before anything is opened.
 */
public final class Sheets {
    private final SheetsContext context;
    private final WriteSheet writing;
    private final Map<String, SheetPage> pages = new HashMap<>();
    private final List<SheetList.Listed> listed = SheetList.all();
    private Consumer<Aside> show = page -> {};
    private Runnable dismiss = () -> {};

    public Sheets(SheetsContext context) {
        this.context = context;
        this.writing = new WriteSheet(context.book(), context.ids(), context.days());
    }

    /**
     * Says where pages are shown.
     *
     * @param show puts a page up, the focus in it
     * @param dismiss takes the page away
     */
    public void showIn(Consumer<Aside> show, Runnable dismiss) {
        this.show = show;
        this.dismiss = dismiss;
    }

    /** One command for each sheet. */
    public List<Command> commands() {
        return listed.stream().map(this::command).toList();
    }

    private Command command(SheetList.Listed of) {
        LogSheet sheet = of.sheet();
        String name = "sheets.command." + sheet.key();
        return new Command(context.texts(), name, of.menu(), of.section(), null, () -> open(sheet));
    }

    /** Shows the sheet that adds a car. */
    public void addCar() {
        open("add_car");
    }

    /** Shows the sheet that adds an engine with its hours so far. */
    public void addEngine() {
        open("add_engine");
    }

    /** Shows the sheet that fits a part. */
    public void fitPart() {
        open("fit_part");
    }

    /** Shows the sheet that sets a limit. */
    public void setLimit() {
        open("set_limit");
    }

    /** Shows the sheet that adds somebody who writes, drives or signs. */
    public void addPerson() {
        open("add_person");
    }

    /** Shows the sheet that writes a reading down. */
    public void writeReading() {
        open("write_reading");
    }

    /** Shows the sheet that holds an engine or a part. */
    public void writeHold() {
        open("write_hold");
    }

    /** Shows the sheet that signs clear what holds. */
    public void signClear() {
        open("sign_clear");
    }

    /** Shows the sheet that signs a run past a limit. */
    public void signRunOn() {
        open("sign_run_on");
    }

    SheetPage page(LogSheet sheet) {
        @Nullable SheetPage page = pages.get(sheet.key());
        if (page == null) {
            SheetWords words = new SheetWords(context.texts(), context.measures(), sheet);
            SheetModel model = new SheetModel(writing, sheet, context.measures()::date);
            SheetActions actions = new SheetActions(context, writing, model, words);
            page = new SheetPage(model, actions, words, () -> dismiss.run());
            pages.put(sheet.key(), page);
        }
        return Objects.requireNonNull(page);
    }

    List<LogSheet> all() {
        return listed.stream().map(SheetList.Listed::sheet).toList();
    }

    private void open(String key) {
        open(all().stream().filter(sheet -> sheet.key().equals(key)).findFirst().orElseThrow());
    }

    private void open(LogSheet sheet) {
        SheetPage page = page(sheet);
        page.open();
        show.accept(page);
        page.shown();
    }
}
