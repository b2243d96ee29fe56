package witnessmark.desktop.form;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Rectangle;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JTextField;
import javax.swing.SwingUtilities;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import witnessmark.desktop.testing.Stage;
import witnessmark.desktop.testing.UiTest;

/** What is below the fold comes into view whole, whatever kind of input it is. */
@UiTest
class ScrollPageTest {
    private static final int FIELDS = 60;

    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void what_takes_the_focus_comes_into_view(boolean typed) {
        JPanel many = new JPanel(new FormLayout("wrap"));
        JComponent last = typed ? new JTextField(8) : new JComboBox<>(new String[] {"one"});
        for (int i = 1; i < FIELDS; i++) {
            many.add(new JTextField(8));
        }
        many.add(last);
        ScrollPage page = new ScrollPage(many);
        Stage.lay(page, 400, 300);
        assertThat(inView(page, last)).isFalse();

        page.bringIntoView(last);

        assertThat(inView(page, last)).isTrue();
    }

    private static boolean inView(ScrollPage page, JComponent component) {
        Rectangle there = SwingUtilities.convertRectangle(
                component.getParent(), component.getBounds(), page.getViewport().getView());
        return page.getViewport().getViewRect().contains(there);
    }
}
