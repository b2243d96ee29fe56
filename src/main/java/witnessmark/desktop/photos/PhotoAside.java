package witnessmark.desktop.photos;

import com.formdev.flatlaf.util.UIScale;
import java.awt.GridLayout;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.KeyEvent;
import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import witnessmark.desktop.form.Buttons;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.form.FieldBox;
import witnessmark.desktop.form.FormKeys;
import witnessmark.desktop.form.FormLayout;
import witnessmark.desktop.form.Keys;
import witnessmark.desktop.form.Lettering;
import witnessmark.desktop.form.Sheet;
import witnessmark.desktop.form.Styles;
import witnessmark.desktop.shell.Aside;
import witnessmark.desktop.task.Latest;
import witnessmark.domain.Entry;
import witnessmark.domain.Photo;
import witnessmark.logbook.port.Pixels;
import witnessmark.logbook.port.Written;
import witnessmark.outcome.Outcome;
import witnessmark.wording.Problems;
import witnessmark.wording.Texts;

/** A photo large, another beside it when asked. Left and Right go through those of its page. */
final class PhotoAside implements Aside {
    private static final Logger LOG = LoggerFactory.getLogger(PhotoAside.class);

    /** Of the longer side, pixels: what is kept in memory of a photo, however large it is. */
    private static final int DRAWN = 3_000;

    private final PhotosContext context;
    private final Texts texts;
    private final Problems problems;
    private final PhotoWords words;
    private final Runnable back;
    private final Sheet page = new Sheet("fill, hidemode 3", "[0::,grow,fill]", "[]4[grow,fill]6[]");
    private final JLabel title = Lettering.cutLine("", Styles.SECTION);
    private final JTextArea about = Lettering.paragraph("", Styles.NOTE);
    private final JLabel otherTitle = Lettering.cutLine("", Styles.NOTE);
    private final JPanel views = new JPanel(new GridLayout(1, 0, UIScale.scale(8), 0));
    private final JPanel foot = new JPanel(new GridLayout(1, 0, UIScale.scale(8), 0));
    private final PhotoView view = new PhotoView();
    private final PhotoView other = new PhotoView();
    private final FieldBox caption;
    private final Latest reading;
    private final Latest readingOther;
    private List<PhotoLine> all;
    private int at;
    private int beside = -1;
    /** What was typed under a photo and is not written yet, by its place in the row. */
    private final Map<Integer, String> typed = new TreeMap<>();

    private final Set<Integer> writing = new HashSet<>();
    private boolean left;

    PhotoAside(PhotosContext context, List<PhotoLine> all, PhotoLine first, Runnable back) {
        this.context = context;
        this.texts = context.texts();
        this.problems = new Problems(texts, context.measures());
        this.words = new PhotoWords(texts, context.measures());
        this.all = List.copyOf(all);
        this.at = Math.max(0, all.indexOf(first));
        this.back = back;
        this.caption = new FieldBox(Caption.of(texts.get("photos.caption")));
        this.reading = new Latest(context.tools().tasks());
        this.readingOther = new Latest(context.tools().tasks());
        layOut();
        keys();
        show();
    }

    private void layOut() {
        JPanel head = new JPanel(new FormLayout("insets 0, gap 12 0, fillx", "[0::,grow,fill][][][][]", "[baseline]"));
        head.setOpaque(false);
        head.add(title, "wmin 0");
        head.add(Buttons.link(Caption.of(texts.get("photos.beside")), this::beside));
        head.add(Buttons.link(Caption.of(texts.get("photos.share")), this::share));
        head.add(Buttons.link(Caption.of(texts.get("photos.correct")), this::correct));
        head.add(Buttons.link(Caption.of(texts.get("photos.close")), this::leave), "wrap");
        head.add(about, "span, growx, wmin 0");
        views.setOpaque(false);
        views.add(view);
        foot.setOpaque(false);
        foot.add(caption);
        page.add(head, "growx, wmin 0, wrap");
        page.add(views, "grow, wmin 0, hmin 120, wrap");
        page.add(foot, "growx, wmin 0");
        caption.onEnter(this::keepCaption);
        caption.field().addFocusListener(new FocusAdapter() {
            @Override
            public void focusLost(FocusEvent e) {
                keepCaption(); // nothing typed is lost by looking at the next one
            }
        });
    }

    private void keys() {
        FormKeys.bindWithin(page, Keys.plain(KeyEvent.VK_ESCAPE), "wm-leave", this::escape);
        for (PhotoView each : List.of(view, other)) {
            FormKeys.bind(each, Keys.plain(KeyEvent.VK_LEFT), "wm-before", () -> go(-1));
            FormKeys.bind(each, Keys.plain(KeyEvent.VK_RIGHT), "wm-next", () -> go(1));
            FormKeys.bind(each, Keys.plain(KeyEvent.VK_PAGE_UP), "wm-other-before", () -> goBeside(-1));
            FormKeys.bind(each, Keys.plain(KeyEvent.VK_PAGE_DOWN), "wm-other-next", () -> goBeside(1));
            FormKeys.bind(each, Keys.plain(KeyEvent.VK_F2), "wm-caption", caption::takeFocus);
            FormKeys.bind(each, Keys.plain(KeyEvent.VK_DELETE), "wm-strike", this::correct);
        }
    }

    @Override
    public String heading() {
        return texts.get("photos.heading");
    }

    @Override
    public JComponent component() {
        return page;
    }

    @Override
    public JComponent firstFocus() {
        return view;
    }

    @Override
    public List<String> help() {
        return List.of("help.photos");
    }

    FieldBox caption() {
        return caption;
    }

    private PhotoLine line() {
        return all.get(at);
    }

    private void go(int by) {
        keepCaption();
        at = Math.floorMod(at + by, all.size());
        show();
    }

    private void show() {
        PhotoLine line = line();
        title.setText(line.title());
        about.setText(texts.get("photos.which", at + 1, all.size(), line.about()));
        caption.load(typed.getOrDefault(at, line.entry().fact().caption()));
        read(reading, line, view);
    }

    private void beside() {
        boolean on = beside < 0;
        beside = on ? Math.floorMod(at + 1, all.size()) : -1;
        if (on) {
            views.add(other);
            foot.add(otherTitle);
            showBeside();
        } else {
            views.remove(other);
            foot.remove(otherTitle);
        }
        page.revalidate();
        page.repaint();
        view.requestFocusInWindow();
    }

    private void goBeside(int by) {
        if (beside >= 0) {
            beside = Math.floorMod(beside + by, all.size());
            showBeside();
        }
    }

    private void showBeside() {
        PhotoLine line = all.get(beside);
        otherTitle.setText(texts.get("photos.which", beside + 1, all.size(), line.title() + ", " + line.about()));
        read(readingOther, line, other);
    }

    private void read(Latest by, PhotoLine line, PhotoView into) {
        Photo photo = line.entry().fact();
        by.run(
                texts.get("photos.reading"),
                () -> context.book().logbook().photos().drawn(photo, DRAWN),
                drawn -> show(drawn, line, into),
                failure -> {
                    LOG.error("a photo could not be drawn", failure);
                    into.none(texts.get("photos.none.drawn"));
                });
    }

    private void show(Outcome<Pixels> drawn, PhotoLine line, PhotoView into) {
        if (drawn.didWork()) {
            into.show(SmallPictures.image(drawn.orThrow()), line.title());
        } else {
            into.none(problems.happened(drawn.problems().get(0)));
            context.window().say(problems.sentence(drawn.problems().get(0)));
        }
    }

    private void keepCaption() {
        typed.put(at, caption.text().strip());
        write(at);
    }

    /** Writes what was typed under a photo; once it is written, what was typed there meanwhile. */
    private void write(int which) {
        PhotoLine line = all.get(which);
        String said = typed.get(which);
        if (said == null || writing.contains(which)) {
            return;
        }
        if (said.equals(line.entry().fact().caption())) {
            typed.remove(which);
            return;
        }
        writing.add(which);
        String why = texts.get("photos.why.caption", line.title());
        context.tools()
                .tasks()
                .write(
                        why,
                        () -> context.keep().caption(line.entry(), said, why),
                        written -> captioned(written, which, line, said),
                        failure -> {
                            LOG.error("a caption could not be written", failure);
                            refused(which, texts.get("photos.failed"));
                        });
    }

    /**
     * Shows that photo again, whatever is looked at by now, with what was typed under it and why it is not written. A second try
     * goes by the entry as it stands now.
     */
    private void refused(int which, String sentence) {
        writing.remove(which);
        PhotoLine line = all.get(which);
        context.book().view().facts().of(Photo.class).find(line.entry().id()).ifPresent(now -> put(which, now));
        if (left) {
            left = false;
            context.asked().show().accept(this);
        }
        if (which != at) {
            typed.put(at, caption.text().strip());
            at = which;
            show();
        }
        caption.stop(sentence);
    }

    private void captioned(Outcome<Written> written, int which, PhotoLine line, String said) {
        if (!written.didWork()) {
            refused(which, problems.sentence(written.problems().get(0)));
            return;
        }
        writing.remove(which);
        Entry<Photo> before = line.entry();
        Photo photo = before.fact().showing(said);
        put(which, new Entry<>(before.id(), photo, before.standing(), before.struckBecause(), before.rev() + 1));
        context.window()
                .say(
                        texts.get("photos.captioned"),
                        Caption.of(texts.get("photos.undo")),
                        context.asked().undo());
        if (which == at) {
            title.setText(line().title());
        }
        write(which);
    }

    private void put(int which, Entry<Photo> now) {
        PhotoLine before = all.get(which);
        List<PhotoLine> next = new ArrayList<>(all);
        next.set(which, new PhotoLine(now, words.title(now.fact()), before.when(), before.about()));
        all = List.copyOf(next);
    }

    private void correct() {
        left = true;
        context.asked().correct().accept(line().id(), back);
    }

    /** Writes a copy that says nothing but the picture. */
    private void share() {
        Photo photo = line().entry().fact();
        String name = photo.name().replaceAll("[^\\p{L}\\p{N}._-]+", "-");
        Optional<Path> file = context.save().apply(texts.get("photos.share.name", name));
        if (file.isEmpty()) {
            return;
        }
        context.tools()
                .tasks()
                .run(
                        texts.get("photos.share.writing"),
                        () -> written(photo, file.get()),
                        sentence -> context.window().say(sentence),
                        failure -> {
                            LOG.error("a copy could not be written", failure);
                            context.window().say(texts.get("photos.failed"));
                        });
    }

    private String written(Photo photo, Path file) {
        Outcome<byte[]> bare = context.book().logbook().photos().withoutPlace(photo);
        if (!bare.didWork()) {
            return problems.sentence(bare.problems().get(0));
        }
        try {
            Files.write(file, bare.orThrow(), java.nio.file.StandardOpenOption.CREATE_NEW);
            return texts.get("photos.share.written", file);
        } catch (java.nio.file.FileAlreadyExistsException e) {
            return texts.get("photos.share.exists", file);
        } catch (IOException e) {
            LOG.warn("a copy could not be written to {}", file, e);
            return texts.get("photos.share.refused", file, why(e));
        }
    }

    private String why(IOException e) {
        String said = e instanceof FileSystemException system ? system.getReason() : e.getMessage();
        return said == null ? texts.get("photos.share.refused.nowhere") : said;
    }

    /** Looked at more closely it is whole again first, and so is the one beside it. */
    private void escape() {
        boolean closer = view.showWhole();
        closer |= beside >= 0 && other.showWhole();
        if (!closer) {
            leave();
        }
    }

    private void leave() {
        keepCaption();
        Set.copyOf(typed.keySet()).forEach(this::write);
        left = true;
        context.asked().leave().run();
        back.run();
    }
}
