package witnessmark.logbook.sheets;

import static witnessmark.logbook.sheets.SheetField.choice;
import static witnessmark.logbook.sheets.SheetField.of;
import static witnessmark.logbook.sheets.SheetField.text;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.BuildProof;
import witnessmark.domain.Engine;
import witnessmark.domain.Id;
import witnessmark.domain.ProofKind;
import witnessmark.ledger.UnprovenBuilds;
import witnessmark.ledger.result.UnprovenBuild;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Moment;

/** Says that a track repair is proven: measured, or taken as proven by hand, with the reason and a name. */
public final class ProveBuild implements LogSheet {
    public static final SheetField BUILD = choice("unproven_build", 4);
    public static final SheetField HOW = choice("proven_how", 1);
    public static final SheetField WHEN = of("proven_on", FieldKind.DAY);
    public static final SheetField WHEN_TIME = of("proven_time", FieldKind.CLOCK);
    public static final SheetField BY = text("proven_by", 1);
    public static final SheetField WHY = text("proven_why", 4);

    @Override
    public String key() {
        return "prove_build";
    }

    @Override
    public List<SheetGroup> groups() {
        return List.of(SheetGroup.of("prove_build", List.of(BUILD), List.of(HOW, WHEN, WHEN_TIME, BY), List.of(WHY)));
    }

    @Override
    public Map<SheetField, String> fresh(SheetSight sight) {
        Map<SheetField, String> out = new HashMap<>();
        List<UnprovenBuild> unproven = unproven(sight);
        if (unproven.size() == 1) {
            out.put(BUILD, key(unproven.get(0)));
        }
        out.put(WHEN, sight.today().toString());
        out.put(BY, sight.who());
        return out;
    }

    @Override
    public Map<SheetField, String> picksFor(Id<Engine> engine, SheetSight sight) {
        return unproven(sight).stream()
                .filter(unproven -> unproven.build().fact().engine().equals(engine))
                .findFirst()
                .map(unproven -> Map.of(BUILD, key(unproven)))
                .orElse(Map.of());
    }

    @Override
    public List<Choice> choices(SheetField field, SheetTyped typed, SheetSight sight) {
        if (field.equals(HOW)) {
            return Choice.words(ProofKind.values());
        }
        return field.equals(BUILD)
                ? unproven(sight).stream()
                        .map(unproven -> Choice.of(
                                key(unproven),
                                SheetNote.of(
                                        "build_closed",
                                        engine(sight, unproven),
                                        unproven.build().fact().number(),
                                        unproven.since())))
                        .toList()
                : List.of();
    }

    @Override
    public void read(ReadSheet in) {
        if (unproven(in.sight()).isEmpty()) {
            in.note(BUILD, SheetNote.of("all_proven"));
        }
        in.needed(BUILD);
        ProofKind how = in.word(HOW, ProofKind.class);
        Moment at = new ReadValues(in).moment(WHEN, WHEN_TIME);
        String by = in.needed(BY);
        String why = in.needed(WHY);
        @Nullable UnprovenBuild build = chosen(in.typed(), in.sight()).orElse(null);
        if (build == null || at == null) {
            return;
        }
        in.note(BUILD, SheetNote.of("line", SheetNote.of("unproven_list", build)));
        if (at.isBefore(build.since())) {
            in.wrong(WHEN, ProblemKind.ENDS_BEFORE_IT_BEGINS, engine(in.sight(), build), build.since(), at);
        }
        if (in.fine() && how != null) {
            in.make(WHY, new BuildProof(build.build().id(), at, how, why, by));
        }
    }

    @Override
    public List<String> about(SheetTyped typed, SheetSight sight) {
        Optional<UnprovenBuild> build = chosen(typed, sight);
        return List.of(
                build.map(each -> engine(sight, each)).orElse(""),
                build.map(each -> each.build().fact().knownAs()).orElse(""));
    }

    private static Optional<UnprovenBuild> chosen(SheetTyped typed, SheetSight sight) {
        return unproven(sight).stream()
                .filter(build -> key(build).equals(typed.text(BUILD)))
                .findFirst();
    }

    private static List<UnprovenBuild> unproven(SheetSight sight) {
        return new UnprovenBuilds(sight.view().ledger()).all();
    }

    private static String key(UnprovenBuild unproven) {
        return unproven.build().id().text();
    }

    private static String engine(SheetSight sight, UnprovenBuild unproven) {
        return sight.name(Engine.class, unproven.build().fact().engine());
    }
}
