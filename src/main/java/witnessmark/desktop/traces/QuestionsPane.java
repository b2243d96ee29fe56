package witnessmark.desktop.traces;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.form.ChoiceBox;
import witnessmark.desktop.form.FieldBox;
import witnessmark.desktop.form.FocusStays;
import witnessmark.desktop.form.FormLayout;
import witnessmark.desktop.form.Lettering;
import witnessmark.desktop.form.Sheet;
import witnessmark.desktop.form.Styles;
import witnessmark.trace.result.Question;
import witnessmark.wording.Texts;

/** What a file leaves open, each question with its answer beside it. What was answered stays and can be changed. */
final class QuestionsPane {
    private final Texts texts;
    private final UnderstoodWords words;
    private final BiConsumer<Question, Object> answer;
    private final Sheet sheet = new Sheet("hidemode 3, fillx, wrap 2", "[0::,grow,fill]16[260!,fill]", "");
    private final Map<Question, Row> rows = new HashMap<>();
    private List<Question> shown = List.of();
    private @Nullable TraceModel of;

    /** A question on the sheet. */
    private record Row(JTextArea sentence, JComponent input, JComponent box) {}

    QuestionsPane(Texts texts, UnderstoodWords words, BiConsumer<Question, Object> answer) {
        this.texts = texts;
        this.words = words;
        this.answer = answer;
        sheet.setVisible(false);
    }

    JComponent component() {
        return sheet;
    }

    /** The input of the first question that is open. */
    Optional<JComponent> firstOpen(TraceModel model) {
        return model.asked().stream()
                .filter(model::isOpen)
                .findFirst()
                .map(question -> rows.get(question))
                .map(Row::input);
    }

    void show(TraceModel model) {
        if (model != of) { // another file may ask the same
            of = model;
            rows.clear();
            shown = List.of();
        }
        List<Question> asked = model.asked();
        sheet.setVisible(!asked.isEmpty());
        if (!asked.equals(shown)) {
            shown = new ArrayList<>(asked);
            FocusStays.on(sheet, () -> layOut(model), () -> sheet);
        }
        for (Question question : asked) {
            boolean open = model.isOpen(question);
            Row row = rows.get(question);
            if (row != null) {
                Styles.as(open ? Styles.STRONG : Styles.FIELD_LABEL, row.sentence());
            }
        }
    }

    private void layOut(TraceModel model) {
        sheet.removeAll();
        rows.keySet().retainAll(shown);
        for (Question question : shown) {
            Row row = rows.computeIfAbsent(question, asked -> row(asked, model));
            JPanel sentence = new JPanel(new FormLayout("insets 14 0 0 0, fillx", "[0::,grow,fill]"));
            sentence.setOpaque(false);
            sentence.add(row.sentence(), "growx, wmin 0");
            sheet.add(sentence, "growx, wmin 0");
            sheet.add(row.box(), "growx, wmin 0");
        }
        sheet.revalidate();
        sheet.repaint();
    }

    private Row row(Question question, TraceModel model) {
        JTextArea sentence = Lettering.paragraph(words.question(question), Styles.STRONG);
        Caption caption =
                Caption.of(texts.get("traces.answer." + question.kind().name().toLowerCase(java.util.Locale.ROOT)));
        List<Object> choices = model.choices(question);
        if (choices.isEmpty()) {
            FieldBox field = new FieldBox(caption);
            field.load(model.answer(question).map(this::plain).orElse(""));
            field.onEnter(() -> typed(question, field));
            field.onLeave(() -> typed(question, field));
            return new Row(sentence, field.field(), field);
        }
        ChoiceBox<Object> box = new ChoiceBox<>(texts, caption, choice -> words.choice(question.kind(), choice));
        box.load(choices, model.answer(question).orElse(null));
        box.onChange(() -> {
            Object chosen = box.chosen();
            if (chosen != null) {
                answer.accept(question, chosen);
            }
        });
        return new Row(sentence, box.combo(), box);
    }

    private String plain(Object answer) {
        return words.plain((Double) answer);
    }

    private void typed(Question question, FieldBox field) {
        SamplesASecond.read(field, texts).ifPresent(rate -> answer.accept(question, rate));
    }
}
