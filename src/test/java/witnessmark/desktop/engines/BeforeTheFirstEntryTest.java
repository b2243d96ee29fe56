package witnessmark.desktop.engines;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import witnessmark.domain.Build;
import witnessmark.domain.EngineInCar;
import witnessmark.domain.Entry;
import witnessmark.domain.Fact;
import witnessmark.domain.Facts;
import witnessmark.domain.Fitment;
import witnessmark.domain.Id;
import witnessmark.domain.Part;
import witnessmark.domain.PriorLife;
import witnessmark.domain.Run;
import witnessmark.domain.ToldRunning;
import witnessmark.domain.Work;
import witnessmark.logbook.Desk;
import witnessmark.logbook.engines.EngineRow;
import witnessmark.logbook.engines.SeeEngine;
import witnessmark.logbook.engines.SeePart;
import witnessmark.wording.Measures;
import witnessmark.wording.Units;

/** What the page says of a day on which nothing was written of an engine or a part yet; first days by brute force. */
class BeforeTheFirstEntryTest {
    @TempDir
    private Path folder;

    private final Measures measures = new Measures(EnginesWindow.english(), Units.METRIC);
    private final EnginesModel model = new EnginesModel(EnginesWindow.english(), measures);
    private final PartModel parts = new PartModel(EnginesWindow.english(), measures);

    @Test
    void an_engine_shows_no_figure_before_its_first_entry_and_its_figures_from_that_day_on() {
        Desk desk = EnginesWindow.sample(folder);
        Facts facts = desk.view().facts();
        Map<Id<?>, LocalDate> first = new TreeMap<>((one, other) -> one.text().compareTo(other.text()));
        first(first, facts, Run.class, Run::engine);
        first(first, facts, ToldRunning.class, ToldRunning::engine);
        first(first, facts, Build.class, Build::engine);
        first(first, facts, EngineInCar.class, EngineInCar::engine);
        first(first, facts, Fitment.class, Fitment::engine);
        first(first, facts, PriorLife.class, PriorLife::engine);
        assertThat(first).hasSize(5);
        first.forEach((engine, day) -> {
            desk.lookAsOf(day.minusDays(1));
            EngineLine before = line(desk, engine);
            assertThat(Stream.of(before.running().text(), before.sinceRebuild().text()))
                    .containsOnly("not known");
            assertThat(before.worst()).isEqualTo("First entry " + measures.shortDate(day));
            SheetLines sheet = model.lines(
                    SeeEngine.of(desk.view(), Id.parse(engine.text())).orElseThrow());
            assertThat(sheet.worst()).endsWith("before the first entry, " + measures.date(day));
            assertThat(sheet.where()).isEqualTo("first entry " + measures.date(day));
            assertThat(sheet.lives())
                    .allSatisfy(life -> assertThat(life.whole().text()).isEqualTo("not known"));

            desk.lookAsOf(day);
            assertThat(line(desk, engine).worst()).doesNotContain("First entry");
        });
    }

    @Test
    void a_part_shows_no_figure_before_its_first_entry() {
        Desk desk = EnginesWindow.sample(folder);
        Facts facts = desk.view().facts();
        Map<Id<?>, LocalDate> first = new TreeMap<>((one, other) -> one.text().compareTo(other.text()));
        first(first, facts, Fitment.class, Fitment::part);
        first(first, facts, PriorLife.class, PriorLife::part);
        first(first, facts, Work.class, Work::part);
        facts.of(Part.class).where(part -> part.ofSet() != null).forEach(member -> first.remove(member.id()));
        assertThat(first).hasSizeGreaterThan(100);
        first.forEach((part, day) -> {
            desk.lookAsOf(day.minusDays(1));
            PartLines lines =
                    parts.lines(SeePart.of(desk.view(), Id.parse(part.text())).orElseThrow());
            assertThat(lines.where()).isEqualTo("first entry " + measures.date(day));
            assertThat(lines.lives()).allSatisfy(life -> {
                assertThat(life.whole().text()).isEqualTo("not known");
                assertThat(life.basis()).endsWith("before the first entry, " + measures.date(day));
            });
        });
    }

    /** Between its opening and its first closing no rebuild is written down: 12 to 28 January 2026, as the sample has it. */
    @Test
    void where_no_rebuild_is_written_down_that_is_said() {
        Desk desk = EnginesWindow.sample(folder);
        desk.lookAsOf(LocalDate.of(2026, 1, 20));
        EngineRow k03 = SeeEngine.all(desk.view()).engines().stream()
                .filter(row -> row.engine().fact().number().equals("K03"))
                .findFirst()
                .orElseThrow();
        assertThat(k03.rebuild()).isNull();
        assertThat(line(desk, k03.engine().id()).sinceRebuild().text()).isEqualTo("none written");
        SheetLines sheet =
                model.lines(SeeEngine.of(desk.view(), k03.engine().id()).orElseThrow());
        assertThat(sheet.sinceRebuild().text()).startsWith("whole life ").endsWith(", no rebuild written down");
    }

    private EngineLine line(Desk desk, Id<?> engine) {
        return model.lines(SeeEngine.all(desk.view())).engines().stream()
                .filter(row -> row.id().equals(engine.text()))
                .findFirst()
                .orElseThrow();
    }

    private static <F extends Fact> void first(
            Map<Id<?>, LocalDate> first, Facts facts, Class<F> kind, Function<F, Id<?>> of) {
        for (Entry<F> entry : facts.of(kind).all()) {
            Id<?> what = of.apply(entry.fact());
            if (what != null && entry.inForce()) {
                LocalDate day = entry.fact().happened().day();
                first.merge(what, day, (one, other) -> one.isBefore(other) ? one : other);
            }
        }
    }
}
