package witnessmark.desktop.bench;

import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JPanel;
import witnessmark.desktop.form.Buttons;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.form.FieldBox;
import witnessmark.desktop.form.FormLayout;
import witnessmark.desktop.form.Lettering;
import witnessmark.desktop.form.Styles;
import witnessmark.domain.MeasureKind;
import witnessmark.quantity.typed.MeasureUnit;
import witnessmark.quantity.typed.Typed;
import witnessmark.quantity.typed.TypedMeasure;
import witnessmark.wording.Texts;

/** What would put a figure right: a wanted figure, and every way to it; a way that is shut says why. */
final class WaysView extends JPanel {
    private final transient Texts texts;
    private final MeasureKind kind;
    private final transient BiConsumer<Long, Consumer<List<Way>>> asking;
    private final FieldBox wanted;
    private final JButton ask;
    private final JPanel found = new JPanel(new FormLayout("insets 0, gap 0 4, fillx, wrap", "[0::,grow,fill]"));

    /**
     * A way in words.
     *
     * @param possible whether nothing that is written stands against it
     */
    record Way(boolean possible, String words) {}

    /** @param asking works out the ways to a figure in whole parts, and tells of them */
    WaysView(Texts texts, MeasureKind kind, AnswerLine.Wanted usual, BiConsumer<Long, Consumer<List<Way>>> asking) {
        super(new FormLayout("insets 0, gap 8 4, fillx", "[0:110:,fill][0::,grow]"));
        this.texts = texts;
        this.kind = kind;
        this.asking = asking;
        setOpaque(false);
        found.setOpaque(false);
        wanted = new FieldBox(Caption.of(texts.get("bench.ways.wanted"))).unit(usual.unit());
        wanted.load(usual.text());
        wanted.onEnter(this::look);
        ask = Buttons.plain(Caption.of(texts.get("bench.ways")), this::look);
        add(wanted, "wmin 0");
        add(ask, "aligny center, wrap");
        add(found, "span 2, growx, wmin 0");
    }

    private void look() {
        MeasureUnit own = MeasureUnit.shown(kind.dimension());
        Typed<TypedMeasure> typed = TypedMeasure.read(wanted.text(), own, false);
        Optional<TypedMeasure> figure = typed.only();
        if (figure.isEmpty()) {
            String example = typed instanceof Typed.Unreadable<TypedMeasure> wrong ? wrong.example() : "";
            wanted.stop(texts.get("bench.say.unreadable", wanted.text(), example));
            wanted.takeFocus();
            return;
        }
        wanted.note("");
        asking.accept(figure.get().parts(), this::show);
    }

    private void show(List<Way> ways) {
        found.removeAll();
        for (Way way : ways) {
            found.add(
                    Lettering.paragraph(way.words(), way.possible() ? Styles.FIELD_LABEL : Styles.NOTE),
                    "growx, wmin 0");
        }
        found.add(
                Lettering.paragraph(texts.get(ways.isEmpty() ? "bench.ways.none" : "fit.caution.ways"), Styles.NOTE),
                "growx, wmin 0");
        found.revalidate();
        found.repaint();
    }

    FieldBox wanted() {
        return wanted;
    }
}
