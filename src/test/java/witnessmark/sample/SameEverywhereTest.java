package witnessmark.sample;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Fact;
import witnessmark.domain.Fitment;
import witnessmark.domain.Hold;
import witnessmark.domain.Id;
import witnessmark.domain.Part;
import witnessmark.domain.Reading;
import witnessmark.domain.Run;
import witnessmark.domain.Work;
import witnessmark.ledger.AsOf;
import witnessmark.ledger.LifeLedger;
import witnessmark.ledger.result.MarkState;
import witnessmark.logbook.Desk;
import witnessmark.logbook.View;
import witnessmark.logbook.engines.EngineSheet;
import witnessmark.logbook.engines.FittedPart;
import witnessmark.logbook.engines.SeeEngine;
import witnessmark.logbook.engines.SeePart;
import witnessmark.logbook.standing.MarkOn;
import witnessmark.logbook.standing.SeeStanding;
import witnessmark.logbook.standing.Standing;

/** Every place says the same of the same part on the same day: each day of the sample's year on which anything happened. */
class SameEverywhereTest {
    @TempDir
    private static Path folder;

    private static Desk desk;

    @BeforeAll
    static void tellTheSeason() {
        SampleBooks books = new SampleBooks(folder);
        desk = books.open();
        books.tellAll(desk);
    }

    @AfterAll
    static void close() {
        desk.logbook().close();
    }

    @Test
    void engines_and_parts_stand_on_their_own_pages_as_they_do_before_the_team_goes() {
        SortedSet<LocalDate> days = days();
        assertThat(days).hasSizeGreaterThan(60);
        boolean held = false;
        for (LocalDate day : days) {
            View view = on(day);
            List<MarkOn> marks = marks(SeeStanding.of(view));
            Map<Id<Part>, MarkState> parts = new HashMap<>();
            for (MarkOn on : marks) {
                if (on.mark().part() != null) {
                    parts.putIfAbsent(on.mark().part(), on.state());
                }
            }
            held |= parts.containsValue(MarkState.HELD);
            for (Entry<Engine> engine : view.facts().of(Engine.class).inForce().toList()) {
                EngineSheet sheet = SeeEngine.of(view, engine.id()).orElseThrow();
                String where = engine.fact().number() + " on " + day;
                assertThat(state(sheet.row().worst()))
                        .as(where)
                        .isEqualTo(marks.stream()
                                .filter(on -> engine.id().equals(on.mark().engine()))
                                .map(MarkOn::state)
                                .findFirst()
                                .orElse(null));
                for (FittedPart fitted : sheet.build()) {
                    if (fitted.part() != null) {
                        MarkState expected = parts.get(fitted.part().id());
                        String what = fitted.part().fact().mark() + " in " + where;
                        assertThat(state(fitted.worst())).as(what).isEqualTo(expected);
                        assertThat(state(SeePart.of(view, fitted.part().id())
                                        .orElseThrow()
                                        .worst()))
                                .as(what)
                                .isEqualTo(expected);
                    }
                }
            }
        }
        assertThat(held).as("the season holds parts").isTrue();
    }

    private static @Nullable MarkState state(@Nullable MarkOn on) {
        return on == null ? null : on.state();
    }

    private static List<MarkOn> marks(Standing standing) {
        return Stream.concat(standing.going().stream(), standing.elsewhere().stream())
                .toList();
    }

    private static View on(LocalDate day) {
        View view = desk.view();
        return new View(view.facts(), day, view.zone(), LifeLedger.of(view.facts(), new AsOf(day, view.zone())), true);
    }

    private static SortedSet<LocalDate> days() {
        SortedSet<LocalDate> days = new TreeSet<>();
        for (Class<? extends Fact> kind : List.of(Run.class, Fitment.class, Work.class, Reading.class, Hold.class)) {
            desk.view()
                    .facts()
                    .of(kind)
                    .inForce()
                    .map(entry -> entry.fact().happened().day())
                    .filter(day -> day.getYear() == 2026)
                    .forEach(days::add);
        }
        return days;
    }
}
