package witnessmark.desktop.shell;

import java.awt.BorderLayout;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JComponent;
import javax.swing.JPanel;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.form.Kept;

/** A place's own page, or another that for a while stands in its place. */
public final class AsideStage {
    private final Desk desk;
    private final PlaceId place;
    private final JComponent own;
    private final Consumer<PlaceId> come;
    private final JPanel page = new JPanel(new BorderLayout());
    private @Nullable Aside aside;

    /** While another page is put up, asking for the place does not take it away. */
    private boolean steppingAside;

    /**
     * @param own the place's own page
     * @param come brings the place into view when another page is put up
     */
    public AsideStage(Desk desk, PlaceId place, JComponent own, Consumer<PlaceId> come) {
        this.desk = desk;
        this.place = place;
        this.come = come;
        this.own = own;
        page.setOpaque(false);
        page.add(own);
    }

    public JComponent component() {
        return page;
    }

    /** What stands in the place of the page, if anything does. */
    public Optional<Aside> shown() {
        return Optional.ofNullable(aside);
    }

    /** Puts another page up, the focus in it. */
    public void show(Aside other) {
        Aside before = aside;
        Kept.leaves(before == null ? own : before.component());
        aside = other;
        put(other.component());
        steppingAside = true;
        come.accept(place);
        steppingAside = false;
        desk.title(place, other.heading());
        other.firstFocus().requestFocusInWindow();
        if (before != null && before != other) {
            before.gone();
        }
    }

    /** Brings the place's own page back; whether another stood there. */
    public boolean dismiss() {
        Aside before = aside;
        if (before == null) {
            return false;
        }
        Kept.leaves(before.component());
        aside = null;
        put(own);
        before.gone();
        return true;
    }

    /** Leaves the page that stands there for what was in view before it; whether that is the place's own page. */
    public boolean leave() {
        return dismiss() && !desk.comeBack(place);
    }

    /** Whether the place itself is asked for, and not on the way to a page that stands in it. */
    public boolean isAskedFor() {
        return !steppingAside;
    }

    private void put(JComponent shown) {
        page.removeAll();
        page.add(shown);
        Kept.returns(shown);
        page.revalidate();
        page.repaint();
    }
}
