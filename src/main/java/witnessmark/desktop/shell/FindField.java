package witnessmark.desktop.shell;

import com.formdev.flatlaf.FlatClientProperties;
import com.formdev.flatlaf.extras.FlatSVGIcon;
import com.formdev.flatlaf.ui.FlatEmptyBorder;
import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.KeyEvent;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JLabel;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.form.FormKeys;
import witnessmark.desktop.form.Keys;
import witnessmark.desktop.form.Lettering;
import witnessmark.desktop.form.Palette;
import witnessmark.desktop.form.Styles;
import witnessmark.desktop.form.TextUndo;
import witnessmark.desktop.task.Later;
import witnessmark.desktop.task.Latest;
import witnessmark.desktop.task.Tasks;
import witnessmark.wording.Texts;

/** Find anything: one field at the top right of every page, its results dropping down under it. */
final class FindField extends JTextField {
    private final transient Texts texts;
    private final transient List<Findable> sources;
    private final transient Latest latest;
    private final transient Later soon;
    private final transient FindPopup popup;
    private final transient Runnable toPage;
    private transient @Nullable Component cameFrom;

    /** @param toPage gives the focus to the page, where what had it before is gone */
    FindField(Texts texts, Tasks tasks, List<Findable> sources, Runnable toPage) {
        this.toPage = toPage;
        this.texts = texts;
        this.sources = sources;
        this.latest = new Latest(tasks);
        this.soon = tasks.later(Duration.ofMillis(60), this::ask);
        this.popup = new FindPopup(this, texts, this::leave);
        Styles.as(Styles.FIND, this);
        setColumns(20);
        putClientProperty(FlatClientProperties.PLACEHOLDER_TEXT, texts.get("shell.find.example"));
        putClientProperty(FlatClientProperties.TEXT_FIELD_LEADING_ICON, glyph());
        putClientProperty(FlatClientProperties.TEXT_FIELD_TRAILING_COMPONENT, key());
        getAccessibleContext().setAccessibleName(texts.get("shell.find"));
        TextUndo.install(this);
        bind(Keys.plain(KeyEvent.VK_DOWN), "down", () -> popup.move(1));
        bind(Keys.plain(KeyEvent.VK_UP), "up", () -> popup.move(-1));
        bind(Keys.plain(KeyEvent.VK_ENTER), "open", popup::open);
        bind(Keys.plain(KeyEvent.VK_ESCAPE), "leave", this::leave);
        getDocument().addDocumentListener(new Typed());
        addFocusListener(new FocusAdapter() {
            @Override
            public void focusGained(FocusEvent e) {
                if (cameFrom == null) {
                    cameFrom = e.getOppositeComponent(); // by the mouse or by Tab
                }
            }

            @Override
            public void focusLost(FocusEvent e) {
                if (!e.isTemporary()) {
                    latest.drop();
                    cameFrom = null;
                    popup.close(); // its list never takes the focus, so that somebody works elsewhere now
                }
            }
        });
    }

    /** Takes the focus, remembering where it was. */
    void start() {
        Component owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getPermanentFocusOwner();
        cameFrom = owner == this ? cameFrom : owner;
        requestFocusInWindow();
        selectAll();
    }

    FindPopup popup() {
        return popup;
    }

    private void ask() {
        String typed = getText().trim();
        if (typed.isEmpty()) {
            latest.drop();
            popup.close();
            return;
        }
        latest.run(
                texts.get("shell.find.working"),
                () -> search(typed),
                found -> show(typed, found),
                failure -> popup.say(texts.get("shell.find.failed")));
    }

    private List<FoundGroup> search(String typed) {
        List<FoundGroup> groups = new ArrayList<>();
        for (Findable source : sources) {
            List<Found> found = source.find(typed, Integer.MAX_VALUE);
            if (!found.isEmpty()) {
                FoundGroup group = new FoundGroup(source.group(), found, source.all(found.size()));
                boolean first = source.isNamed(typed)
                        || source.isCalled(typed) && groups.stream().noneMatch(records -> records.tells(typed));
                groups.add(first ? 0 : groups.size(), group);
            }
        }
        return groups;
    }

    private void show(String typed, List<FoundGroup> found) {
        if (found.isEmpty()) {
            popup.say(texts.get("shell.find.none", typed));
        } else {
            popup.show(found);
        }
    }

    private void leave() {
        popup.close();
        setText("");
        Component before = cameFrom;
        if (before == null || !before.isShowing() || !before.requestFocusInWindow()) {
            toPage.run();
        }
        cameFrom = null;
    }

    private FlatSVGIcon glyph() {
        FlatSVGIcon icon = new FlatSVGIcon("icons/find.svg", 16, 16);
        icon.setColorFilter(new FlatSVGIcon.ColorFilter((c, colour) -> Palette.INK2.colour()));
        return icon;
    }

    private static JLabel key() {
        JLabel label = Lettering.line(Keys.words(Keys.menu(KeyEvent.VK_K)), Styles.ECHO);
        label.setBorder(new FlatEmptyBorder(0, 0, 0, 8));
        return label;
    }

    private void bind(KeyStroke key, String name, Runnable work) {
        FormKeys.bind(this, key, name, work);
    }

    /** Every change of what is typed asks again, a moment later. */
    private final class Typed implements DocumentListener {
        @Override
        public void insertUpdate(DocumentEvent e) {
            soon.poke();
        }

        @Override
        public void removeUpdate(DocumentEvent e) {
            soon.poke();
        }

        @Override
        public void changedUpdate(DocumentEvent e) {
            // attributes only
        }
    }
}
