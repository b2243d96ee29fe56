package witnessmark.desktop.sheets;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import witnessmark.desktop.shell.CommandMenu;
import witnessmark.logbook.port.StartingValues;
import witnessmark.logbook.sheets.AcceptAsIs;
import witnessmark.logbook.sheets.AddCar;
import witnessmark.logbook.sheets.AddEngine;
import witnessmark.logbook.sheets.AddEvent;
import witnessmark.logbook.sheets.AddPerson;
import witnessmark.logbook.sheets.AddPosition;
import witnessmark.logbook.sheets.AddTool;
import witnessmark.logbook.sheets.AnswerLesson;
import witnessmark.logbook.sheets.AskProof;
import witnessmark.logbook.sheets.BreakSeal;
import witnessmark.logbook.sheets.CalibrateTool;
import witnessmark.logbook.sheets.CallCause;
import witnessmark.logbook.sheets.CameBack;
import witnessmark.logbook.sheets.CameOfIt;
import witnessmark.logbook.sheets.ChaseOut;
import witnessmark.logbook.sheets.CloseBuild;
import witnessmark.logbook.sheets.CloseIncident;
import witnessmark.logbook.sheets.CloseSeason;
import witnessmark.logbook.sheets.CorrectSheet;
import witnessmark.logbook.sheets.DecideAside;
import witnessmark.logbook.sheets.DecideIt;
import witnessmark.logbook.sheets.DoNotice;
import witnessmark.logbook.sheets.EnterCar;
import witnessmark.logbook.sheets.FitPart;
import witnessmark.logbook.sheets.GaveBack;
import witnessmark.logbook.sheets.JobDone;
import witnessmark.logbook.sheets.JudgeTrial;
import witnessmark.logbook.sheets.LinkIncidents;
import witnessmark.logbook.sheets.ListLimits;
import witnessmark.logbook.sheets.ListPart;
import witnessmark.logbook.sheets.LogMissed;
import witnessmark.logbook.sheets.LogSheet;
import witnessmark.logbook.sheets.LookAtFace;
import witnessmark.logbook.sheets.MoveStock;
import witnessmark.logbook.sheets.NameIncidentPart;
import witnessmark.logbook.sheets.NewStock;
import witnessmark.logbook.sheets.PlanJob;
import witnessmark.logbook.sheets.ProveBuild;
import witnessmark.logbook.sheets.PutDecision;
import witnessmark.logbook.sheets.PutEngine;
import witnessmark.logbook.sheets.PutPartAside;
import witnessmark.logbook.sheets.PutSeal;
import witnessmark.logbook.sheets.ReadMeter;
import witnessmark.logbook.sheets.ReopenIncident;
import witnessmark.logbook.sheets.RepairAtTrack;
import witnessmark.logbook.sheets.ReportIncident;
import witnessmark.logbook.sheets.ScrapPart;
import witnessmark.logbook.sheets.SendOut;
import witnessmark.logbook.sheets.SetHourRate;
import witnessmark.logbook.sheets.SetLimit;
import witnessmark.logbook.sheets.SetReadingLimit;
import witnessmark.logbook.sheets.SetSizeLimit;
import witnessmark.logbook.sheets.SetTrigger;
import witnessmark.logbook.sheets.SetUpTrial;
import witnessmark.logbook.sheets.ShareMissed;
import witnessmark.logbook.sheets.SignClear;
import witnessmark.logbook.sheets.SignRunOn;
import witnessmark.logbook.sheets.SignSheet;
import witnessmark.logbook.sheets.SplitSet;
import witnessmark.logbook.sheets.SwapEngine;
import witnessmark.logbook.sheets.TakeEngineOut;
import witnessmark.logbook.sheets.TakeOffPart;
import witnessmark.logbook.sheets.TellNotice;
import witnessmark.logbook.sheets.TightenJoint;
import witnessmark.logbook.sheets.UseTool;
import witnessmark.logbook.sheets.WeekendCosts;
import witnessmark.logbook.sheets.WeighOnSheet;
import witnessmark.logbook.sheets.WithdrawLesson;
import witnessmark.logbook.sheets.WriteAction;
import witnessmark.logbook.sheets.WriteBudget;
import witnessmark.logbook.sheets.WriteBuild;
import witnessmark.logbook.sheets.WriteCause;
import witnessmark.logbook.sheets.WriteCost;
import witnessmark.logbook.sheets.WriteDynoSheet;
import witnessmark.logbook.sheets.WriteFastener;
import witnessmark.logbook.sheets.WriteFinding;
import witnessmark.logbook.sheets.WriteHold;
import witnessmark.logbook.sheets.WriteIncome;
import witnessmark.logbook.sheets.WriteLesson;
import witnessmark.logbook.sheets.WriteLoggerFigures;
import witnessmark.logbook.sheets.WriteLook;
import witnessmark.logbook.sheets.WriteNotice;
import witnessmark.logbook.sheets.WriteOutline;
import witnessmark.logbook.sheets.WritePrevention;
import witnessmark.logbook.sheets.WriteProof;
import witnessmark.logbook.sheets.WriteReading;
import witnessmark.logbook.sheets.WriteRevExponent;
import witnessmark.logbook.sheets.WriteSkim;
import witnessmark.logbook.sheets.WriteSpeedFigures;
import witnessmark.logbook.sheets.WriteTest;
import witnessmark.logbook.sheets.WriteWork;

/** Every sheet with its place in the menus. */
final class SheetList {
    /**
     * One sheet in a menu.
     *
     * @param section sheets of one menu with the same number stand together
     */
    record Listed(CommandMenu menu, int section, LogSheet sheet) {}

    private SheetList() {}

    /**
     * All of them, menu by menu, in the order they are shown there.
     *
     * @param values what limits usually start from
     */
    static List<Listed> all(StartingValues values) {
        return Stream.of(usual(), incidents(), bySubject(values), money())
                .flatMap(List::stream)
                .toList();
    }

    /**
     * The stems of a sheet's help: its own, that of its subject, and what all sheets have in common.
     *
     * @param all those that are in the menus
     */
    static List<String> help(LogSheet sheet, List<Listed> all) {
        boolean written = sheet instanceof CorrectSheet;
        LogSheet form = sheet instanceof CorrectSheet correct ? correct.form() : sheet;
        Stream<String> subject = all.stream()
                .filter(listed -> listed.sheet().key().equals(form.key()))
                .map(listed -> listed.menu().key())
                .map(menu ->
                        "help.sheets" + menu.substring(CommandMenu.RECORD.key().length()));
        return Stream.of(
                        Stream.of("help.sheet." + form.key()),
                        written ? Stream.of("help.sheet.correct") : Stream.<String>empty(),
                        subject,
                        Stream.of("help.sheets"))
                .flatMap(Function.identity())
                .distinct()
                .toList();
    }

    /** What is written most often, at the top. */
    private static List<Listed> usual() {
        return List.of(
                new Listed(CommandMenu.RECORD, 2, new SwapEngine()),
                new Listed(CommandMenu.RECORD, 2, new RepairAtTrack()),
                new Listed(CommandMenu.RECORD, 2, new WriteReading()),
                new Listed(CommandMenu.RECORD, 2, new WriteDynoSheet()),
                new Listed(CommandMenu.RECORD, 2, new WriteLook()),
                new Listed(CommandMenu.RECORD, 2, new ReportIncident()));
    }

    /** What is found out about incidents. */
    private static List<Listed> incidents() {
        return List.of(
                new Listed(CommandMenu.RECORD_INCIDENTS, 1, new NameIncidentPart()),
                new Listed(CommandMenu.RECORD_INCIDENTS, 1, new WriteCause()),
                new Listed(CommandMenu.RECORD_INCIDENTS, 1, new WritePrevention()),
                new Listed(CommandMenu.RECORD_INCIDENTS, 1, new ShareMissed()),
                new Listed(CommandMenu.RECORD_INCIDENTS, 2, new WriteFinding()),
                new Listed(CommandMenu.RECORD_INCIDENTS, 2, new CallCause()),
                new Listed(CommandMenu.RECORD_INCIDENTS, 2, new WeighOnSheet()),
                new Listed(CommandMenu.RECORD_INCIDENTS, 2, new WriteTest()),
                new Listed(CommandMenu.RECORD_INCIDENTS, 2, new WriteAction()),
                new Listed(CommandMenu.RECORD_INCIDENTS, 2, new AskProof()),
                new Listed(CommandMenu.RECORD_INCIDENTS, 2, new WriteProof()),
                new Listed(CommandMenu.RECORD_INCIDENTS, 2, new LinkIncidents()),
                new Listed(CommandMenu.RECORD_INCIDENTS, 3, new WriteLesson()),
                new Listed(CommandMenu.RECORD_INCIDENTS, 3, new AnswerLesson()),
                new Listed(CommandMenu.RECORD_INCIDENTS, 3, new WithdrawLesson()),
                new Listed(CommandMenu.RECORD_INCIDENTS, 4, new CloseIncident()),
                new Listed(CommandMenu.RECORD_INCIDENTS, 4, new ReopenIncident()));
    }

    private static List<Listed> bySubject(StartingValues values) {
        return List.of(
                new Listed(CommandMenu.RECORD, 5, new AddPerson()),
                new Listed(CommandMenu.RECORD_PARTS, 1, new FitPart()),
                new Listed(CommandMenu.RECORD_PARTS, 1, new TakeOffPart()),
                new Listed(CommandMenu.RECORD_PARTS, 1, new GaveBack()),
                new Listed(CommandMenu.RECORD_PARTS, 2, new PutPartAside()),
                new Listed(CommandMenu.RECORD_PARTS, 2, new DecideAside()),
                new Listed(CommandMenu.RECORD_PARTS, 2, new ScrapPart()),
                new Listed(CommandMenu.RECORD_PARTS, 2, new SplitSet()),
                new Listed(CommandMenu.RECORD_PARTS, 3, new ListPart()),
                new Listed(CommandMenu.RECORD_PARTS, 3, new AcceptAsIs()),
                new Listed(CommandMenu.RECORD_PARTS, 4, new AddPosition()),
                new Listed(CommandMenu.RECORD_PARTS, 5, new SetUpTrial()),
                new Listed(CommandMenu.RECORD_PARTS, 5, new JudgeTrial()),
                new Listed(CommandMenu.RECORD_STOCK, 1, new NewStock()),
                new Listed(CommandMenu.RECORD_STOCK, 1, new MoveStock()),
                new Listed(CommandMenu.RECORD_OUT, 1, new SendOut()),
                new Listed(CommandMenu.RECORD_OUT, 1, new CameBack()),
                new Listed(CommandMenu.RECORD_OUT, 1, new ChaseOut()),
                new Listed(CommandMenu.RECORD_ENGINES, 1, new AddCar()),
                new Listed(CommandMenu.RECORD_ENGINES, 1, new AddEngine()),
                new Listed(CommandMenu.RECORD_ENGINES, 2, new PutEngine()),
                new Listed(CommandMenu.RECORD_ENGINES, 2, new TakeEngineOut()),
                new Listed(CommandMenu.RECORD_ENGINES, 2, new WriteSpeedFigures()),
                new Listed(CommandMenu.RECORD_ENGINES, 2, new WriteLoggerFigures()),
                new Listed(CommandMenu.RECORD_ENGINES, 2, new WriteRevExponent()),
                new Listed(CommandMenu.RECORD_ENGINES, 2, new WriteOutline()),
                new Listed(CommandMenu.RECORD_ENGINES, 3, new SignSheet()),
                new Listed(CommandMenu.RECORD_ENGINES, 3, new PutSeal()),
                new Listed(CommandMenu.RECORD_ENGINES, 3, new BreakSeal()),
                new Listed(CommandMenu.RECORD_EVENTS, 1, new AddEvent()),
                new Listed(CommandMenu.RECORD_EVENTS, 1, new EnterCar()),
                new Listed(CommandMenu.RECORD_EVENTS, 1, new LogMissed()),
                new Listed(CommandMenu.RECORD_WORK, 1, new PlanJob()),
                new Listed(CommandMenu.RECORD_WORK, 1, new JobDone()),
                new Listed(CommandMenu.RECORD_WORK, 2, new WriteWork()),
                new Listed(CommandMenu.RECORD_WORK, 2, new WriteSkim()),
                new Listed(CommandMenu.RECORD_WORK, 2, new LookAtFace()),
                new Listed(CommandMenu.RECORD_WORK, 2, new WriteBuild()),
                new Listed(CommandMenu.RECORD_WORK, 2, new CloseBuild()),
                new Listed(CommandMenu.RECORD_WORK, 2, new ProveBuild()),
                new Listed(CommandMenu.RECORD_LIMITS, 1, new WriteHold()),
                new Listed(CommandMenu.RECORD_LIMITS, 1, new SignClear()),
                new Listed(CommandMenu.RECORD_LIMITS, 1, new SignRunOn()),
                new Listed(CommandMenu.RECORD_LIMITS, 2, new SetLimit()),
                new Listed(CommandMenu.RECORD_LIMITS, 2, new ListLimits(values)),
                new Listed(CommandMenu.RECORD_LIMITS, 2, new SetReadingLimit()),
                new Listed(CommandMenu.RECORD_LIMITS, 2, new SetSizeLimit()),
                new Listed(CommandMenu.RECORD_LIMITS, 2, new SetTrigger()),
                new Listed(CommandMenu.RECORD_NOTICES, 1, new WriteNotice()),
                new Listed(CommandMenu.RECORD_NOTICES, 1, new TellNotice()),
                new Listed(CommandMenu.RECORD_NOTICES, 1, new DoNotice()),
                new Listed(CommandMenu.RECORD_TOOLS, 1, new TightenJoint()),
                new Listed(CommandMenu.RECORD_TOOLS, 1, new WriteFastener()),
                new Listed(CommandMenu.RECORD_TOOLS, 1, new ReadMeter()),
                new Listed(CommandMenu.RECORD_TOOLS, 2, new AddTool()),
                new Listed(CommandMenu.RECORD_TOOLS, 2, new CalibrateTool()),
                new Listed(CommandMenu.RECORD_TOOLS, 2, new UseTool()));
    }

    /** What is about money, and about decisions. */
    private static List<Listed> money() {
        return List.of(
                new Listed(CommandMenu.RECORD_MONEY, 1, new WriteCost()),
                new Listed(CommandMenu.RECORD_MONEY, 1, new WeekendCosts()),
                new Listed(CommandMenu.RECORD_MONEY, 1, new WriteIncome()),
                new Listed(CommandMenu.RECORD_MONEY, 1, new WriteBudget()),
                new Listed(CommandMenu.RECORD_MONEY, 2, new PutDecision()),
                new Listed(CommandMenu.RECORD_MONEY, 2, new DecideIt()),
                new Listed(CommandMenu.RECORD_MONEY, 2, new CameOfIt()),
                new Listed(CommandMenu.RECORD_MONEY, 3, new SetHourRate()),
                new Listed(CommandMenu.RECORD_MONEY, 3, new CloseSeason()));
    }
}
