package witnessmark.desktop.beforewego;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.event.KeyEvent;
import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Supplier;
import javax.swing.AbstractButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JRootPane;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import witnessmark.desktop.form.Keys;
import witnessmark.desktop.form.OpenRow;
import witnessmark.desktop.form.Palette;
import witnessmark.desktop.form.SheetTools;
import witnessmark.desktop.shell.AboutFacts;
import witnessmark.desktop.shell.Desk;
import witnessmark.desktop.shell.Look;
import witnessmark.desktop.shell.Place;
import witnessmark.desktop.shell.PlaceId;
import witnessmark.desktop.shell.ShellContext;
import witnessmark.desktop.shell.ShellPane;
import witnessmark.desktop.shell.Theme;
import witnessmark.desktop.shell.Visit;
import witnessmark.desktop.task.Tasks;
import witnessmark.desktop.testing.AccessibleWalk;
import witnessmark.desktop.testing.Contrast;
import witnessmark.desktop.testing.GoldenText;
import witnessmark.desktop.testing.LayoutRules;
import witnessmark.desktop.testing.Looks;
import witnessmark.desktop.testing.MemorySettings;
import witnessmark.desktop.testing.Pictures;
import witnessmark.desktop.testing.Stage;
import witnessmark.desktop.testing.Ui;
import witnessmark.desktop.testing.UiTest;
import witnessmark.domain.CostLine;
import witnessmark.domain.Engine;
import witnessmark.domain.EngineDesign;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.Incident;
import witnessmark.domain.Part;
import witnessmark.logbook.View;
import witnessmark.wording.Measures;
import witnessmark.wording.Texts;
import witnessmark.wording.Units;

/** The page as people see and use it. */
@UiTest
class BeforeWeGoPlaceTest {
    @TempDir
    static Path folder;

    private static Facts sample = Facts.none();

    private final Tasks tasks = new Tasks((thread, failure) -> {
        throw new IllegalStateException(failure);
    });
    private final Desk desk = new Desk();
    private final List<String> done = new ArrayList<>();
    private Texts texts = Texts.in(Locale.UK);

    @BeforeAll
    static void read() {
        sample = Views.sample(folder);
    }

    @AfterEach
    void close() {
        tasks.close();
    }

    @ParameterizedTest(name = "{0} {1} at {2}")
    @CsvSource({
        "sample, LIGHT, 1.0",
        "sample, DARK, 1.0",
        "sample, LIGHT, 1.5",
        "sample, DARK, 1.5",
        "unentered, LIGHT, 1.0",
        "unentered, DARK, 1.5",
        "new, LIGHT, 1.0",
        "new, DARK, 1.0",
        "new, LIGHT, 1.5"
    })
    void the_page_is_painted_on_its_bench_in_many_colours(String book, Theme theme, float zoom) {
        JRootPane root = window(Looks.look(theme, zoom), facts(book), 1366, 768);
        String name = "before_we_go-" + book + "-" + theme + "-" + Math.round(zoom * 100);
        BufferedImage image = Pictures.write(name.toLowerCase(Locale.ROOT), root);
        assertThat(Pictures.colours(image, 51)).isGreaterThan(50);
        assertThat(image.getRGB(1364, 40)).isEqualTo(Palette.BENCH.colour().getRGB());
    }

    @ParameterizedTest(name = "{0} at {1} x {2}, zoom {3}, pseudo-language {4}")
    @CsvSource({
        "sample, 1366, 768, 1.0, false",
        "sample, 1366, 768, 1.5, false",
        "sample, 1100, 700, 1.0, false",
        "sample, 1100, 700, 1.5, false",
        "sample, 1366, 768, 1.0, true",
        "unentered, 1366, 768, 1.5, false",
        "new, 1366, 768, 1.0, false",
        "new, 1100, 700, 1.5, false",
        "new, 1366, 768, 1.0, true"
    })
    void nothing_overlaps_and_nothing_is_cut(String book, int width, int height, float zoom, boolean pseudo) {
        texts = pseudo ? Texts.pseudo() : Texts.in(Locale.UK);
        JRootPane root = window(Looks.look(Theme.LIGHT, zoom), facts(book), width, height);
        assertThat(LayoutRules.broken(root)).isEmpty();
    }

    @ParameterizedTest(name = "{0} {1}")
    @CsvSource({"sample, LIGHT", "sample, DARK", "new, LIGHT", "new, DARK"})
    void every_text_stands_out_and_everything_has_a_name(String book, Theme theme) {
        JRootPane root = window(Looks.look(theme, 1.0f), facts(book), 1366, 768);
        assertThat(AccessibleWalk.faults(root)).isEmpty();
        assertThat(Contrast.tooLow(root)).isEmpty();
    }

    @Test
    void the_page_of_8_july_reads_as_agreed() {
        BeforeWeGoPlace place = place(() -> Views.of(sample, Views.DAY));
        shown(place);
        GoldenText.check("before_we_go", Stage.lay(place.component(), 1140, 640));
    }

    @Test
    void the_page_of_a_new_logbook_reads_as_agreed() {
        BeforeWeGoPlace place = place(() -> Views.of(Facts.none(), Views.DAY));
        shown(place);
        GoldenText.check("before_we_go_new", Stage.lay(place.component(), 1140, 640));
    }

    @Test
    void enter_on_the_worst_row_opens_the_part_in_engines() {
        BeforeWeGoPlace place = place(() -> Views.of(sample, Views.DAY));
        ShellPane pane = shell(Looks.light(), place);
        OpenRow first = (OpenRow) place.firstFocus();
        assertThat(first.getAccessibleContext().getAccessibleName()).startsWith("Held, Rods RS-03");
        String[] asked = new String[1];
        first.addActionListener(e -> asked[0] = "opened");
        Ui.press(first, Keys.plain(KeyEvent.VK_ENTER));
        assertThat(asked[0]).isEqualTo("opened");
        assertThat(pane.current()).contains(Visit.to(PlaceId.BEFORE_WE_GO));
        String springs = sample.of(Part.class).named("RS-03").orElseThrow().id().text();
        assertThat(place.panel().nearest().shown().get(0).record()).isEqualTo(springs);
    }

    @Test
    void an_open_incident_leads_to_its_page_and_money_to_its_cost() {
        BeforeWeGoPlace place = place(() -> Views.of(sample, Views.DAY));
        List<String> opened = new ArrayList<>();
        place.onOpen(opened::add);
        ShellPane pane = shell(Looks.light(), place, new Opened(PlaceId.INCIDENTS, opened));
        Ui ui = new Ui(Stage.window(pane, pane.menuBar(), 1366, 768));
        AbstractButton money = ui.button(
                "Entry, Round 6, Thornacre, car 41, 520.00 EUR to ask back, Until Sat 11 Jul 2026, 3 days left");
        ui.button("INC-05 Big end of 3 gone again, Car 57, K05, again after INC-03, Retired, open 24 days")
                .doClick();
        money.doClick();
        assertThat(opened)
                .first()
                .isEqualTo(sample.of(Incident.class)
                        .named("INC-05")
                        .orElseThrow()
                        .id()
                        .text());
        assertThat(sample.of(CostLine.class).get(Id.parse(opened.get(1))).refundBy())
                .isEqualTo(LocalDate.of(2026, 7, 11));
    }

    @Test
    void show_them_lists_every_limit_and_hides_it_again() {
        BeforeWeGoPlace place = place(() -> Views.of(sample, Views.DAY));
        shown(place);
        AllMarks all = place.panel().nearest().all();
        assertThat(all.isVisible()).isFalse();
        place.panel().nearest().toggleButton().doClick();
        assertThat(all.isVisible()).isTrue();
        assertThat(all.table().shown()).hasSizeGreaterThan(100);
        assertThat(all.table().selected()).isNotNull();
        assertThat(place.panel().nearest().toggleButton().getText()).isEqualTo("Hide them");
        place.panel().nearest().toggleButton().doClick();
        assertThat(all.isVisible()).isFalse();
    }

    @Test
    void the_steps_of_a_new_logbook_lead_on_in_order() {
        BeforeWeGoPlace place = place(() -> Views.of(Facts.none(), Views.DAY));
        shown(place);
        Ui ui = new Ui(Stage.lay(place.component(), 1140, 640));
        ui.button("Add a car").doClick();
        ui.button("Add its engine, with hours so far").doClick();
        ui.button("Log the first run").doClick();
        ui.button("Or bring in a season folder").doClick();
        assertThat(done).containsExactly("car", "engine", "run", "import");
        assertThat(place.firstFocus()).isSameAs(ui.button("Add a car"));
    }

    @Test
    void what_is_done_is_ticked_off_and_the_next_step_is_offered() {
        AtomicReference<Facts> now = new AtomicReference<>(Facts.none());
        BeforeWeGoPlace place = place(() -> Views.of(now.get(), Views.DAY));
        shown(place);
        now.set(Facts.none()
                .with(List.of(sample.of(witnessmark.domain.Car.class).all().get(0))));
        shown(place);
        Ui ui = new Ui(Stage.lay(place.component(), 1140, 640));
        assertThat(ui.button("Add a car, done").isEnabled()).isTrue();
        assertThat(place.firstFocus()).isSameAs(ui.button("Add its engine, with hours so far"));
    }

    @Test
    void once_there_is_an_engine_a_quiet_line_leads_to_the_limits_of_all_its_parts() {
        AtomicReference<Facts> now = new AtomicReference<>(Facts.none());
        BeforeWeGoPlace place = place(() -> Views.of(now.get(), Views.DAY));
        shown(place);
        Ui noEngine = new Ui(Stage.lay(place.component(), 1140, 640));
        assertThatThrownBy(() -> noEngine.button("Limits of all its parts, as one list"))
                .isInstanceOf(AssertionError.class);
        now.set(Facts.none()
                .with(sample.of(Engine.class).all())
                .with(sample.of(EngineDesign.class).all()));
        shown(place);
        JRootPane page = Stage.window(shell(Looks.light(), place), new javax.swing.JMenuBar(), 1366, 768);
        Pictures.write("before_we_go-new-with-engine", page);
        new Ui(page).button("Limits of all its parts, as one list").doClick();
        assertThat(done).containsExactly("list");
        assertThat(LayoutRules.broken(page)).isEmpty();
        assertThat(AccessibleWalk.faults(page)).isEmpty();
    }

    @Test
    void when_reading_fails_the_page_says_so_and_tries_again() {
        AtomicReference<Supplier<View>> source = new AtomicReference<>(() -> {
            throw new IllegalStateException("broken for this test");
        });
        BeforeWeGoPlace place = place(() -> source.get().get());
        shown(place);
        Ui ui = new Ui(Stage.lay(place.component(), 1140, 640));
        source.set(() -> Views.of(sample, Views.DAY));
        ui.button("Try again").doClick();
        tasks.awaitIdle();
        assertThat(place.firstFocus()).isInstanceOf(OpenRow.class);
    }

    private Facts facts(String book) {
        return switch (book) {
            case "sample" -> sample;
            case "unentered" -> Views.withoutEntries(sample);
            default -> Facts.none();
        };
    }

    private BeforeWeGoPlace place(Supplier<View> view) {
        return new BeforeWeGoPlace(
                new SheetTools(texts, tasks, new MemorySettings()),
                new Measures(texts, Units.METRIC),
                desk,
                view,
                new BeginActions(
                        () -> done.add("car"),
                        () -> done.add("engine"),
                        () -> done.add("fit"),
                        () -> done.add("limit"),
                        () -> done.add("list"),
                        () -> done.add("person"),
                        () -> done.add("run")),
                () -> done.add("import"));
    }

    private void shown(BeforeWeGoPlace place) {
        place.refresh();
        tasks.awaitIdle();
    }

    private ShellPane shell(Look look, BeforeWeGoPlace place, Place... others) {
        ShellContext context = new ShellContext(
                texts, tasks, new MemorySettings(), look, desk, new AboutFacts("0.1.0", List.of()), () -> {});
        List<Place> places = new ArrayList<>(List.of(place));
        places.addAll(List.of(others));
        ShellPane pane = new ShellPane(context, places, List.of(), List.of());
        pane.logbook("Marrowgate, sample season");
        desk.go(PlaceId.BEFORE_WE_GO);
        tasks.awaitIdle();
        return pane;
    }

    private JRootPane window(Look look, Facts facts, int width, int height) {
        ShellPane pane = shell(look, place(() -> Views.of(facts, Views.DAY)));
        return Stage.window(pane, pane.menuBar(), width, height);
    }

    /** A place that only says what is opened there. */
    private record Opened(PlaceId id, List<String> records) implements Place {
        @Override
        public JComponent component() {
            return new JPanel();
        }

        @Override
        public JComponent firstFocus() {
            return new JPanel();
        }

        @Override
        public void refresh() {}

        @Override
        public void open(String record) {
            records.add(record);
        }
    }
}
