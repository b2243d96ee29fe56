package witnessmark.desktop.builds;

import java.time.Duration;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.form.KeptDraft;
import witnessmark.desktop.form.Refusal;
import witnessmark.desktop.sheets.SheetWords;
import witnessmark.desktop.task.Later;
import witnessmark.desktop.task.Latest;
import witnessmark.domain.Build;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.ledger.result.BuildGap;
import witnessmark.logbook.View;
import witnessmark.logbook.building.BuildDraft;
import witnessmark.logbook.building.BuildField;
import witnessmark.logbook.building.BuildPage;
import witnessmark.logbook.building.SeeBuild;
import witnessmark.logbook.building.WriteBuildWork;
import witnessmark.logbook.port.Drafts;
import witnessmark.logbook.port.Written;
import witnessmark.outcome.Outcome;
import witnessmark.wording.BuildPageWords;
import witnessmark.wording.Problems;
import witnessmark.wording.Texts;

/** A build with what is typed on its page, the draft of that, and writing it as one change. Event thread only. */
final class BuildInHand {
    private static final Logger LOG = LoggerFactory.getLogger(BuildInHand.class);
    private static final Duration QUIET = Duration.ofMillis(150);

    /** The name its drafts go under, each with the identity of its build. */
    static final String FORM = "build page";

    private static final String OPENED_HERE = "new on ";

    private final BuildsContext context;
    private final Texts texts;
    private final BuildModel model;
    private final KeptDraft draft;
    private final Latest reading;
    private final Later soon;
    private final Refusal failure = new Refusal();
    private final Seen seen;
    private @Nullable Id<Build> wrote;
    private boolean working;

    /** What is seen of it. */
    interface Seen {
        /** Something that is said of it has changed. */
        void changed();

        /** Goes to a field, or to the row it stands in. */
        void focus(BuildField field);

        /** It is written, under this identity where it was not written before. */
        void written(Id<Build> build);
    }

    BuildInHand(BuildsContext context, BuildModel model, Seen seen) {
        this.context = context;
        this.texts = context.texts();
        this.model = model;
        this.seen = seen;
        this.reading = new Latest(context.tasks());
        this.soon = context.tasks().later(QUIET, this::read);
        this.draft = new KeptDraft(
                context.book(),
                context.tasks(),
                texts,
                FORM,
                record(model.engine(), model.build()),
                model::isDirty,
                model::kept,
                seen::changed);
        model.onChange(() -> {
            failure.typed(model.kept());
            draft.typed();
            soon.poke();
            seen.changed();
        });
    }

    /** The name of what is kept of a build, or of one that is opened on an engine. */
    static String record(Id<Engine> engine, @Nullable Id<Build> build) {
        return build == null ? OPENED_HERE + engine.text() : build.text();
    }

    BuildModel model() {
        return model;
    }

    String draftLine() {
        return draft.line();
    }

    /** Why the last writing did not work; empty when it did. */
    String failure() {
        return failure.said();
    }

    /** A draft from before the program was started is put on the page. */
    void restore(Drafts.Draft kept) {
        draft.found(kept, () -> model.restore(kept.fields()));
    }

    /** The focus left a field. */
    void left() {
        draft.now();
        soon.now();
    }

    /** The logbook says something else now. */
    void become(@Nullable BuildPage page) {
        model.become(page);
        read();
    }

    /** What is typed is held against the logbook, off the event thread. */
    private void read() {
        if (!model.isDirty()) {
            reading.drop();
            seen.changed();
            return;
        }
        BuildDraft asked = model.draft();
        reading.run(
                texts.get("builds.reading"),
                () -> context.work().read(asked),
                now -> {
                    model.read(now);
                    seen.changed();
                },
                this::couldNotRead);
    }

    private void couldNotRead(Throwable thrown) {
        LOG.error("what is typed of a build could not be read", thrown);
        failure.broke(texts.get("builds.failed"));
        seen.changed();
    }

    /** Writes everything that is typed, in one change; what stops keeps all of it from being written. */
    void save() {
        if (working) {
            return;
        }
        failure.none();
        if (!model.isDirty()) {
            context.window().say(texts.get("builds.save.nothing"));
            return;
        }
        soon.cancel();
        BuildDraft asked = model.draft();
        working = true;
        reading.run(texts.get("builds.reading"), () -> context.work().read(asked), now -> read(now, asked), thrown -> {
            working = false;
            couldNotRead(thrown);
        });
    }

    private void read(WriteBuildWork.Reading now, BuildDraft asked) {
        working = false;
        model.read(now);
        model.ask();
        List<WriteBuildWork.Found> stops = now.stopping();
        if (!stops.isEmpty()) {
            stops.stream()
                    .map(WriteBuildWork.Found::field)
                    .filter(java.util.Objects::nonNull)
                    .findFirst()
                    .ifPresent(seen::focus);
            failure.refused(List.of(), problem -> "", model.kept());
            seen.changed();
            return;
        }
        List<BuildGap> gaps = model.gaps();
        if (model.asksToClose(gaps)) {
            failure.broke(texts.get("builds.close.open", new BuildPageWords(texts, context.measures()).open(gaps)));
            seen.changed();
            return;
        }
        draft.hold();
        write(now, asked);
    }

    /** What writing leaves: what became of it, and the build as it stands then. */
    private record Left(Outcome<Written> outcome, @Nullable BuildPage page) {}

    private void write(WriteBuildWork.Reading now, BuildDraft asked) {
        BuildPage page = java.util.Objects.requireNonNull(now.page());
        String title = texts.get(
                "builds.name",
                page.engine().fact().number(),
                page.build().fact().number());
        String why = texts.get("builds.save.why", title);
        working = true;
        context.tasks()
                .write(
                        why,
                        () -> {
                            Outcome<Written> outcome = context.work().save(now, why);
                            if (outcome.didWork()) {
                                draft.discardHere();
                                return new Left(outcome, reread(page.build()).orElse(null));
                            }
                            return new Left(outcome, null);
                        },
                        left -> written(left, asked, title),
                        this::couldNot);
    }

    private Optional<BuildPage> reread(Entry<Build> build) {
        View view = context.book().view();
        return SeeBuild.of(view, build.id());
    }

    private void written(Left left, BuildDraft asked, String title) {
        working = false;
        BuildPage page = left.page();
        if (page == null) {
            Problems problems = new Problems(texts, context.measures());
            failure.refused(left.outcome().problems(), problems::sentence, model.kept());
            draft.typed();
            seen.changed();
            return;
        }
        wrote = page.build().id();
        model.become(page);
        model.written(new HashMap<>(asked.texts()));
        draft.gone();
        draft.typed(); // what was typed meanwhile
        context.window().say(texts.get("builds.saved", title), Caption.of(texts.get("builds.undo")), context.undo());
        seen.written(wrote);
        context.window().changed();
        seen.changed();
    }

    private void couldNot(Throwable thrown) {
        LOG.error("a build could not be written", thrown);
        working = false;
        failure.broke(texts.get("builds.not_saved.why"));
        draft.typed();
        seen.changed();
    }

    /** What is wrong as a sentence, by field; what belongs to no field under null. */
    Map<BuildField, String> stopping() {
        return model.stopping().stream()
                .filter(each -> each.field() != null)
                .collect(Collectors.toMap(
                        each -> java.util.Objects.requireNonNull(each.field()),
                        this::sentence,
                        (one, other) -> one,
                        java.util.LinkedHashMap::new));
    }

    /** What is wrong and belongs to no field. */
    List<String> elsewhere() {
        return model.stopping().stream()
                .filter(each -> each.field() == null)
                .map(this::sentence)
                .toList();
    }

    String sentence(WriteBuildWork.Found found) {
        return new SheetWords(texts, context.measures(), found.sheet()).sentence(found.problem());
    }
}
