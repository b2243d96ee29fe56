package witnessmark.logbook.sheets;

import static witnessmark.logbook.sheets.SheetField.choice;
import static witnessmark.logbook.sheets.SheetField.of;
import static witnessmark.logbook.sheets.SheetField.text;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import witnessmark.domain.Entry;
import witnessmark.domain.Trial;
import witnessmark.domain.TrialVerdict;
import witnessmark.outcome.ProblemKind;

/** Says what came of a trial, and on what grounds. */
public final class JudgeTrial implements LogSheet {
    public static final SheetField TRIAL = choice("trial_which", 2);
    public static final SheetField VERDICT = choice("trial_verdict", 2);
    public static final SheetField BECAUSE = text("trial_because", 4);
    public static final SheetField ON = of("trial_judged_on", FieldKind.DAY);
    public static final SheetField BY = text("by", 1);

    @Override
    public String key() {
        return "judge_trial";
    }

    @Override
    public List<SheetGroup> groups() {
        return List.of(SheetGroup.of("judge_trial", List.of(TRIAL, VERDICT), List.of(BECAUSE), List.of(ON, BY)));
    }

    @Override
    public Map<SheetField, String> fresh(SheetSight sight) {
        List<Entry<Trial>> going = going(sight);
        return Map.of(
                TRIAL,
                going.size() == 1 ? going.get(0).id().text() : "",
                ON,
                sight.today().toString(),
                BY,
                sight.who());
    }

    @Override
    public List<Choice> choices(SheetField field, SheetTyped typed, SheetSight sight) {
        if (field.equals(VERDICT)) {
            return Choice.words(TrialVerdict.values());
        }
        return field.equals(TRIAL)
                ? going(sight).stream()
                        .map(trial -> Choice.of(trial.id().text(), trial.fact()))
                        .toList()
                : List.of();
    }

    private static List<Entry<Trial>> going(SheetSight sight) {
        return sight.facts().of(Trial.class).where(trial -> trial.ended() == null).stream()
                .sorted(Comparator.comparing(trial -> trial.fact().name()))
                .toList();
    }

    @Override
    public void read(ReadSheet in) {
        Entry<Trial> trial = in.chosen(TRIAL, Trial.class);
        if (trial != null && trial.fact().ended() != null) {
            in.wrong(
                    TRIAL,
                    ProblemKind.JUDGED_ALREADY,
                    trial.fact().name(),
                    trial.fact().ended());
        }
        TrialVerdict verdict = in.word(VERDICT, TrialVerdict.class);
        in.note(BECAUSE, SheetNote.of("trial_because_example"));
        String because = in.needed(BECAUSE);
        LocalDate on = new ReadValues(in).neededDay(ON);
        if (trial != null && on != null && on.isBefore(trial.fact().from())) {
            in.wrong(ON, ProblemKind.EARLIER_THAN, ON, on, trial.fact().from());
        }
        if (in.fine() && trial != null && verdict != null && on != null) {
            Trial was = trial.fact();
            in.change(
                    TRIAL,
                    trial,
                    new Trial(
                            was.name(),
                            was.tried(),
                            was.usual(),
                            was.hoped(),
                            was.from(),
                            was.by(),
                            on,
                            verdict,
                            because,
                            in.text(BY)));
        }
    }

    @Override
    public List<String> about(SheetTyped typed, SheetSight sight) {
        return List.of(sight.find(Trial.class, typed.text(TRIAL))
                .map(trial -> trial.fact().name())
                .orElse(""));
    }
}
