package witnessmark.desktop.bench;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Build;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.domain.Tool;
import witnessmark.logbook.Desk;
import witnessmark.logbook.View;
import witnessmark.logbook.measuring.SeeBuildSheet;
import witnessmark.logbook.measuring.SheetPage;
import witnessmark.logbook.port.Drafts;

/** Reads what the bench shows; off the event thread. */
final class ReadBench {
    private final Desk book;
    private final BenchWords words;

    ReadBench(Desk book, BenchWords words) {
        this.book = book;
        this.words = words;
    }

    /**
     * What is read.
     *
     * @param page the sheet in hand, or null where there is no build
     * @param draft what was typed on it before the program was started
     */
    record Read(
            View view,
            List<BenchLines.Choice> choices,
            List<Entry<Tool>> tools,
            @Nullable SheetPage page,
            @Nullable BenchLines lines,
            Optional<Drafts.Draft> draft) {}

    /**
     * @param asked the text form of a build or an engine, or null for the build measured last
     * @param known builds whose drafts are on their sheets already
     */
    Read read(@Nullable String asked, Set<String> known) {
        View view = book.view();
        List<Entry<Build>> all = SeeBuildSheet.all(view);
        List<BenchLines.Choice> choices =
                all.stream().map(build -> words.choice(view, build)).toList();
        Optional<SheetPage> page = Optional.ofNullable(asked)
                .flatMap(record -> asked(view, record))
                .or(() -> all.stream().findFirst())
                .flatMap(build -> SeeBuildSheet.of(view, build.id()));
        return new Read(
                view,
                choices,
                view.facts().of(Tool.class).inForce().toList(),
                page.orElse(null),
                page.map(found -> words.lines(view, found)).orElse(null),
                page.map(found -> found.build().id().text())
                        .filter(id -> !known.contains(id))
                        .flatMap(id -> book.logbook().drafts().find(OnBench.FORM, id)));
    }

    private static Optional<Entry<Build>> asked(View view, String record) {
        return view.facts()
                .of(Build.class)
                .find(Id.<Build>parse(record))
                .or(() -> view.facts()
                        .of(Engine.class)
                        .find(Id.<Engine>parse(record))
                        .flatMap(engine -> ofEngine(view, engine.id())));
    }

    /** The build of an engine that is open, else the one measured last. */
    private static Optional<Entry<Build>> ofEngine(View view, Id<Engine> engine) {
        return SeeBuildSheet.all(view).stream()
                .filter(build ->
                        build.fact().engine().equals(engine) && build.fact().closed() == null)
                .findFirst()
                .or(() -> SeeBuildSheet.build(view, engine, null));
    }
}
