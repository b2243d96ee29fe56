package witnessmark.desktop.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.BorderLayout;
import java.awt.event.FocusEvent;
import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import javax.swing.JButton;
import javax.swing.JFrame;
import javax.swing.JTextField;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import witnessmark.desktop.form.Keys;
import witnessmark.desktop.task.Tasks;
import witnessmark.desktop.testing.Ui;
import witnessmark.desktop.testing.UiTest;
import witnessmark.wording.Texts;

/** What drops down under the find field: as high as its rows, the first of each group, and all of one on request. */
@UiTest(display = true)
class FindPopupTest {
    private final Tasks tasks = new Tasks((thread, failure) -> {
        throw new IllegalStateException(failure);
    });
    private final JFrame frame = new JFrame();
    private final List<String> opened = new ArrayList<>();
    private FindField field;
    private int toPage;

    @BeforeEach
    void show() {
        field = new FindField(
                Texts.in(Locale.UK), tasks, List.of(numbers("run", 214), numbers("part", 3)), () -> toPage++);
        frame.add(field);
        frame.setSize(400, 70);
        frame.setVisible(true);
    }

    @AfterEach
    void close() {
        field.popup().close();
        frame.dispose();
        tasks.close();
    }

    /** Finds things called "run 1" to "run 214" by the end of their names. */
    private Findable numbers(String kind, int count) {
        return new Findable() {
            @Override
            public String group() {
                return kind + "s";
            }

            @Override
            public List<Found> find(String typed, int most) {
                return IntStream.rangeClosed(1, count)
                        .mapToObj(i -> kind + " " + i)
                        .filter(name -> name.endsWith(typed))
                        .limit(most)
                        .map(name -> new Found(name, "", () -> opened.add(name)))
                        .toList();
            }

            @Override
            public String all(int all) {
                return "All " + all + " " + kind + "s…";
            }
        };
    }

    private void type(String text) {
        field.setText(text);
        tasks.awaitIdle();
    }

    private List<String> rows() {
        var model = field.popup().list().getModel();
        return IntStream.range(0, model.getSize())
                .mapToObj(i -> model.getElementAt(i).text())
                .toList();
    }

    private String said() {
        return ((JTextField) field).getAccessibleContext().getAccessibleDescription();
    }

    private int room() {
        return field.popup().popup().getHeight()
                - field.popup().popup().getInsets().top
                - field.popup().popup().getInsets().bottom;
    }

    @Test
    void it_is_as_high_as_its_rows_also_when_fewer_are_left() {
        type("1");
        int many = room();
        type("13");
        assertThat(rows()).containsExactly("runs", "run 13", "run 113", "run 213");
        assertThat(room())
                .isEqualTo(field.popup().list().getPreferredSize().height)
                .isLessThan(many);
        type("113");
        assertThat(room()).isEqualTo(field.popup().list().getPreferredSize().height);
        type("nowhere");
        assertThat(room()).isEqualTo(field.popup().list().getPreferredSize().height);
        assertThat(said()).isEqualTo("Nothing found for 'nowhere'. Try fewer letters.");
    }

    /** An event holds its runs: Enter shows them in the results' place, past what can only be read. */
    @Test
    void enter_on_what_holds_others_shows_them_and_enter_on_one_of_them_goes_there() {
        Found planned = Found.holding("Race 2, planned", "", List.of());
        Found run = new Found("Race 1", "12:00", () -> opened.add("Race 1"));
        field.popup()
                .show(List.of(new FoundGroup(
                        "events", List.of(Found.holding("Round 5", "2 runs…", List.of(planned, run))), "All")));
        field.popup().open();
        assertThat(rows()).containsExactly("Round 5", "Race 2, planned", "Race 1");
        assertThat(said()).isEqualTo("2 found");
        assertThat(opened).isEmpty();
        field.popup().open();
        assertThat(opened).containsExactly("Race 1");
    }

    /** 1, 11, 21, … 211: 22 runs end in 1, and one part. */
    @Test
    void each_group_shows_its_first_eight_and_then_offers_all() {
        type("1");
        assertThat(rows())
                .hasSize(1 + 8 + 1 + 1 + 1)
                .startsWith("runs", "run 1", "run 11")
                .endsWith("run 71", "All 22 runs…", "parts", "part 1");
        assertThat(said()).isEqualTo("23 found, 9 of them shown");
    }

    @Test
    void enter_on_that_row_shows_all_of_the_group_and_goes_on_from_there() {
        type("1");
        for (int i = 0; i < 8; i++) {
            Ui.press(field, Keys.plain(KeyEvent.VK_DOWN));
        }
        assertThat(field.popup().list().getSelectedValue().text()).isEqualTo("All 22 runs…");

        Ui.press(field, Keys.plain(KeyEvent.VK_ENTER));

        assertThat(rows()).hasSize(1 + 22).startsWith("runs", "run 1").endsWith("run 211");
        assertThat(said()).isEqualTo("22 found");
        assertThat(field.getText()).isEqualTo("1");
        assertThat(field.popup().list().getSelectedValue().text()).isEqualTo("run 81");
        Ui.press(field, Keys.plain(KeyEvent.VK_DOWN));
        Ui.press(field, Keys.plain(KeyEvent.VK_ENTER));
        assertThat(opened).containsExactly("run 91");
        assertThat(field.getText()).isEmpty();
    }

    @Test
    void a_group_of_eight_at_most_offers_nothing_more() {
        type("art 2");
        assertThat(rows()).containsExactly("parts", "part 2");
        assertThat(said()).isEqualTo("1 found");
    }

    /** Where one was is gone by the time the search is left, as a row of a list that was read anew: no ring stays behind. */
    @Test
    void escape_gives_the_focus_to_the_page_where_what_had_it_is_gone() {
        JButton before = new JButton("a row");
        frame.add(before, BorderLayout.SOUTH);
        frame.validate();
        field.dispatchEvent(new FocusEvent(field, FocusEvent.FOCUS_GAINED, false, before));
        frame.remove(before);
        Ui.press(field, Keys.plain(KeyEvent.VK_ESCAPE));
        assertThat(toPage).isEqualTo(1);
    }
}
