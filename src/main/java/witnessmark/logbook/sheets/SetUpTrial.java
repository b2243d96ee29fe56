package witnessmark.logbook.sheets;

import static witnessmark.logbook.sheets.SheetField.choice;
import static witnessmark.logbook.sheets.SheetField.of;
import static witnessmark.logbook.sheets.SheetField.text;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.Stream;
import witnessmark.domain.Entry;
import witnessmark.domain.PartDesign;
import witnessmark.domain.Trial;
import witnessmark.outcome.ProblemKind;

/** Sets up a trial of a part design against one that is usual, or against every other of its kind. */
public final class SetUpTrial implements LogSheet {
    public static final SheetField TRIED = choice("trial_tried", 2);
    public static final SheetField USUAL = choice("trial_usual", 2);
    public static final SheetField NAME = text("trial_name", 2);
    public static final SheetField FROM = of("trial_from", FieldKind.DAY);
    public static final SheetField BY = text("by", 1);
    public static final SheetField HOPED = text("trial_hoped", 4);

    @Override
    public String key() {
        return "trial";
    }

    @Override
    public List<SheetGroup> groups() {
        return List.of(SheetGroup.of("trial", List.of(TRIED, USUAL), List.of(NAME, FROM, BY), List.of(HOPED)));
    }

    @Override
    public Map<SheetField, String> fresh(SheetSight sight) {
        return Map.of(USUAL, SheetWord.EVERY_OTHER.key(), FROM, sight.today().toString(), BY, sight.who());
    }

    @Override
    public List<Choice> choices(SheetField field, SheetTyped typed, SheetSight sight) {
        if (field.equals(TRIED)) {
            return designs(sight, design -> true).toList();
        }
        if (!field.equals(USUAL)) {
            return List.of();
        }
        Stream<Choice> alike = sight.find(PartDesign.class, typed.text(TRIED)).stream()
                .flatMap(tried -> designs(
                        sight,
                        design -> design.fact().kind() == tried.fact().kind()
                                && !design.id().equals(tried.id())));
        return Stream.concat(Stream.of(SheetWord.EVERY_OTHER.choice()), alike).toList();
    }

    private static Stream<Choice> designs(SheetSight sight, Predicate<Entry<PartDesign>> asked) {
        return sight.facts()
                .of(PartDesign.class)
                .inForce()
                .filter(asked)
                .sorted(Comparator.comparing(design -> design.fact().name()))
                .map(design -> Choice.of(
                        design.id().text(), design.fact().name(), design.fact().kind()));
    }

    @Override
    public Map<SheetField, String> follows(SheetField picked, SheetTyped typed, SheetSight sight) {
        if (!picked.equals(TRIED)) {
            return Map.of();
        }
        String name = sight.find(PartDesign.class, typed.text(TRIED))
                .map(design -> design.fact().name())
                .filter(free -> sight.facts().of(Trial.class).named(free).isEmpty())
                .orElse("");
        return Map.of(NAME, name, USUAL, SheetWord.EVERY_OTHER.key());
    }

    @Override
    public void read(ReadSheet in) {
        Entry<PartDesign> tried = in.chosen(TRIED, PartDesign.class);
        Entry<PartDesign> usual = in.is(USUAL, SheetWord.EVERY_OTHER) ? null : in.chosen(USUAL, PartDesign.class);
        if (tried != null
                && usual != null
                && usual.fact().kind() != tried.fact().kind()) {
            in.wrong(
                    USUAL,
                    ProblemKind.DESIGN_OF_ANOTHER_KIND,
                    usual.fact().name(),
                    tried.fact().name());
        }
        String name = in.newName(NAME, Trial.class);
        LocalDate from = new ReadValues(in).neededDay(FROM);
        in.note(HOPED, SheetNote.of("trial_hoped_example"));
        String hoped = in.needed(HOPED);
        if (in.fine() && tried != null && from != null) {
            in.make(
                    TRIED,
                    new Trial(
                            name,
                            tried.id(),
                            usual == null ? null : usual.id(),
                            hoped,
                            from,
                            in.text(BY),
                            null,
                            null,
                            "",
                            ""));
        }
    }

    @Override
    public List<String> about(SheetTyped typed, SheetSight sight) {
        return List.of(typed.text(NAME));
    }
}
