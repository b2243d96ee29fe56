package witnessmark.exchange;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.PriorityQueue;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Entry;
import witnessmark.domain.Fact;
import witnessmark.domain.Id;
import witnessmark.domain.Standing;
import witnessmark.domain.Team;
import witnessmark.domain.image.Component;
import witnessmark.domain.image.RecordType;
import witnessmark.outcome.ProblemKind;

/**
 * Settles which rows of a file are taken: rows with an id or name that is taken already are left out, rows may refer to
 * rows of the same file in any order, and what the logbook has already is not written again.
 */
final class Settling<F extends Fact> {
    private final RecordType<F> type;
    private final Reading reading;
    private final Problems problems;
    private final Sameness<F> sameness;

    private final Map<UUID, Draft<F>> drafts = new HashMap<>();
    private final Map<UUID, List<Draft<F>>> waiting = new HashMap<>();
    private final List<Entry<F>> entries = new ArrayList<>();
    private final Set<UUID> taken = new HashSet<>();

    /** A row on its way to an entry. */
    private static final class Draft<F extends Fact> {
        private final Row row;
        private final F fact;
        private final Map<Integer, UUID> own = new HashMap<>();
        private int waitsFor;
        /** The id it ends up with; null while it is not taken. */
        private @Nullable UUID settled;

        Draft(Row row, F fact) {
            this.row = row;
            this.fact = fact;
        }
    }

    Settling(RecordType<F> type, Reading reading) {
        this.type = type;
        this.reading = reading;
        this.problems = reading.problems();
        this.sameness = new Sameness<>(type, reading);
    }

    void settle(List<Row> rows) {
        for (Row row : rows) {
            draft(row);
        }
        sameness.namesTakenBesides(drafts.keySet());
        NameIndex names = names();
        PriorityQueue<Draft<F>> ready =
                new PriorityQueue<>(Comparator.comparing((Draft<F> draft) -> new Id<F>(draft.row.id())));
        for (Draft<F> draft : List.copyOf(drafts.values())) {
            if (!findOwn(draft, names)) {
                drafts.remove(draft.row.id());
            }
        }
        for (Draft<F> draft : drafts.values()) {
            hold(draft);
            if (draft.waitsFor == 0) {
                ready.add(draft);
            }
        }
        while (!ready.isEmpty()) {
            Draft<F> draft = ready.remove();
            finish(draft);
            for (Draft<F> next : waiting.getOrDefault(draft.row.id(), List.of())) {
                if (--next.waitsFor == 0) {
                    ready.add(next);
                }
            }
        }
        drafts.values().stream().filter(draft -> draft.waitsFor > 0).forEach(this::refuseCircle);
        reading.settled(type.kind(), taken, entries);
    }

    private void draft(Row row) {
        if (drafts.containsKey(row.id())) {
            problems.at(row.line(), Heading.ID, ProblemKind.DUPLICATE, row.id().toString());
            return;
        }
        F fact = fact(row, row.values());
        if (fact == null) {
            leaveOut(row, type.file());
            return;
        }
        if (row.standing() == Standing.IN_FORCE) {
            String name = sameness.uniqueName(fact);
            if (name != null && !sameness.claim(name)) {
                problems.at(row.line(), sameness.nameHeading(), ProblemKind.DUPLICATE, Limits.shown(name));
                leaveOut(row, type.file());
                return;
            }
        }
        drafts.put(row.id(), new Draft<>(row, fact));
    }

    private @Nullable F fact(Row row, @Nullable Object[] values) {
        try {
            return type.of(values);
        } catch (RuntimeException e) {
            // facts refuse what is impossible with IllegalArgumentException; none may get through as another exception
            problems.at(
                    row.line(),
                    null,
                    ProblemKind.REFUSED_BY_LOGBOOK,
                    type.name(),
                    row.label(),
                    String.valueOf(e.getMessage()));
            return null;
        }
    }

    /** The rows of the file, and those of the logbook that it does not replace. */
    private NameIndex names() {
        NameIndex names = new NameIndex();
        for (Draft<F> draft : drafts.values()) {
            names.add(
                    draft.row.id(),
                    WholeName.of(draft.fact, reading.soFar()),
                    draft.row.standing() == Standing.IN_FORCE,
                    true);
        }
        for (Entry<F> entry : reading.known().of(type.kind()).all()) {
            if (!drafts.containsKey(entry.id().value())) {
                names.add(entry.id().value(), WholeName.of(entry.fact(), reading.soFar()), entry.inForce(), false);
            }
        }
        return names;
    }

    private boolean findOwn(Draft<F> draft, NameIndex names) {
        Row row = draft.row;
        int before = problems.count();
        Set<String> causes = new LinkedHashSet<>();
        for (Map.Entry<Integer, String> own : row.own().entrySet()) {
            Component component = type.components().get(own.getKey());
            UUID id =
                    References.resolve(names, component, type.kind(), row.line(), own.getValue(), reading, causes::add);
            if (id != null) {
                draft.own.put(own.getKey(), id);
            }
        }
        if (draft.own.size() == row.own().size()) {
            return true;
        }
        boolean ownFault = problems.countedSince(before);
        String cause =
                ownFault || causes.isEmpty() ? type.file() : causes.iterator().next();
        if (!ownFault) {
            reading.leftOut().waits(type.file(), cause);
        }
        leaveOut(row, cause);
        return false;
    }

    private void leaveOut(Row row, String cause) {
        reading.leftOut().row(type.kind(), List.of(row.id().toString(), row.label()), cause);
    }

    private void hold(Draft<F> draft) {
        for (UUID id : draft.own.values()) {
            if (drafts.containsKey(id) && !isKnown(id)) {
                draft.waitsFor++;
                waiting.computeIfAbsent(id, i -> new ArrayList<>()).add(draft);
            }
        }
    }

    private boolean isKnown(UUID id) {
        return reading.known().of(type.kind()).find(new Id<>(id)).isPresent();
    }

    private void finish(Draft<F> draft) {
        Row row = draft.row;
        @Nullable Object[] values = row.values().clone();
        for (Map.Entry<Integer, UUID> own : draft.own.entrySet()) {
            UUID target = settledId(own.getValue());
            if (target == null) {
                // that row has its own problem already
                reading.leftOut().waits(type.file(), type.file());
                leaveOut(row, type.file());
                return;
            }
            values[own.getKey()] = new Id<F>(target);
        }
        F fact = fact(row, values);
        if (fact == null) {
            leaveOut(row, type.file());
            return;
        }
        Entry<F> wanted = new Entry<>(new Id<>(row.id()), fact, row.standing(), row.struckBecause(), 1);
        Entry<F> known = sameness.known(wanted, row.idGiven());
        if (!row.idGiven() && !sameness.firstOfItsKind(wanted)) {
            problems.at(row.line(), null, ProblemKind.DUPLICATE, row.label());
        } else if (known != null && sameness.same(known, wanted)) {
            reading.told().same();
            take(draft, known.id().value(), null);
        } else if (wanted.inForce() && fact instanceof Team team && sameness.nameTaken(fact)) {
            problems.at(row.line(), sameness.nameHeading(), ProblemKind.ANOTHER_TEAM, team.name(), teamHere());
        } else if (nameIsFree(wanted, row) || known != null) {
            long rev = known == null ? 1 : known.rev() + 1;
            take(draft, row.id(), new Entry<>(wanted.id(), fact, wanted.standing(), wanted.struckBecause(), rev));
        } else {
            leaveOut(row, type.file());
        }
    }

    private boolean nameIsFree(Entry<F> wanted, Row row) {
        boolean taken = wanted.inForce() && sameness.nameTaken(wanted.fact());
        if (taken) {
            problems.at(
                    row.line(),
                    sameness.nameHeading(),
                    ProblemKind.NAME_TAKEN,
                    type.name(),
                    Limits.shown(String.valueOf(wanted.fact().knownAs())));
        }
        return !taken;
    }

    private String teamHere() {
        return reading.known()
                .of(Team.class)
                .inForce()
                .findFirst()
                .map(team -> team.fact().name())
                .orElseThrow();
    }

    private @Nullable UUID settledId(UUID id) {
        Draft<F> draft = drafts.get(id);
        if (draft != null && draft.settled != null) {
            return draft.settled;
        }
        return isKnown(id) ? id : null;
    }

    private void take(Draft<F> draft, UUID id, @Nullable Entry<F> entry) {
        draft.settled = id;
        taken.add(id);
        if (entry != null) {
            entries.add(entry);
        }
    }

    private void refuseCircle(Draft<F> draft) {
        draft.row
                .own()
                .forEach((at, text) ->
                        References.unknown(type.components().get(at), type.kind(), draft.row.line(), text, problems));
    }
}
