package witnessmark.desktop.faces;

import java.awt.CardLayout;
import java.util.List;
import java.util.stream.Stream;
import javax.swing.ButtonGroup;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JToggleButton;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.form.FormLayout;
import witnessmark.desktop.form.Lettering;
import witnessmark.desktop.shell.Command;
import witnessmark.desktop.shell.CommandMenu;
import witnessmark.desktop.shell.Place;
import witnessmark.desktop.shell.PlaceId;
import witnessmark.wording.Texts;

/** The measuring bench with its two pages: the build sheet of an engine, and the faces of its parts. */
public final class BenchPages implements Place {
    private static final String SHEET = "sheet";
    private static final String FACES = "faces";

    private final Place sheet;
    private final FacesPage faces;
    private final Texts texts;
    private final CardLayout cards = new CardLayout();
    private final JPanel shown = new JPanel(cards);
    private final JToggleButton toSheet;
    private final JToggleButton toFaces;
    private final Command see;
    private @Nullable JPanel page;
    private boolean onFaces;

    /** @param go goes to the bench */
    public BenchPages(Place sheet, FacesPage faces, Texts texts, Runnable go) {
        this.sheet = sheet;
        this.faces = faces;
        this.texts = texts;
        this.toSheet = tab("facemap.tab.sheet", false);
        this.toFaces = tab("facemap.tab.faces", true);
        this.see = new Command(texts, "facemap.command.faces", CommandMenu.VIEW, 2, null, () -> {
            turn(true);
            go.run();
        });
        ButtonGroup one = new ButtonGroup();
        one.add(toSheet);
        one.add(toFaces);
        toSheet.setSelected(true);
    }

    private JToggleButton tab(String key, boolean isFaces) {
        JToggleButton button = Lettering.plain(new JToggleButton(texts.get(key)));
        button.putClientProperty("JButton.buttonType", "tab");
        button.addActionListener(e -> {
            turn(isFaces);
            refresh();
        });
        return button;
    }

    @Override
    public PlaceId id() {
        return sheet.id();
    }

    @Override
    public JComponent component() {
        JPanel made = page;
        if (made == null) {
            made = new JPanel(new FormLayout("insets 0, gap 4 2, fill", "[][][0::,grow]", "[]2[grow,fill]"));
            made.setOpaque(false);
            shown.setOpaque(false);
            shown.add(sheet.component(), SHEET);
            shown.add(faces.component(), FACES);
            made.add(toSheet);
            made.add(toFaces, "wrap");
            made.add(shown, "span, grow, w 0:0:, h 0:0:");
            page = made;
            turn(onFaces);
        }
        return made;
    }

    private void turn(boolean isFaces) {
        onFaces = isFaces;
        (isFaces ? toFaces : toSheet).setSelected(true);
        cards.show(shown, isFaces ? FACES : SHEET);
    }

    @Override
    public JComponent firstFocus() {
        return onFaces ? faces.firstFocus() : sheet.firstFocus();
    }

    @Override
    public void refresh() {
        if (onFaces) {
            faces.refresh();
        } else {
            sheet.refresh();
        }
    }

    @Override
    public void recount() {
        sheet.recount();
    }

    @Override
    public void again() {
        sheet.again();
    }

    @Override
    public void open() {
        if (!onFaces) {
            sheet.open();
        }
    }

    /** A head, gasket or block by its faces; anything else by the build sheet. */
    @Override
    public void open(String record) {
        boolean face = faces.has(record);
        turn(face);
        if (face) {
            faces.open(record);
        } else {
            sheet.open(record);
        }
    }

    @Override
    public List<String> help() {
        return onFaces ? List.of("help.faces") : sheet.help();
    }

    @Override
    public List<Command> commands() {
        return Stream.concat(sheet.commands().stream(), Stream.of(see)).toList();
    }
}
