package witnessmark.launch;

import java.nio.file.Path;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Consumer;
import javax.swing.JButton;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.form.Buttons;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.keeping.Elsewhere;
import witnessmark.desktop.keeping.Warnings;
import witnessmark.desktop.shell.CrashDialog;
import witnessmark.desktop.shell.CrashNotice;
import witnessmark.desktop.shell.Desk;
import witnessmark.desktop.shell.Look;
import witnessmark.desktop.shell.PlaceId;
import witnessmark.desktop.shell.ShellContext;
import witnessmark.desktop.shell.ShellFrame;
import witnessmark.desktop.start.OpenLogbook;
import witnessmark.desktop.task.EventThread;
import witnessmark.desktop.task.Tasks;
import witnessmark.domain.Team;
import witnessmark.logbook.port.Logbook;
import witnessmark.logbook.port.LogbookCopies.Lacks;
import witnessmark.logbook.port.LogbookCopies.Restored;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.wording.Measures;
import witnessmark.wording.Problems;
import witnessmark.wording.Texts;
import witnessmark.wording.Units;

/** The program with its window: one logbook on the desk at a time, the places around it. */
final class Window implements OpenLogbook {
    /** Setting: the units measures are shown and typed in. */
    static final String UNITS = "units";

    private final Outside outside;
    private final Texts texts = Texts.in(Locale.UK);
    private final Look look;
    private final Tasks tasks;
    private final Books books;
    private final Consumer<List<Problem>> lastWords;
    private @Nullable ShellFrame frame;
    private @Nullable OpenBook book;
    private @Nullable Places around;
    private @Nullable Watch watch;
    private @Nullable Elsewhere elsewhere;
    private @Nullable Warnings warnings;
    private Desk desk = new Desk();

    /** @param lastWords told the problems when no logbook at all can be opened; not expected to return */
    Window(Outside outside, Consumer<List<Problem>> lastWords) {
        this.outside = outside;
        this.lastWords = lastWords;
        this.look = new Look(outside.settings());
        CrashNotice crash = new CrashNotice(
                () -> frame,
                new CrashDialog(texts, this::tasks, this::lastSaved, () -> Logs.end(outside.data()), this::quit),
                times -> desk.say(texts.get("shell.crash.again", times)));
        Thread.UncaughtExceptionHandler unforeseen = (thread, failure) -> crash.tell(thread.getName(), failure);
        Thread.setDefaultUncaughtExceptionHandler(unforeseen);
        this.tasks = new Tasks(unforeseen);
        this.books = new Books(outside);
    }

    /** Opens the first logbook and shows the window. Called on the main thread, while the look is put on elsewhere. */
    void start(List<String> args) {
        EventThread.later(() -> look.install(false));
        Outcome<OpenBook> first = books.first(args);
        Outcome<OpenBook> shown = first.didWork() ? first : books.sampleInstead();
        if (!shown.didWork()) {
            lastWords.accept(first.problems());
            return;
        }
        EventThread.later(() -> {
            show(shown.orThrow(), first.didWork() ? List.of() : first.problems());
            if (first.didWork()) {
                notice(first.problems());
            } else {
                shown.problems().forEach(problem -> desk.say(sentence(problem)));
            }
        });
    }

    @Override
    public void open(Path path) {
        OpenBook now = book;
        if (now != null
                && now.desk().logbook().readOnly().isEmpty()
                && now.desk().logbook().path().equals(path.toAbsolutePath().normalize())) {
            return; // opened a second time it could only be read
        }
        change(path.toString(), () -> books.open(path));
    }

    @Override
    public void take(Logbook opened) {
        change(opened.path().toString(), () -> Outcome.worked(books.own(opened)));
    }

    @Override
    public void openSample() {
        OpenBook now = book;
        if (now == null || !now.isSample()) {
            change(texts.get("shell.program"), books::sample);
        }
    }

    @Override
    public void resetSample() {
        OpenBook now = book;
        change(texts.get("shell.program"), () -> {
            if (now != null && now.season() != null) {
                Outcome<Boolean> kept = now.season().keepOwn(now.desk().logbook());
                if (!kept.didWork()) {
                    return Outcome.didNot(kept.problems());
                }
                now.desk().logbook().close();
                Outcome<Path> gone = now.season().reset();
                if (!gone.didWork()) {
                    return Outcome.didNot(gone.problems());
                }
            }
            return books.sample();
        });
    }

    @Override
    public void restore(Path copy, Path present) {
        OpenBook now = book;
        if (now == null) {
            return;
        }
        boolean inHand = present.equals(now.desk().logbook().path());
        tasks.write(
                texts.get("keeping.restore.working"),
                () -> {
                    if (inHand) {
                        now.desk().logbook().close();
                    }
                    Outcome<Restored> restored = outside.files().copies().replace(copy, present);
                    return new Back(restored, restored.didWork() || inHand ? books.open(present) : null);
                },
                back -> restored(now, back),
                failure -> {
                    throw new IllegalStateException("restoring " + present, failure);
                });
    }

    /** What a restoring came to, and the logbook at that place; null when it was not opened. */
    private record Back(
            Outcome<Restored> restored, @Nullable Outcome<OpenBook> opened) {}

    private void restored(OpenBook before, Back back) {
        Outcome<OpenBook> opened = back.opened();
        if (opened != null && opened.didWork()) {
            show(opened.orThrow());
            letGo(before);
        }
        notice(opened == null ? List.of() : opened.problems());
        notice(back.restored().problems());
        if (back.restored().didWork()) {
            say(back.restored().orThrow());
        }
    }

    private void say(Restored restored) {
        Path was = restored.before();
        if (was == null) {
            desk.say(texts.get("keeping.restore.done", restored.logbook()));
            return;
        }
        Lacks lacks = restored.lacks();
        desk.say(
                lacks == null
                        ? texts.get("keeping.restore.replaced", was)
                        : texts.get(
                                "keeping.restore.lacks",
                                was,
                                lacks.changes(),
                                measures().fullMoment(lacks.last())),
                Caption.of(texts.get("keeping.restore.undo")),
                () -> restore(was, restored.logbook()));
    }

    /** Puts another logbook in the window; when it cannot be opened the one in hand stays, and a sentence says why. */
    private void change(String name, Callable<Outcome<OpenBook>> opening) {
        OpenBook before = book;
        tasks.write(
                name,
                opening,
                outcome -> {
                    if (outcome.didWork()) {
                        show(outcome.orThrow());
                        letGo(before);
                        notice(outcome.problems());
                    } else {
                        notOpened(outcome.problems());
                    }
                },
                failure -> {
                    throw new IllegalStateException("opening " + name, failure);
                });
    }

    private void show(OpenBook opened) {
        show(opened, List.of());
    }

    /** @param missed why another logbook could not be opened, for which this one stands in; empty for none */
    private void show(OpenBook opened, List<Problem> missed) {
        ShellFrame before = frame;
        Measures measures = measures();
        desk = new Desk();
        ShellContext context = new ShellContext(
                texts, tasks, outside.settings(), look, desk, About.of(outside, texts, opened), this::quit);
        Places left = around;
        if (left != null) {
            left.close();
        }
        Places places = new Places(context, measures, opened, outside, this);
        ShellFrame made = new ShellFrame(context, places.all(), places.commands(), places.findable());
        made.onFiles(places::dropped);
        around = places;
        if (before != null) {
            before.keepState();
            before.dispose();
        }
        frame = made;
        book = opened;
        Warnings warning = new Warnings(
                texts,
                new Problems(texts, measures),
                desk,
                places.copies(),
                places::showFound,
                opened.desk().logbook());
        warnings = warning;
        watchOver(opened, warning, places, made);
        made.pane().logbook(name(opened));
        if (!opened.isSample()) { // several may be of one team
            made.setTitle(
                    texts.get("shell.program.of", opened.desk().logbook().path().getFileName()));
        }
        desk.writing(opened.desk().who());
        made.open(PlaceId.BEFORE_WE_GO);
        Optional<Problem> readOnly = opened.desk().logbook().readOnly();
        if (readOnly.isPresent()) {
            Path path = opened.desk().logbook().path();
            boolean copy = readOnly.get().kind() == ProblemKind.LOGBOOK_IS_COPY;
            List<JButton> ways = new ArrayList<>();
            if (copy || readOnly.get().kind() == ProblemKind.PLACE_READ_ONLY) {
                ways.add(Buttons.plain(Caption.of(texts.get("keeping.notice.copy")), places.copies()::saveCopy));
            }
            ways.add(
                    copy
                            ? Buttons.plain(Caption.of(texts.get("shell.notice.open")), places::openAnother)
                            : Buttons.plain(Caption.of(texts.get("shell.notice.again")), () -> open(path)));
            desk.notice(sentence(readOnly.get()), ways);
        } else if (!missed.isEmpty()) {
            warning.instead(missed.get(0), places::openAnother, places::shown);
        } else {
            places.shown();
        }
    }

    private void watchOver(OpenBook opened, Warnings warning, Places places, ShellFrame shown) {
        Watch before = watch;
        if (before != null) {
            before.close();
        }
        watch = new Watch(texts, tasks, opened.desk(), new Watch.Found() {
            @Override
            public void checked(List<Problem> problems) {
                warning.found(problems);
            }

            @Override
            public void met(List<Problem> problems) {
                warning.met(problems);
            }

            @Override
            public void back() {
                warning.back();
            }
        });
        Elsewhere other = elsewhere;
        if (other != null) {
            other.close();
        }
        if (opened.isSample()) {
            places.copies().sayOfSample();
        }
        elsewhere = opened.isSample() || opened.desk().logbook().readOnly().isPresent()
                ? null
                : places.copies().watchElsewhere(() -> !shown.pane().hasNotice());
    }

    private String lastSaved() {
        OpenBook now = book;
        return now == null
                ? ""
                : now.desk()
                        .lastWritten()
                        .map(at -> measures().time(LocalTime.ofInstant(at, ZoneId.systemDefault())))
                        .orElse("");
    }

    /** The team's name; the file's while no team is written down. */
    private String name(OpenBook opened) {
        Logbook logbook = opened.desk().logbook();
        String team = logbook.facts()
                .of(Team.class)
                .inForce()
                .findFirst()
                .map(entry -> entry.fact().name())
                .orElse(String.valueOf(logbook.path().getFileName()));
        return opened.isSample() ? texts.get("shell.logbook.sample", team) : team;
    }

    /** Shows and types measures in these units from now on: the window is built anew around the same logbook. */
    void use(Units units) {
        outside.settings().put(UNITS, units.text());
        again();
    }

    /** Shows the same logbook again, after the units changed. */
    private void again() {
        OpenBook now = book;
        if (now != null) {
            show(now);
        }
    }

    private void letGo(@Nullable OpenBook before) {
        if (before != null && before != book) {
            tasks.write(
                    texts.get("shell.program"),
                    () -> {
                        before.desk().logbook().close();
                        return before;
                    },
                    closed -> desk.changed(),
                    failure -> {
                        throw new IllegalStateException("closing a logbook", failure);
                    });
        }
    }

    private void notice(List<Problem> problems) {
        Warnings said = warnings;
        if (said != null) {
            said.met(problems);
        }
    }

    private void notOpened(List<Problem> problems) {
        Warnings said = warnings;
        if (said != null && !problems.isEmpty()) {
            said.notOpened(problems.get(0));
        }
    }

    private String sentence(Problem problem) {
        return new Problems(texts, measures()).sentence(problem);
    }

    private Measures measures() {
        return new Measures(
                texts, outside.settings().get(UNITS).map(Units::parse).orElse(Units.METRIC));
    }

    /** Drafts are kept and every change is on the disk, so nothing is asked. */
    private void quit() {
        Places now = around;
        if (now == null) {
            lastCopy();
        } else {
            now.last(frame, this::lastCopy);
        }
    }

    /** With what was brought in meanwhile. */
    private void lastCopy() {
        Elsewhere copies = elsewhere;
        if (copies == null) {
            end();
        } else {
            copies.last(frame, this::end);
        }
    }

    private void end() {
        ShellFrame shown = frame;
        if (shown != null) {
            shown.keepState();
            shown.dispose();
        }
        OpenBook open = book;
        if (open == null) {
            System.exit(0);
            return;
        }
        tasks.write(
                texts.get("shell.program"),
                () -> {
                    open.desk().logbook().close();
                    return open;
                },
                closed -> System.exit(0),
                failure -> System.exit(1));
    }

    /** The window as it stands, for dialogs to stand before; null before the first. */
    @Nullable
    ShellFrame frame() {
        return frame;
    }

    private Tasks tasks() {
        return tasks;
    }
}
