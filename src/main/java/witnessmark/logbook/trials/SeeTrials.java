package witnessmark.logbook.trials;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.domain.Part;
import witnessmark.domain.PartDesign;
import witnessmark.domain.Trial;
import witnessmark.logbook.View;
import witnessmark.study.result.TrialAnswer;
import witnessmark.study.trials.Trials;

/** Sees how trials of part designs stand, as of the day looked at. Reads only. */
public final class SeeTrials {
    private SeeTrials() {}

    /** Every one that has begun, those that go on first. */
    public static List<TrialAnswer> all(View view) {
        return new Trials(view.ledger()).all();
    }

    /** One; empty when it is not in force. */
    public static Optional<TrialAnswer> of(View view, Id<Trial> trial) {
        return view.facts().of(Trial.class).find(trial).filter(Entry::inForce).map(new Trials(view.ledger())::of);
    }

    /** The designs that stand in a trial that has begun: tried, or what is named as usual. */
    public static Set<Id<PartDesign>> designs(View view) {
        return view.facts().of(Trial.class).where(trial -> !trial.from().isAfter(view.day())).stream()
                .map(Entry::fact)
                .flatMap(trial ->
                        trial.usual() == null ? Stream.of(trial.tried()) : Stream.of(trial.tried(), trial.usual()))
                .collect(Collectors.toSet());
    }

    /** The trial a part is looked at in: of its design what goes on first, then the latest; empty when it is in none. Quick. */
    public static Optional<Id<Trial>> ofPart(View view, Id<Part> part) {
        return allOfPart(view, part).stream().findFirst().map(Entry::id);
    }

    /** Every trial that names the design of a part, in that order; a trial against every other of its kind names one. Quick. */
    public static List<Entry<Trial>> allOfPart(View view, Id<Part> part) {
        return view.facts().of(Part.class).find(part).map(found -> found.fact().design()).stream()
                .flatMap(design -> new Trials(view.ledger())
                        .begun().stream()
                                .filter(trial -> trial.fact().tried().equals(design)
                                        || design.equals(trial.fact().usual())))
                .toList();
    }
}
