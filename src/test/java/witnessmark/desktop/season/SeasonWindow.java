package witnessmark.desktop.season;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import javax.swing.JRootPane;
import witnessmark.desktop.form.SheetTools;
import witnessmark.desktop.shell.AboutFacts;
import witnessmark.desktop.shell.Look;
import witnessmark.desktop.shell.PlaceId;
import witnessmark.desktop.shell.ShellContext;
import witnessmark.desktop.shell.ShellPane;
import witnessmark.desktop.shell.gallery.GalleryBoard;
import witnessmark.desktop.task.Tasks;
import witnessmark.desktop.testing.GoldenText;
import witnessmark.desktop.testing.MemorySettings;
import witnessmark.desktop.testing.Stage;
import witnessmark.domain.Facts;
import witnessmark.ledger.AsOf;
import witnessmark.ledger.LifeLedger;
import witnessmark.logbook.View;
import witnessmark.logbook.sheets.Prefilled;
import witnessmark.sample.SampleFacts;
import witnessmark.wording.Measures;
import witnessmark.wording.Texts;
import witnessmark.wording.Units;

/** The window on the place Season ledger. What it leads to is noted down. */
final class SeasonWindow implements AutoCloseable {
    static final LocalDate OPENING = LocalDate.of(2026, 7, 8);
    static final LocalDate WINTER = LocalDate.of(2026, 12, 18);
    private static final ZoneId ZONE = ZoneId.of("Europe/London");

    final Texts texts;
    final witnessmark.desktop.shell.Desk window = new witnessmark.desktop.shell.Desk();
    final Tasks tasks = new Tasks((thread, failure) -> {
        throw new IllegalStateException(failure);
    });
    final List<String> asked = new ArrayList<>();
    final MemorySettings settings;
    final SeasonPlace place;
    final ShellPane pane;
    private Supplier<View> view;

    SeasonWindow(Look look, Texts texts, View first) {
        this(look, texts, first, new MemorySettings());
    }

    SeasonWindow(Look look, Texts texts, View first, MemorySettings settings) {
        this.texts = texts;
        this.view = () -> first;
        this.settings = settings;
        place = new SeasonPlace(
                new SheetTools(texts, tasks, settings),
                new Measures(texts, Units.METRIC),
                window,
                () -> view.get(),
                new SeasonLeads(
                        record -> asked.add("correct " + record),
                        sheet -> asked.add(sheet.sheet() + texts(sheet)),
                        () -> asked.add("export"),
                        () -> asked.add("print")));
        ShellContext context =
                new ShellContext(texts, tasks, settings, look, window, new AboutFacts("0.1.0", List.of()), () -> {});
        pane = new ShellPane(context, List.of(place, new GalleryBoard(texts)), List.of(), List.of());
        pane.logbook("Marrowgate, sample season");
        window.go(PlaceId.SEASON_LEDGER);
        tasks.awaitIdle();
    }

    /** The sample season on the evening it opens. */
    static View opening() {
        return on(read(false), OPENING);
    }

    /** The sample season told to its end. */
    static View end() {
        return on(read(true), WINTER);
    }

    /** A logbook in which nothing is written down. */
    static View bare() {
        return on(Facts.none(), OPENING);
    }

    static View on(Facts facts, LocalDate day) {
        return new View(facts, day, ZONE, LifeLedger.of(facts, new AsOf(day, ZONE)), false);
    }

    private static Facts read(boolean toItsEnd) {
        return toItsEnd ? SampleFacts.end() : SampleFacts.opening();
    }

    private static String texts(Prefilled sheet) {
        return sheet.texts().values().stream().map(text -> " " + text).collect(Collectors.joining());
    }

    static Texts english() {
        return Texts.in(Locale.UK);
    }

    SeasonPageView page() {
        return place.panel().page();
    }

    /** From now on there is another logbook, or it cannot be read. */
    void become(Supplier<View> other) {
        reads(other);
        root(1366, 768);
    }

    /** The same in whatever window it stands. */
    void reads(Supplier<View> other) {
        view = other;
        window.changed();
        tasks.awaitIdle();
    }

    String said() {
        return GoldenText.of(place.panel());
    }

    JRootPane root(int width, int height) {
        JRootPane root = Stage.window(pane, pane::menuBar, width, height);
        tasks.awaitIdle();
        return Stage.lay(root, width, height);
    }

    @Override
    public void close() {
        tasks.close();
    }
}
