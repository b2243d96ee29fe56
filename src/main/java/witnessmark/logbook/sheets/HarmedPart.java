package witnessmark.logbook.sheets;

import static witnessmark.logbook.sheets.SheetField.choice;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Car;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Fitment;
import witnessmark.domain.Id;
import witnessmark.domain.Incident;
import witnessmark.domain.IncidentPart;
import witnessmark.domain.Part;
import witnessmark.domain.PartDesign;
import witnessmark.domain.PartHarm;
import witnessmark.domain.SetMember;
import witnessmark.logbook.money.LifeThen;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Moment;

/**
 * Three fields that name a part of an incident: which, which member of it, and what happened to it.
 *
 * @param part which part or set
 * @param member which member of the set; asked for where members are written down
 * @param harm failed, damaged or suspected
 */
record HarmedPart(SheetField part, SheetField member, SheetField harm) {
    /**
     * Where and when to look for parts.
     *
     * @param engine the engine it happened to, or null
     * @param car the car, or null
     * @param at when it happened, or null while nobody has said
     */
    record There(
            @Nullable Id<Engine> engine,
            @Nullable Id<Car> car,
            @Nullable Moment at) {}

    /** @param suffix of the keys of its fields, so that there can be several on a sheet */
    static HarmedPart of(String suffix) {
        return new HarmedPart(
                choice("incident_part" + suffix, 2),
                choice("incident_member" + suffix, 1),
                choice("incident_harm" + suffix, 1));
    }

    List<SheetField> row() {
        return List.of(part, member, harm);
    }

    /** Whether one of its fields is asked for, as long as a part is. */
    boolean asks(SheetField field, SheetTyped typed, SheetSight sight) {
        return !field.equals(member) || PartsNow.hasMembers(sight, typed.text(part));
    }

    /** What was fitted there at that moment, then every other part that is in use. */
    List<Choice> choices(SheetField field, SheetTyped typed, SheetSight sight, There there) {
        if (field.equals(harm)) {
            return Choice.words(PartHarm.values());
        }
        if (field.equals(member)) {
            return PartsNow.memberChoices(sight, typed.text(part));
        }
        Map<String, Choice> all = new LinkedHashMap<>();
        fitted(sight, there).forEach(fitment -> {
            Id<Part> id = fitment.fact().part();
            Part fact = sight.facts().of(Part.class).get(id);
            all.put(
                    id.text(),
                    Choice.of(
                            id.text(),
                            SheetNote.of(
                                    "incident_part",
                                    fact,
                                    sight.facts()
                                            .of(PartDesign.class)
                                            .get(fact.design())
                                            .kind())));
        });
        PartsNow.choices(sight, PartsNow::inUse).forEach(choice -> all.putIfAbsent(choice.key(), choice));
        return new ArrayList<>(all.values());
    }

    private static List<Entry<Fitment>> fitted(SheetSight sight, There there) {
        List<Entry<Fitment>> fitted = new ArrayList<>();
        Moment at = there.at();
        if (at != null && there.engine() != null) {
            fitted.addAll(sight.view().ledger().fittedAt(there.engine(), at).values());
        }
        if (at != null && there.car() != null) {
            fitted.addAll(sight.view().ledger().fittedInCar(there.car(), at).values());
        }
        return fitted;
    }

    /**
     * The part as it was read, with its life then under its field; null while one is missing or something is wrong.
     *
     * @param at when it happened, or null while nobody has said
     */
    @Nullable
    Named read(ReadSheet in, @Nullable Moment at) {
        Entry<Part> chosen = in.chosen(part, Part.class);
        PartHarm what = in.word(harm, PartHarm.class);
        String of = member(in);
        if (chosen == null || at == null) {
            return null;
        }
        LifeThen.Ran ran = in.then(at).map(then -> then.of(chosen.id())).orElse(null);
        if (ran == null) {
            return null;
        }
        in.note(part, note(ran));
        return what == null ? null : new Named(chosen.id(), of, what, ran);
    }

    private String member(ReadSheet in) {
        String key = in.text(member);
        if (key.isEmpty() || !PartsNow.hasMembers(in.sight(), in.text(part))) {
            return "";
        }
        SetMember found = in.sight().find(SetMember.class, key).map(Entry::fact).orElse(null);
        if (found == null || !found.set().text().equals(in.text(part))) {
            in.wrong(member, ProblemKind.NEEDED, member);
            return "";
        }
        return found.mark();
    }

    /** {@code had run 15.03 h of 12 h}. */
    private static SheetNote note(LifeThen.Ran ran) {
        String key = ran.atLeast() ? "had_run_least" : "had_run";
        return ran.limit() == null
                ? SheetNote.echo(key, ran.ran())
                : SheetNote.echo(key + "_of", ran.ran(), Objects.requireNonNull(ran.limit()));
    }

    /**
     * A part of an incident, its life with it.
     *
     * @param part which part or set
     * @param member which member; empty for the whole
     * @param harm what happened to it
     * @param ran what it had run
     */
    record Named(Id<Part> part, String member, PartHarm harm, LifeThen.Ran ran) {
        IncidentPart of(Id<Incident> incident, String note) {
            return new IncidentPart(incident, part, member, harm, ran.ran(), ran.atLeast(), ran.limit(), note);
        }
    }
}
