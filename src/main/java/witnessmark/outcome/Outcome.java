package witnessmark.outcome;

import java.util.List;
import java.util.function.Function;

/** The end of a use case. */
public sealed interface Outcome<T> {
    /** It worked wholly. */
    record Worked<T>(T value) implements Outcome<T> {}

    /** It worked except for what the problems name. */
    record WorkedExcept<T>(T value, List<Problem> problems) implements Outcome<T> {
        public WorkedExcept {
            problems = List.copyOf(problems);
        }
    }

    /** It did not work and nothing was changed. */
    record DidNot<T>(List<Problem> problems) implements Outcome<T> {
        public DidNot {
            if (problems.isEmpty()) {
                throw new IllegalArgumentException("what did not work needs a reason");
            }
            problems = List.copyOf(problems);
        }
    }

    /** Worked; worked-except where there is something to be known of it. */
    static <T> Outcome<T> of(T value, List<Problem> known) {
        return known.isEmpty() ? worked(value) : new WorkedExcept<>(value, known);
    }

    static <T> Outcome<T> worked(T value) {
        return new Worked<>(value);
    }

    static <T> Outcome<T> didNot(Problem... problems) {
        return new DidNot<>(List.of(problems));
    }

    static <T> Outcome<T> didNot(List<Problem> problems) {
        return new DidNot<>(problems);
    }

    /** Calls the one function that fits. */
    default <R> R fold(Function<? super T, ? extends R> worked, Function<List<Problem>, ? extends R> didNot) {
        if (this instanceof Worked<T> w) {
            return worked.apply(w.value());
        }
        if (this instanceof WorkedExcept<T> w) {
            return worked.apply(w.value());
        }
        return didNot.apply(problems());
    }

    /** The problems met: none when it worked wholly. */
    default List<Problem> problems() {
        if (this instanceof DidNot<T> d) {
            return d.problems();
        }
        return this instanceof WorkedExcept<T> w ? w.problems() : List.of();
    }

    default boolean didWork() {
        return !(this instanceof DidNot);
    }

    /**
     * The value of something that worked.
     *
     * @throws IllegalStateException if it did not; the problems are in the message
     */
    default T orThrow() {
        return fold(Function.identity(), problems -> {
            throw new IllegalStateException("did not work: " + problems);
        });
    }

    /** The same end with another value. */
    default <R> Outcome<R> map(Function<? super T, ? extends R> change) {
        if (this instanceof WorkedExcept<T> w) {
            return new WorkedExcept<>(change.apply(w.value()), w.problems());
        }
        return this instanceof Worked<T> w ? worked(change.apply(w.value())) : didNot(problems());
    }

    /** Goes on with the next step when this one worked; problems of both are kept. */
    default <R> Outcome<R> then(Function<? super T, Outcome<R>> next) {
        if (this instanceof WorkedExcept<T> w) {
            Outcome<R> after = next.apply(w.value());
            List<Problem> both = new java.util.ArrayList<>(w.problems());
            both.addAll(after.problems());
            return after.didWork() ? new WorkedExcept<>(after.orThrow(), both) : didNot(both);
        }
        return this instanceof Worked<T> w ? next.apply(w.value()) : didNot(problems());
    }
}
