package witnessmark.desktop.season;

import com.formdev.flatlaf.util.UIScale;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import javax.swing.JCheckBox;
import javax.swing.JPanel;
import witnessmark.cost.result.Switches;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.form.FormLayout;
import witnessmark.desktop.form.Lettering;
import witnessmark.wording.Texts;

/** What the total takes in, box by box. */
final class SwitchBoxes extends JPanel {
    private static final List<String> NAMES = List.of("labour", "missed", "spoiled", "allocated", "planned");

    private static final int GAP = 22;
    private static final String LAYOUT = "insets 0, gap " + GAP + " 2, wrap ";

    private final List<JCheckBox> boxes = new ArrayList<>();

    SwitchBoxes(Texts texts, Runnable changed) {
        super(new FormLayout(LAYOUT + 2, "[][]"));
        setOpaque(false);
        for (String name : NAMES) {
            Caption caption = Caption.of(texts.get("season.switch." + name));
            JCheckBox box = Lettering.plain(new JCheckBox(caption.text()));
            box.setOpaque(false);
            if (caption.mnemonic() != 0) {
                box.setMnemonic(caption.mnemonic());
                box.setDisplayedMnemonicIndex(caption.letter());
            }
            box.setToolTipText(texts.get("season.switch." + name + ".tip"));
            box.addActionListener(e -> changed.run());
            boxes.add(box);
            add(box, "hmin 24");
        }
    }

    /** Two columns where there is room for them, else one: no word is cut. */
    @Override
    public void doLayout() {
        boolean two = getWidth() >= widest(0) + UIScale.scale(GAP) + widest(1);
        String wanted = LAYOUT + (two ? 2 : 1);
        FormLayout layout = (FormLayout) getLayout();
        if (!wanted.equals(layout.getLayoutConstraints())) {
            layout.setLayoutConstraints(wanted);
            revalidate();
        }
        super.doLayout();
    }

    private int widest(int column) {
        return IntStream.range(0, boxes.size())
                .filter(i -> i % 2 == column)
                .map(i -> boxes.get(i).getPreferredSize().width)
                .max()
                .orElse(0);
    }

    void show(Switches switches) {
        List<Boolean> on = List.of(
                switches.labour(), switches.missed(), switches.spoiled(), switches.allocated(), switches.planned());
        IntStream.range(0, NAMES.size()).forEach(i -> boxes.get(i).setSelected(on.get(i)));
    }

    Switches chosen() {
        return of(boxes.stream().map(JCheckBox::isSelected).toList());
    }

    List<JCheckBox> boxes() {
        return boxes;
    }

    /** As text, to be remembered. */
    static String state(Switches switches) {
        List<Boolean> on = List.of(
                switches.labour(), switches.missed(), switches.spoiled(), switches.allocated(), switches.planned());
        return IntStream.range(0, NAMES.size())
                .filter(on::get)
                .mapToObj(NAMES::get)
                .collect(Collectors.joining(",", "on:", ""));
    }

    /** What {@link #state} said; the usual ones for any other text. */
    static Switches restored(String state) {
        if (!state.startsWith("on:")) {
            return Switches.USUAL;
        }
        List<String> on = List.of(state.substring(3).split(",", -1));
        return of(NAMES.stream().map(on::contains).toList());
    }

    private static Switches of(List<Boolean> on) {
        return new Switches(on.get(0), on.get(1), on.get(2), on.get(3), on.get(4));
    }
}
