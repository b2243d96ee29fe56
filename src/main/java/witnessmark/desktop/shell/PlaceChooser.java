package witnessmark.desktop.shell;

import java.awt.Component;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.DefaultListCellRenderer;
import javax.swing.JComboBox;
import javax.swing.JList;
import javax.swing.ListCellRenderer;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.form.Lettering;
import witnessmark.wording.Texts;

/** The rail of a narrow window: the same places as a drop-down beside the title. Closed, it says what it
 * is, since the title says where one is. */
final class PlaceChooser extends JComboBox<PlaceId> {
    private boolean showing;

    PlaceChooser(Texts texts, List<PlaceId> places, Consumer<PlaceId> onGo) {
        super(places.toArray(PlaceId[]::new));
        Lettering.plain(this);
        getAccessibleContext().setAccessibleName(texts.get("shell.rail"));
        DefaultListCellRenderer label = Lettering.plain(new DefaultListCellRenderer());
        setRenderer(new ListCellRenderer<PlaceId>() {
            @Override
            public Component getListCellRendererComponent(
                    JList<? extends PlaceId> list,
                    @Nullable PlaceId value,
                    int index,
                    boolean selected,
                    boolean focused) {
                String words = index < 0 || value == null ? texts.get("shell.rail") : texts.get(value.key());
                return label.getListCellRendererComponent(list, words, index, selected, focused);
            }
        });
        addActionListener(e -> {
            if (!showing && getSelectedItem() instanceof PlaceId place) {
                onGo.accept(place);
            }
        });
        setVisible(false);
    }

    void show(@Nullable PlaceId chosen) {
        showing = true;
        setSelectedItem(chosen);
        showing = false;
    }
}
