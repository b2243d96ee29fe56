package witnessmark.desktop.start;

import java.awt.event.KeyEvent;
import javax.swing.JComponent;
import javax.swing.JPanel;
import witnessmark.desktop.form.Buttons;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.form.FormKeys;
import witnessmark.desktop.form.FormLayout;
import witnessmark.desktop.form.Keys;
import witnessmark.desktop.form.ScrollPage;
import witnessmark.desktop.form.Sheet;

/** What pages that ask something share: Cancel and one main button under the sheet, with Esc and Ctrl+Enter for them. */
final class Asking {
    private final JPanel page = new JPanel(new FormLayout("insets 0, fill", "[0::,grow,fill]", "[grow,fill]"));

    /**
     * @param sheet with all its questions; the buttons are added under them
     * @param main the words of the main button
     * @param answer what it does
     * @param close takes the page away
     */
    Asking(StartContext context, Sheet sheet, String main, Runnable answer, Runnable close) {
        JPanel foot = new JPanel(new FormLayout("insets 0, gap 8", "push[][]"));
        foot.setOpaque(false);
        foot.add(Buttons.plain(Caption.of(context.texts().get("beforewego.cancel")), close), "tag cancel");
        foot.add(Buttons.main(Caption.of(main), Keys.menu(KeyEvent.VK_ENTER), answer), "tag ok");
        sheet.add(foot, "growx, gaptop 10, wrap");
        page.setOpaque(false);
        page.add(new ScrollPage(sheet), "grow");
        FormKeys.bindWithin(page, Keys.menu(KeyEvent.VK_ENTER), "answer", answer);
        FormKeys.bindWithin(page, Keys.plain(KeyEvent.VK_ESCAPE), "cancel", close);
    }

    JComponent component() {
        return page;
    }
}
