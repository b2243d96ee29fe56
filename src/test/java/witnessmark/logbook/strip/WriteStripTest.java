package witnessmark.logbook.strip;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import witnessmark.domain.Build;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Finding;
import witnessmark.domain.FindingMark;
import witnessmark.domain.HowMarked;
import witnessmark.domain.Id;
import witnessmark.domain.Incident;
import witnessmark.domain.Part;
import witnessmark.domain.PartSpot;
import witnessmark.logbook.Desk;
import witnessmark.logbook.run.SampleBook;
import witnessmark.outcome.ProblemKind;
import witnessmark.study.result.StripLine;

/** Writing down what is found at the strips of the invented season, position by position. */
class WriteStripTest {
    private Desk desk;
    private WriteStrip strip;

    @BeforeEach
    void open() {
        desk = SampleBook.on(SampleBook.OPENING);
        strip = new WriteStrip(desk, SampleBook.ids());
    }

    private WriteStrip.Where at(String engine, int number, StripLine line, @Nullable Integer position) {
        Id<Build> build = desk.view()
                .facts()
                .of(Build.class)
                .inForce()
                .filter(each -> each.fact().number() == number
                        && desk.view()
                                .facts()
                                .of(Engine.class)
                                .get(each.fact().engine())
                                .number()
                                .equals(engine))
                .findFirst()
                .orElseThrow()
                .id();
        return new WriteStrip.Where(build, line, position);
    }

    private List<Entry<Finding>> found(WriteStrip.Where where) {
        return desk.view()
                .facts()
                .of(Finding.class)
                .where(each -> where.build().equals(each.build())
                        && StripLine.of(each) == where.line()
                        && java.util.Objects.equals(each.number(), where.number()));
    }

    @Test
    void a_look_that_found_nothing_is_written_and_judged_again_it_is_the_same_finding() {
        WriteStrip.Where pin = at("K05", 3, StripLine.BIG_END_LOWER, 2);
        strip.how(pin, null, HowMarked.NONE, "looked").orThrow();
        Entry<Finding> first = found(pin).get(0);
        assertThat(first.fact().mark()).isEqualTo(FindingMark.NO_MARK);

        strip.mark(pin, first.id(), new WriteStrip.Seen(FindingMark.SCORED, null), "scored")
                .orThrow();
        strip.how(pin, first.id(), HowMarked.CLEAR, "clear").orThrow();
        assertThat(found(pin)).singleElement().satisfies(now -> {
            assertThat(now.id()).isEqualTo(first.id());
            assertThat(now.fact().mark()).isEqualTo(FindingMark.SCORED);
            assertThat(now.fact().how()).isEqualTo(HowMarked.CLEAR);
        });
    }

    @Test
    void how_far_is_refused_where_nothing_is_marked() {
        WriteStrip.Where pin = at("K05", 3, StripLine.BIG_END_LOWER, 2);
        assertThat(strip.how(pin, null, HowMarked.CLEAR, "clear").problems())
                .extracting(problem -> problem.kind())
                .containsExactly(ProblemKind.NOT_MARKED);
        strip.how(pin, null, HowMarked.NONE, "looked").orThrow();
        assertThat(strip.how(pin, null, HowMarked.CLEAR, "clear").problems())
                .extracting(problem -> problem.kind())
                .containsExactly(ProblemKind.NOT_MARKED);
    }

    /** Which shells sat there until it was opened on 15 April: design 06, table 14.7. */
    @Test
    void the_part_is_that_which_sat_there_and_the_day_lies_while_the_engine_was_apart() {
        WriteStrip.Where shell = at("K05", 2, StripLine.BIG_END_UPPER, 1);
        strip.mark(shell, null, new WriteStrip.Seen(FindingMark.EVEN_WEAR, null), "even")
                .orThrow();
        Finding written = found(shell).get(0).fact();
        Build build = desk.view().facts().of(Build.class).get(shell.build());
        assertThat(desk.view().facts().of(Part.class).get(written.part()).mark())
                .isEqualTo("BE-05a");
        assertThat(written.spot()).isEqualTo("upper");
        assertThat(written.at().isBefore(build.opened())).isFalse();
        assertThat(written.at().isAfter(build.closed())).isFalse();
        assertThat(written.by()).isEqualTo(desk.who());
    }

    @Test
    void another_mark_stands_beside_the_first_and_words_keep_the_side() {
        WriteStrip.Where back = at("K05", 2, StripLine.SHELL_BACK_UPPER, 3);
        Entry<Finding> polished = found(back).get(0);
        strip.another(back, new WriteStrip.Seen(FindingMark.HEAT_COLOUR, null), "blue")
                .orThrow();
        assertThat(found(back)).hasSize(2);
        strip.told(polished.id(), "near the tang", "brown", "words").orThrow();
        strip.placed(back, polished.id(), new PartSpot(10, 90), "placed").orThrow();
        Finding now = found(back).get(0).fact();
        assertThat(now.spot()).isEqualTo("upper near the tang");
        assertThat(now.words()).isEqualTo("brown");
        assertThat(now.aroundDegrees()).isEqualTo(10);
        assertThat(now.outPercent()).isEqualTo(90);
    }

    @Test
    void a_mark_and_its_place_are_one_change_and_its_place_stays_when_the_mark_is_another() {
        WriteStrip.Where back = at("K05", 2, StripLine.SHELL_BACK_LOWER, 3);
        PartSpot there = new PartSpot(200, 40);
        strip.another(back, new WriteStrip.Seen(FindingMark.FRETTED, there), "fretted")
                .orThrow();
        Entry<Finding> fretted = found(back).get(0);
        assertThat(fretted.rev()).isEqualTo(1);
        assertThat(fretted.fact().onPart()).isEqualTo(there);
        strip.mark(back, fretted.id(), new WriteStrip.Seen(FindingMark.WORN, null), "polished")
                .orThrow();
        assertThat(found(back).get(0).fact().onPart()).isEqualTo(there);
    }

    @Test
    void a_place_of_a_mark_that_was_written_a_moment_ago_is_its_place_and_one_of_nothing_is_refused() {
        WriteStrip.Where back = at("K05", 2, StripLine.SHELL_BACK_LOWER, 3);
        assertThat(strip.placed(back, null, new PartSpot(1, 1), "placed").problems())
                .extracting(problem -> problem.kind())
                .containsExactly(ProblemKind.NOT_MARKED);
        strip.mark(back, null, new WriteStrip.Seen(FindingMark.FRETTED, null), "fretted")
                .orThrow();
        strip.placed(back, null, new PartSpot(1, 1), "placed").orThrow();
        assertThat(found(back).get(0).fact().onPart()).isEqualTo(new PartSpot(1, 1));
    }

    @Test
    void how_far_it_has_gone_stays_when_the_mark_is_another_and_goes_with_no_mark() {
        WriteStrip.Where pin = at("K05", 3, StripLine.BIG_END_LOWER, 2);
        strip.mark(pin, null, new WriteStrip.Seen(FindingMark.SCORED, null), "scored")
                .orThrow();
        assertThat(found(pin).get(0).fact().how()).isNull();
        strip.how(pin, null, HowMarked.HEAVY, "heavy").orThrow();
        strip.mark(pin, null, new WriteStrip.Seen(FindingMark.WORN, null), "worn")
                .orThrow();
        assertThat(found(pin).get(0).fact().how()).isEqualTo(HowMarked.HEAVY);
        strip.mark(pin, null, new WriteStrip.Seen(FindingMark.NO_MARK, null), "none")
                .orThrow();
        assertThat(found(pin).get(0).fact().how()).isEqualTo(HowMarked.NONE);
        strip.mark(pin, null, new WriteStrip.Seen(FindingMark.WORN, null), "worn")
                .orThrow();
        assertThat(found(pin).get(0).fact().how()).isNull();
    }

    @Test
    void it_becomes_evidence_of_an_incident_and_of_none() {
        WriteStrip.Where back = at("K05", 2, StripLine.SHELL_BACK_UPPER, 1);
        Id<Finding> finding = found(back).get(0).id();
        Id<Incident> incident = desk.view()
                .facts()
                .of(Incident.class)
                .named("INC-03")
                .orElseThrow()
                .id();
        strip.evidenceOf(finding, incident, "evidence").orThrow();
        assertThat(found(back).get(0).fact().incident()).isEqualTo(incident);
        strip.evidenceOf(finding, null, "none").orThrow();
        assertThat(found(back).get(0).fact().incident()).isNull();
    }

    @Test
    void what_was_taken_away_meanwhile_is_refused_whatever_is_said_of_it() {
        WriteStrip.Where back = at("K05", 2, StripLine.SHELL_BACK_UPPER, 1);
        Id<Finding> finding = found(back).get(0).id();
        strip.takeAway(back, finding, "not there", "away").orThrow();
        assertThat(found(back)).isEmpty();
        assertThat(List.of(
                        strip.mark(back, finding, new WriteStrip.Seen(FindingMark.WORN, null), "worn"),
                        strip.how(back, finding, HowMarked.NONE, "looked"),
                        strip.how(back, finding, HowMarked.HEAVY, "heavy"),
                        strip.told(finding, "", "words", "words"),
                        strip.placed(back, finding, new PartSpot(1, 1), "placed"),
                        strip.evidenceOf(finding, null, "none"),
                        strip.takeAway(back, finding, "again", "away")))
                .allSatisfy(outcome -> assertThat(outcome.problems())
                        .extracting(problem -> problem.kind())
                        .containsExactly(ProblemKind.FINDING_GONE));
        assertThat(found(back)).isEmpty();
    }
}
