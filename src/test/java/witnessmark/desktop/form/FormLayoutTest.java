package witnessmark.desktop.form;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Dimension;
import java.awt.LayoutManager;
import java.awt.Rectangle;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BiFunction;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import witnessmark.desktop.testing.Stage;
import witnessmark.desktop.testing.UiTest;

/** Forms within forms come out as MigLayout itself lays them out, which is the measure here, in a part of its time. */
@UiTest
class FormLayoutTest {
    private static final String WORDS = "Taken off the engine on the bench and laid beside the others of its set";

    /** A form of labels, wrapped text and forms, to a depth. */
    private static JPanel form(Random random, int depth, BiFunction<String, String, LayoutManager> layout) {
        JPanel form = new JPanel(layout.apply(
                random.nextBoolean() ? "insets 4, fillx, wrap 2" : "insets 0, fillx, hidemode 3, wrap 1",
                random.nextBoolean() ? "[][0::,grow,fill]" : "[0::,grow,fill][0::]"));
        int parts = 1 + random.nextInt(4);
        for (int i = 0; i < parts; i++) {
            String words = WORDS.substring(0, 8 + random.nextInt(WORDS.length() - 8));
            switch (random.nextInt(depth > 0 ? 4 : 2)) {
                case 0 -> form.add(new JLabel(words));
                case 1 -> form.add(Lettering.paragraph(words, "note"), random.nextBoolean() ? "growx" : "wmin 0, wrap");
                default -> form.add(form(random, depth - 1, layout), random.nextBoolean() ? "growx, wmin 0" : "");
            }
        }
        return form;
    }

    private static List<Rectangle> bounds(Component all) {
        List<Rectangle> bounds = new ArrayList<>();
        Stage.walk(all, each -> bounds.add(each.getBounds()));
        return bounds;
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20})
    void a_form_comes_out_as_miglayout_lays_it_out_at_any_width_and_after_its_words_changed(long seed) {
        JPanel plain = form(new Random(seed), 3, MigLayout::new);
        JPanel once = form(new Random(seed), 3, FormLayout::new);
        for (int width : new int[] {900, 320, 1_400}) {
            assertThat(bounds(Stage.lay(once, width, 600))).isEqualTo(bounds(Stage.lay(plain, width, 600)));
            for (JPanel form : List.of(plain, once)) {
                Stage.walk(form, each -> {
                    if (each instanceof JLabel label) {
                        label.setText(label.getText() + " again");
                    }
                });
            }
        }
    }

    /** MigLayout itself asks here some 3 to the power of the depth times. */
    @Test
    void what_lies_deep_is_measured_a_few_times_however_deep_it_lies() {
        AtomicInteger asked = new AtomicInteger();
        JPanel form = new JPanel();
        form.setLayout(new FormLayout("fillx"));
        form.add(Lettering.paragraph(WORDS, "note"), "growx");
        form.add(new JPanel() {
            @Override
            public Dimension getPreferredSize() {
                asked.incrementAndGet();
                return new Dimension(20, 20);
            }
        });
        for (int depth = 0; depth < 8; depth++) {
            JPanel around = new JPanel(new FormLayout("fillx"));
            around.add(form, "growx");
            form = around;
        }
        form.getPreferredSize();
        assertThat(asked.get()).isBetween(1, 20);
    }
}
