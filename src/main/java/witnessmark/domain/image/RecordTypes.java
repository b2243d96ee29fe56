package witnessmark.domain.image;

import java.util.List;
import java.util.Optional;
import witnessmark.domain.ActionCarried;
import witnessmark.domain.BankLine;
import witnessmark.domain.BankMatch;
import witnessmark.domain.BudgetLine;
import witnessmark.domain.Build;
import witnessmark.domain.BuildProof;
import witnessmark.domain.Calibration;
import witnessmark.domain.Car;
import witnessmark.domain.CaseAction;
import witnessmark.domain.Cause;
import witnessmark.domain.CauseCall;
import witnessmark.domain.CauseTest;
import witnessmark.domain.Chase;
import witnessmark.domain.Clearance;
import witnessmark.domain.Concession;
import witnessmark.domain.CostLine;
import witnessmark.domain.CostShare;
import witnessmark.domain.Decision;
import witnessmark.domain.DecisionOption;
import witnessmark.domain.DynoPoint;
import witnessmark.domain.DynoSheet;
import witnessmark.domain.Engine;
import witnessmark.domain.EngineDesign;
import witnessmark.domain.EngineInCar;
import witnessmark.domain.Event;
import witnessmark.domain.EventEntry;
import witnessmark.domain.FaceHole;
import witnessmark.domain.FaceLine;
import witnessmark.domain.FaceLook;
import witnessmark.domain.FaceMark;
import witnessmark.domain.FaceOutline;
import witnessmark.domain.FacePoint;
import witnessmark.domain.Fact;
import witnessmark.domain.Fastener;
import witnessmark.domain.Finding;
import witnessmark.domain.Fitment;
import witnessmark.domain.Hold;
import witnessmark.domain.HourRate;
import witnessmark.domain.Incident;
import witnessmark.domain.IncidentLink;
import witnessmark.domain.IncidentPart;
import witnessmark.domain.IncomeLine;
import witnessmark.domain.Job;
import witnessmark.domain.JobPart;
import witnessmark.domain.Joint;
import witnessmark.domain.Lesson;
import witnessmark.domain.LessonAnswer;
import witnessmark.domain.Limit;
import witnessmark.domain.ListedPart;
import witnessmark.domain.LoggerFigures;
import witnessmark.domain.LoggerForm;
import witnessmark.domain.Look;
import witnessmark.domain.Measurement;
import witnessmark.domain.MeterReading;
import witnessmark.domain.MissedRun;
import witnessmark.domain.MissedShare;
import witnessmark.domain.Notice;
import witnessmark.domain.NoticeDone;
import witnessmark.domain.NoticeTold;
import witnessmark.domain.OverRev;
import witnessmark.domain.Part;
import witnessmark.domain.PartDesign;
import witnessmark.domain.Person;
import witnessmark.domain.Photo;
import witnessmark.domain.PlannedRun;
import witnessmark.domain.Position;
import witnessmark.domain.Prevention;
import witnessmark.domain.PriorLife;
import witnessmark.domain.ProofSeen;
import witnessmark.domain.ProofWanted;
import witnessmark.domain.Quarantine;
import witnessmark.domain.Reading;
import witnessmark.domain.ReadingLimit;
import witnessmark.domain.Result;
import witnessmark.domain.RevExponent;
import witnessmark.domain.Run;
import witnessmark.domain.RunInStep;
import witnessmark.domain.RunOn;
import witnessmark.domain.Scrapping;
import witnessmark.domain.Seal;
import witnessmark.domain.Season;
import witnessmark.domain.SentOut;
import witnessmark.domain.SetMember;
import witnessmark.domain.SignOff;
import witnessmark.domain.SignedCheck;
import witnessmark.domain.SizeLimit;
import witnessmark.domain.Skim;
import witnessmark.domain.SkimPass;
import witnessmark.domain.SpeedFigures;
import witnessmark.domain.StatementForm;
import witnessmark.domain.StockBatch;
import witnessmark.domain.StockMove;
import witnessmark.domain.Team;
import witnessmark.domain.ToldRunning;
import witnessmark.domain.Tool;
import witnessmark.domain.Trace;
import witnessmark.domain.TraceMark;
import witnessmark.domain.TrackRepair;
import witnessmark.domain.Trial;
import witnessmark.domain.Trigger;
import witnessmark.domain.Weighing;
import witnessmark.domain.Work;

/** Every kind of fact as a record. A kind comes after those it refers to. */
public final class RecordTypes {
    private static final List<RecordType<?>> ALL = List.of(
            new RecordType<>("team", "team.csv", Team.class),
            new RecordType<>("person", "people.csv", Person.class),
            new RecordType<>("engine_design", "engine-designs.csv", EngineDesign.class),
            new RecordType<>("car", "cars.csv", Car.class),
            new RecordType<>("position", "positions.csv", Position.class),
            new RecordType<>("engine", "engines.csv", Engine.class),
            new RecordType<>("engine_in_car", "engines-in-cars.csv", EngineInCar.class),
            new RecordType<>("part_design", "part-designs.csv", PartDesign.class),
            new RecordType<>("part", "parts.csv", Part.class),
            new RecordType<>("set_member", "set-members.csv", SetMember.class),
            new RecordType<>("prior_life", "prior-lives.csv", PriorLife.class),
            new RecordType<>("build", "builds.csv", Build.class),
            new RecordType<>("fitment", "fitments.csv", Fitment.class),
            new RecordType<>("work", "works.csv", Work.class),
            new RecordType<>("event", "events.csv", Event.class),
            new RecordType<>("planned_run", "timetables.csv", PlannedRun.class),
            new RecordType<>("event_entry", "entries.csv", EventEntry.class),
            new RecordType<>("run", "runs.csv", Run.class),
            new RecordType<>("missed_run", "missed-runs.csv", MissedRun.class),
            new RecordType<>("told_running", "told-running.csv", ToldRunning.class),
            new RecordType<>("limit", "limits.csv", Limit.class),
            new RecordType<>("reading_limit", "reading-limits.csv", ReadingLimit.class),
            new RecordType<>("trigger", "triggers.csv", Trigger.class),
            new RecordType<>("tool", "tools.csv", Tool.class),
            new RecordType<>("calibration", "calibrations.csv", Calibration.class),
            new RecordType<>("reading", "readings.csv", Reading.class),
            new RecordType<>("over_rev", "over-revs.csv", OverRev.class),
            new RecordType<>("hold", "holds.csv", Hold.class),
            new RecordType<>("clearance", "clearances.csv", Clearance.class),
            new RecordType<>("run_on", "run-ons.csv", RunOn.class),
            new RecordType<>("stock_batch", "stock.csv", StockBatch.class),
            new RecordType<>("job", "jobs.csv", Job.class),
            new RecordType<>("job_part", "job-parts.csv", JobPart.class),
            new RecordType<>("stock_move", "stock-moves.csv", StockMove.class),
            new RecordType<>("listed_part", "parts-lists.csv", ListedPart.class),
            new RecordType<>("quarantine", "quarantines.csv", Quarantine.class),
            new RecordType<>("scrapping", "scrapped.csv", Scrapping.class),
            new RecordType<>("sent_out", "out-with-others.csv", SentOut.class),
            new RecordType<>("chase", "chases.csv", Chase.class),
            new RecordType<>("concession", "accepted-as-it-is.csv", Concession.class),
            new RecordType<>("track_repair", "track-repairs.csv", TrackRepair.class),
            new RecordType<>("build_proof", "build-proofs.csv", BuildProof.class),
            new RecordType<>("seal", "seals.csv", Seal.class),
            new RecordType<>("joint", "joints.csv", Joint.class),
            new RecordType<>("look", "looks.csv", Look.class),
            new RecordType<>("notice", "makers-notices.csv", Notice.class),
            new RecordType<>("notice_told", "notices-told.csv", NoticeTold.class),
            new RecordType<>("notice_done", "notices-done.csv", NoticeDone.class),
            new RecordType<>("meter_reading", "hour-meters.csv", MeterReading.class),
            new RecordType<>("season", "seasons.csv", Season.class),
            new RecordType<>("incident", "incidents.csv", Incident.class),
            new RecordType<>("incident_part", "incident-parts.csv", IncidentPart.class),
            new RecordType<>("cause", "causes.csv", Cause.class),
            new RecordType<>("prevention", "preventions.csv", Prevention.class),
            new RecordType<>("missed_share", "missed-shares.csv", MissedShare.class),
            new RecordType<>("decision", "decisions.csv", Decision.class),
            new RecordType<>("decision_option", "decision-options.csv", DecisionOption.class),
            new RecordType<>("result", "results.csv", Result.class),
            new RecordType<>("hour_rate", "hour-rates.csv", HourRate.class),
            new RecordType<>("cost_line", "costs.csv", CostLine.class),
            new RecordType<>("cost_share", "cost-shares.csv", CostShare.class),
            new RecordType<>("budget_line", "budget.csv", BudgetLine.class),
            new RecordType<>("income_line", "income.csv", IncomeLine.class),
            new RecordType<>("bank_line", "bank-lines.csv", BankLine.class),
            new RecordType<>("bank_match", "bank-matches.csv", BankMatch.class),
            new RecordType<>("statement_form", "statement-forms.csv", StatementForm.class),
            new RecordType<>("size_limit", "size-limits.csv", SizeLimit.class),
            new RecordType<>("measurement", "measurements.csv", Measurement.class),
            new RecordType<>("sign_off", "sign-offs.csv", SignOff.class),
            new RecordType<>("signed_check", "signed-checks.csv", SignedCheck.class),
            new RecordType<>("fastener", "fasteners.csv", Fastener.class),
            new RecordType<>("speed_figures", "speed-figures.csv", SpeedFigures.class),
            new RecordType<>("face_outline", "face-outlines.csv", FaceOutline.class),
            new RecordType<>("face_hole", "face-holes.csv", FaceHole.class),
            new RecordType<>("face_look", "face-looks.csv", FaceLook.class),
            new RecordType<>("face_point", "face-points.csv", FacePoint.class),
            new RecordType<>("face_line", "face-lines.csv", FaceLine.class),
            new RecordType<>("face_mark", "face-marks.csv", FaceMark.class),
            new RecordType<>("skim", "skims.csv", Skim.class),
            new RecordType<>("skim_pass", "skim-passes.csv", SkimPass.class),
            new RecordType<>("trace", "traces.csv", Trace.class),
            new RecordType<>("trace_mark", "trace-marks.csv", TraceMark.class),
            new RecordType<>("logger_form", "logger-forms.csv", LoggerForm.class),
            new RecordType<>("logger_figures", "logger-figures.csv", LoggerFigures.class),
            new RecordType<>("rev_exponent", "rev-exponents.csv", RevExponent.class),
            new RecordType<>("dyno_sheet", "dyno-sheets.csv", DynoSheet.class),
            new RecordType<>("dyno_point", "dyno-points.csv", DynoPoint.class),
            new RecordType<>("run_in_step", "run-in-steps.csv", RunInStep.class),
            new RecordType<>("finding", "findings.csv", Finding.class),
            new RecordType<>("weighing", "weighings.csv", Weighing.class),
            new RecordType<>("cause_call", "cause-calls.csv", CauseCall.class),
            new RecordType<>("cause_test", "cause-tests.csv", CauseTest.class),
            new RecordType<>("case_action", "actions.csv", CaseAction.class),
            new RecordType<>("action_carried", "actions-carried.csv", ActionCarried.class),
            new RecordType<>("proof_wanted", "proofs-wanted.csv", ProofWanted.class),
            new RecordType<>("proof_seen", "proofs-seen.csv", ProofSeen.class),
            new RecordType<>("incident_link", "incident-links.csv", IncidentLink.class),
            new RecordType<>("lesson", "lessons.csv", Lesson.class),
            new RecordType<>("lesson_answer", "lesson-answers.csv", LessonAnswer.class),
            new RecordType<>("trial", "trials.csv", Trial.class),
            new RecordType<>("photo", "photos.csv", Photo.class));

    private RecordTypes() {}

    /** All of them, each after those it refers to. */
    public static List<RecordType<?>> all() {
        return ALL;
    }

    /**
     * The record type of a kind of fact.
     *
     * @throws IllegalArgumentException if it is not in the list, which a test rules out
     */
    @SuppressWarnings("unchecked") // found by the class itself
    public static <F extends Fact> RecordType<F> of(Class<F> kind) {
        for (RecordType<?> type : ALL) {
            if (type.kind() == kind) {
                return (RecordType<F>) type;
            }
        }
        throw new IllegalArgumentException("no record type for " + kind);
    }

    /** The record type kept in a table of this name. */
    public static Optional<RecordType<?>> named(String table) {
        for (RecordType<?> type : ALL) {
            if (type.name().equals(table)) {
                return Optional.of(type);
            }
        }
        return Optional.empty();
    }
}
