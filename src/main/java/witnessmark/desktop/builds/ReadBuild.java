package witnessmark.desktop.builds;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Build;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.logbook.View;
import witnessmark.logbook.building.BuildPage;
import witnessmark.logbook.building.SeeBuild;
import witnessmark.logbook.measuring.SeeBuildSheet;
import witnessmark.logbook.port.Drafts;
import witnessmark.wording.BuildPageWords;

/** Reads what the page of a build shows. */
final class ReadBuild {
    private final BuildsContext context;
    private final BuildPageWords words;

    ReadBuild(BuildsContext context) {
        this.context = context;
        this.words = new BuildPageWords(context.texts(), context.measures());
    }

    /** Which build is asked for: of an engine, one that is written, or null for one that is opened. */
    record Wanted(Id<Engine> engine, @Nullable Id<Build> build) {
        String record() {
            return BuildInHand.record(engine, build);
        }
    }

    /**
     * What was read.
     *
     * @param page the build, or null for one that is not written
     * @param earlier builds whose parts list can be copied
     * @param draft what was typed before the program was started
     * @param editable whether anything can be written: not on an earlier day
     */
    record Read(
            Wanted asked,
            @Nullable BuildPage page,
            List<Option> earlier,
            Optional<Drafts.Draft> draft,
            boolean editable) {
        /** Whether the build asked for is not there any more: it was taken back. */
        boolean isGone() {
            return asked.build() != null && page == null;
        }
    }

    /**
     * Reads a build; blocks.
     *
     * @param known its draft is on the page already
     */
    Read read(Wanted asked, boolean known) {
        View view = context.book().view();
        BuildPage page =
                asked.build() == null ? null : SeeBuild.of(view, asked.build()).orElse(null);
        List<Option> earlier = SeeBuild.earlier(view, asked.engine(), asked.build()).stream()
                .map(build -> new Option(build.id().text(), name(view, build.fact())))
                .toList();
        return new Read(
                asked,
                page,
                earlier,
                known ? Optional.empty() : context.book().logbook().drafts().find(BuildInHand.FORM, asked.record()),
                !view.readOnly());
    }

    private String name(View view, Build build) {
        return words.name(view.facts().of(Engine.class).get(build.engine()).number(), build);
    }

    /** The records of pages on which something was typed before the program was started; blocks. */
    List<String> begun() {
        return context.book().logbook().drafts().begun().stream()
                .filter(draft -> draft.form().equals(BuildInHand.FORM))
                .map(Drafts.Begun::record)
                .toList();
    }

    /** The engine of the build that is open, the latest of several, else of the last build, else the first engine. */
    Optional<Id<Engine>> first() {
        View view = context.book().view();
        return SeeBuildSheet.all(view).stream()
                .findFirst()
                .map(build -> build.fact().engine())
                .or(() -> view.facts().of(Engine.class).inForce().findFirst().map(Entry::id));
    }
}
