package witnessmark.desktop.testing;

import java.awt.Color;
import java.awt.Component;
import java.util.ArrayList;
import java.util.List;
import javax.swing.AbstractButton;
import javax.swing.JLabel;
import javax.swing.text.JTextComponent;

/**
 * Contrast by the formula of WCAG 2.2: relative luminance of sRGB, (lighter + 0.05) / (darker + 0.05).
 *
 * @see <a href="https://www.w3.org/TR/WCAG22/#dfn-contrast-ratio">WCAG 2.2, contrast ratio</a>
 */
public final class Contrast {
    private static final double TEXT = 4.5;
    private static final double LARGE = 3.0;

    private Contrast() {}

    public static double of(Color one, Color other) {
        double a = luminance(one);
        double b = luminance(other);
        return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
    }

    /** Texts on the page with too little contrast against what they stand on, each as a sentence. */
    public static List<String> tooLow(Component root) {
        List<String> faults = new ArrayList<>();
        for (Component component : Stage.visible(root)) {
            boolean text = component instanceof JLabel
                    || component instanceof JTextComponent
                    || component instanceof AbstractButton;
            if (!text || Words.value(component).isBlank()) {
                continue;
            }
            double wanted = component.getFont().getSize() >= 24
                            || (component.getFont().isBold()
                                    && component.getFont().getSize() >= 19)
                    ? LARGE
                    : TEXT;
            double ratio = of(component.getForeground(), ground(component));
            if (ratio < wanted) {
                faults.add("'%s' has %.2f to 1".formatted(Words.value(component), ratio));
            }
        }
        return faults;
    }

    /** The colour behind a component: its own, or that of the first thing under it that is not seen through. */
    static Color ground(Component component) {
        for (Component at = component; at != null; at = at.getParent()) {
            if (fills(at) || at.getParent() == null) {
                return at.getBackground();
            }
        }
        return component.getBackground();
    }

    private static boolean fills(Component component) {
        if (component instanceof AbstractButton button) {
            return button.isContentAreaFilled() && button.getClientProperty("JButton.buttonType") == null;
        }
        return component.isOpaque();
    }

    private static double luminance(Color colour) {
        return 0.2126 * linear(colour.getRed())
                + 0.7152 * linear(colour.getGreen())
                + 0.0722 * linear(colour.getBlue());
    }

    private static double linear(int channel) {
        double c = channel / 255.0;
        return c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
    }
}
