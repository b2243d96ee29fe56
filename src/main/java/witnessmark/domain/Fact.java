package witnessmark.domain;

import org.jspecify.annotations.Nullable;
import witnessmark.quantity.Moment;

/** Something the team wrote down. Every kind is a record in this package. */
public sealed interface Fact
        permits Team,
                Person,
                EngineDesign,
                Car,
                Position,
                Engine,
                EngineInCar,
                PartDesign,
                Part,
                SetMember,
                PriorLife,
                Build,
                Fitment,
                Work,
                Event,
                PlannedRun,
                EventEntry,
                Run,
                MissedRun,
                ToldRunning,
                Limit,
                ReadingLimit,
                Trigger,
                Reading,
                OverRev,
                Hold,
                Clearance,
                RunOn,
                Tool,
                Calibration,
                StockBatch,
                Job,
                JobPart,
                StockMove,
                ListedPart,
                Quarantine,
                Scrapping,
                SentOut,
                Chase,
                Concession,
                TrackRepair,
                BuildProof,
                Seal,
                Joint,
                Look,
                Notice,
                NoticeTold,
                NoticeDone,
                MeterReading,
                Season,
                Incident,
                IncidentPart,
                Cause,
                Prevention,
                MissedShare,
                Decision,
                DecisionOption,
                Result,
                HourRate,
                CostLine,
                CostShare,
                BudgetLine,
                IncomeLine,
                BankLine,
                BankMatch,
                StatementForm,
                SizeLimit,
                Measurement,
                SignOff,
                SignedCheck,
                Fastener,
                SpeedFigures,
                FaceOutline,
                FaceHole,
                FaceLook,
                FacePoint,
                FaceLine,
                FaceMark,
                Skim,
                SkimPass,
                Trace,
                TraceMark,
                LoggerForm,
                LoggerFigures,
                RevExponent,
                DynoSheet,
                DynoPoint,
                RunInStep,
                Finding,
                Weighing,
                CauseCall,
                CauseTest,
                CaseAction,
                ActionCarried,
                ProofWanted,
                ProofSeen,
                IncidentLink,
                Lesson,
                LessonAnswer,
                Trial,
                Photo {
    /** The word people know this one by (an engine's number, a part's mark), or null when it has none. */
    default @Nullable String knownAs() {
        return null;
    }

    /** The entry within which {@link #knownAs()} is unique, or null when it is unique in the whole logbook. */
    default @Nullable Id<?> knownWithin() {
        return null;
    }

    /** When it happened, by which it counts as of a day; null for what has no moment (a car, a design). */
    default @Nullable Moment happened() {
        return null;
    }

    /** SHA-256 of the bytes kept in the logbook beside it, 64 hexadecimal digits, or null when there are none. */
    default @Nullable String kept() {
        return null;
    }

    /** SHA-256 of a file that lies in a folder beside the logbook, 64 hexadecimal digits, or null when there is none. */
    default @Nullable String beside() {
        return null;
    }
}
