package witnessmark.logbook.jobsheet;

import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Car;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Fitment;
import witnessmark.domain.Id;
import witnessmark.domain.PartDesign;
import witnessmark.ledger.KeptForJobs;
import witnessmark.ledger.Whereabouts;
import witnessmark.ledger.result.KeptForJob;
import witnessmark.ledger.result.Where;
import witnessmark.logbook.Desk;
import witnessmark.logbook.View;
import witnessmark.logbook.port.Paper;
import witnessmark.logbook.port.PaperFiles;
import witnessmark.logbook.standing.SeeStanding;
import witnessmark.outcome.Outcome;
import witnessmark.quantity.Moment;

/** Writes the job sheet of the day looked at. Reads and computes; off the event thread. */
public final class WriteJobSheet {
    private final PaperFiles files;
    private final Function<JobSheetFacts, Paper> layOut;

    /** @param layOut words a sheet and lays it out on pages */
    public WriteJobSheet(PaperFiles files, Function<JobSheetFacts, Paper> layOut) {
        this.files = files;
        this.layOut = layOut;
    }

    /**
     * Writes the sheet as of the day looked at.
     *
     * @return how many pages it has
     */
    public Outcome<Integer> write(Desk desk, Path file) {
        return files.write(layOut.apply(facts(desk)), file);
    }

    /** What the sheet is made of. */
    public static JobSheetFacts facts(Desk desk) {
        View view = desk.view();
        return new JobSheetFacts(
                desk.name(),
                SeeStanding.of(view),
                needs(view),
                Moment.of(desk.today().now(), view.zone()));
    }

    private static List<JobNeed> needs(View view) {
        List<KeptForJob> kept = new KeptForJobs(view.facts(), view.ledger().asOf()).all();
        if (kept.isEmpty()) {
            return List.of();
        }
        Whereabouts whereabouts = new Whereabouts(view.ledger());
        return kept.stream().map(each -> need(view.facts(), whereabouts, each)).toList();
    }

    private static JobNeed need(Facts facts, Whereabouts whereabouts, KeptForJob kept) {
        Where where = kept.part() == null ? null : whereabouts.of(kept.part());
        Id<PartDesign> design = kept.part() != null
                ? kept.part().fact().design()
                : Objects.requireNonNull(kept.batch()).fact().design();
        return new JobNeed(
                kept,
                facts.of(PartDesign.class).get(design),
                where,
                where == null ? "" : place(facts, where.fitment()));
    }

    private static String place(Facts facts, @Nullable Entry<Fitment> fitment) {
        Id<Engine> engine = fitment == null ? null : fitment.fact().engine();
        Id<Car> car = fitment == null ? null : fitment.fact().car();
        if (engine != null) {
            return facts.of(Engine.class).get(engine).number();
        }
        return car == null ? "" : facts.of(Car.class).get(car).name();
    }
}
