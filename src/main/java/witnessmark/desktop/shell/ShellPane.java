package witnessmark.desktop.shell;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.AbstractButton;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JMenuBar;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import javax.swing.SwingUtilities;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.form.FormLayout;
import witnessmark.desktop.form.Lettering;
import witnessmark.desktop.form.NoticeStrip;
import witnessmark.desktop.form.PageHeading;
import witnessmark.desktop.form.StatusStrip;
import witnessmark.desktop.form.Styles;
import witnessmark.wording.Texts;

/** Everything inside the window: rail, pages, finding, help, strips. It needs no display; {@link ShellFrame} does. */
public final class ShellPane extends JPanel {
    /** Below this width, in unscaled pixels, the rail becomes a drop-down. */
    static final int RAIL_FROM = 1100;

    private static final String BESIDE = "cell 1 0, growy, w 300!, gapleft 14";
    private static final String ALONE = "cell 0 0, grow, wmin 0";

    private final Texts texts;
    private final Desk desk;
    private final Visits visits = new Visits();
    private final Pages pages;
    private final Rail rail;
    private final PlaceChooser chooser;
    private final PageHeading heading = new PageHeading("", "");
    private final FindField find;
    private final NoticeStrip notice = new NoticeStrip();
    private final JTextArea copies = Lettering.paragraph("", Styles.NOTE);
    private final StatusStrip status;
    private final HelpPane help;
    private final Panes panes;
    private final Roominess room = new Roominess();
    private final JPanel foot = new JPanel(room.foot());
    private final FormLayout bodyLayout = room.body();
    private final JPanel body = new JPanel(bodyLayout);
    private final ShellCommands own;
    private final Commands commands;
    private final WorkWatch watch;
    private @Nullable Called called;

    /** Where one was when a page was put up in another place; that may have been such a page itself. */
    private record Called(Visit from, @Nullable Called before) {}

    /**
     * @param places those that there are; the rail shows them in its own order
     * @param more commands that belong to no place: undo, import, backup
     * @param sources what can be found besides commands, in the order of the results
     */
    public ShellPane(ShellContext context, List<Place> places, List<Command> more, List<Findable> sources) {
        super(new BorderLayout());
        this.texts = context.texts();
        this.desk = context.desk();
        Styles.as(Styles.BENCH, this);
        pages = new Pages(places, new AboutPage(texts, context.about()));
        status = new StatusStrip(texts.get("shell.status"));
        copies.setVisible(false);
        rail = new Rail(texts, pages.ids(), copies, this::goKeepingFocus, this::enter);
        chooser = new PlaceChooser(texts, pages.ids(), this::goKeepingFocus);
        help = new HelpPane(texts, () -> showHelp(false));
        own = new ShellCommands(context, this, pages.ids());
        commands = new Commands(collect(places, more));
        List<Findable> all = new ArrayList<>(sources);
        all.add(new CommandsFindable(texts, commands::all));
        find = new FindField(texts, context.tasks(), all, this::focusPage);
        panes = new Panes(List.of(
                () -> rail.isVisible() ? rail.places() : chooser, this::pageFocus, help::firstFocus, () -> find));
        watch = new WorkWatch(context.tasks(), status, Instant::now);
        layOut();
        desk.listen(new Ear());
    }

    public Commands commands() {
        return commands;
    }

    public JMenuBar menuBar() {
        return commands.menuBar(texts);
    }

    /** The name of the logbook in hand, under the program's own. */
    public void logbook(String name) {
        rail.logbook(name);
    }

    /** Goes somewhere, and gives the page the focus. A page this program does not have is not gone to. */
    public void go(Visit visit) {
        if (isPage(visit.page())) {
            boolean there = visit.record() == null
                    && visits.current()
                            .filter(now -> now.page().equals(visit.page()))
                            .isPresent();
            visits.go(visit);
            arrive(visit);
            if (there) {
                place().ifPresent(Place::again);
            }
            boolean anew = visit.record() == null && place().filter(Place::anew).isPresent();
            (anew ? firstFocus() : pageFocus()).requestFocusInWindow();
        }
    }

    /** The place that a page which stands aside belongs to stays lit until one goes elsewhere. */
    private void goAside(PlaceId place) {
        Called before = called;
        Visit from = visits.current().orElse(null);
        boolean there = place().map(Place::id).equals(Optional.of(place));
        go(Visit.to(place));
        called = there || from == null ? before : new Called(from, before);
        showRail();
    }

    /** Where one was comes back as it was left, if a page that stood in this place was called from elsewhere. */
    private boolean comeBack(PlaceId place) {
        Called from = called;
        if (from == null || !place().map(Place::id).equals(Optional.of(place)) || !visits.returnTo(from.from())) {
            return false;
        }
        called = from.before();
        pages.showAsItWas(from.from());
        arrived();
        pages.lastFocus(from.from().page()).orElseGet(this::firstFocus).requestFocusInWindow();
        return true;
    }

    /** Goes to the place that is lit where another is in view; into the page otherwise. */
    private void enter() {
        PlaceId lit = lit();
        if (lit == null || place().map(Place::id).equals(Optional.of(lit))) {
            focusPage();
        } else {
            go(Visit.to(lit));
        }
    }

    /** What the rail shows: the place in view, or the one that called for the page that stands there. */
    private @Nullable PlaceId lit() {
        PlaceId shown = place().map(Place::id).orElse(null);
        Called from = called;
        if (shown == null || from == null || desk.title(shown).isEmpty()) {
            return shown;
        }
        while (from.before() != null) {
            from = from.before();
        }
        return pages.place(from.from().page()).map(Place::id).orElse(shown);
    }

    public Optional<Visit> current() {
        return visits.current();
    }

    /** The place in view, none on a page of the shell. */
    Optional<Place> place() {
        return visits.current().flatMap(visit -> pages.place(visit.page()));
    }

    /** What waits in the places that are not in view is counted, for the rail. */
    void recountElsewhere() {
        pages.recountAllBut(place());
    }

    void back() {
        visits.goBack().ifPresent(this::arriveWithFocus);
    }

    void forward() {
        visits.goForward().ifPresent(this::arriveWithFocus);
    }

    void find() {
        find.start();
    }

    /** Does something to the list in hand, or to the page's first list when the focus is in none. */
    void inList(String name) {
        if (!FocusedAction.perform(name, pages)) {
            status.show(texts.get("shell.noList"), null);
        }
    }

    void nextPane(int step) {
        panes.move(step);
    }

    void showAbout() {
        go(new Visit(Pages.ABOUT, null));
    }

    void toggleHelp() {
        showHelp(!help.isVisible());
    }

    /** Closes the help, unless there is none or the focus is where Esc has work of its own. */
    boolean closeHelp() {
        Component owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
        boolean here = owner != null && owner != find && SwingUtilities.isDescendingFrom(owner, this);
        if (here && help.isVisible()) {
            showHelp(false);
            return true;
        }
        return false;
    }

    boolean helpShown() {
        return help.isVisible();
    }

    /** Says what becomes of keys pressed before the window was filled; what a command has said since stays. */
    void sayOfEarlyKeys(EarlyKeys.Said said) {
        String kept = texts.get("shell.early.kept");
        switch (said) {
            case KEPT -> status.show(kept, null);
            case GIVEN -> {
                if (status.sentence().equals(kept)) {
                    status.show("", null);
                }
            }
            case DROPPED -> status.show(texts.get("shell.early.dropped"), null);
        }
    }

    FindField findField() {
        return find;
    }

    Rail rail() {
        return rail;
    }

    WorkWatch watch() {
        return watch;
    }

    StatusStrip status() {
        return status;
    }

    /** Whether a strip stands under the menu bar already. */
    public boolean hasNotice() {
        return notice.isVisible();
    }

    NoticeStrip notice() {
        return notice;
    }

    @Override
    public void doLayout() {
        fit();
        super.doLayout();
    }

    /** Without room for it, the rail turns into the drop-down, and help takes the page's place instead of its side. */
    private void fit() {
        boolean wide = UIScale.unscale(getWidth()) >= RAIL_FROM;
        if (wide != rail.isVisible()) {
            rail.setVisible(wide);
            chooser.setVisible(!wide);
            foot.setVisible(!wide);
            status.wide(!wide);
            if (wide) {
                rail.takeCopies();
                rail.foot(status);
            } else {
                foot.add(status, "wmin 0");
                foot.add(copies, "wmin 0, hidemode 3");
            }
        }
        if (room.fit(UIScale.unscale(getHeight()))) {
            notice.low(room.isLow());
        }
        boolean alone = !wide && help.isVisible();
        if (alone == pages.isVisible()) {
            pages.setVisible(!alone);
            bodyLayout.setComponentConstraints(help, alone ? ALONE : BESIDE);
        }
    }

    private List<Command> collect(List<Place> places, List<Command> more) {
        List<Command> all = new ArrayList<>(more);
        places.forEach(place -> all.addAll(place.commands()));
        all.addAll(own.all());
        return all;
    }

    private void layOut() {
        JPanel top = new JPanel(room.top());
        top.setOpaque(false);
        top.add(chooser, "cell 0 0, gapright 14, hidemode 3");
        top.add(heading, "cell 1 0, wmin 0");
        top.add(find, "cell 2 0, gapleft 22, w 170:300:300, growx, growy");
        body.setOpaque(false);
        body.add(pages, "cell 0 0, grow, wmin 0");
        body.add(help, BESIDE);
        JPanel page = new JPanel(new BorderLayout(0, 0));
        page.setOpaque(false);
        page.add(top, BorderLayout.NORTH);
        page.add(body, BorderLayout.CENTER);
        foot.setOpaque(false);
        JPanel right = new JPanel(new BorderLayout());
        right.setOpaque(false);
        right.add(page, BorderLayout.CENTER);
        right.add(foot, BorderLayout.SOUTH);
        add(notice, BorderLayout.NORTH);
        add(rail, BorderLayout.WEST);
        add(right, BorderLayout.CENTER);
        rail.foot(status);
        foot.setVisible(false);
    }

    private boolean isPage(String page) {
        return page.equals(Pages.ABOUT) || pages.place(page).isPresent();
    }

    private void goKeepingFocus(PlaceId id) {
        Visit visit = Visit.to(id);
        if (!place().map(Place::id).equals(Optional.of(id))) {
            visits.go(visit);
            arrive(visit);
            place().ifPresent(Place::anew);
        }
    }

    private void arriveWithFocus(Visit visit) {
        arrive(visit);
        focusPage();
    }

    private void arrive(Visit visit) {
        called = null;
        pages.show(visit);
        arrived();
    }

    private void arrived() {
        showHeading();
        showRail();
        own.follow(visits);
        followHelp();
        pages.revalidate();
        pages.repaint();
    }

    void focusPage() {
        pageFocus().requestFocusInWindow();
    }

    /** Where one was on the page; where it begins for who comes the first time, or to a record. */
    private JComponent pageFocus() {
        Optional<Visit> visit = visits.current();
        return visit.filter(at -> at.record() == null)
                .flatMap(at -> pages.lastFocus(at.page()))
                .orElseGet(this::firstFocus);
    }

    private JComponent firstFocus() {
        return place().map(Place::firstFocus).orElse(pages);
    }

    private void showHeading() {
        Optional<Place> place = place();
        heading.show(
                place.flatMap(p -> desk.title(p.id()))
                        .orElseGet(() -> texts.get(place.map(p -> p.id().key()).orElse("shell.about"))),
                place.map(p -> desk.heading(p.id())).orElse(""));
    }

    private void showRail() {
        PlaceId chosen = lit();
        rail.show(desk, chosen);
        chooser.show(chosen);
    }

    private void showHelp(boolean wanted) {
        if (wanted) {
            help.show(helpOfPage());
        }
        help.setVisible(wanted);
        own.helpShown(wanted);
        revalidate();
        if (!wanted) {
            focusPage();
        }
    }

    /** Help that is open is that of what is in view. */
    private void followHelp() {
        if (help.isVisible()) {
            help.show(helpOfPage());
        }
    }

    private List<String> helpOfPage() {
        return place().map(Place::help).orElse(List.of("help.about"));
    }

    /** Carries out what places ask of the window. */
    private final class Ear implements Desk.Listener {
        @Override
        public void go(Visit visit) {
            ShellPane.this.go(visit);
        }

        @Override
        public void goAside(PlaceId place) {
            ShellPane.this.goAside(place);
        }

        @Override
        public boolean comeBack(PlaceId place) {
            return ShellPane.this.comeBack(place);
        }

        @Override
        public void changed() {
            place().ifPresent(Place::refresh);
            recountElsewhere();
        }

        @Override
        public void say(String sentence, @Nullable JButton way) {
            status.show(sentence, way);
        }

        @Override
        public void notice(String sentence, List<? extends AbstractButton> ways) {
            notice.show(sentence, ways);
        }

        @Override
        public void dismissNotice() {
            notice.dismiss();
        }

        @Override
        public void notesChanged() {
            showRail();
        }

        @Override
        public void headingChanged(PlaceId place) {
            showHeading();
            if (called != null) {
                showRail();
            }
            followHelp();
        }

        @Override
        public void writing(String name) {
            rail.writing(name);
        }

        @Override
        public void copies(String words, String more, boolean atRisk) {
            Styles.as(atRisk ? Styles.QUERY : Styles.NOTE, copies);
            copies.setText(words);
            copies.setToolTipText(more.isEmpty() ? null : more);
            copies.setVisible(!words.isEmpty());
            revalidate();
        }
    }
}
