package witnessmark.desktop.sheets;

import java.awt.event.KeyEvent;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.stream.Stream;
import javax.swing.KeyStroke;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import witnessmark.desktop.beforewego.OutLine;
import witnessmark.desktop.engines.EnginePage;
import witnessmark.desktop.form.Keys;
import witnessmark.desktop.shell.Aside;
import witnessmark.desktop.shell.Command;
import witnessmark.desktop.shell.CommandMenu;
import witnessmark.desktop.shell.PlaceId;
import witnessmark.desktop.task.Latest;
import witnessmark.domain.Car;
import witnessmark.domain.DynoSheet;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Fact;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.Reading;
import witnessmark.domain.Run;
import witnessmark.domain.image.RecordType;
import witnessmark.domain.image.RecordTypes;
import witnessmark.logbook.port.Drafts;
import witnessmark.logbook.sheets.LogSheet;
import witnessmark.logbook.sheets.Prefilled;
import witnessmark.logbook.sheets.ReportIncident;
import witnessmark.logbook.sheets.SheetReading;
import witnessmark.logbook.sheets.SheetUnits;
import witnessmark.logbook.sheets.TypedSheet;
import witnessmark.logbook.sheets.WriteSheet;
import witnessmark.logbook.sheets.WrittenSheet;
import witnessmark.quantity.Moment;
import witnessmark.quantity.typed.DayOrder;
import witnessmark.wording.Measures;
import witnessmark.wording.Units;

/**
 * The sheets of the window: for each a command in a part of the Record menu, shown as a page over the first place, and left for
 * what was in view before. Tell it with {@link #showIn} where pages are shown before anything is opened.
 */
public final class Sheets {
    private static final Logger LOG = LoggerFactory.getLogger(Sheets.class);
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

    private final SheetsContext context;
    private final WriteSheet writing;
    private final Map<String, SheetPage> pages = new HashMap<>();
    private final List<SheetList.Listed> listed;
    private final RecordTitle titles;
    private final Latest opening;
    private @Nullable WrittenList list;
    private Consumer<Aside> show = page -> {};
    private Runnable dismiss = () -> {};
    private Runnable back = () -> {};
    private Consumer<Id<Engine>> read = engine -> {};
    private Supplier<Optional<Id<Engine>>> inView = Optional::empty;

    public Sheets(SheetsContext context) {
        this.context = context;
        this.listed = SheetList.all(context.startingValues());
        this.writing = new WriteSheet(context.book(), context.ids(), units(context.measures(), context.days()));
        this.titles = new RecordTitle(context.texts(), context.measures());
        this.opening = new Latest(context.tasks());
    }

    /** The units of bare figures on sheets. */
    public static SheetUnits units(Measures measures, DayOrder days) {
        Units units = measures.units();
        return new SheetUnits(units.length(), units.pressure(), units.temperature(), units.distance(), days);
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

    /** Says which engine is in view: a sheet that asks for one has it picked at first, else the only one there is. */
    public void engineInView(Supplier<Optional<Id<Engine>>> engine) {
        this.inView = engine;
    }

    /** Says what is told of which engine something was just read. */
    public void onRead(Consumer<Id<Engine>> listener) {
        this.read = listener;
    }

    private void tellRead(SheetReading written) {
        written.entries().stream()
                .map(Entry::fact)
                .filter(Reading.class::isInstance)
                .map(fact -> ((Reading) fact).engine())
                .filter(Objects::nonNull)
                .findFirst()
                .ifPresent(read);
    }

    /** One command for each sheet. */
    public List<Command> commands() {
        Command correct =
                new Command(context.texts(), "sheets.command.correct", CommandMenu.RECORD, 6, null, this::openList);
        return Stream.concat(listed.stream().map(this::command), Stream.of(correct))
                .toList();
    }

    /** Shows everything that is written, each entry opened on its sheet. */
    public void openList() {
        WrittenList now = list;
        if (now == null) {
            now = new WrittenList(context, titles, entry -> correct(entry, this::openList), () -> dismiss.run());
            list = now;
        }
        opening.drop();
        now.read();
        show.accept(now);
    }

    /**
     * Shows a written entry on its sheet, so that it can be corrected, struck out and restored. A run has a sheet of its
     * own.
     *
     * @param entry as last seen
     */
    public void correct(Entry<?> entry) {
        correct(entry, () -> {});
    }

    /**
     * The same.
     *
     * @param back puts the page up again that it was opened from, where that stood over a place itself
     */
    public void correct(Entry<?> entry, Runnable back) {
        if (entry.fact() instanceof Run) {
            context.window().go(PlaceId.RUN_SHEET, entry.id().text());
            return;
        }
        look(() -> written(entry), typed -> {
            SheetPage page = page(typed, back);
            page.open();
            put(page);
        });
    }

    /** The same for the entry of this identity, as text; nothing happens when there is none. */
    public void correct(String record) {
        correct(record, () -> {});
    }

    /** The same. */
    public void correct(String record, Runnable back) {
        entry(record, context.book().view().facts()).ifPresent(entry -> correct(entry, back));
    }

    private static Optional<Entry<?>> entry(String record, Facts facts) {
        for (RecordType<?> type : RecordTypes.all()) {
            Optional<? extends Entry<?>> found = facts.of(type.kind()).find(Id.parse(record));
            if (found.isPresent()) {
                return Optional.of(found.get());
            }
        }
        return Optional.empty();
    }

    private <F extends Fact> WrittenSheet<F> written(Entry<F> seen) {
        @SuppressWarnings("unchecked") // an entry is of the kind of its fact
        Class<F> kind = (Class<F>) seen.fact().getClass();
        Entry<F> entry = context.book().view().facts().of(kind).find(seen.id()).orElse(seen);
        return writing.open(entry, all(), context.measures()::date);
    }

    private SheetPage page(WrittenSheet<?> typed, Runnable back) {
        String named = titles.of(typed.entry(), context.book().view().facts());
        SheetWords words = new SheetWords(
                context.texts(), context.measures(), typed.sheet(), named, () -> titleNow(typed.entry()));
        SheetModel model = new SheetModel(typed);
        SheetActions actions = new SheetActions(context, typed, model, words);
        WrittenChanges changes = new WrittenChanges(context, typed, model, actions, named);
        Runnable leave = () -> {
            dismiss.run();
            back.run();
        };
        return new SheetPage(model, actions, words, SheetList.help(typed.sheet(), listed), leave, changes);
    }

    private String titleNow(Entry<?> seen) {
        Facts facts = context.book().view().facts();
        return titles.of(entry(seen.id().text(), facts).orElse(seen), facts);
    }

    private Command command(SheetList.Listed of) {
        LogSheet sheet = of.sheet();
        String name = "sheets.command." + sheet.key();
        KeyStroke key = sheet instanceof ReportIncident ? Keys.menuShift(KeyEvent.VK_I) : null;
        return new Command(context.texts(), name, of.menu(), of.section(), key, () -> open(sheet));
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

    /** Shows the sheet that puts a batch on the shelf. */
    public void newStock() {
        open("new_stock");
    }

    /** Shows the sheet that reports an incident. */
    public void reportIncident() {
        open("report_incident");
    }

    /** Shows the sheet that sets a limit. */
    public void setLimit() {
        open("set_limit");
    }

    /** Shows the list of limits. */
    public void listLimits() {
        open("list_limits");
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

    /**
     * Writes down that somebody has just looked at something, under the name of who is writing.
     *
     * @param car which car
     * @param what what was looked at
     */
    public void looked(Id<Car> car, String what) {
        ZonedDateTime now =
                context.book().today().now().atZone(context.book().view().zone());
        boolean clocks = now.toLocalDate().equals(context.book().today().day()); // a sample's day is not the clock's
        writeAtOnce(Prefilled.look(car, what, clocks ? CLOCK.format(now) : ""));
    }

    /** Where it cannot be written as it is, or an earlier day is looked at, the sheet is shown instead. */
    private void writeAtOnce(Prefilled prefilled) {
        if (context.book().view().readOnly()) {
            open(prefilled);
            return;
        }
        LogSheet sheet = named(prefilled.sheet());
        context.tasks()
                .run(
                        context.texts().get("sheets.opening"),
                        () -> looked(writing.fresh(sheet, context.measures()::date)),
                        typing -> save(typing, prefilled),
                        this::notOpened);
    }

    private void save(TypedSheet typing, Prefilled prefilled) {
        SheetModel model = new SheetModel(typing);
        model.mean(prefilled.texts());
        SheetWords words = new SheetWords(context.texts(), context.measures(), typing.sheet());
        new SheetActions(context, typing, model, words).save(stopped -> open(prefilled), written -> {});
    }

    /**
     * Shows the sheet that plans a job, with what was told of a run on it already.
     *
     * @param run the identity of the run, as text; nothing happens when it is not there
     */
    public void planJob(String run) {
        Facts facts = context.book().view().facts();
        facts.of(Run.class)
                .find(Id.parse(run))
                .map(Entry::fact)
                .ifPresent(told -> open(Prefilled.job(titles.told(told, facts), told.engine())));
    }

    /** What was begun on sheets and not saved, the latest first, each leading back to its sheet. Not on the event thread. */
    public List<OutLine> begun() {
        return context.book().logbook().drafts().begun().stream()
                .filter(draft -> draft.form().startsWith(SheetDraft.FORM))
                .flatMap(draft -> begun(draft).stream())
                .toList();
    }

    private Optional<OutLine> begun(Drafts.Begun draft) {
        String said = context.texts()
                .get(
                        "sheets.begun",
                        context.measures()
                                .moment(Moment.of(
                                        draft.keptAt(), context.book().view().zone())));
        String key = draft.form().substring(SheetDraft.FORM.length());
        if (draft.record().equals(SheetDraft.NEW)) {
            return all().stream()
                    .filter(sheet -> sheet.key().equals(key))
                    .findFirst()
                    .map(sheet -> new OutLine(
                            context.texts().get("sheets.title." + key), said, "", key, new Prefilled(key, Map.of())));
        }
        Facts facts = context.book().view().facts();
        return entry(draft.record(), facts)
                .map(entry -> new OutLine(titles.of(entry, facts), said, "", draft.record(), null));
    }

    private SheetPage page(TypedSheet typed) {
        LogSheet sheet = typed.sheet();
        @Nullable SheetPage page = pages.get(sheet.key());
        if (page == null) {
            SheetWords words = new SheetWords(context.texts(), context.measures(), sheet);
            SheetModel model = new SheetModel(typed);
            SheetActions actions = new SheetActions(context, typed, model, words);
            actions.onWritten(this::tellRead);
            page = new SheetPage(model, actions, words, SheetList.help(sheet, listed), this::leave, this::seeWritten);
            pages.put(sheet.key(), page);
        }
        return Objects.requireNonNull(page);
    }

    List<LogSheet> all() {
        return listed.stream().map(SheetList.Listed::sheet).toList();
    }

    private void open(String key) {
        open(named(key));
    }

    private LogSheet named(String key) {
        return all().stream()
                .filter(sheet -> sheet.key().equals(key))
                .findFirst()
                .orElseThrow();
    }

    /**
     * Shows a sheet that is about something chosen already.
     *
     * @param goBack puts the page up again that it was opened from, where that stood over a place itself
     */
    public void open(Prefilled prefilled, Runnable goBack) {
        open(named(prefilled.sheet()), page -> page.open(prefilled.texts()), goBack);
    }

    /** The same. */
    public void open(Prefilled prefilled) {
        open(prefilled, () -> {});
    }

    /** A dyno sheet is written for its curve, which is nowhere where it was called from; all others leave one where one was. */
    private void seeWritten(SheetReading written) {
        Facts facts = context.book().view().facts();
        written.entries().stream()
                .map(Entry::fact)
                .filter(DynoSheet.class::isInstance)
                .flatMap(made -> facts.of(DynoSheet.class).where(made::equals).stream())
                .findFirst() // saving gave it an identity of its own
                .map(entry -> EnginePage.ofDynoSheet(entry.id().text()))
                .ifPresent(sheet -> context.window().go(PlaceId.ENGINES, sheet));
    }

    private void leave() {
        dismiss.run();
        back.run();
    }

    private void open(LogSheet sheet) {
        open(sheet, SheetPage::open, () -> {});
    }

    /** @param begin what is begun with on the page, before it is shown */
    private void open(LogSheet sheet, Consumer<SheetPage> begin, Runnable goBack) {
        Optional<Id<Engine>> engine = inView.get().or(this::onlyEngine);
        look(() -> writing.fresh(sheet, context.measures()::date), typed -> {
            back = goBack;
            SheetPage page = page(typed);
            page.picks(engine.map(typed::picksFor).orElse(Map.of()));
            begin.accept(page);
            put(page);
        });
    }

    private Optional<Id<Engine>> onlyEngine() {
        List<Id<Engine>> engines = context.book()
                .view()
                .facts()
                .of(Engine.class)
                .inForce()
                .map(Entry::id)
                .limit(2)
                .toList();
        return engines.size() == 1 ? Optional.of(engines.get(0)) : Optional.empty();
    }

    /** What a sheet asks of the logbook is worked out off the event thread, before it is shown; of two the last. */
    private <T extends TypedSheet> void look(Supplier<T> made, Consumer<T> then) {
        opening.run(context.texts().get("sheets.opening"), () -> looked(made.get()), then, this::notOpened);
    }

    private static <T extends TypedSheet> T looked(T typed) {
        typed.look();
        return typed;
    }

    private void notOpened(Throwable thrown) {
        LOG.error("a sheet could not be opened", thrown);
        context.window().say(context.texts().get("sheets.not_opened"));
    }

    private void put(SheetPage page) {
        show.accept(page);
        page.shown();
    }
}
