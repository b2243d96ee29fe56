package witnessmark.command;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToIntFunction;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Build;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.logbook.View;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;

/**
 * An engine and one of its builds as a command names them.
 *
 * @param engine the engine's number
 * @param number which build, or null for the one that the command takes then
 */
record NamedBuild(String engine, @Nullable Integer number) {
    /**
     * Works on what is seen of that build; says so where there is no such engine or build.
     *
     * @param seen what is seen of it, of the engine in hand; empty where it has no such build
     * @return the exit code
     */
    <P> int with(Answer answer, View view, Function<Id<Engine>, Optional<P>> seen, ToIntFunction<P> work) {
        Tools tools = answer.tools();
        Outcome<Entry<Engine>> found = answer.named(view, Engine.class, engine);
        if (!found.didWork()) {
            return answer.didNot(found.problems());
        }
        Optional<P> page = seen.apply(found.orThrow().id());
        if (page.isEmpty()) {
            String build = number == null ? engine : engine + "/" + number;
            return answer.didNot(
                    List.of(Problem.of(ProblemKind.NOT_FOUND, tools.words().one(Build.class), build)));
        }
        return work.applyAsInt(page.get());
    }
}
