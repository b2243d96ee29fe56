package witnessmark.desktop.engines;

import java.util.List;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.form.Buttons;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.form.FormLayout;
import witnessmark.desktop.form.Lettering;
import witnessmark.desktop.form.SeamIcon;
import witnessmark.desktop.form.SeamState;
import witnessmark.desktop.form.Styles;

/** The heading of an engine: number, where and what stands worst; under it design, since rebuild, since skim. */
final class EngineHead extends JPanel {
    private final JLabel number = Lettering.cutLine("", Styles.SECTION);
    private final JLabel where = Lettering.cutLine("", Styles.FIELD_LABEL);
    private final JLabel design = Lettering.cutLine("", Styles.NOTE);
    private final JButton sinceRebuild;
    private final JButton sinceSkim;
    private final JLabel mark = new JLabel();
    private final JLabel worst = Lettering.cutLine("", Styles.STRONG);
    private @Nullable Shown rebuild;
    private @Nullable Shown skim;

    /**
     * @param open told the figure that is opened
     * @param ways what the engine leads to, in the order they stand
     */
    EngineHead(Consumer<Shown> open, List<JButton> ways) {
        super(new FormLayout("insets 0, gap 0, fillx, hidemode 3, novisualpadding", "[0::,grow,fill]", "[]0[]"));
        setOpaque(false);
        sinceRebuild = Buttons.link(new Caption("", -1), () -> open(rebuild, open));
        sinceSkim = Buttons.link(new Caption("", -1), () -> open(skim, open));
        JPanel is = line("[0:pref:]10[0:pref:,shrinkprio 200]push[]6[0:pref:]");
        is.add(number, "wmin 0");
        is.add(where, "wmin 0");
        is.add(mark);
        is.add(worst, "wmin 0");
        JPanel has = line("[0:pref:]6[]6[]push[]");
        has.add(design, "wmin 0");
        has.add(sinceRebuild);
        has.add(sinceSkim);
        ways.forEach(way -> has.add(way, "cell 3 0"));
        add(is, "wmin 0, wrap");
        add(has, "wmin 0");
    }

    void show(SheetLines lines) {
        number.setText(lines.number());
        where.setText(lines.where());
        design.setText(lines.design());
        rebuild = lines.sinceRebuild();
        skim = lines.sinceSkim();
        sinceRebuild.setText(lines.sinceRebuild().text());
        Shown shownSkim = lines.sinceSkim();
        sinceSkim.setVisible(shownSkim != null);
        sinceSkim.setText(shownSkim == null ? "" : shownSkim.text());
        SeamState state = lines.state();
        mark.setIcon(new SeamIcon(state, 20));
        mark.getAccessibleContext().setAccessibleName(lines.worst());
        worst.setText(lines.worst());
        Styles.as(state.style(), worst);
        revalidate();
    }

    JButton sinceRebuildButton() {
        return sinceRebuild;
    }

    private static JPanel line(String columns) {
        JPanel line = new JPanel(new FormLayout("insets 0, gap 0, fillx, hidemode 3", columns, "[center]"));
        line.setOpaque(false);
        return line;
    }

    private static void open(@Nullable Shown shown, Consumer<Shown> open) {
        if (shown != null) {
            open.accept(shown);
        }
    }
}
