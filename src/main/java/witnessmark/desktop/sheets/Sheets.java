package witnessmark.desktop.sheets;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.beforewego.Aside;
import witnessmark.desktop.shell.Command;
import witnessmark.desktop.shell.CommandMenu;
import witnessmark.logbook.sheets.AddCar;
import witnessmark.logbook.sheets.AddEngine;
import witnessmark.logbook.sheets.AddEvent;
import witnessmark.logbook.sheets.AddPerson;
import witnessmark.logbook.sheets.AddPosition;
import witnessmark.logbook.sheets.CloseBuild;
import witnessmark.logbook.sheets.EnterCar;
import witnessmark.logbook.sheets.FitPart;
import witnessmark.logbook.sheets.LogMissed;
import witnessmark.logbook.sheets.LogSheet;
import witnessmark.logbook.sheets.PutEngine;
import witnessmark.logbook.sheets.SetLimit;
import witnessmark.logbook.sheets.SetReadingLimit;
import witnessmark.logbook.sheets.SetTrigger;
import witnessmark.logbook.sheets.SignClear;
import witnessmark.logbook.sheets.SignRunOn;
import witnessmark.logbook.sheets.TakeEngineOut;
import witnessmark.logbook.sheets.TakeOffPart;
import witnessmark.logbook.sheets.WriteBuild;
import witnessmark.logbook.sheets.WriteHold;
import witnessmark.logbook.sheets.WriteReading;
import witnessmark.logbook.sheets.WriteSheet;
import witnessmark.logbook.sheets.WriteWork;

/**
 * The sheets of the window: for each a command in the Record menu, shown as a page over the first place. Tell it with
 * {@link #showIn} where pages are shown before anything is opened.
 */
public final class Sheets {
    private final SheetsContext context;
    private final WriteSheet writing;
    private final Map<String, SheetPage> pages = new HashMap<>();
    private final LogSheet addCar = new AddCar();
    private final LogSheet addEngine = new AddEngine();
    private final LogSheet fitPart = new FitPart();
    private final LogSheet setLimit = new SetLimit();
    private final LogSheet writeReading = new WriteReading();
    private final LogSheet writeHold = new WriteHold();
    private final LogSheet signClear = new SignClear();
    private final LogSheet signRunOn = new SignRunOn();
    private final LogSheet addPerson = new AddPerson();
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
        List<Command> commands = new ArrayList<>();
        for (LogSheet sheet : added()) {
            commands.add(command(sheet, 3));
        }
        for (LogSheet sheet : signed()) {
            commands.add(command(sheet, 4));
        }
        return List.copyOf(commands);
    }

    private Command command(LogSheet sheet, int section) {
        String name = "sheets.command." + sheet.key();
        return new Command(context.texts(), name, CommandMenu.RECORD, section, null, () -> open(sheet));
    }

    /** Shows the sheet that adds a car. */
    public void addCar() {
        open(addCar);
    }

    /** Shows the sheet that adds an engine with its hours so far. */
    public void addEngine() {
        open(addEngine);
    }

    /** Shows the sheet that fits a part. */
    public void fitPart() {
        open(fitPart);
    }

    /** Shows the sheet that sets a limit. */
    public void setLimit() {
        open(setLimit);
    }

    /** Shows the sheet that adds somebody who writes, drives or signs. */
    public void addPerson() {
        open(addPerson);
    }

    /** Shows the sheet that writes a reading down. */
    public void writeReading() {
        open(writeReading);
    }

    /** Shows the sheet that holds an engine or a part. */
    public void writeHold() {
        open(writeHold);
    }

    /** Shows the sheet that signs clear what holds. */
    public void signClear() {
        open(signClear);
    }

    /** Shows the sheet that signs a run past a limit. */
    public void signRunOn() {
        open(signRunOn);
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
        return Stream.concat(added().stream(), signed().stream()).toList();
    }

    private List<LogSheet> signed() {
        return List.of(writeReading, writeHold, signClear, signRunOn, new SetReadingLimit(), new SetTrigger());
    }

    private List<LogSheet> added() {
        return List.of(
                addCar,
                addEngine,
                new PutEngine(),
                new TakeEngineOut(),
                fitPart,
                new TakeOffPart(),
                new AddEvent(),
                new EnterCar(),
                new LogMissed(),
                setLimit,
                new WriteWork(),
                new WriteBuild(),
                new CloseBuild(),
                new AddPosition(),
                addPerson);
    }

    private void open(LogSheet sheet) {
        SheetPage page = page(sheet);
        page.open();
        show.accept(page);
        page.shown();
    }
}
