package witnessmark.desktop.builds;

import java.awt.event.KeyEvent;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import javax.swing.JComponent;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import witnessmark.desktop.builds.BuildLines.GapLine;
import witnessmark.desktop.builds.BuildLines.JointLine;
import witnessmark.desktop.form.Buttons;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.form.FormKeys;
import witnessmark.desktop.form.Keys;
import witnessmark.desktop.lessons.LessonLine;
import witnessmark.desktop.shell.Aside;
import witnessmark.desktop.shell.PlaceId;
import witnessmark.desktop.task.Latest;
import witnessmark.domain.Build;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.domain.Position;
import witnessmark.ledger.result.BuildPosition;
import witnessmark.logbook.building.BuildField;
import witnessmark.logbook.building.BuildPage;
import witnessmark.logbook.building.SeeBuild;
import witnessmark.wording.Texts;

/** The page of a build, in the place of an engine: reads it off the event thread, shows it, and takes what is typed. */
public final class BuildAside implements Aside {
    private static final Logger LOG = LoggerFactory.getLogger(BuildAside.class);

    private final BuildsContext context;
    private final Texts texts;
    private final ShowBuild shower;
    private final ReadBuild reader;
    private final Latest reading;
    private final Latest copying;
    private final Map<String, BuildInHand> builds = new HashMap<>();
    private final Set<String> begun = new HashSet<>();
    private final BuildPanel panel;
    private final SidePane side;
    private @Nullable BuildInHand now;
    private ReadBuild.@Nullable Wanted wanted;
    private String engine = "";
    private boolean filling;
    private boolean arriving;

    public BuildAside(BuildsContext context) {
        this.context = context;
        this.texts = context.texts();
        this.reader = new ReadBuild(context);
        this.reading = new Latest(context.tasks());
        this.copying = new Latest(context.tasks());
        this.side = new SidePane(texts, new Typed());
        this.panel = new BuildPanel(
                context.tools(),
                new BuildPanel.Doing(
                        this::save, this::copy, this::tightenAnother, this::sheet, this::sign, this::anew, this::leave),
                side);
        this.shower = new ShowBuild(context, panel);
        BuildTables tables = panel.tables();
        tables.positions().onSelect(line -> hold(line == null ? null : line.row()));
        tables.joints().onSelect(line -> hold(line == null ? null : line.row()));
        tables.positions().onOpen(line -> intoFields(line.row()));
        tables.joints().onOpen(this::openJoint);
        FormKeys.bindWithin(side.component(), Keys.plain(KeyEvent.VK_ESCAPE), "wm-back", this::backToLists);
        FormKeys.bindWithin(panel, Keys.plain(KeyEvent.VK_ESCAPE), "wm-leave", this::leave);
        lookForDrafts();
    }

    @Override
    public String heading() {
        return texts.get("builds.heading", engine);
    }

    @Override
    public JComponent component() {
        return panel;
    }

    @Override
    public JComponent firstFocus() {
        return panel.firstFocus();
    }

    @Override
    public List<String> help() {
        return List.of("help.builds");
    }

    @Override
    public void changed() {
        read();
    }

    /** Shows the build of an engine that is open, or one begun here; else its latest, or the page on which it is opened. */
    public void openEngine(Id<Engine> id) {
        Optional<Entry<Build>> found = SeeBuild.find(context.book().view(), id, null);
        ReadBuild.Wanted anew = new ReadBuild.Wanted(id, null);
        boolean open = found.map(build -> build.fact().closed() == null).orElse(false);
        open(
                open || found.isPresent() && !isBegun(anew)
                        ? new ReadBuild.Wanted(id, found.get().id())
                        : anew);
    }

    private boolean isBegun(ReadBuild.Wanted asked) {
        BuildInHand there = builds.get(asked.record());
        return there == null ? begun.contains(asked.record()) : there.model().isDirty();
    }

    /** Shows a build. */
    public void open(Id<Build> id) {
        context.book()
                .view()
                .facts()
                .of(Build.class)
                .find(id)
                .ifPresent(build -> open(new ReadBuild.Wanted(build.fact().engine(), id)));
    }

    /** Opens an engine: the page of a build that is not written yet. */
    public void openAnew(Id<Engine> id) {
        open(new ReadBuild.Wanted(id, null));
    }

    /** Shows the build of the engine in view; else the one in hand, or the first that is open. */
    public void openFor(Optional<Id<Engine>> inView) {
        ReadBuild.Wanted before = wanted;
        if (inView.isPresent()) {
            openEngine(inView.get());
        } else if (before != null) {
            open(before);
        } else {
            reader.first().ifPresentOrElse(this::openEngine, this::noEngine);
        }
    }

    /** Opens the engine in view, else the one whose build is in hand. */
    public void openAnewFor(Optional<Id<Engine>> inView) {
        inView.or(() -> Optional.ofNullable(wanted).map(ReadBuild.Wanted::engine))
                .or(reader::first)
                .ifPresentOrElse(this::openAnew, this::noEngine);
    }

    private void noEngine() {
        context.window().say(texts.get("builds.no_engine"));
    }

    private void open(ReadBuild.Wanted asked) {
        wanted = asked;
        arriving = true;
        engine = context.book()
                .view()
                .facts()
                .of(Engine.class)
                .get(asked.engine())
                .number();
        context.asked().show().accept(this);
        read();
    }

    // Reading

    private void read() {
        ReadBuild.Wanted asked = wanted;
        if (asked == null) {
            return;
        }
        boolean known = builds.containsKey(asked.record());
        reading.run(texts.get("builds.reading"), () -> reader.read(asked, known), this::show, this::failed);
    }

    private void show(ReadBuild.Read read) {
        if (!read.asked().equals(wanted)) {
            return;
        }
        if (read.isGone()) {
            builds.remove(read.asked().record());
            openEngine(read.asked().engine());
            return;
        }
        BuildInHand shown = builds.computeIfAbsent(read.asked().record(), record -> inHand(read.asked()));
        now = shown;
        shown.model().editable(read.editable());
        panel.earlier(read.earlier(), !arriving);
        shown.become(read.page());
        read.draft().ifPresent(shown::restore);
        fill();
        if (arriving) {
            arriving = false;
            arrive(shown.model());
        }
    }

    private BuildInHand inHand(ReadBuild.Wanted asked) {
        return new BuildInHand(
                context,
                new BuildModel(
                        asked.engine(),
                        asked.build(),
                        context.measures().date(context.book().today().day()),
                        context.book().who()),
                new OnScreen());
    }

    private void arrive(BuildModel model) {
        if (model.page().isEmpty()) {
            panel.bring(true);
            side.firstZone().ifPresent(JComponent::requestFocusInWindow);
        } else {
            panel.firstFocus().requestFocusInWindow();
        }
    }

    private void failed(Throwable failure) {
        LOG.error("a build could not be read", failure);
        panel.failed(texts.get("builds.failed"), Buttons.plain(Caption.of(texts.get("builds.again")), this::read));
    }

    /** Finds out whether something was typed on a page of a build before the program was started. */
    private void lookForDrafts() {
        context.tasks()
                .run(
                        texts.get("builds.reading"),
                        reader::begun,
                        found -> {
                            begun.addAll(found);
                            context.window().draft(PlaceId.ENGINES, !begun.isEmpty());
                        },
                        failure -> LOG.error("drafts of builds could not be looked for", failure));
    }

    // Showing

    private void fill() {
        BuildInHand shown = now;
        if (shown == null) {
            return;
        }
        filling = true;
        shower.show(shown, engine, this::goTo);
        filling = false;
        context.window()
                .draft(
                        PlaceId.ENGINES,
                        builds.values().stream().anyMatch(one -> one.model().isDirty())
                                || begun.stream().anyMatch(record -> !builds.containsKey(record)));
    }

    // What a person does

    private void hold(@Nullable String row) {
        BuildInHand shown = now;
        if (shown != null && row != null && !filling) {
            shown.model().hold(row);
            fill();
        }
    }

    private void intoFields(String row) {
        hold(row);
        panel.bring(true);
        side.first(row).ifPresent(JComponent::requestFocusInWindow);
    }

    /** A group that is written is tightened once more, by its next stage. */
    private void openJoint(JointLine line) {
        if (BuildField.joint(line.row()).isPresent()) {
            intoFields(line.row());
            return;
        }
        BuildInHand shown = now;
        if (shown != null && shown.model().isOpen()) {
            intoFields(shown.model().tighten(LineWords.group(shown.model(), line.row())));
        }
    }

    private void tightenAnother() {
        BuildInHand shown = now;
        if (shown != null && shown.model().isOpen()) {
            intoFields(shown.model().tighten(null));
        }
    }

    /** From the last field of a position on to the next position; from that of a group back to the groups. */
    private void next() {
        BuildInHand shown = now;
        String row = shown == null ? null : shown.model().inHand().orElse(null);
        if (shown == null || row == null) {
            return;
        }
        shown.left();
        panel.bring(false);
        if (BuildField.joint(row).isPresent()) {
            panel.tables().joints().table().requestFocusInWindow();
            return;
        }
        panel.tables().after(row);
        panel.tables().positions().table().requestFocusInWindow();
    }

    private void backToLists() {
        panel.bring(false);
        boolean ofJoint =
                now != null && now.model().inHand().flatMap(BuildField::joint).isPresent();
        JComponent list = ofJoint
                ? panel.tables().joints().table()
                : panel.tables().positions().table();
        list.requestFocusInWindow();
    }

    private void goTo(BuildField field) {
        if (!field.row().equals(BuildField.BUILD)) {
            panel.tables().select(field.row());
            hold(field.row());
        }
        panel.bring(true);
        side.input(field).or(() -> side.first(field.row())).ifPresent(JComponent::requestFocusInWindow);
    }

    private void openGap(GapLine gap) {
        String row = gap.row();
        if (gap.way() == GapLine.Way.SHEET) {
            sheet();
        } else if (gap.way() == GapLine.Way.LESSONS) {
            side.firstLesson().ifPresent(JComponent::requestFocusInWindow);
        } else if (row != null && BuildField.position(row).isPresent()) {
            panel.tables().select(row);
            intoFields(row);
        } else if (row != null) {
            panel.tables().joints().shown().stream()
                    .filter(line -> line.row().equals(row))
                    .findFirst()
                    .ifPresent(this::openJoint);
        }
    }

    /** What is free of the parts list of another build is picked where nothing is; nothing else of it is taken. */
    private void copy() {
        BuildInHand shown = now;
        String from = panel.chosenEarlier();
        BuildPage page = shown == null ? null : shown.model().page().orElse(null);
        if (shown == null || page == null || from.isEmpty() || !shown.model().isOpen()) {
            return;
        }
        List<Entry<Position>> empty =
                shown.model().empty().stream().map(BuildPosition::position).toList();
        Set<String> taken = shown.model().taken();
        Build to = page.build().fact();
        copying.run(
                texts.get("builds.copying"),
                () -> SeeBuild.copy(context.book().view(), Id.parse(from), to, empty, taken),
                proposed -> {
                    int picked = shown.model().propose(proposed);
                    long missing = proposed.stream()
                            .filter(each -> each.part() == null)
                            .count();
                    context.window().say(texts.get("builds.copied", picked, missing));
                },
                this::failed);
    }

    private void save() {
        BuildInHand shown = now;
        if (shown != null && shown.model().isOpen() && !context.book().view().readOnly()) {
            shown.save();
        }
    }

    private void sheet() {
        BuildPage written = now == null ? null : now.model().written();
        if (written == null) {
            context.window().say(texts.get("builds.sheet.first"));
            return;
        }
        context.asked().sheet().accept(written.build().id().text());
    }

    private void sign() {
        BuildPage written = now == null ? null : now.model().written();
        if (written != null && !context.book().view().readOnly()) {
            context.asked().sign().accept(written.build().id().text());
        }
    }

    /** The same engine opened once more. */
    private void anew() {
        ReadBuild.Wanted asked = wanted;
        if (asked != null) {
            openAnew(asked.engine());
        }
    }

    private void leave() {
        context.asked().leave().run();
    }

    /** The engine whose build is on screen; none while another page is. */
    public Optional<Id<Engine>> engineInView() {
        return panel.isShowing() ? Optional.ofNullable(wanted).map(ReadBuild.Wanted::engine) : Optional.empty();
    }

    BuildPanel panel() {
        return panel;
    }

    BuildModel model() {
        return Objects.requireNonNull(now).model();
    }

    /** What the fields tell. */
    private final class Typed implements SidePane.Told {
        @Override
        public void typed(BuildField field, String text) {
            BuildInHand shown = now;
            if (shown != null && !filling) {
                shown.model().type(field, text);
            }
        }

        @Override
        public void left() {
            BuildInHand shown = now;
            if (shown != null) {
                shown.left();
            }
        }

        @Override
        public void done() {
            next();
        }

        @Override
        public void dropped() {
            BuildInHand shown = now;
            if (shown != null) {
                shown.model().inHand().ifPresent(shown.model()::drop);
                backToLists();
            }
        }

        @Override
        public void open(GapLine gap) {
            openGap(gap);
        }

        @Override
        public void answer(LessonLine lesson) {
            BuildPage written = now == null ? null : now.model().written();
            if (written != null) {
                context.asked().answer().accept(written.build().id().text(), lesson.id());
            }
        }

        @Override
        public void incident(LessonLine lesson) {
            if (lesson.incident() != null) {
                context.asked().incident().accept(lesson.incident());
            }
        }

        @Override
        public JComponent first() {
            return panel.firstFocus();
        }
    }

    /** What is seen of a build while its page is up. */
    private final class OnScreen implements BuildInHand.Seen {
        @Override
        public void changed() {
            fill();
        }

        @Override
        public void focus(BuildField field) {
            goTo(field);
        }

        @Override
        public void written(Id<Build> build) {
            ReadBuild.Wanted asked = wanted;
            if (asked != null && asked.build() == null) {
                builds.remove(asked.record());
                wanted = new ReadBuild.Wanted(asked.engine(), build);
                read();
            }
        }
    }
}
