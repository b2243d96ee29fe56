package witnessmark.desktop.beforewego;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.BorderLayout;
import java.awt.SecondaryLoop;
import java.awt.Toolkit;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import javax.swing.JFrame;
import javax.swing.JTextField;
import javax.swing.Timer;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import witnessmark.desktop.form.SheetTools;
import witnessmark.desktop.shell.Desk;
import witnessmark.desktop.task.Tasks;
import witnessmark.desktop.testing.Focus;
import witnessmark.desktop.testing.MemorySettings;
import witnessmark.desktop.testing.TabWalk;
import witnessmark.desktop.testing.UiTest;
import witnessmark.domain.Facts;
import witnessmark.wording.Measures;
import witnessmark.wording.Texts;
import witnessmark.wording.Units;

/** The first place by keyboard alone. */
@UiTest(display = true)
class KeyboardTest {
    /** A focus that was asked for has come by then. */
    private static final int SOON_MILLIS = 500;

    @TempDir
    static Path folder;

    private static Facts sample = Facts.none();

    @BeforeAll
    static void read() {
        sample = Views.sample(folder);
    }

    @Test
    void tab_goes_over_every_row_and_button_once_in_reading_order_and_comes_round() {
        Texts texts = Texts.in(Locale.UK);
        JFrame frame = new JFrame();
        try (Tasks tasks = new Tasks((thread, failure) -> {
            throw new IllegalStateException(failure);
        })) {
            BeforeWeGoPlace place = new BeforeWeGoPlace(
                    new SheetTools(texts, tasks, new MemorySettings()),
                    new Measures(texts, Units.METRIC),
                    new Desk(),
                    () -> Views.of(sample, Views.DAY),
                    new BeginActions(() -> {}, () -> {}, () -> {}, () -> {}, () -> {}, () -> {}, () -> {}),
                    () -> {});
            place.refresh();
            tasks.awaitIdle();
            frame.setContentPane(place.panel());
            frame.setSize(1140, 700);
            frame.setVisible(true);
            List<String> names = TabWalk.namesFrom(place.firstFocus());
            assertThat(names).doesNotHaveDuplicates();
            assertThat(names.get(0)).startsWith("Held, Rods RS-03");
            assertThat(names.subList(1, 3)).allMatch(name -> name.startsWith("Over, "));
            assertThat(names.subList(3, 6)).allMatch(name -> name.startsWith("Due, "));
            assertThat(names.subList(6, 10))
                    .satisfiesExactly(
                            name -> assertThat(name).isEqualTo("Show them"),
                            name -> assertThat(name).startsWith("Car 41, engine K03"),
                            name -> assertThat(name).startsWith("Car 57, engine K06"),
                            name -> assertThat(name).isEqualTo("Log a run"));
            assertThat(names.get(10)).startsWith("INC-05 Big end of 3 gone again");
            List<String> rest = names.subList(11, names.size());
            assertThat(rest.get(0)).startsWith("Water 2 °C up");
            assertThat(rest.get(6)).isEqualTo("Print a job sheet");
            List<String> out = rest.stream()
                    .skip(7)
                    .dropWhile(name -> name.contains("Entry, Round "))
                    .toList();
            assertThat(rest.get(7)).startsWith("Entry, Round 6, Thornacre, car");
            assertThat(out.get(0)).startsWith("head 18-16 HD-05, machinist G1");
            assertThat(out.get(3)).startsWith("oil 10W-60, litre, 9 free");
            assertThat(out.get(5)).startsWith("Hour meter HM-41, 3 May to 24 May, 0.29 h more than logged");
            assertThat(out.subList(6, 8))
                    .satisfiesExactly(
                            name -> assertThat(name).startsWith("K03 from 10.65 to 12.87 h"),
                            name -> assertThat(name).startsWith("K06 from 3.90 to 6.11 h"));
        } finally {
            frame.dispose();
        }
    }

    @Test
    void whoever_types_elsewhere_while_the_page_is_read_goes_on_typing() {
        Texts texts = Texts.in(Locale.UK);
        JFrame frame = new JFrame();
        JTextField elsewhere = new JTextField();
        try (Tasks tasks = new Tasks((thread, failure) -> {
            throw new IllegalStateException(failure);
        })) {
            BeforeWeGoPlace place = new BeforeWeGoPlace(
                    new SheetTools(texts, tasks, new MemorySettings()),
                    new Measures(texts, Units.METRIC),
                    new Desk(),
                    () -> Views.of(sample, Views.DAY),
                    new BeginActions(() -> {}, () -> {}, () -> {}, () -> {}, () -> {}, () -> {}, () -> {}),
                    () -> {});
            frame.add(elsewhere, BorderLayout.NORTH);
            frame.add(place.component());
            frame.setSize(1140, 700);
            frame.setVisible(true);
            elsewhere.requestFocusInWindow();
            Focus.await(elsewhere);
            place.refresh();
            tasks.awaitIdle();
            assertThat(place.firstFocus().isShowing()).isTrue();
            SecondaryLoop askedFor =
                    Toolkit.getDefaultToolkit().getSystemEventQueue().createSecondaryLoop();
            Timer soon = new Timer(SOON_MILLIS, e -> askedFor.exit());
            soon.setRepeats(false);
            soon.start();
            askedFor.enter();
            assertThat(elsewhere.isFocusOwner()).isTrue();
        } finally {
            frame.dispose();
        }
    }
}
