package witnessmark.desktop.runsheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.BorderLayout;
import java.util.List;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JTextField;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import witnessmark.desktop.shell.Aside;
import witnessmark.desktop.shell.PlaceId;
import witnessmark.desktop.shell.Visit;
import witnessmark.desktop.testing.UiTest;
import witnessmark.domain.Id;
import witnessmark.domain.Run;
import witnessmark.logbook.run.RunField;
import witnessmark.logbook.run.SampleBook;

/** Another page stands in the place of the run sheet for a while; what was there is there again afterwards. */
@UiTest
class AsideOfRunSheetTest {
    private final RunSheetStage stage = new RunSheetStage(SampleBook.on(SampleBook.OPENING));
    private final Another another = new Another();

    @AfterEach
    void close() {
        stage.tasks.awaitIdle();
        stage.close();
    }

    @Test
    void it_is_seen_with_its_own_help_and_focus_until_the_place_is_asked_for_again() {
        stage.open();
        stage.place.stepAside(another);

        assertThat(isSeen()).isTrue();
        assertThat(stage.place.help()).containsExactly("help.another");
        assertThat(stage.place.firstFocus()).isSameAs(another.field);

        stage.pane.go(Visit.to(PlaceId.RUN_SHEET));
        stage.tasks.awaitIdle();
        assertThat(isSeen()).isFalse();
        assertThat(stage.place.help()).containsExactly(PlaceId.RUN_SHEET.helpKey());
    }

    @Test
    void it_is_still_there_for_who_was_elsewhere_and_is_told_what_changed() {
        stage.open();
        stage.place.stepAside(another);
        stage.pane.go(Visit.to(PlaceId.BEFORE_WE_GO));
        int before = another.told;
        stage.pane.go(Visit.to(PlaceId.RUN_SHEET));
        stage.tasks.awaitIdle();

        assertThat(isSeen()).isTrue();
        assertThat(another.told).isGreaterThan(before);
    }

    @Test
    void the_written_run_it_was_called_from_is_in_view_again() {
        Id<Run> run = stage.run("K03", "2026-07-05", "Race 2");
        stage.open(run);
        stage.place.stepAside(another);
        assertThat(isSeen()).isTrue();

        stage.place.dismiss();
        stage.tasks.awaitIdle();
        assertThat(isSeen()).isFalse();
        assertThat(stage.place.isWritten()).isTrue();
        assertThat(stage.place.heading()).contains("Race 2");
    }

    @Test
    void a_run_that_is_opened_takes_its_place_back_and_what_was_typed_meanwhile_stays() {
        stage.open();
        stage.put(RunField.RUNNING, "27:30");
        stage.place.stepAside(another);
        stage.open(stage.run("K03", "2026-07-05", "Race 2"));

        assertThat(isSeen()).isFalse();
        assertThat(stage.place.isWritten()).isTrue();
        assertThat(stage.model().texts()).containsEntry(RunField.RUNNING, "27:30");
    }

    private boolean isSeen() {
        return SwingUtilities.isDescendingFrom(another.page, stage.pane);
    }

    private static final class Another implements Aside {
        final JPanel page = new JPanel(new BorderLayout());
        final JTextField field = new JTextField();
        int told;

        Another() {
            page.add(field);
        }

        @Override
        public String heading() {
            return "Another";
        }

        @Override
        public JComponent component() {
            return page;
        }

        @Override
        public JComponent firstFocus() {
            return field;
        }

        @Override
        public List<String> help() {
            return List.of("help.another");
        }

        @Override
        public void changed() {
            told++;
        }
    }
}
