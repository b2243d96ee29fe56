package witnessmark.logbook.sheets;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Build;
import witnessmark.domain.Car;
import witnessmark.domain.Cause;
import witnessmark.domain.Decision;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Event;
import witnessmark.domain.Finding;
import witnessmark.domain.Fitment;
import witnessmark.domain.Id;
import witnessmark.domain.Incident;
import witnessmark.domain.Lesson;
import witnessmark.domain.MeasureKind;
import witnessmark.domain.Position;
import witnessmark.domain.Quarantine;
import witnessmark.domain.Run;
import witnessmark.domain.SentOut;
import witnessmark.domain.StockBatch;
import witnessmark.domain.Trial;
import witnessmark.ledger.result.PutAside;
import witnessmark.ledger.result.Where;

/**
 * A sheet that is about something chosen already.
 *
 * @param sheet its key
 * @param texts what stands in its fields for that
 */
public record Prefilled(String sheet, Map<SheetField, String> texts) {
    public Prefilled {
        texts = Map.copyOf(texts);
    }

    /** A sheet with nothing chosen yet. */
    public static Prefilled empty(String sheet) {
        return new Prefilled(sheet, Map.of());
    }

    /**
     * What can be written down about a part, wherever it is, what is most likely first; nothing for what is out of use or
     * split up.
     *
     * @param set whether it is a set of which members are still together
     */
    public static List<Prefilled> about(Where where, boolean set) {
        String part = where.part().id().text();
        boolean gone = where.state() == Where.State.SCRAPPED || where.state() == Where.State.SPLIT;
        if (gone) {
            return List.of();
        }
        List<Prefilled> all = new ArrayList<>();
        switch (where.state()) {
            case FITTED -> all.add(takeOff(where));
            case SPARE -> all.add(new Prefilled(new FitPart().key(), Map.of(FitPart.PART, part)));
            default -> {} // it is decided about, or comes back, first
        }
        for (PutAside aside : PartsNow.aside(where, PutAside.Kind.QUARANTINE)) {
            if (aside.entry().fact() instanceof Quarantine) {
                all.add(new Prefilled(
                        new DecideAside().key(),
                        Map.of(DecideAside.ASIDE, aside.entry().id().text())));
                break; // of several the oldest; the sheet has the others
            }
        }
        if (where.state() == Where.State.AWAY && where.away() != null) {
            Id<SentOut> sent = where.away().sent().id();
            all.add(new Prefilled(new CameBack().key(), Map.of(CameBack.OUT, sent.text())));
            all.add(new Prefilled(new ChaseOut().key(), Map.of(ChaseOut.OUT, sent.text())));
        } else if (where.state() != Where.State.FITTED) {
            all.add(sending(part));
        }
        all.add(new Prefilled(new PutPartAside().key(), Map.of(PutPartAside.PART, part)));
        all.add(new Prefilled(new ScrapPart().key(), Map.of(ScrapPart.PART, part)));
        if (set) {
            all.add(new Prefilled(new SplitSet().key(), Map.of(SplitSet.SET, part)));
        }
        return all;
    }

    /** What came of a trial. */
    public static Prefilled judging(Id<Trial> trial) {
        return new Prefilled(new JudgeTrial().key(), Map.of(JudgeTrial.TRIAL, trial.text()));
    }

    /** A part sent out, by the text of its identity. */
    public static Prefilled sending(String part) {
        return new Prefilled(new SendOut().key(), Map.of(SendOut.WHAT, EngineOrPart.partKey(part)));
    }

    /** What comes to or goes from a batch. */
    public static Prefilled about(Id<StockBatch> batch) {
        return new Prefilled(new MoveStock().key(), Map.of(MoveStock.STOCK, batch.text()));
    }

    /** An engine put in a car: the one meant for it, when one is. */
    public static Prefilled engineInto(Id<Car> car, @Nullable Id<Engine> meant) {
        Map<SheetField, String> texts = new HashMap<>(Map.of(PutEngine.CAR, car.text()));
        if (meant != null) {
            texts.put(PutEngine.ENGINE, meant.text());
        }
        return new Prefilled(new PutEngine().key(), texts);
    }

    /** A part fitted in an engine, at an empty position of it. */
    public static Prefilled partInto(Id<Engine> engine, Id<Position> empty) {
        return new Prefilled(
                new FitPart().key(), Map.of(FitPart.PLACE, Places.key(engine), FitPart.POSITION, empty.text()));
    }

    /** A start that a car missed at an event. */
    public static Prefilled missed(Id<Event> event, Id<Car> car) {
        return new Prefilled(new LogMissed().key(), Map.of(LogMissed.EVENT, event.text(), LogMissed.CAR, car.text()));
    }

    /** A borrowed part that goes back. */
    public static Prefilled backFrom(Id<Fitment> borrowed) {
        return new Prefilled(new GaveBack().key(), Map.of(GaveBack.BORROWED, borrowed.text()));
    }

    /**
     * A job for what was told of an engine.
     *
     * @param told what was told, and where; empty when nothing was
     */
    public static Prefilled job(String told, Id<Engine> engine) {
        Map<SheetField, String> texts = new HashMap<>(Map.of(PlanJob.ON, EngineOrPart.key(engine, null)));
        if (!told.isEmpty()) {
            texts.put(PlanJob.WHAT, told);
        }
        return new Prefilled(new PlanJob().key(), texts);
    }

    /**
     * A look at something on a car.
     *
     * @param time when on the day of the sheet, as typed; empty when that is to be said
     */
    public static Prefilled look(Id<Car> car, String what, String time) {
        Map<SheetField, String> texts = new HashMap<>(Map.of(WriteLook.CAR, car.text(), WriteLook.WHAT, what));
        if (!time.isEmpty()) {
            texts.put(WriteLook.WHEN_TIME, time);
        }
        return new Prefilled(new WriteLook().key(), texts);
    }

    /** An incident on a run that is logged. */
    public static Prefilled incidentOn(Id<Run> run) {
        return new Prefilled(new ReportIncident().key(), Map.of(ReportIncident.RUN, run.text()));
    }

    /** What can be written of an incident, in the order it is usually found out. */
    public static List<Prefilled> about(Entry<Incident> incident) {
        Id<Incident> id = incident.id();
        List<Prefilled> all = new ArrayList<>(List.of(
                namingPart(id),
                causeOf(id),
                preventing(id),
                sharing(id),
                findingOf(id),
                actingOn(id),
                proving(id),
                lessonOf(id),
                linking(id)));
        if (incident.fact().closed() == null) {
            Id<Engine> engine = incident.fact().engine();
            if (engine != null) {
                all.add(holding(incident.fact(), engine));
            }
            all.add(of(new CloseIncident(), CloseIncident.INCIDENT, id));
        } else {
            all.add(reopening(id));
        }
        return all;
    }

    private static Prefilled of(LogSheet sheet, SheetField field, Id<?> about) {
        return new Prefilled(sheet.key(), Map.of(field, about.text()));
    }

    /** A part that had to do with an incident. */
    public static Prefilled namingPart(Id<Incident> incident) {
        return of(new NameIncidentPart(), NameIncidentPart.INCIDENT, incident);
    }

    /** What may have been the cause of an incident. */
    public static Prefilled causeOf(Id<Incident> incident) {
        return of(new WriteCause(), WriteCause.INCIDENT, incident);
    }

    /** What would have prevented an incident. */
    public static Prefilled preventing(Id<Incident> incident) {
        return of(new WritePrevention(), WritePrevention.INCIDENT, incident);
    }

    /** A start that was missed because of an incident. */
    public static Prefilled sharing(Id<Incident> incident) {
        return of(new ShareMissed(), ShareMissed.INCIDENT, incident);
    }

    /** Something found that speaks to an incident. */
    public static Prefilled findingOf(Id<Incident> incident) {
        return of(new WriteFinding(), WriteFinding.INCIDENT, incident);
    }

    /** What is done about an incident. */
    public static Prefilled actingOn(Id<Incident> incident) {
        return of(new WriteAction(), WriteAction.INCIDENT, incident);
    }

    /** What would show that an incident does not come again. */
    public static Prefilled proving(Id<Incident> incident) {
        return of(new AskProof(), AskProof.INCIDENT, incident);
    }

    /**
     * A cause to consider, as somebody else put it.
     *
     * @param predicts what would have to be seen if it were so
     */
    public static Prefilled considering(Id<Incident> incident, String statement, String predicts) {
        return new Prefilled(
                new WriteCause().key(),
                Map.of(
                        WriteCause.INCIDENT, incident.text(),
                        WriteCause.STATEMENT, statement,
                        WriteCause.PREDICTS, predicts));
    }

    /** How a cause stands now. */
    public static Prefilled calling(Id<Cause> cause) {
        return new Prefilled(new CallCause().key(), Map.of(CallCause.CAUSE, cause.text()));
    }

    /** A test that decides on a cause. */
    public static Prefilled testing(Id<Cause> cause) {
        return new Prefilled(new WriteTest().key(), Map.of(WriteTest.CAUSE, cause.text()));
    }

    /** A finding weighed against a cause. */
    public static Prefilled weighing(Id<Cause> cause, Id<Finding> finding) {
        return new Prefilled(
                new WeighOnSheet().key(),
                Map.of(WeighOnSheet.CAUSE, cause.text(), WeighOnSheet.FINDING, finding.text()));
    }

    /** A cost that is owed to an incident, on its car, engine and event. */
    public static Prefilled costOf(Entry<Incident> incident) {
        Map<SheetField, String> texts = new HashMap<>(WriteCost.onWhat(incident.fact()));
        texts.put(WriteCost.INCIDENT, incident.id().text());
        return new Prefilled(new WriteCost().key(), texts);
    }

    /** The engine of an incident held until somebody has looked at it. */
    private static Prefilled holding(Incident incident, Id<Engine> engine) {
        String why = incident.mark().isEmpty() ? incident.title() : incident.mark() + ": " + incident.title();
        return new Prefilled(
                new WriteHold().key(), Map.of(WriteHold.ON, EngineOrPart.key(engine, null), WriteHold.WHY, why));
    }

    /** An incident linked to another. */
    public static Prefilled linking(Id<Incident> incident) {
        return of(new LinkIncidents(), LinkIncidents.INCIDENT, incident);
    }

    /** An incident that was closed too early opened again. */
    public static Prefilled reopening(Id<Incident> incident) {
        return of(new ReopenIncident(), ReopenIncident.INCIDENT, incident);
    }

    /** What is decided of a question that waits. */
    public static Prefilled decide(Id<Decision> decision) {
        return new Prefilled(new DecideIt().key(), Map.of(DecideIt.DECISION, decision.text()));
    }

    /** What came of a decision. */
    public static Prefilled cameOf(Id<Decision> decision) {
        return new Prefilled(new CameOfIt().key(), Map.of(CameOfIt.DECISION, decision.text()));
    }

    /**
     * Figures of a build sheet accepted as they are.
     *
     * @param number the cylinder or main bearing; null for all of them, or the engine's one
     * @param what what is outside, in words
     */
    public static Prefilled accepting(Entry<Build> build, MeasureKind kind, @Nullable Integer number, String what) {
        return new Prefilled(
                new AcceptAsIs().key(),
                Map.of(
                        AcceptAsIs.ON, Places.key(build.fact().engine()),
                        AcceptAsIs.FIGURE, SheetFigure.key(build.id(), kind, number),
                        AcceptAsIs.WHAT, what));
    }

    /** A build sheet to be signed. */
    public static Prefilled signing(Id<Build> build) {
        return new Prefilled(new SignSheet().key(), Map.of(SignSheet.BUILD, build.text()));
    }

    /** What an incident taught. */
    public static Prefilled lessonOf(Id<Incident> incident) {
        return of(new WriteLesson(), WriteLesson.INCIDENT, incident);
    }

    /** A lesson answered on the sheet of a build. */
    public static Prefilled answering(Id<Build> build, Id<Lesson> lesson) {
        return new Prefilled(
                new AnswerLesson().key(), Map.of(AnswerLesson.BUILD, build.text(), AnswerLesson.LESSON, lesson.text()));
    }

    /** A lesson withdrawn. */
    public static Prefilled withdrawing(Id<Lesson> lesson) {
        return new Prefilled(new WithdrawLesson().key(), Map.of(WithdrawLesson.LESSON, lesson.text()));
    }

    private static Prefilled takeOff(Where where) {
        var fitment = Objects.requireNonNull(where.fitment());
        return new Prefilled(
                new TakeOffPart().key(),
                Map.of(
                        TakeOffPart.PLACE,
                        Places.key(fitment.fact()),
                        TakeOffPart.FITTED,
                        fitment.id().text()));
    }
}
