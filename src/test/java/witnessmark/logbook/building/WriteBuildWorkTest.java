package witnessmark.logbook.building;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import witnessmark.domain.Build;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Fact;
import witnessmark.domain.Fitment;
import witnessmark.domain.Id;
import witnessmark.domain.Joint;
import witnessmark.domain.Lesson;
import witnessmark.domain.LessonAnswer;
import witnessmark.domain.Part;
import witnessmark.domain.Position;
import witnessmark.domain.Quarantine;
import witnessmark.domain.SignOff;
import witnessmark.domain.Standing;
import witnessmark.domain.StockMove;
import witnessmark.domain.Zone;
import witnessmark.ledger.result.BuildGap;
import witnessmark.ledger.result.BuildPosition;
import witnessmark.ledger.result.FreePart;
import witnessmark.ledger.result.ProposedPart;
import witnessmark.logbook.Desk;
import witnessmark.logbook.building.BuildField.Name;
import witnessmark.logbook.run.SampleBook;
import witnessmark.logbook.sheets.SheetUnits;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Moment;
import witnessmark.quantity.typed.DayOrder;
import witnessmark.sample.SampleBooks;

/** The engine in pieces of the sample, K05, written from the page of its build; and one that is opened there. */
class WriteBuildWorkTest {
    @TempDir
    private Path folder;

    private Desk desk;
    private WriteBuildWork work;
    private final Map<BuildField, String> typed = new HashMap<>();

    @BeforeEach
    void open() {
        desk = new SampleBooks(folder).open();
        work = new WriteBuildWork(desk, SampleBooks.ids(), SheetUnits.metric(DayOrder.DAY_FIRST));
        type(Name.WHEN, "2026-07-08");
    }

    @AfterEach
    void close() {
        desk.logbook().close();
    }

    private void type(Name name, String text) {
        typed.put(BuildField.of(name), text);
    }

    private void type(Id<Position> position, Name name, String text) {
        typed.put(BuildField.of(position, name), text);
    }

    private void joint(int number, Name name, String text) {
        typed.put(BuildField.ofJoint(number, name), text);
    }

    private Entry<Engine> engine(String number) {
        return desk.view().facts().of(Engine.class).named(number).orElseThrow();
    }

    private BuildPage page(String engine) {
        return SeeBuild.find(desk.view(), engine(engine).id(), null)
                .flatMap(build -> SeeBuild.of(desk.view(), build.id()))
                .orElseThrow();
    }

    private static Id<Position> position(BuildPage page, String name) {
        return page.positions().stream()
                .map(BuildPosition::position)
                .filter(position -> position.fact().name().equals(name))
                .findFirst()
                .orElseThrow()
                .id();
    }

    private BuildDraft draft(String engine, boolean fresh) {
        return new BuildDraft(
                engine(engine).id(), fresh ? null : page(engine).build().id(), typed);
    }

    private String free(BuildPage page, String position, String mark) {
        return page.free(position(page, position)).stream()
                .filter(each -> each.part() != null && each.part().fact().mark().equals(mark))
                .map(BuildDraft::part)
                .findFirst()
                .orElseThrow();
    }

    private static List<ProblemKind> kinds(WriteBuildWork.Reading reading) {
        return reading.stopping().stream().map(each -> each.problem().kind()).toList();
    }

    private int count(Class<? extends Fact> kind) {
        return (int) desk.view().facts().of(kind).inForce().count();
    }

    private void answerLessons(Id<Build> build) {
        Moment now = Moment.of(desk.day().atTime(8, 0), desk.view().zone());
        List<Entry<?>> answers = new ArrayList<>();
        for (Entry<Lesson> lesson : desk.view().facts().of(Lesson.class).all()) {
            LessonAnswer met = new LessonAnswer(lesson.id(), build, now, true, null, "hot, on the dyno", "Crew chief");
            answers.add(new Entry<>(SampleBook.ids().next(), met, Standing.IN_FORCE, null, 1));
        }
        desk.write("lessons answered", answers).orThrow();
    }

    @Test
    void fitted_tightened_closed_and_signed_is_one_change_that_one_undo_takes_back() {
        BuildPage before = page("K05");
        type(position(before, "timing chain"), Name.IN, free(before, "timing chain", "TC-S1"));
        type(position(before, "clutch"), Name.IN, free(before, "clutch", "CL-S1"));
        joint(1, Name.FASTENERS, "head studs");
        joint(1, Name.WHICH, "all ten, from the middle out");
        joint(1, Name.METHOD, "torque");
        joint(1, Name.VALUE, "95 N·m");
        joint(1, Name.LUBRICANT, "moly paste");
        joint(1, Name.TIGHTENED_BY, "Crew chief");
        joint(1, Name.LOOKED_ON, "Team engineer");
        type(Name.CLOSED, "2026-07-08");
        type(Name.SIGNED, "Crew chief");
        type(Name.SECOND, "Team engineer");
        assertThat(kinds(work.read(draft("K05", false))))
                .as("what INC-04 taught is not answered yet")
                .containsExactly(ProblemKind.LESSONS_OPEN);
        answerLessons(before.build().id());
        WriteBuildWork.Reading reading = work.read(draft("K05", false));
        assertThat(kinds(reading)).isEmpty();
        int fitments = count(Fitment.class);
        int joints = count(Joint.class);
        long revision = desk.view().facts().revision();
        assertThat(work.save(reading, "build 3 of K05").didWork()).isTrue();
        assertThat(desk.view().facts().revision()).isEqualTo(revision + 1);
        assertThat(count(Fitment.class)).isEqualTo(fitments + 2);
        assertThat(count(Joint.class)).isEqualTo(joints + 1);
        Build closed = desk.view().facts().of(Build.class).get(before.build().id());
        assertThat(closed.closed()).isNotNull();
        assertThat(desk.view()
                        .facts()
                        .of(SignOff.class)
                        .where(signed -> signed.build().equals(before.build().id())))
                .hasSize(1);
        assertThat(desk.view()
                        .facts()
                        .of(Fitment.class)
                        .where(each -> before.build().id().equals(each.buildIn())
                                && each.from().day().equals(desk.today().day())))
                .hasSize(2);
        assertThat(desk.undo().didWork()).isTrue();
        assertThat(count(Fitment.class)).isEqualTo(fitments);
        assertThat(count(Joint.class)).isEqualTo(joints);
        assertThat(desk.view()
                        .facts()
                        .of(SignOff.class)
                        .where(signed -> signed.build().equals(before.build().id())))
                .isEmpty();
        assertThat(page("K05").open()).isTrue();
    }

    @Test
    void the_page_stands_as_it_will_once_it_is_written() {
        BuildPage before = page("K05");
        Id<Position> chain = position(before, "timing chain");
        type(chain, Name.IN, free(before, "timing chain", "TC-S1"));
        BuildPage then = work.read(draft("K05", false)).page();
        assertThat(then.position(chain).orElseThrow().fresh()).isTrue();
        assertThat(then.gaps()).hasSize(before.gaps().size() - 1);
        assertThat(page("K05").gaps()).hasSameSizeAs(before.gaps());
    }

    @Test
    void an_engine_is_opened_stripped_and_the_parts_go_where_they_belong_in_one_change() {
        type(Name.ZONES, "head,covers");
        type(Name.OPENED, "2026-07-08");
        WriteBuildWork.Reading opened = work.read(draft("K03", true));
        assertThat(kinds(opened)).isEmpty();
        BuildPage page = opened.page();
        assertThat(page.build().fact().zones()).containsExactly(Zone.COVERS, Zone.HEAD);
        assertThat(page.positions()).allSatisfy(each -> assertThat(each.zone()).isIn(Zone.COVERS, Zone.HEAD));
        out(page, "valve springs", Goes.QUARANTINE, "one weak");
        out(page, "head", Goes.AWAY, "to be skimmed");
        type(position(page, "head"), Name.SENT_TO, "Machinist");
        type(position(page, "head"), Name.ASKED, "skim 0.10");
        out(page, "head gasket", Goes.SCRAP, "fitted once");
        out(page, "cam followers", Goes.SHELF, "looked at");
        int quarantined = count(Quarantine.class);
        WriteBuildWork.Reading reading = work.read(draft("K03", true));
        assertThat(reading.stopping()).isEmpty();
        work.save(reading, "build of K03").orThrow();
        BuildPage written = page("K03");
        assertThat(written.open()).isTrue();
        assertThat(count(Quarantine.class)).isEqualTo(quarantined + 1);
        assertThat(written.positions().stream().filter(each -> !each.out().isEmpty()))
                .hasSize(4)
                .allSatisfy(each -> {
                    assertThat(each.in()).isNull();
                    assertThat(each.out().get(0).fact().buildOut())
                            .isEqualTo(written.build().id());
                });
        assertThat(written.free(position(written, "cam followers")))
                .anySatisfy(each -> assertThat(each.part()).isNotNull());
        assertThat(written.free(position(written, "valve springs")))
                .noneSatisfy(each -> assertThat(each.part())
                        .extracting(Entry::id)
                        .isEqualTo(written.position(position(written, "valve springs"))
                                .orElseThrow()
                                .out()
                                .get(0)
                                .fact()
                                .part()));
        desk.undo().orThrow();
        assertThat(page("K03").build().fact().number())
                .isEqualTo(page.build().fact().number() - 1);
    }

    private void out(BuildPage page, String position, Goes goes, String why) {
        type(position(page, position), Name.OUT, goes.code());
        type(position(page, position), Name.WHY, why);
    }

    @Test
    void what_is_missing_is_said_beside_its_field_and_nothing_is_written() {
        BuildPage before = page("K05");
        Id<Position> block = position(before, "block");
        type(block, Name.OUT, Goes.SHELF.code());
        joint(1, Name.FASTENERS, "head studs");
        joint(1, Name.VALUE, "95 N·m");
        joint(1, Name.LOOKED_ON, "Ada");
        joint(1, Name.TIGHTENED_BY, "Ada");
        WriteBuildWork.Reading reading = work.read(draft("K05", false));
        assertThat(reading.stopping())
                .extracting(each -> each.field() + " " + each.problem().kind())
                .contains(
                        BuildField.of(block, Name.WHY) + " " + ProblemKind.NEEDED,
                        BuildField.ofJoint(1, Name.LOOKED_ON) + " " + ProblemKind.SAYS_OTHERWISE);
        long revision = desk.view().facts().revision();
        assertThat(work.save(reading, "build 3 of K05").didWork()).isFalse();
        assertThat(desk.view().facts().revision()).isEqualTo(revision);
    }

    @Test
    void a_part_cannot_go_into_two_positions_nor_work_come_before_the_opening_or_after_the_closing() {
        BuildPage before = page("K05");
        type(position(before, "timing chain"), Name.IN, free(before, "timing chain", "TC-S1"));
        type(Name.WHEN, "2026-06-01");
        assertThat(kinds(work.read(draft("K05", false)))).contains(ProblemKind.EARLIER_THAN);
        type(Name.WHEN, "2026-07-08");
        type(Name.CLOSED, "2026-07-01");
        assertThat(work.read(draft("K05", false)).stopping())
                .extracting(WriteBuildWork.Found::field)
                .contains(BuildField.of(Name.CLOSED));
        type(Name.CLOSED, "");
        type(position(before, "water pump"), Name.IN, free(before, "timing chain", "TC-S1"));
        assertThat(kinds(work.read(draft("K05", false)))).contains(ProblemKind.PART_IN_TWO_PLACES);
    }

    @Test
    void going_deeper_opens_more_positions_and_takes_no_zone_away() {
        type(Name.ZONES, "head");
        type(Name.OPENED, "2026-07-08");
        work.save(work.read(draft("K03", true)), "opened").orThrow();
        typed.clear();
        type(Name.WHEN, "2026-07-08");
        int had = page("K03").positions().size();
        type(Name.ZONES, "bottom end");
        WriteBuildWork.Reading deeper = work.read(draft("K03", false));
        assertThat(deeper.page().positions().size()).isGreaterThan(had);
        work.save(deeper, "deeper").orThrow();
        assertThat(page("K03").build().fact().zones()).containsExactly(Zone.HEAD, Zone.BOTTOM_END);
    }

    @Test
    void closing_with_things_open_is_written_all_the_same_since_it_is_a_fact() {
        type(Name.CLOSED, "2026-07-08");
        WriteBuildWork.Reading reading = work.read(draft("K05", false));
        assertThat(reading.page().gaps()).extracting(BuildGap::kind).contains(BuildGap.Kind.EMPTY);
        assertThat(work.save(reading, "closed").didWork()).isTrue();
        assertThat(page("K05").open()).isFalse();
    }

    @Test
    void the_parts_list_of_the_build_before_is_a_proposal_of_the_same_makes() {
        BuildPage page = page("K05");
        List<Entry<Build>> earlier =
                SeeBuild.earlier(desk.view(), page.engine().id(), page.build().id());
        assertThat(earlier.get(0).fact().number()).isEqualTo(2);
        List<Entry<Position>> empty = page.positions().stream()
                .filter(BuildPosition::empty)
                .map(BuildPosition::position)
                .toList();
        List<ProposedPart> copied =
                SeeBuild.copy(desk.view(), earlier.get(0).id(), page.build().fact(), empty, Set.of());
        for (ProposedPart each : copied) {
            FreePart part = each.part();
            if (part != null) {
                type(each.position().id(), Name.IN, BuildDraft.part(part));
            }
        }
        WriteBuildWork.Reading reading = work.read(draft("K05", false));
        int joints = count(Joint.class);
        int moves = count(StockMove.class);
        work.save(reading, "copied").orThrow();
        assertThat(count(Joint.class)).isEqualTo(joints);
        assertThat(count(StockMove.class)).isGreaterThanOrEqualTo(moves);
        assertThat(page("K05").positions().stream().filter(BuildPosition::fresh))
                .hasSize((int)
                        copied.stream().filter(each -> each.part() != null).count());
        assertThat(desk.view().facts().of(Part.class).named("TC-S1")).isPresent();
    }
}
