package witnessmark.sample;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import witnessmark.domain.Entry;
import witnessmark.domain.Fact;
import witnessmark.domain.Run;
import witnessmark.domain.RunKind;
import witnessmark.ledger.result.Account;
import witnessmark.ledger.result.Life;
import witnessmark.logbook.Desk;
import witnessmark.logbook.SeeLives;
import witnessmark.logbook.Subject;
import witnessmark.logbook.View;
import witnessmark.quantity.Counter;
import witnessmark.quantity.RunningTime;

/**
 * The sample season against its printed tables, which were worked out apart from this program. Rounding is half up, as
 * printed.
 */
class SampleTablesTest {
    @TempDir
    Path folder;

    @Test
    void lives_on_the_evening_of_8_july_are_those_printed() {
        try (var book = opened().logbook()) {
            Desk desk = new Desk(book, todayOf(), "test");
            List<String> found = new ArrayList<>();
            List<String> printed = new ArrayList<>();
            for (String[] row : SampleBooks.table("cut-lives.csv")) {
                printed.add(row[1] + " " + row[2]);
                found.add(row[1] + " "
                        + hours(life(desk.view(), row[1], Counter.RUNNING).total()));
            }
            assertThat(found).hasSizeGreaterThan(20).isEqualTo(printed);
        }
    }

    @Test
    void engine_totals_over_the_season_are_those_printed() {
        SampleBooks books = new SampleBooks(folder);
        Desk desk = books.open();
        books.tellAll(desk);
        View view = desk.view();
        List<String> found = new ArrayList<>();
        List<String> printed = new ArrayList<>();
        for (String[] row : SampleBooks.table("engine-totals.csv")) {
            printed.add(String.join(" ", row));
            found.add(String.join(
                    " ",
                    row[0],
                    hours(life(view, row[0], Counter.RUNNING).total()),
                    hours(onTrack(view, row[0], Counter.LOADED)),
                    hours(onDyno(view, row[0], Counter.RUNNING)),
                    whole(life(view, row[0], Counter.LAPS).total(), 1),
                    whole(life(view, row[0], Counter.DISTANCE).total(), 1000),
                    whole(life(view, row[0], Counter.RACE_STARTS).total(), 1),
                    whole(life(view, row[0], Counter.HEAT_CYCLES).total(), 1),
                    whole(onTrack(view, row[0], Counter.HIGH_SPEED), 60_000),
                    whole(life(view, row[0], Counter.PULLS).total(), 1),
                    whole(life(view, row[0], Counter.OVER_REVS).total(), 1)));
        }
        desk.logbook().close();
        assertThat(found).hasSize(3).isEqualTo(printed);
    }

    @Test
    void part_lives_over_the_season_are_those_printed() {
        SampleBooks books = new SampleBooks(folder);
        Desk desk = books.open();
        books.tellAll(desk);
        View view = desk.view();
        List<String> found = new ArrayList<>();
        List<String> printed = new ArrayList<>();
        for (String[] row : SampleBooks.table("part-lives.csv")) {
            printed.add(String.join(" ", row));
            long end = life(view, row[0], Counter.RUNNING).total();
            long season = account(view, row[0]).charges().stream()
                    .filter(charge -> charge.source().fact() instanceof Run)
                    .mapToLong(charge -> charge.amount())
                    .sum();
            found.add(String.join(" ", row[0], hours(end - season), hours(season), hours(end)));
        }
        desk.logbook().close();
        assertThat(found).hasSize(23).isEqualTo(printed);
    }

    @Test
    void a_chapter_told_is_taken_back_whole_by_undo() {
        SampleBooks books = new SampleBooks(folder);
        Desk desk = books.open();
        long before = life(desk.view(), "K03", Counter.RUNNING).total();
        books.season()
                .walkOn(desk, books.season().nextChapter(SampleBooks.FOLDER).orElseThrow(), "Round 6")
                .orThrow();
        long after = life(desk.view(), "K03", Counter.RUNNING).total();
        desk.undo().orThrow();
        long undone = life(desk.view(), "K03", Counter.RUNNING).total();
        List<?> found = desk.logbook().verify();
        desk.logbook().close();
        assertThat(after).isGreaterThan(before);
        assertThat(undone).isEqualTo(before);
        assertThat(found).isEmpty();
    }

    private Desk opened() {
        return new SampleBooks(folder).open();
    }

    private static witnessmark.logbook.port.Today todayOf() {
        return new FixedToday(java.time.LocalDate.of(2026, 7, 8));
    }

    private static Life life(View view, String name, Counter counter) {
        return SeeLives.of(view, Subject.named(view.facts(), name).orElseThrow(), counter);
    }

    private static Account account(View view, String name) {
        return SeeLives.account(view, Subject.named(view.facts(), name).orElseThrow(), Counter.RUNNING);
    }

    private static long onTrack(View view, String engine, Counter counter) {
        return sum(view, engine, counter, false);
    }

    private static long onDyno(View view, String engine, Counter counter) {
        return sum(view, engine, counter, true);
    }

    private static long sum(View view, String engine, Counter counter, boolean dyno) {
        return SeeLives.account(view, Subject.named(view.facts(), engine).orElseThrow(), counter).charges().stream()
                .filter(charge -> isDyno(charge.source()) == dyno)
                .mapToLong(charge -> charge.amount())
                .sum();
    }

    private static boolean isDyno(Entry<? extends Fact> entry) {
        return entry.fact() instanceof Run run && run.kind() == RunKind.DYNO;
    }

    private static String hours(long millis) {
        return new RunningTime(millis).hours(2).toPlainString();
    }

    private static String whole(long amount, long per) {
        return BigDecimal.valueOf(amount)
                .divide(BigDecimal.valueOf(per), 0, RoundingMode.HALF_UP)
                .toPlainString();
    }
}
