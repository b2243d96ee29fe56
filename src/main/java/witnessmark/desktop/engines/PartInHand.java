package witnessmark.desktop.engines;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.task.Latest;
import witnessmark.desktop.task.Tasks;
import witnessmark.domain.Id;
import witnessmark.domain.Part;
import witnessmark.logbook.Desk;
import witnessmark.logbook.View;
import witnessmark.logbook.engines.SeePart;
import witnessmark.logbook.faces.SeeFaces;
import witnessmark.logbook.trials.SeeTrials;
import witnessmark.wording.Measures;
import witnessmark.wording.Texts;

/** The part in hand, shown in the place of the engine: reads it off the event thread. */
final class PartInHand {
    private final Texts texts;
    private final PartModel model;
    private final Supplier<Desk> desk;
    private final Latest reading;
    private final PartView view;
    private final Consumer<Boolean> shows;
    private final Runnable failed;
    private @Nullable String part;
    /** Asked for and not read yet. */
    private @Nullable String opening;

    /**
     * @param shows told whether the part is to stand in the place of the engine
     * @param failed run when it could not be read
     */
    PartInHand(
            Texts texts,
            Measures measures,
            Tasks tasks,
            Supplier<Desk> desk,
            PartView view,
            Consumer<Boolean> shows,
            Runnable failed) {
        this.texts = texts;
        this.model = new PartModel(texts, measures);
        this.desk = desk;
        this.reading = new Latest(tasks);
        this.view = view;
        this.shows = shows;
        this.failed = failed;
    }

    /** Reads a part, by the text form of its identity, and shows it; another record's identity shows nothing. */
    void open(String id) {
        opening = id;
        read(id, true);
    }

    /** Reads the part in hand again, when there is one; one that is being opened is it already, and nothing comes before it. */
    void refresh() {
        String id = opening == null ? part : opening;
        if (id != null) {
            read(id, opening != null);
        }
    }

    /** Gives the engine its place back. */
    void close() {
        reading.drop();
        opening = null;
        part = null;
        shows.accept(false);
    }

    boolean isShown() {
        return part != null;
    }

    private void read(String id, boolean entering) {
        reading.run(
                texts.get("engines.part.reading"),
                () -> {
                    View view = desk.get().view();
                    Id<Part> asked = Id.parse(id);
                    return SeePart.of(view, asked)
                            .map(model::lines)
                            .map(lines -> new Read(
                                    lines,
                                    SeeFaces.has(view, asked),
                                    SeeTrials.allOfPart(view, asked).stream()
                                            .map(model::trial)
                                            .toList()));
                },
                read -> show(read, entering),
                failure -> {
                    opening = null;
                    failed.run();
                });
    }

    /** A part's lines, whether it has a face, and the trials its design is in. */
    private record Read(PartLines lines, boolean hasFace, List<PartView.TrialWay> trials) {}

    private void show(Optional<Read> read, boolean entering) {
        if (read.isEmpty()) {
            close();
            return;
        }
        opening = null;
        part = read.get().lines().part();
        view.show(read.get().lines(), read.get().hasFace(), read.get().trials());
        shows.accept(true);
        if (entering) {
            view.takeFocus();
        }
    }
}
