package witnessmark.desktop.bench;

import java.awt.Component;
import java.awt.Container;
import java.awt.ContainerOrderFocusTraversalPolicy;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.form.Buttons;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.form.FormLayout;
import witnessmark.desktop.form.Hairline;
import witnessmark.desktop.form.Lettering;
import witnessmark.desktop.form.Sheet;
import witnessmark.desktop.form.Styles;
import witnessmark.domain.MeasurePlace;
import witnessmark.wording.Texts;

/** The sheet itself: every step with its boxes. Tab goes over the fields in measuring order, wherever they stand. */
final class GridsView {
    private final Sheet sheet = new Sheet("fillx, hidemode 3, wrap", "[0::,grow,fill]", "");
    private final Map<MeasurePlace, FigureField> fields = new LinkedHashMap<>();
    private final JPanel lacks = new JPanel(new FormLayout("insets 0 0 6 0, gap 10 2, fillx", "[0::,grow,fill][]"));
    private final JTextArea lacking = Lettering.paragraph("", Styles.NOTE);
    private final Told told;
    private List<BenchLines.Step> shown = List.of();
    private boolean editable = true;
    private boolean loading;
    private @Nullable FigureField inHand;

    /** Who hears of the fields. */
    interface Told {
        void arrived(MeasurePlace place);

        void left(MeasurePlace place);

        void typed(MeasurePlace place, String text);
    }

    GridsView(Texts texts, Told told) {
        this.told = told;
        lacks.setOpaque(false);
        lacks.add(lacking, "wmin 0");
        lacks.setVisible(false);
        sheet.getAccessibleContext().setAccessibleName(texts.get("bench.sheet"));
        sheet.setFocusTraversalPolicyProvider(true);
        sheet.setFocusTraversalPolicy(new MeasuringOrder());
    }

    Sheet component() {
        return sheet;
    }

    /** Builds the boxes, unless they are the same: then nothing moves, and the caret stays. */
    void show(List<BenchLines.Step> steps) {
        if (steps.equals(shown)) {
            return;
        }
        shown = steps;
        fields.clear();
        inHand = null;
        int wide = blocksWidth();
        sheet.removeAll();
        sheet.add(lacks, "growx, wmin 0");
        for (BenchLines.Step step : steps) {
            sheet.add(Lettering.line(step.heading(), Styles.SECTION), fields.isEmpty() ? "" : "gaptop 10");
            sheet.add(new Hairline(), "growx, wmin 0");
            Blocks blocks = new Blocks(wide);
            step.grids().forEach(grid -> blocks.add(box(grid)));
            sheet.add(blocks, "growx, wmin 0, gaptop 4");
        }
        editable(editable);
        sheet.revalidate();
        sheet.repaint();
    }

    /** Says which parts are not in the engine; nothing where all are. */
    void lacking(String sentence) {
        lacking.setText(sentence);
        lacks.setVisible(!sentence.isEmpty());
    }

    /** Puts a way to where they are fitted beside it. */
    void leadsTo(String words, Runnable page) {
        lacks.add(Buttons.link(new Caption(words, -1), page), "aligny top");
    }

    /** How wide the boxes are laid out now; 0 before they ever were. */
    private int blocksWidth() {
        return Stream.of(sheet.getComponents())
                .filter(Blocks.class::isInstance)
                .mapToInt(Component::getWidth)
                .max()
                .orElse(0);
    }

    /** Says for each field what stands in it and how. */
    void fill(Consumer<FigureField> each) {
        loading = true;
        fields.values().forEach(each);
        loading = false;
    }

    void editable(boolean yes) {
        editable = yes;
        fields.values().forEach(field -> field.setEditable(yes));
    }

    Optional<FigureField> field(MeasurePlace place) {
        return Optional.ofNullable(fields.get(place));
    }

    /** The field that had the caret last. */
    Optional<FigureField> inHand() {
        return Optional.ofNullable(inHand);
    }

    /** Takes a field in hand that gets the caret as soon as it can. */
    void hold(FigureField field) {
        inHand = field;
    }

    /** The fields in measuring order. */
    List<FigureField> fields() {
        return List.copyOf(fields.values());
    }

    private JPanel box(BenchLines.Grid grid) {
        String wide = grid.words() ? "[112::,fill]" : "[84::,fill]";
        JPanel box =
                new JPanel(new FormLayout("insets 0, gap 4 3, hidemode 3", "[18::]6" + wide.repeat(grid.width()), ""));
        box.setOpaque(false);
        int span = 1 + grid.width();
        box.add(Lettering.line(grid.heading(), Styles.STRONG), "span " + span + ", wrap 1");
        box.add(Lettering.cutLine(grid.unit(), Styles.NOTE), "span " + span + ", wmin 0, wmax 320, wrap");
        for (int i = 0; i < grid.columns().size(); i++) {
            box.add(Lettering.figure(grid.columns().get(i), Styles.NOTE), "cell " + (i + 1) + " 2, gapright 4");
        }
        int row = grid.columns().isEmpty() ? 2 : 3;
        for (BenchLines.Row line : grid.rows()) {
            JLabel label = Lettering.line(line.label(), Styles.FIELD_LABEL);
            box.add(label, "cell 0 " + row);
            for (BenchLines.Cell cell : line.cells()) {
                box.add(field(cell), "cell " + (cell.column() + 1) + " " + row + ", h 28::");
            }
            row++;
        }
        return box;
    }

    private FigureField field(BenchLines.Cell cell) {
        FigureField field = new FigureField(cell);
        fields.put(cell.place(), field);
        field.addFocusListener(new FocusAdapter() {
            @Override
            public void focusGained(FocusEvent e) {
                inHand = field;
                told.arrived(cell.place());
            }

            @Override
            public void focusLost(FocusEvent e) {
                if (!e.isTemporary()) {
                    told.left(cell.place());
                }
            }
        });
        field.getDocument().addDocumentListener(new DocumentListener() {
            @Override
            public void insertUpdate(DocumentEvent e) {
                changed();
            }

            @Override
            public void removeUpdate(DocumentEvent e) {
                changed();
            }

            @Override
            public void changedUpdate(DocumentEvent e) {
                // attributes only: the text is the same
            }

            private void changed() {
                if (!loading) {
                    told.typed(cell.place(), field.getText());
                }
            }
        });
        return field;
    }

    /** Steps, boxes, rows and fields are put in in measuring order. */
    private final class MeasuringOrder extends ContainerOrderFocusTraversalPolicy {
        @Override
        protected boolean accept(@Nullable Component component) {
            return component instanceof FigureField && super.accept(component);
        }

        /** Who comes from what holds for the figures goes on where he was. */
        @Override
        public @Nullable Component getDefaultComponent(Container sheet) {
            FigureField last = inHand;
            return last != null && last.isShowing() ? last : super.getDefaultComponent(sheet);
        }
    }
}
