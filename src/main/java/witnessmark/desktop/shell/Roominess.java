package witnessmark.desktop.shell;

import witnessmark.desktop.form.FormLayout;

/** The edges around a page, which go down to little where the window is so low that they would take the page's rows. */
final class Roominess {
    /** Below this height, in unscaled pixels, every row counts: 768 pixels at more than one and a half times the size. */
    private static final int ROOMY_FROM = 500;

    private final FormLayout top = new FormLayout("", "[][0::,grow,fill][shrinkprio 200]", "[32!]");
    private final FormLayout body = new FormLayout("", "[grow,fill][fill]", "[0::,grow,fill]");
    private final FormLayout foot = new FormLayout("", "[0::,grow,fill]");
    private boolean low;

    Roominess() {
        edges();
    }

    /** @return whether the edges are others now */
    boolean fit(int height) {
        boolean now = height > 0 && height < ROOMY_FROM;
        boolean other = now != low;
        low = now;
        if (other) {
            edges();
        }
        return other;
    }

    boolean isLow() {
        return low;
    }

    FormLayout top() {
        return top;
    }

    FormLayout body() {
        return body;
    }

    FormLayout foot() {
        return foot;
    }

    private void edges() {
        top.setLayoutConstraints((low ? "insets 5 22 4 22" : "insets 16 22 10 22") + ", gap 0, fillx");
        body.setLayoutConstraints((low ? "insets 0 22 4 22" : "insets 0 22 18 22") + ", gap 0, fill, hidemode 3");
        foot.setLayoutConstraints((low ? "insets 0 22 2 22" : "insets 4 22 8 22") + ", gap 0, fillx, hidemode 3, wrap");
    }
}
