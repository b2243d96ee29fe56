package witnessmark.logbook.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import witnessmark.domain.Build;
import witnessmark.domain.BuildProof;
import witnessmark.domain.Entry;
import witnessmark.domain.Fitment;
import witnessmark.domain.Id;
import witnessmark.domain.Joint;
import witnessmark.domain.Part;
import witnessmark.domain.PartDesign;
import witnessmark.domain.PartKind;
import witnessmark.domain.ProofKind;
import witnessmark.domain.Standing;
import witnessmark.domain.StockBatch;
import witnessmark.domain.StockMove;
import witnessmark.domain.StockMoveKind;
import witnessmark.domain.Tool;
import witnessmark.domain.ToolKind;
import witnessmark.domain.TrackRepair;
import witnessmark.domain.Zone;
import witnessmark.ledger.Calibrations;
import witnessmark.ledger.UnprovenBuilds;
import witnessmark.ledger.result.UnprovenBuild;
import witnessmark.logbook.port.Written;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Counter;
import witnessmark.quantity.Moment;

/** A head gasket changed in the paddock, by its one page, and what the engine shows until somebody proves it. */
class TrackRepairTest extends ByHand {
    private final RepairAtTrack repair = new RepairAtTrack();

    @BeforeEach
    void aGasket() {
        fit("head gasket", "HG-1");
    }

    @Test
    void one_page_writes_build_repair_and_what_came_out_and_went_in_in_one_change() {
        logRun("60", "8000", "09:00");
        save(gasket("HG-2")).orThrow();

        Build build = last(Build.class);
        assertThat(build.zones()).isEqualTo(EnumSet.of(Zone.HEAD, Zone.COVERS));
        assertThat(build.opened()).isEqualTo(at(11));
        assertThat(build.closed()).isEqualTo(at(15));
        assertThat(build.signedBy()).isEqualTo("Ada");
        TrackRepair written = last(TrackRepair.class);
        assertThat(written.wentBack()).isEqualTo("springs, followers");
        assertThat(written.second()).isEqualTo("Jo");
        Fitment out = of("HG-1");
        assertThat(out.to()).isEqualTo(at(11));
        assertThat(out.buildOut()).isEqualTo(id(Build.class));
        assertThat(out.condition()).isEqualTo("burnt at 2");
        Fitment in = of("HG-2");
        assertThat(in.from()).isEqualTo(at(15));
        assertThat(in.buildIn()).isEqualTo(id(Build.class));

        own.desk.undo().orThrow();
        assertThat(of("HG-1").to()).isNull();
        assertThat(own.desk.view().facts().of(Build.class).where(each -> true)).isEmpty();
        assertThat(own.desk.view().facts().of(TrackRepair.class).where(each -> true))
                .isEmpty();
        assertThat(own.desk.logbook().verify()).isEmpty();
    }

    /** An hour before, half an hour after: the old gasket keeps the first, the new one has the second. */
    @Test
    void the_engine_is_unproven_with_its_list_until_somebody_proves_it() {
        logRun("60", "8000", "09:00");
        save(gasket("HG-2")).orThrow();
        logRun("30", "8000", "16:00");
        UnprovenBuild unproven = unproven().get(0);
        assertThat(unproven.wentIn()).extracting(part -> part.fact().mark()).containsExactly("HG-2");
        assertThat(unproven.cameOut()).extracting(part -> part.fact().mark()).containsExactly("HG-1");
        assertThat(unproven.ran().total()).isEqualTo(HOUR / 2);
        assertThat(own.desk.view().ledger().life(part("HG-1"), Counter.RUNNING).total())
                .isEqualTo(HOUR);
        assertThat(own.desk.view().ledger().life(part("HG-2"), Counter.RUNNING).total())
                .isEqualTo(HOUR / 2);

        ProveBuild prove = new ProveBuild();
        assertThat(own.sheets.read(prove, own.filled(prove)).of(ProveBuild.WHY).problem())
                .isNotNull();
        own.save(prove, "proven_how", ProofKind.BY_HAND.code(), "proven_why", "dry after three runs")
                .orThrow();
        assertThat(last(BuildProof.class).by()).isEqualTo("Ada");
        assertThat(unproven()).isEmpty();
        own.desk.undo().orThrow();
        assertThat(unproven()).hasSize(1);
    }

    @Test
    void it_is_not_proven_before_it_was_closed() {
        save(gasket("HG-2")).orThrow();
        ProveBuild prove = new ProveBuild();
        Map<SheetField, String> typed = own.filled(prove, "proven_why", "dry", "proven_on", "9 Mar");
        assertThat(Objects.requireNonNull(own.sheets
                                .read(prove, typed)
                                .of(ProveBuild.WHEN)
                                .problem())
                        .kind())
                .isEqualTo(ProblemKind.ENDS_BEFORE_IT_BEGINS);
    }

    @Test
    void a_gasket_from_the_shelf_is_taken_from_its_batch() {
        StockBatch batch = new StockBatch(designOf("HG-1"), "G-11", "Quarrow", null, "B2", 1, "");
        Entry<StockBatch> entry = new Entry<>(own.ids.next(), batch, Standing.IN_FORCE, null, 1);
        own.desk
                .write(
                        "stock",
                        List.of(
                                entry,
                                new Entry<>(
                                        own.ids.<StockMove>next(),
                                        new StockMove(
                                                entry.id(), at(8), 3, StockMoveKind.BOUGHT, null, null, "Ada", ""),
                                        Standing.IN_FORCE,
                                        null,
                                        1)))
                .orThrow();
        Map<SheetField, String> typed = gasket("HG-2");
        typed.put(field("goes_in_1"), "batch:" + entry.id().text());
        save(typed).orThrow();
        assertThat(last(StockMove.class).change()).isEqualTo(-1);
        assertThat(last(StockMove.class).part()).isEqualTo(part("HG-2"));
        assertThat(own.desk.view().facts().of(Part.class).get(part("HG-2")).batch())
                .isEqualTo("G-11");
    }

    @Test
    void what_its_wrench_tightened_is_found_by_the_wrench() {
        Entry<Tool> wrench = wrench(null);
        Map<SheetField, String> typed = gasket("HG-2");
        typed.put(RepairAtTrack.WRENCH, wrench.id().text());
        assertThat(problem(typed, "tightened")).isEqualTo(ProblemKind.NEEDED);
        typed.put(RepairAtTrack.TIGHTENED, PartKind.ROD_BOLTS.code());
        assertThat(problem(typed, "joint_value")).isEqualTo(ProblemKind.NEEDED);
        typed.put(field("joint_value"), "105 N m");
        save(typed).orThrow();

        assertThat(last(TrackRepair.class).tool()).isEqualTo(wrench.id());
        List<Entry<Joint>> tightened = Calibrations.tightened(own.desk.view().facts(), wrench.id());
        assertThat(tightened).hasSize(1);
        Joint joint = tightened.get(0).fact();
        assertThat(joint.fasteners()).isEqualTo(PartKind.ROD_BOLTS);
        assertThat(joint.value()).isEqualTo("105 N m");
        assertThat(joint.at()).isEqualTo(at(15));
        assertThat(joint.build()).isEqualTo(id(Build.class));
        assertThat(joint.by()).isEqualTo("Ada");
        assertThat(joint.second()).isEqualTo("Jo");
        assertThat(unproven().get(0).joints()).isEqualTo(tightened);
        assertThat(joint.cycle()).isTrue();
    }

    @Test
    void what_a_wrench_tightened_is_left_out_only_with_a_reason() {
        Map<SheetField, String> typed = gasket("HG-2");
        typed.put(RepairAtTrack.WRENCH, wrench(null).id().text());
        typed.put(RepairAtTrack.TIGHTENED, SheetWord.NOT_SAID.key());
        assertThat(problem(typed, "tightened_untold")).isEqualTo(ProblemKind.NEEDED);
        typed.put(RepairAtTrack.UNTOLD, "the list blew away");
        save(typed).orThrow();
        assertThat(last(TrackRepair.class).note()).isEqualTo("the list blew away");
        assertThat(own.desk.view().facts().of(Joint.class).where(each -> true)).isEmpty();
    }

    @Test
    void a_wrench_out_of_use_closes_nothing_and_nobody_is_their_own_second_pair_of_eyes() {
        Map<SheetField, String> typed = gasket("HG-2");
        typed.put(RepairAtTrack.WRENCH, wrench(OwnLogbook.TODAY).id().text());
        assertThat(problem(typed, "wrench")).isEqualTo(ProblemKind.TOOL_OUT_OF_USE);
        typed.put(RepairAtTrack.SECOND, "Ada");
        assertThat(problem(typed, "second_eyes")).isEqualTo(ProblemKind.SAYS_OTHERWISE);
    }

    private Entry<Tool> wrench(@Nullable LocalDate outOfUse) {
        Entry<Tool> wrench = new Entry<>(
                own.ids.next(), new Tool("W-01", ToolKind.TORQUE_WRENCH, "", outOfUse, ""), Standing.IN_FORCE, null, 1);
        own.desk.write("wrench", List.of(wrench)).orThrow();
        return wrench;
    }

    @Test
    void nothing_may_go_in_and_a_position_is_touched_once() {
        Map<SheetField, String> typed = gasket("HG-2");
        typed.put(field("touched_2"), typed.get(field("touched_1")));
        typed.put(field("goes_in_2"), "nothing");
        assertThat(problem(typed, "touched_2")).isEqualTo(ProblemKind.NEEDED);
        typed.put(field("touched_2"), choice("valve springs", typed));
        save(typed).orThrow();
        assertThat(of("VS-1").to()).isEqualTo(at(11));
    }

    @Test
    void a_repair_inside_a_run_or_closed_before_it_was_opened_is_refused() {
        logRun("60", "8000", "14:30");
        assertThat(found(repair, gasket("HG-2"))).contains("CHANGE_INSIDE_RUN beside repair_closed");
        assertThat(save(gasket("HG-2")).didWork()).isFalse();
        Map<SheetField, String> typed = gasket("HG-2");
        typed.put(RepairAtTrack.CLOSED, "10:00");
        assertThat(problem(typed, "repair_closed")).isEqualTo(ProblemKind.ENDS_BEFORE_IT_BEGINS);
    }

    @Test
    void a_part_that_is_fitted_once_is_not_offered_again() {
        PartDesign once = new PartDesign("once", PartKind.HEAD_GASKET, "", "", true, false, "", null);
        Id<PartDesign> design = own.ids.next();
        Part used = new Part("HG-0", design, "", "", null, null, null, null, null, null, "");
        own.desk
                .write(
                        "once",
                        List.of(
                                new Entry<>(design, once, Standing.IN_FORCE, null, 1),
                                new Entry<>(own.ids.<Part>next(), used, Standing.IN_FORCE, null, 1)))
                .orThrow();
        assertThat(offered(gasket("HG-2"))).anyMatch(choice -> choice.contains("HG-0"));
        Map<SheetField, String> typed = gasket("");
        typed.put(field("goes_in_1"), part("HG-0").text());
        typed.put(RepairAtTrack.OPENED, "08:00");
        typed.put(RepairAtTrack.CLOSED, "09:00");
        save(typed).orThrow();
        save(gasket("HG-2")).orThrow();
        assertThat(offered(gasket("HG-3"))).noneMatch(choice -> choice.contains("HG-0"));
    }

    private Map<SheetField, String> gasket(String mark) {
        Map<SheetField, String> typed = new HashMap<>(own.filled(
                repair,
                "repaired",
                engine().text(),
                "zones",
                "head, covers",
                "repair_why",
                "water between 2 and 3",
                "repair_opened",
                "11:00",
                "repair_closed",
                "15:00",
                "went_back",
                "springs, followers",
                "second_eyes",
                "Jo"));
        typed.put(field("touched_1"), choice("head gasket", typed));
        typed.put(field("goes_in_1"), "new_part");
        typed.put(field("goes_in_mark_1"), mark);
        typed.put(field("came_out_like_1"), "burnt at 2");
        return typed;
    }

    private String choice(String position, Map<SheetField, String> typed) {
        return repair.choices(field("touched_1"), new SheetTyped(typed), own.sheets.sight()).stream()
                .filter(choice -> choice.facts().get(0) instanceof witnessmark.domain.Position where
                        && where.name().equals(position))
                .findFirst()
                .orElseThrow()
                .key();
    }

    private List<String> offered(Map<SheetField, String> typed) {
        return repair.choices(field("goes_in_1"), new SheetTyped(typed), own.sheets.sight()).stream()
                .map(choice -> choice.facts().toString())
                .toList();
    }

    private Outcome<Written> save(Map<SheetField, String> typed) {
        return own.sheets.save(repair, typed, "by hand");
    }

    private @Nullable ProblemKind problem(Map<SheetField, String> typed, String key) {
        var problem = own.sheets.read(repair, typed).of(field(key)).problem();
        return problem == null ? null : problem.kind();
    }

    private SheetField field(String key) {
        return OwnLogbook.field(repair, key);
    }

    private List<UnprovenBuild> unproven() {
        return new UnprovenBuilds(own.desk.view().ledger()).of(engine());
    }

    private Id<PartDesign> designOf(String mark) {
        return own.desk.view().facts().of(Part.class).get(part(mark)).design();
    }

    private Fitment of(String mark) {
        return own
                .desk
                .view()
                .facts()
                .of(Fitment.class)
                .where(fitment -> fitment.part().equals(part(mark)))
                .stream()
                .findFirst()
                .orElseThrow()
                .fact();
    }

    private Moment at(int hour) {
        return Moment.of(OwnLogbook.TODAY.atTime(hour, 0), zone());
    }
}
