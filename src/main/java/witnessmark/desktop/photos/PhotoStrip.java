package witnessmark.desktop.photos;

import java.awt.BorderLayout;
import java.awt.Image;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import witnessmark.desktop.form.Buttons;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.form.FormKeys;
import witnessmark.desktop.form.FormLayout;
import witnessmark.desktop.form.Keys;
import witnessmark.desktop.form.Lettering;
import witnessmark.desktop.form.ScrollPage;
import witnessmark.desktop.form.Styles;
import witnessmark.desktop.task.Latest;
import witnessmark.logbook.View;
import witnessmark.logbook.photos.PhotosOf;
import witnessmark.wording.Texts;

/**
 * The photos of one incident, engine or part on its page: small pictures, and how more of them get there: dropped on it, pasted,
 * or picked.
 */
public final class PhotoStrip extends JPanel {
    private static final Logger LOG = LoggerFactory.getLogger(PhotoStrip.class);

    /** So many are shown among the other parts of a page, until all are asked for. */
    private static final int FEW = 6;

    /** What room a page has for it. */
    public enum Room {
        /** Among the other parts of a page, as wide as the page. */
        PAGE,
        /** A page of its own, in which it scrolls. */
        ALONE,
        /** A column beside something. */
        NARROW
    }

    private final PhotosContext context;
    private final Photographs photographs;
    private final Consumer<PhotosOf> home;
    private final Texts texts;
    private final PhotoWords words;
    private final Latest reading;
    private final JLabel count = Lettering.cutLine("", Styles.NOTE);
    private final JTextArea none;
    private final PhotoList list;
    private final JButton more;
    private final JPanel waits =
            new JPanel(new FormLayout("insets 0, gap 8, fillx, hidemode 3", "[0::,grow,fill][][][]", "[baseline]"));
    private final JTextArea waiting = Lettering.paragraph("", Styles.NOTE);
    private final JButton take;
    private final JButton leave;
    private final boolean scrolls;
    private @Nullable PhotosOf of;
    private boolean all;
    private List<PhotoLine> shown = List.of();

    /**
     * @param room what there is for it
     * @param home brings the page of what the photos are of back into view
     */
    PhotoStrip(
            PhotosContext context,
            Photographs photographs,
            SmallPictures pictures,
            Room room,
            Consumer<PhotosOf> home) {
        super(new BorderLayout());
        this.context = context;
        this.photographs = photographs;
        this.home = home;
        this.texts = context.texts();
        this.words = new PhotoWords(texts, context.measures());
        this.reading = new Latest(context.tools().tasks());
        this.scrolls = room == Room.ALONE;
        this.more = Buttons.link(Caption.of(texts.get("photos.all")), this::showAll);
        this.take = Buttons.link(
                Caption.of(texts.get("photos.watch.take")),
                () -> take(context.watch().waiting()));
        this.leave = Buttons.link(Caption.of(texts.get("photos.watch.leave")), context.watch()::leave);
        this.none = Lettering.paragraph(texts.get("photos.none"), Styles.NOTE);
        this.list = new PhotoList(pictures, this::open);
        list.getAccessibleContext().setAccessibleName(texts.get("photos.list"));
        JPanel head = head(room == Room.NARROW);
        JPanel body = new JPanel(new FormLayout(
                "insets " + (scrolls ? "6" : "0") + " 0 0 0, gap 0 4, fillx, hidemode 3, wrap", "[0::,grow,fill]"));
        body.setOpaque(false);
        body.add(head, "wmin 0");
        body.add(waits(), "growx, wmin 0");
        body.add(none, "growx, wmin 0");
        body.add(list, "growx, wmin 0");
        setOpaque(false);
        add(scrolls ? new ScrollPage(body) : body);
        keys();
        setTransferHandler(new PicturesDropped(this::take, this::takePasted));
        list.setTransferHandler(getTransferHandler());
        show(List.of());
    }

    /** @param narrow whether it takes two lines */
    private JPanel head(boolean narrow) {
        JPanel head = new JPanel(new FormLayout(
                "insets 0, gap 10 2, fillx, hidemode 3",
                narrow ? "[][0::,grow,fill][]" : "[][0::,grow,fill][][][][]",
                "[baseline]"));
        JButton watches = Buttons.link(Caption.of(texts.get("photos.watch")), this::watch);
        JButton pastes = Buttons.link(Caption.of(texts.get("photos.paste")), this::paste);
        JButton adds = Buttons.link(Caption.of(texts.get("photos.add")), this::pick);
        head.setOpaque(false);
        head.add(Lettering.line(texts.get("photos.section"), Styles.SECTION));
        head.add(count, "wmin 0");
        if (narrow) {
            head.add(adds, "wrap");
            head.add(more, "span, split 3, growx 0");
            head.add(watches, "growx 0");
            head.add(pastes, "growx 0");
        } else {
            head.add(more);
            head.add(watches);
            head.add(pastes);
            head.add(adds);
        }
        return head;
    }

    /** What lies in the folder that is watched, and what can be done with it. */
    private JPanel waits() {
        waits.setOpaque(false);
        waits.add(waiting, "growx, wmin 0");
        waits.add(take);
        waits.add(leave);
        waits.add(Buttons.link(
                Caption.of(texts.get("photos.watch.stop")),
                () -> context.watch().watch(null)));
        context.watch().onChange(this::sayWaiting);
        sayWaiting();
        return waits;
    }

    private void sayWaiting() {
        String said = context.watch().said();
        boolean any = !context.watch().waiting().isEmpty();
        waits.setVisible(!said.isEmpty());
        waiting.setText(said);
        take.setVisible(any);
        leave.setVisible(any);
        revalidate();
    }

    private void watch() {
        context.chooseFolder().get().ifPresent(context.watch()::watch);
    }

    private void keys() {
        FormKeys.bindWithin(this, Keys.menu(KeyEvent.VK_V), "wm-paste", this::paste);
        FormKeys.bind(list, Keys.plain(KeyEvent.VK_F2), "wm-caption", () -> chosen(this::open));
        FormKeys.bind(list, Keys.plain(KeyEvent.VK_DELETE), "wm-strike", () -> chosen(this::correct));
    }

    private void chosen(Consumer<PhotoLine> work) {
        PhotoLine line = list.chosen();
        if (line != null) {
            work.accept(line);
        }
    }

    /** Shows the photos of something else, or again those of the same; of nothing when null. */
    public void show(@Nullable PhotosOf next) {
        if (!Objects.equals(of, next)) {
            all = false;
            show(List.of());
        }
        of = next;
        if (next == null) {
            reading.drop();
            return;
        }
        reading.run(
                texts.get("photos.reading"),
                () -> lines(next),
                this::show,
                failure -> LOG.error("photos could not be read", failure));
    }

    private List<PhotoLine> lines(PhotosOf wanted) {
        View view = context.book().view();
        return wanted.in(view).stream()
                .map(photo -> new PhotoLine(
                        photo,
                        words.title(photo.fact()),
                        words.when(photo.fact()),
                        words.about(photo.fact(), view.facts())))
                .toList();
    }

    private void show(List<PhotoLine> lines) {
        shown = List.copyOf(lines);
        none.setVisible(lines.isEmpty());
        list.setVisible(!lines.isEmpty());
        count.setText(lines.isEmpty() ? "" : texts.get("photos.count", lines.size()));
        boolean few = scrolls || all || lines.size() <= FEW;
        more.setVisible(!few);
        list.show(few ? lines : lines.subList(0, FEW));
        revalidate();
        repaint();
    }

    private void showAll() {
        all = true;
        show(shown);
        list.requestFocusInWindow();
    }

    private void open(PhotoLine line) {
        photographs.open(shown, line, this::comeBack);
    }

    private void correct(PhotoLine line) {
        context.asked().correct().accept(line.id(), this::comeBack);
    }

    private void comeBack() {
        PhotosOf now = of;
        if (now != null) {
            home.accept(now);
        }
        show(now);
        list.requestFocusInWindow();
    }

    private void pick() {
        take(context.choose().get());
    }

    private void paste() {
        PicturesDropped.pasted(
                this::take, this::takePasted, () -> context.window().say(texts.get("photos.paste.none")));
    }

    /** Takes files in, after asking what they are about. */
    void take(List<Path> files) {
        take(files, () -> {});
    }

    private void takePasted(Image image) {
        context.tools()
                .tasks()
                .run(
                        texts.get("photos.reading"),
                        () -> PicturesDropped.file(image),
                        file -> file.ifPresentOrElse(
                                made -> take(List.of(made), () -> PicturesDropped.forget(made)), this::sayUnread),
                        failure -> {
                            LOG.error("a picture could not be made a file", failure);
                            sayUnread();
                        });
    }

    private void sayUnread() {
        context.window().say(texts.get("photos.paste.unread"));
    }

    /** @param over told when the files are wanted no more */
    private void take(List<Path> files, Runnable over) {
        PhotosOf now = of;
        if (files.isEmpty() || now == null) {
            over.run();
            return;
        }
        photographs.bringIn(files, now, this::comeBack, over);
    }

    PhotoList pictures() {
        return list;
    }
}
