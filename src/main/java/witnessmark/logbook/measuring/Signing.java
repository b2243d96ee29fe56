package witnessmark.logbook.measuring;

import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Build;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Lesson;
import witnessmark.domain.SignOff;
import witnessmark.logbook.View;
import witnessmark.quantity.Moment;

/**
 * A build that was signed, by its sheet or as it was closed.
 *
 * @param at when
 */
public record Signing(Entry<Build> build, Moment at) {
    /**
     * The last one on which a lesson would be asked, as if it had stood by then.
     *
     * @param was the lesson as it is written; what that is asked on already stays. Null for a new one
     */
    public static Optional<Signing> before(View view, Lesson lesson, @Nullable Lesson was) {
        LessonsOfSheet lessons = new LessonsOfSheet(view);
        return all(view.facts())
                .filter(each -> lessons.concerns(lesson, each.build, each.at)
                        && (was == null || !lessons.concerns(was, each.build, each.at)))
                .max(Comparator.comparing(Signing::at));
    }

    private static Stream<Signing> all(Facts facts) {
        Stream<Signing> sheets = facts.of(SignOff.class)
                .inForce()
                .flatMap(signed -> facts
                        .of(Build.class)
                        .find(signed.fact().build())
                        .filter(Entry::inForce)
                        .map(build -> new Signing(build, signed.fact().at()))
                        .stream());
        Stream<Signing> closed = facts.of(Build.class).inForce().flatMap(build -> {
            Moment at = build.fact().closed();
            return at == null || build.fact().signedBy().isBlank() ? Stream.empty() : Stream.of(new Signing(build, at));
        });
        return Stream.concat(sheets, closed);
    }
}
