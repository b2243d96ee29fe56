package witnessmark.desktop.shell;

import java.awt.CardLayout;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.UIManager;
import witnessmark.desktop.form.Kept;
import witnessmark.desktop.form.LastFocus;

/** The pages, each built at its first visit and kept afterwards. */
final class Pages extends JPanel {
    /** The one page that is no place. */
    static final String ABOUT = "ABOUT";

    private final CardLayout cards = new CardLayout();
    private final Map<PlaceId, Place> places = new EnumMap<>(PlaceId.class);
    private final Map<String, LastFocus> built = new HashMap<>();
    private final AboutPage about;
    /** A change of theme or size reaches only what is in a window; a place not visited yet is brought up to it then. */
    private final Object madeUnder = UIManager.getLookAndFeel();

    Pages(List<Place> places, AboutPage about) {
        this.about = about;
        setLayout(cards);
        setOpaque(false);
        places.forEach(place -> this.places.put(place.id(), place));
    }

    List<PlaceId> ids() {
        return List.copyOf(places.keySet());
    }

    /** The place behind a page's name; none for a page of the shell, or a place this program does not have. */
    Optional<Place> place(String page) {
        return places.values().stream()
                .filter(place -> place.id().name().equals(page))
                .findFirst();
    }

    /** Tells every place but the one in view that the logbook changed. */
    void recountAllBut(Optional<Place> inView) {
        places.values().stream()
                .filter(place -> !inView.equals(Optional.of(place)))
                .forEach(Place::recount);
    }

    /** What had the focus last on a page, when it is still there. */
    Optional<JComponent> lastFocus(String page) {
        return Optional.ofNullable(built.get(page)).flatMap(LastFocus::component);
    }

    /** Brings the page to the front, with its record where the visit names one. */
    void show(Visit visit) {
        showAsItWas(visit);
        String record = visit.record();
        place(visit.page()).ifPresent(place -> {
            if (record == null) {
                place.open();
            } else {
                place.open(record);
            }
        });
    }

    /** Brings the page to the front as it was left: with what was looked at there last. */
    void showAsItWas(Visit visit) {
        Optional<Place> place = place(visit.page());
        if (!built.containsKey(visit.page())) {
            JComponent page = place.map(Place::component).orElseGet(about::component);
            add(page, visit.page());
            Kept.returns(page, madeUnder);
            built.put(visit.page(), new LastFocus(page));
        }
        cards.show(this, visit.page());
        place.ifPresent(Place::refresh);
    }
}
