package witnessmark.desktop.traces;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import javax.swing.JComponent;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.form.Kept;
import witnessmark.desktop.shell.Aside;
import witnessmark.desktop.task.Latest;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.Run;
import witnessmark.logbook.port.Written;
import witnessmark.logbook.tracing.BroughtTrace;
import witnessmark.logbook.tracing.TraceField;
import witnessmark.logbook.tracing.TraceProposal;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Problem;
import witnessmark.trace.result.Question;
import witnessmark.wording.Problems;
import witnessmark.wording.Texts;

/**
 * Bring in a trace: reads a file off the event thread, shows what was understood and what the engine did, and writes what
 * somebody takes of it. What was answered of a file stays with it for as long as the program runs.
 */
public final class TracePage implements Aside {
    private static final Logger LOG = LoggerFactory.getLogger(TracePage.class);

    private final TracesContext context;
    private final Texts texts;
    private final Problems problems;
    private final UnderstoodWords words;
    private final ForRunModel runWords;
    private final QuestionsPane questions;
    private final DidPane did;
    private final ReadPane read;
    private final ForRunPane forRun;
    private final TracePanel panel;
    private final FileReading reading;
    private final Latest looking;
    private final WaitingFiles files;
    private final Map<Path, TraceModel> models = new HashMap<>();
    private @Nullable Path path;
    private @Nullable TraceModel model;
    private @Nullable Id<Run> wanted;
    private boolean saving;
    private final FocusBack focus = new FocusBack();
    private boolean arriving;

    public TracePage(TracesContext context) {
        this.context = context;
        this.texts = context.texts();
        this.problems = new Problems(texts, context.measures());
        this.words = new UnderstoodWords(texts, context.measures());
        this.runWords = new ForRunModel(
                texts, context.measures(), () -> context.book().view().zone());
        this.looking = new Latest(context.tasks());
        this.files = new WaitingFiles(context.watch());
        questions = new QuestionsPane(texts, words, this::answer);
        did = new DidPane(context.tools(), new DidModel(texts, context.measures()));
        read = new ReadPane(context.tools(), words, this::change);
        forRun = new ForRunPane(texts, runWords, problems, new OnRun());
        panel = new TracePanel(
                texts,
                new TracePanel.Doing(
                        this::choose,
                        this::stop,
                        this::logRun,
                        this::next,
                        this::setAside,
                        () -> context.folder().get().ifPresent(context.watch()::watch),
                        () -> context.watch().watch(null),
                        this::leave,
                        this::save),
                questions,
                did,
                read,
                forRun);
        Kept.leaves(panel); // made with the window, and shown when somebody asks for it
        reading = new FileReading(context, words, panel::progress);
        context.watch().onChange(this::watched);
        watched();
    }

    @Override
    public String heading() {
        return texts.get("traces.heading");
    }

    @Override
    public JComponent component() {
        return panel;
    }

    @Override
    public JComponent firstFocus() {
        TraceModel now = model;
        if (reading.isUnderWay()) {
            return panel.stopButton();
        }
        return now == null || now.trace().isEmpty() && !now.isAsking()
                ? panel.chooseButton()
                : panel.firstFocus(now, forRun);
    }

    @Override
    public List<String> help() {
        return List.of("help.traces");
    }

    /** The logbook changed: runs may have come or gone, and a run may say something else. */
    @Override
    public void changed() {
        TraceModel now = model;
        BroughtTrace trace = now == null ? null : now.trace().orElse(null);
        if (now == null || trace == null || reading.isUnderWay()) {
            return;
        }
        looking.run(
                texts.get("traces.looking"),
                () -> TraceModel.Read.of(context.bringIn(), context.book(), Outcome.worked(trace)),
                read -> looked(now, read),
                this::broke);
    }

    private void looked(TraceModel of, TraceModel.Read read) {
        of.look(context.bringIn(), read);
        fill();
    }

    // Coming here

    /** Shows what is in hand, or where a file is chosen and what waits; once all of it is in the logbook, asks for the next. */
    public void open() {
        context.asked().show(this);
        TraceModel now = model;
        if (now != null && now.isAllIn()) {
            choose();
        }
    }

    /** Asks for a file that is of this run. */
    public void openFor(Id<Run> run) {
        wanted = run;
        context.asked().show(this);
        choose();
    }

    /** Opens files: the first now, the others one after another. */
    public void open(List<Path> several) {
        if (several.isEmpty()) {
            return;
        }
        files.drop(several.subList(1, several.size()));
        open(several.get(0));
    }

    /** Opens a file; what was answered of it before stands. */
    public void open(Path file) {
        stop();
        files.opened(file);
        Id<Run> run = wanted;
        wanted = null;
        path = file;
        String name = String.valueOf(file.getFileName());
        TraceModel now = models.computeIfAbsent(
                file, path -> new TraceModel(name, context.bringIn().settings(name), run));
        if (run != null) {
            now.want(run);
        }
        model = now;
        arriving = true;
        context.asked().show(this);
        read();
    }

    private void choose() {
        context.choose().get().ifPresentOrElse(this::open, () -> {
            wanted = null;
            firstFocus().requestFocusInWindow();
        });
    }

    private void next() {
        files.after(path).stream().findFirst().ifPresent(this::open);
    }

    /** Opens the first of those that wait. */
    public void openWaiting() {
        context.asked().show(this);
        if (model == null) {
            next();
        }
    }

    private void watched() {
        panel.watching(
                context.watch().said(), context.watch().state(), context.watch().passed());
        can();
    }

    private void setAside() {
        TraceModel now = model;
        context.watch().at(path).ifPresent(trace -> {
            context.watch().setAside(trace);
            context.window().say(texts.get("traces.set_aside", trace.name()));
            List<Path> left = files.after(path);
            if (now != null) {
                forget(now);
            }
            left.stream().findFirst().ifPresentOrElse(this::open, panel.chooseButton()::requestFocusInWindow);
        });
    }

    private void leave() {
        context.asked().leave();
    }

    // Reading

    private void read() {
        TraceModel of = model;
        Path at = path;
        if (of == null || at == null) {
            return;
        }
        looking.drop();
        focus.leaving(panel, panel.stopButton());
        panel.showReading(of.file());
        reading.start(of, at, this::taken, () -> panel.showFailed(of.file(), List.of(texts.get("traces.failed"))));
        can();
        focus.left(panel.stopButton(), arriving);
    }

    /** Reads no further; what was answered stands, and the file is read again when it is opened. */
    private void stop() {
        if (!reading.isUnderWay()) {
            return;
        }
        reading.stop();
        TraceModel now = model;
        if (now != null) {
            now.unread();
            panel.showFailed(now.file(), List.of(texts.get("traces.stopped")));
            panel.chooseButton().requestFocusInWindow();
        }
        can();
    }

    private void taken(TraceModel of, TraceModel.Read read) {
        if (of != model) {
            return;
        }
        if (of.take(read, context.bringIn())) {
            read(); // it is of an engine with other limits
            return;
        }
        fill();
        if (arriving && of.isRead()) {
            panel.showDid();
        }
        focus.back(arriving ? firstFocus() : null);
        arriving = false;
    }

    private void broke(Throwable failure) {
        LOG.error("a trace could not be read", failure);
        context.window().say(texts.get("traces.failed"));
    }

    // Showing

    private void fill() {
        TraceModel now = model;
        if (now == null) {
            panel.showEmpty();
            can();
            return;
        }
        questions.show(now);
        Optional<BroughtTrace> trace = now.trace();
        if (trace.isEmpty()) {
            panel.showFailed(
                    now.file(), now.problems().stream().map(problems::sentence).toList());
            if (now.isAsking()) {
                forRun.showUnread();
                read.clear();
                panel.showFound(now.file(), "", List.of(), false);
            }
            can();
            return;
        }
        BroughtTrace found = trace.get();
        read.show(found);
        if (now.isRead()) {
            did.show(found, now.part(), ForRunModel.isTimed(now));
            forRun.show(now, facts(), words);
        } else {
            forRun.showUnread();
        }
        List<String> told = new ArrayList<>();
        ForRunModel.known(now).forEach(problem -> told.add(problems.sentence(problem)));
        now.told().forEach(question -> told.add(words.question(question)));
        panel.showFound(now.file(), words.file(found), told, now.isRead());
        can();
    }

    private Facts facts() {
        return context.book().view().facts();
    }

    private void can() {
        TraceModel now = model;
        boolean idle = !reading.isUnderWay();
        panel.can(
                now != null && idle && now.canLog(),
                now != null && idle && !saving && now.toSave().isPresent(),
                idle && context.watch().at(path).isPresent(),
                files.after(path).size());
        panel.say(now == null || !idle ? "" : runWords.whyNot(now));
    }

    // What a person does

    private void answer(Question question, Object answer) {
        TraceModel now = model;
        if (now != null && !now.answer(question).equals(Optional.of(answer))) {
            change(of -> of.answer(question, answer));
        }
    }

    private void change(Consumer<TraceModel> change) {
        TraceModel now = model;
        if (now != null) {
            change.accept(now);
            arriving = now.isAsking();
            read();
        }
    }

    /** The sheet of a new run, filled with what the trace knows; the trace goes with it. */
    private void logRun() {
        TraceModel now = model;
        BroughtTrace trace = now == null ? null : now.trace().orElse(null);
        if (now != null && trace != null && now.canLog()) {
            boolean begun = context.asked().log(now.keeps() ? trace : trace.withoutSamples(), now.part(), now.note());
            if (!begun) {
                panel.showFound(now.file(), words.file(trace), List.of(texts.get("traces.log.begun")), true);
            }
        }
    }

    private void save() {
        TraceModel now = model;
        TraceProposal proposal = now == null ? null : now.toSave().orElse(null);
        if (now == null || proposal == null || saving || reading.isUnderWay()) {
            return;
        }
        saving = true;
        can();
        Set<TraceField> taken = now.taken();
        String run = runWords.run(proposal.run(), facts());
        String why = texts.get("traces.why", now.file(), run);
        String note = now.note();
        context.tasks()
                .write(
                        texts.get("traces.saving"),
                        () -> context.bringIn().save(proposal, taken, note, why),
                        outcome -> saved(now, proposal, run, outcome),
                        failure -> {
                            saving = false;
                            can();
                            LOG.error("a trace could not be written", failure);
                            context.window().say(texts.get("traces.not_saved"));
                        });
    }

    private void saved(TraceModel of, TraceProposal proposal, String run, Outcome<Written> outcome) {
        saving = false;
        if (!outcome.didWork()) {
            List<String> why = new ArrayList<>();
            for (Problem problem : outcome.problems()) {
                why.add(problems.sentence(problem));
            }
            panel.showFound(of.file(), words.file(proposal.trace()), why, true);
            can();
            return;
        }
        Path brought = path;
        boolean more = of.saved(proposal.part());
        Written written = outcome.orThrow();
        context.window()
                .say(
                        texts.get("traces.saved", of.file(), run),
                        Caption.of(texts.get("runsheet.undo.word")),
                        () -> context.asked().undo(written.change()));
        if (!more) {
            forget(of);
        }
        List<Path> left =
                files.after(path).stream().filter(each -> !each.equals(brought)).toList();
        context.watch().look();
        if (more || !left.isEmpty()) {
            fill();
            context.window().changed();
            if (!more) {
                open(left.get(0));
            }
        } else {
            context.asked().run(proposal.run().id());
            context.window().changed();
        }
    }

    /** A part was brought in with a run that was logged for it. */
    public void logged(BroughtTrace trace, int part) {
        TraceModel now = model;
        if (now != null
                && now.trace().map(BroughtTrace::content).equals(Optional.of(trace.content()))
                && !now.saved(part)) {
            forget(now);
        }
    }

    private void forget(TraceModel of) {
        models.values().remove(of);
        if (of == model) {
            model = null;
            path = null;
            fill();
        }
    }

    /** What somebody does to the run beside. */
    private final class OnRun implements ForRunPane.Asked {
        @Override
        public void part(int number) {
            TraceModel now = model;
            if (now != null) {
                now.part(number);
                fill();
            }
        }

        @Override
        public void run(@Nullable Id<Run> run) {
            TraceModel now = model;
            if (now != null && now.choose(run, context.bringIn())) {
                read();
            } else {
                fill();
            }
        }

        @Override
        public void say(Consumer<TraceModel> what) {
            TraceModel now = model;
            if (now != null) {
                what.accept(now);
            }
        }

        @Override
        public void go(Id<Run> run) {
            context.asked().run(run);
        }

        @Override
        public void time() {
            panel.showRead();
            read.toTime();
        }
    }

    @Nullable
    TraceModel model() {
        return model;
    }

    TracePanel panel() {
        return panel;
    }

    ForRunPane forRun() {
        return forRun;
    }
}
