package witnessmark.desktop.cases;

import java.awt.Rectangle;
import java.util.Locale;
import java.util.function.Consumer;
import javax.swing.JComponent;
import javax.swing.JMenuItem;
import javax.swing.JPopupMenu;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.form.Lettering;
import witnessmark.domain.Speaks;
import witnessmark.wording.Texts;

/** Everything that can be done with a cell, in a menu under it. */
final class WeighMenu {
    private final Texts texts;
    private final JPopupMenu menu = new JPopupMenu();

    WeighMenu(Texts texts) {
        this.texts = texts;
    }

    WeighMenu weigh(Consumer<Speaks> told) {
        for (Speaks speaks : Speaks.values()) {
            way("cases.menu." + speaks.name().toLowerCase(Locale.ROOT), true, () -> told.accept(speaks));
        }
        menu.addSeparator();
        return this;
    }

    /** @param can whether there is anything for it to do */
    WeighMenu way(String key, boolean can, Runnable work) {
        JMenuItem item = Lettering.plain(new JMenuItem());
        Caption.of(texts.get(key)).on(item);
        item.setEnabled(can);
        item.addActionListener(e -> work.run());
        menu.add(item);
        return this;
    }

    void show(JComponent under, Rectangle cell) {
        menu.show(under, cell.x, cell.y + cell.height);
    }
}
