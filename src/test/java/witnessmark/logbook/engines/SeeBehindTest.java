package witnessmark.logbook.engines;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Part;
import witnessmark.domain.Run;
import witnessmark.domain.Standing;
import witnessmark.logbook.DecideSameRun;
import witnessmark.logbook.Desk;
import witnessmark.logbook.StrikeOut;
import witnessmark.quantity.Counter;
import witnessmark.sample.SampleBooks;

class SeeBehindTest {
    @TempDir
    private Path folder;

    private Desk desk;

    @BeforeEach
    void open() {
        desk = new SampleBooks(folder).open();
    }

    @Test
    void the_lines_that_count_add_up_to_the_figure_for_every_engine_part_and_counter() {
        for (Counter counter : Counter.fedByRuns()) {
            desk.view()
                    .facts()
                    .of(Engine.class)
                    .inForce()
                    .forEach(engine -> addsUp(new Figure.OfEngine(engine, counter, null)));
            desk.view()
                    .facts()
                    .of(Part.class)
                    .inForce()
                    .forEach(part -> addsUp(new Figure.OfPart(part, counter, null)));
        }
    }

    @Test
    void a_run_struck_out_stands_behind_the_figure_with_its_reason() {
        Behind behind = SeeBehind.of(desk.view(), k03());
        assertThat(behind.notCounted()).singleElement().satisfies(line -> {
            assertThat(line.why()).isEqualTo(Behind.Why.STRUCK_OUT);
            assertThat(line.source().struckBecause()).isEqualTo("the same run, logged twice");
            assertThat(line.same()).isNotNull();
        });
    }

    @Test
    void the_same_run_stands_behind_the_parts_that_were_in_the_engine_then_and_no_others() {
        assertThat(SeeBehind.of(desk.view(), part("VS-03")).notCounted()).hasSize(1);
        assertThat(SeeBehind.of(desk.view(), part("VS-06a")).notCounted()).isEmpty();
    }

    @Test
    void striking_a_run_out_takes_its_running_off_and_restoring_brings_it_back() {
        Behind before = SeeBehind.of(desk.view(), k03());
        Behind.Line last = before.lines().get(before.lines().size() - 1);
        new StrikeOut(desk)
                .strikeOut(last.source(), "wrong car", "Strike out a run")
                .orThrow();
        Behind struck = SeeBehind.of(desk.view(), k03());
        assertThat(struck.life().total()).isEqualTo(before.life().total() - last.amount());
        assertThat(struck.notCounted()).hasSize(2);
        Entry<Run> run = desk.view().facts().of(Run.class).find(id(last)).orElseThrow();
        new StrikeOut(desk).restore(run, "Restore a run").orThrow();
        assertThat(SeeBehind.of(desk.view(), k03()).life()).isEqualTo(before.life());
        desk.undo().orThrow();
        assertThat(SeeBehind.of(desk.view(), k03()).life()).isEqualTo(struck.life());
    }

    @Test
    void a_run_perhaps_logged_twice_counts_once_somebody_says_it_is_another() {
        Behind.Line twice = SeeBehind.of(desk.view(), k03()).notCounted().get(0);
        Entry<Run> run = desk.view().facts().of(Run.class).find(id(twice)).orElseThrow();
        long before = SeeBehind.of(desk.view(), k03()).life().total();
        new DecideSameRun(desk).another(run, "it was run after all");
        assertThat(SeeBehind.of(desk.view(), k03()).life().total())
                .isIn(before, before + run.fact().running().millis());
    }

    @Test
    void the_history_of_an_entry_says_who_changed_what_and_why() {
        Behind.Line line = SeeBehind.of(desk.view(), k03()).lines().get(0);
        new StrikeOut(desk)
                .strikeOut(line.source(), "wrong car", "Strike out a run")
                .orThrow();
        List<Amended> history = SeeHistory.of(desk.logbook(), line.source());
        assertThat(history).hasSize(2);
        assertThat(history.get(1).makes()).isTrue();
        assertThat(history.get(0).who()).isEqualTo("Team engineer");
        assertThat(history.get(0).why()).isEqualTo("Strike out a run");
        assertThat(history.get(0).fields())
                .contains(
                        new Amended.Field("standing", Standing.IN_FORCE, Standing.STRUCK_OUT),
                        new Amended.Field("struck_because", null, "wrong car"));
    }

    private void addsUp(Figure figure) {
        Behind behind = SeeBehind.of(desk.view(), figure);
        long sum = behind.lines().stream().mapToLong(Behind.Line::amount).sum();
        assertThat(sum)
                .as(figure.name() + " " + figure.counter())
                .isEqualTo(behind.life().total());
        assertThat(behind.notCounted())
                .allSatisfy(line -> assertThat(line.amount()).isZero());
    }

    @SuppressWarnings("unchecked") // the line is a run's
    private witnessmark.domain.Id<Run> id(Behind.Line line) {
        return (witnessmark.domain.Id<Run>) line.source().id();
    }

    private Figure k03() {
        return new Figure.OfEngine(
                desk.view().facts().of(Engine.class).named("K03").orElseThrow(), Counter.RUNNING, null);
    }

    private Figure part(String mark) {
        return new Figure.OfPart(desk.view().facts().of(Part.class).named(mark).orElseThrow(), Counter.RUNNING, null);
    }
}
