package witnessmark.desktop.traceview;

import com.formdev.flatlaf.FlatClientProperties;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.function.DoubleConsumer;
import javax.swing.JPanel;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.form.FieldBox;
import witnessmark.desktop.form.FormLayout;
import witnessmark.wording.Texts;

/** By how many seconds what is laid over a trace is drawn later; below 0 earlier. What cannot be read changes nothing. */
final class ShiftField extends JPanel {
    private static final BigDecimal MOST = BigDecimal.valueOf(36_000);

    private final FieldBox box;
    private final transient Texts texts;
    private final transient DoubleConsumer told;
    private boolean loading;

    ShiftField(Texts texts, DoubleConsumer told) {
        super(new FormLayout("insets 0, gap 6, fillx", "[][0::,grow,fill]", "[center]"));
        this.texts = texts;
        this.told = told;
        setOpaque(false);
        box = new FieldBox(Caption.of(texts.get("traceview.shift"))).unit(texts.get("traceview.shift.unit"));
        box.field().setToolTipText(texts.get("traceview.shift.tip"));
        box.onChange(this::read);
        add(box.label());
        add(box.field(), "wmin 0");
    }

    private void read() {
        if (loading) {
            return;
        }
        String typed = box.text().strip().replace(',', '.').replace('\u2212', '-');
        boolean fine = typed.matches("[+-]?\\d{1,6}(\\.\\d{0,3})?")
                && new BigDecimal(typed).abs().compareTo(MOST) <= 0;
        boolean begun = typed.isEmpty() || typed.equals("-") || typed.equals("+");
        box.field().putClientProperty(FlatClientProperties.OUTLINE, fine || begun ? null : "error");
        box.field().setToolTipText(texts.get(fine || begun ? "traceview.shift.tip" : "traceview.shift.unread"));
        if (fine) {
            told.accept(Double.parseDouble(typed));
        }
    }

    void load(double seconds) {
        loading = true;
        box.load(BigDecimal.valueOf(seconds)
                .setScale(2, RoundingMode.HALF_UP)
                .stripTrailingZeros()
                .toPlainString());
        loading = false;
    }

    FieldBox box() {
        return box;
    }
}
