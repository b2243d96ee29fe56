package witnessmark.logbook;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Entry;
import witnessmark.domain.Fact;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.KnownBy;
import witnessmark.domain.image.Component;
import witnessmark.domain.image.EntryImage;
import witnessmark.domain.image.FigureUnits;
import witnessmark.domain.image.RecordType;
import witnessmark.domain.image.RecordTypes;
import witnessmark.outcome.Place;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Moment;

/** Which values of a row the logbook has otherwise than the folder. */
final class Differences {
    private final Facts known;
    private final Facts folder;
    private final Map<UUID, Place> places;

    /**
     * @param known what the logbook has
     * @param folder the same with the folder's rows put over it
     * @param places where a row stands in the folder
     */
    Differences(Facts known, Facts folder, Map<UUID, Place> places) {
        this.known = known;
        this.folder = folder;
        this.places = places;
    }

    /** Whether the logbook has an entry of that identity. */
    boolean inLogbook(Entry<?> row) {
        return here(row) != null;
    }

    /** One for each value that is another, with the column in which it stands. */
    List<Problem> of(Entry<?> row) {
        Entry<?> here = Objects.requireNonNull(here(row), "only rows the logbook has differ from it");
        RecordType<?> type = RecordTypes.of(row.fact().getClass());
        List<Problem> problems = new ArrayList<>();
        for (Component component : type.components()) {
            Object there = component.value(row.fact());
            Object mine = component.value(here.fact());
            if (!component.text(there).equals(component.text(mine))) {
                problems.add(differs(
                        row,
                        here,
                        component,
                        component.heading(),
                        said(row.fact(), type, component, folder),
                        said(here.fact(), type, component, known)));
            }
        }
        String theirs = standing(row);
        String ours = standing(here);
        if (!theirs.equals(ours)) {
            problems.add(differs(row, here, EntryImage.STANDING, EntryImage.STANDING, theirs, ours));
        }
        return problems;
    }

    private Problem differs(Entry<?> row, Entry<?> here, Object field, String heading, Object there, Object mine) {
        Problem problem = Problem.of(
                ProblemKind.DIFFERS_FROM_LOGBOOK,
                RecordTypes.of(row.fact().getClass()),
                name(here),
                field,
                there,
                mine);
        Place place = places.get(row.id().value());
        return place == null ? problem : problem.at(place.in(heading));
    }

    private static String standing(Entry<?> entry) {
        String because = entry.struckBecause();
        return because == null ? entry.standing().code() : entry.standing().code() + ": " + because;
    }

    /** The value where words are made of it, else as the folder writes it; empty when there is none. */
    private static Object said(Fact fact, RecordType<?> type, Component component, Facts facts) {
        Object value = FigureUnits.withUnit(type, component, each -> each.value(fact), facts);
        if (value == null) {
            return "";
        }
        Class<? extends Fact> kind = component.refersTo();
        if (kind != null && value instanceof Id<?> id) {
            return named(facts, kind, id.value());
        }
        boolean code = value instanceof Boolean
                || value instanceof Iterable<?>
                || value instanceof KnownBy
                || value instanceof ZoneId;
        return code ? component.text(value) : value;
    }

    private static <F extends Fact> String named(Facts facts, Class<F> kind, UUID id) {
        return facts.of(kind)
                .find(new Id<F>(id))
                .map(entry -> name(entry).toString())
                .orElse(id.toString());
    }

    /** What people know an entry by: its name, else when it happened, else its identity. */
    private static Object name(Entry<?> entry) {
        Fact fact = entry.fact();
        String name = fact.knownAs();
        if (name == null) {
            name = RecordTypes.of(fact.getClass()).components().stream()
                    .filter(component -> component.name().equals("name"))
                    .map(component -> component.text(component.value(fact)))
                    .findFirst()
                    .orElse("");
        }
        if (!name.isBlank()) {
            return name;
        }
        Moment happened = fact.happened();
        return happened != null ? happened : entry.id().text();
    }

    private @Nullable Entry<?> here(Entry<?> row) {
        return here(known, row);
    }

    private static <F extends Fact> @Nullable Entry<?> here(Facts known, Entry<F> row) {
        @SuppressWarnings("unchecked") // an entry is of the kind of its fact
        Class<F> kind = (Class<F>) row.fact().getClass();
        return known.of(kind).find(row.id()).orElse(null);
    }
}
