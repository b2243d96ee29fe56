package witnessmark.desktop.lessons;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.stream.Stream;
import javax.swing.AbstractButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import witnessmark.desktop.form.Buttons;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.form.FocusStays;
import witnessmark.desktop.form.FormLayout;
import witnessmark.desktop.form.Lettering;
import witnessmark.desktop.form.SeamMark;
import witnessmark.desktop.form.Styles;
import witnessmark.wording.Texts;

/** What lessons ask of a build, on its page and on its sheet: each with its mark, what it asks and how it is met, its incident and its answer one click away. */
public final class LessonsView {
    private static final String ANSWERS = "answers";

    private final Texts texts;
    private final Consumer<LessonLine> answer;
    private final Consumer<LessonLine> incident;
    private final Supplier<JComponent> first;
    private final JPanel panel =
            new JPanel(new FormLayout("insets 0, gap 6 0, fillx, hidemode 3, wrap", "[24!][0::,grow,fill]"));
    private List<LessonLine> shown = List.of();

    /**
     * @param answer told which lesson is to be answered
     * @param incident told of which lesson the incident is to be seen
     * @param first where the focus goes when what had it is gone
     */
    public LessonsView(
            Texts texts, Consumer<LessonLine> answer, Consumer<LessonLine> incident, Supplier<JComponent> first) {
        this.texts = texts;
        this.answer = answer;
        this.incident = incident;
        this.first = first;
        panel.setOpaque(false);
    }

    public JComponent component() {
        return panel;
    }

    /** The first way to an answer. */
    public Optional<JComponent> firstAnswer() {
        return Stream.of(panel.getComponents())
                .filter(JPanel.class::isInstance)
                .flatMap(row -> Stream.of(((JPanel) row).getComponents()))
                .filter(AbstractButton.class::isInstance)
                .map(JComponent.class::cast)
                .filter(button -> ANSWERS.equals(button.getName()))
                .findFirst();
    }

    public void show(List<LessonLine> lessons) {
        if (!lessons.equals(shown)) {
            shown = List.copyOf(lessons);
            FocusStays.on(panel, this::fill, first);
        }
    }

    private void fill() {
        panel.removeAll();
        for (LessonLine lesson : shown) {
            panel.add(new SeamMark(lesson.state(), lesson.word(), lesson.asks()), "aligny top, gaptop 4");
            panel.add(Lettering.paragraph(lesson.asks(), Styles.FIELD_LABEL), "wmin 0, growx, gaptop 2");
            panel.add(Lettering.paragraph(lesson.stands(), Styles.NOTE), "skip 1, wmin 0, growx");
            panel.add(ways(lesson), "skip 1, wmin 0, gapbottom 4");
        }
        panel.revalidate();
        panel.repaint();
    }

    private JPanel ways(LessonLine lesson) {
        JPanel row = new JPanel(new FormLayout("insets 0, gap 10 0, hidemode 3"));
        row.setOpaque(false);
        if (lesson.incident() != null) {
            var link = Buttons.link(new Caption(lesson.from(), -1), () -> incident.accept(lesson));
            link.setToolTipText(texts.get("lessons.line.pair", lesson.from(), lesson.what()));
            row.add(link);
        }
        if (lesson.answer() != null) {
            var way = Buttons.link(Caption.of(lesson.answer()), () -> answer.accept(lesson));
            way.setName(ANSWERS);
            way.getAccessibleContext()
                    .setAccessibleName(texts.get(
                            "lessons.line.pair", Caption.of(lesson.answer()).text(), lesson.asks()));
            row.add(way);
        }
        return row;
    }
}
