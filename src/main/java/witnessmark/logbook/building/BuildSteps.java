package witnessmark.logbook.building;

import static java.util.Map.entry;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Function;
import witnessmark.domain.Build;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Fitment;
import witnessmark.domain.Id;
import witnessmark.domain.JointMethod;
import witnessmark.domain.Position;
import witnessmark.logbook.building.BuildField.Name;
import witnessmark.logbook.sheets.CloseBuild;
import witnessmark.logbook.sheets.FitPart;
import witnessmark.logbook.sheets.LogSheet;
import witnessmark.logbook.sheets.Prefilled;
import witnessmark.logbook.sheets.PutPartAside;
import witnessmark.logbook.sheets.ScrapPart;
import witnessmark.logbook.sheets.SendOut;
import witnessmark.logbook.sheets.SheetField;
import witnessmark.logbook.sheets.SheetsTogether.Step;
import witnessmark.logbook.sheets.SignSheet;
import witnessmark.logbook.sheets.TakeOffPart;
import witnessmark.logbook.sheets.TightenJoint;
import witnessmark.logbook.sheets.WriteBuild;

/**
 * What is typed on the page of a build as the sheets that would write it one by one: what comes out first, then where it
 * goes, then what goes in, what is tightened, and last the closing and the signature.
 */
final class BuildSteps {
    private static final Map<SheetField, Name> OPENING = Map.of(
            WriteBuild.ZONES, Name.ZONES,
            WriteBuild.OPENED, Name.OPENED,
            WriteBuild.OPENED_TIME, Name.OPENED_TIME,
            WriteBuild.NOTE, Name.NOTE);
    private static final Map<SheetField, Name> TAKING_OFF = Map.of(
            TakeOffPart.WHEN, Name.WHEN,
            TakeOffPart.WHEN_TIME, Name.WHEN_TIME,
            TakeOffPart.WHY, Name.WHY,
            TakeOffPart.CONDITION, Name.CONDITION,
            TakeOffPart.FITTED, Name.OUT);
    private static final Map<SheetField, Name> ASIDE = Map.of(
            PutPartAside.SINCE, Name.WHEN,
            PutPartAside.SINCE_TIME, Name.WHEN_TIME,
            PutPartAside.MEMBER, Name.MEMBER,
            PutPartAside.WHY, Name.WHY,
            PutPartAside.PART, Name.OUT);
    private static final Map<SheetField, Name> AWAY = Map.of(
            SendOut.WHEN, Name.WHEN,
            SendOut.WHEN_TIME, Name.WHEN_TIME,
            SendOut.TO, Name.SENT_TO,
            SendOut.ASKED, Name.ASKED,
            SendOut.WHAT, Name.OUT);
    private static final Map<SheetField, Name> SCRAPPED = Map.of(
            ScrapPart.WHEN, Name.WHEN,
            ScrapPart.WHEN_TIME, Name.WHEN_TIME,
            ScrapPart.MEMBER, Name.MEMBER,
            ScrapPart.WHY, Name.WHY,
            ScrapPart.PART, Name.OUT);
    private static final Map<SheetField, Name> FITTING = Map.of(
            FitPart.SINCE, Name.WHEN,
            FitPart.SINCE_TIME, Name.WHEN_TIME,
            FitPart.OFF_WHY, Name.WHY,
            FitPart.OFF_CONDITION, Name.CONDITION,
            FitPart.PART, Name.IN,
            FitPart.POSITION, Name.IN,
            FitPart.MARK, Name.MARK,
            FitPart.ACCEPTED_WHY, Name.ACCEPTED);
    private static final Map<SheetField, Name> TIGHTENING = Map.ofEntries(
            entry(TightenJoint.WHEN, Name.WHEN),
            entry(TightenJoint.WHEN_TIME, Name.WHEN_TIME),
            entry(TightenJoint.FASTENERS, Name.FASTENERS),
            entry(TightenJoint.WHICH, Name.WHICH),
            entry(TightenJoint.STAGE, Name.STAGE),
            entry(TightenJoint.METHOD, Name.METHOD),
            entry(TightenJoint.VALUE, Name.VALUE),
            entry(TightenJoint.LUBRICANT, Name.LUBRICANT),
            entry(TightenJoint.TOOL, Name.TOOL),
            entry(TightenJoint.BY, Name.TIGHTENED_BY),
            entry(TightenJoint.SECOND, Name.LOOKED_ON));
    private static final Map<SheetField, Name> CLOSING = Map.of(
            CloseBuild.CLOSED, Name.CLOSED,
            CloseBuild.CLOSED_TIME, Name.CLOSED_TIME,
            CloseBuild.SIGNED, Name.SIGNED,
            CloseBuild.BUILD, Name.CLOSED);
    private static final Map<SheetField, Name> SIGNING = Map.of(
            SignSheet.WHEN, Name.CLOSED,
            SignSheet.WHEN_TIME, Name.CLOSED_TIME,
            SignSheet.BY, Name.SIGNED,
            SignSheet.SECOND, Name.SECOND,
            SignSheet.WORDS, Name.WORDS,
            SignSheet.BUILD, Name.SIGNED);

    private final BuildDraft draft;
    private final List<Step> steps = new ArrayList<>();
    private final Map<Step, Map<SheetField, Name>> fields = new HashMap<>();

    BuildSteps(BuildDraft draft) {
        this.draft = draft;
        if (draft.build() == null) {
            add(
                    BuildField.BUILD,
                    new WriteBuild(),
                    OPENING,
                    (facts, typed) ->
                            typed.put(WriteBuild.ENGINE, draft.engine().text()));
        }
        List<Id<Position>> positions = draft.positions();
        positions.forEach(this::takeOff);
        positions.forEach(this::putWhereItGoes);
        positions.forEach(this::fit);
        draft.joints().forEach(this::tighten);
        close();
        sign();
    }

    List<Step> all() {
        return steps;
    }

    /** The field of the page that a field of a step is. */
    BuildField field(Step step, SheetField field) {
        Name name = fields.getOrDefault(step, Map.of()).get(field);
        boolean whole = name == Name.WHEN || name == Name.WHEN_TIME;
        return name == null ? first(step) : new BuildField(whole ? BuildField.BUILD : step.name(), name);
    }

    /** Where what belongs to no field of the page is said. */
    BuildField first(Step step) {
        Name name = step.sheet() instanceof TightenJoint
                ? Name.FASTENERS
                : step.sheet() instanceof FitPart ? Name.IN : Name.OUT;
        return step.name().equals(BuildField.BUILD) ? BuildField.of(Name.CLOSED) : new BuildField(step.name(), name);
    }

    private void takeOff(Id<Position> position) {
        if (draft.goes(position).isPresent()) {
            add(BuildField.row(position), new TakeOffPart(), TAKING_OFF, (facts, typed) -> {
                typed.put(TakeOffPart.PLACE, FitPart.place(draft.engine()));
                there(facts, position)
                        .ifPresent(fitment ->
                                typed.put(TakeOffPart.FITTED, fitment.id().text()));
            });
        }
    }

    private void putWhereItGoes(Id<Position> position) {
        String row = BuildField.row(position);
        switch (draft.goes(position).orElse(Goes.SHELF)) {
            case SHELF -> {} // it is free as soon as it is off
            case QUARANTINE ->
                add(
                        row,
                        new PutPartAside(),
                        ASIDE,
                        (facts, typed) -> typed.put(PutPartAside.PART, out(facts, position)));
            case AWAY ->
                add(
                        row,
                        new SendOut(),
                        AWAY,
                        (facts, typed) -> typed.putAll(
                                Prefilled.sending(out(facts, position)).texts()));
            case SCRAP ->
                add(row, new ScrapPart(), SCRAPPED, (facts, typed) -> typed.put(ScrapPart.PART, out(facts, position)));
        }
    }

    private void fit(Id<Position> position) {
        if (draft.has(BuildField.of(position, Name.IN))) {
            add(BuildField.row(position), new FitPart(), FITTING, (facts, typed) -> {
                typed.put(FitPart.PLACE, FitPart.place(draft.engine()));
                typed.put(FitPart.POSITION, position.text());
            });
        }
    }

    private void tighten(int number) {
        String row = BuildField.ofJoint(number, Name.VALUE).row();
        add(row, new TightenJoint(), TIGHTENING, (facts, typed) -> {
            typed.put(TightenJoint.ENGINE, draft.engine().text());
            typed.computeIfPresent(
                    TightenJoint.METHOD, (field, method) -> method.isBlank() ? JointMethod.TORQUE.code() : method);
        });
    }

    private void close() {
        if (!draft.text(Name.CLOSED).isEmpty()) {
            add(
                    BuildField.BUILD,
                    new CloseBuild(),
                    CLOSING,
                    (facts, typed) -> build(facts)
                            .ifPresent(build ->
                                    typed.put(CloseBuild.BUILD, build.id().text())));
        }
    }

    private void sign() {
        if (!draft.text(Name.SIGNED).isEmpty()) {
            add(BuildField.BUILD, new SignSheet(), SIGNING, (facts, typed) -> {
                build(facts)
                        .ifPresent(
                                build -> typed.put(SignSheet.BUILD, build.id().text()));
                if (draft.text(Name.CLOSED).isEmpty()) {
                    typed.put(SignSheet.WHEN, draft.text(Name.WHEN));
                    typed.put(SignSheet.WHEN_TIME, draft.text(Name.WHEN_TIME));
                }
            });
        }
    }

    private void add(
            String row, LogSheet sheet, Map<SheetField, Name> mapped, BiConsumer<Facts, Map<SheetField, String>> more) {
        Function<Facts, Map<SheetField, String>> typed = facts -> {
            Map<SheetField, String> texts = new HashMap<>();
            mapped.forEach((field, name) -> {
                boolean whole = name == Name.WHEN || name == Name.WHEN_TIME;
                texts.put(field, draft.text(new BuildField(whole ? BuildField.BUILD : row, name)));
            });
            more.accept(facts, texts);
            return texts;
        };
        Step step = new Step(row, sheet, typed);
        steps.add(step);
        fields.put(step, mapped);
    }

    /** The build as it is written by then. */
    Optional<Entry<Build>> build(Facts facts) {
        return draft.build() != null
                ? facts.of(Build.class).find(draft.build())
                : facts.of(Build.class).where(build -> build.engine().equals(draft.engine())).stream()
                        .reduce((one, other) ->
                                other.fact().number() > one.fact().number() ? other : one);
    }

    private Optional<Entry<Fitment>> there(Facts facts, Id<Position> position) {
        return facts
                .of(Fitment.class)
                .where(fitment -> draft.engine().equals(fitment.engine())
                        && fitment.position().equals(position)
                        && fitment.to() == null)
                .stream()
                .findFirst();
    }

    /** What came out of a position last, by the text of its identity. */
    private String out(Facts facts, Id<Position> position) {
        return facts
                .of(Fitment.class)
                .where(fitment -> draft.engine().equals(fitment.engine())
                        && fitment.position().equals(position)
                        && fitment.to() != null)
                .stream()
                .max(java.util.Comparator.comparing(
                        fitment -> Objects.requireNonNull(fitment.fact().to())))
                .map(fitment -> fitment.fact().part().text())
                .orElse("");
    }
}
