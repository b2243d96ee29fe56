package witnessmark.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import witnessmark.domain.ActionKind;
import witnessmark.domain.AirPressure;
import witnessmark.domain.CauseArea;
import witnessmark.domain.CauseState;
import witnessmark.domain.Coded;
import witnessmark.domain.CorrectionKind;
import witnessmark.domain.CostBasis;
import witnessmark.domain.CostCategory;
import witnessmark.domain.DriverAsked;
import witnessmark.domain.DynoFigures;
import witnessmark.domain.FaceKind;
import witnessmark.domain.FaceMarkKind;
import witnessmark.domain.FaceMethod;
import witnessmark.domain.FindingMark;
import witnessmark.domain.FindingPlace;
import witnessmark.domain.FitVerdict;
import witnessmark.domain.FoundWhen;
import witnessmark.domain.FrontSide;
import witnessmark.domain.GasketClass;
import witnessmark.domain.Grade;
import witnessmark.domain.HeatEnd;
import witnessmark.domain.HoleKind;
import witnessmark.domain.HowMarked;
import witnessmark.domain.HowStood;
import witnessmark.domain.HowSure;
import witnessmark.domain.IncomeKind;
import witnessmark.domain.LimitAction;
import witnessmark.domain.LimitRank;
import witnessmark.domain.MeasureKind;
import witnessmark.domain.Metal;
import witnessmark.domain.MissedHow;
import witnessmark.domain.PartHarm;
import witnessmark.domain.PartKind;
import witnessmark.domain.PriorKind;
import witnessmark.domain.ProofBy;
import witnessmark.domain.RateKind;
import witnessmark.domain.ReadingKind;
import witnessmark.domain.ResultHow;
import witnessmark.domain.Retimed;
import witnessmark.domain.RunKind;
import witnessmark.domain.Severity;
import witnessmark.domain.SkimShadow;
import witnessmark.domain.Speaks;
import witnessmark.domain.SpeedSource;
import witnessmark.domain.Spot;
import witnessmark.domain.Standing;
import witnessmark.domain.StartKnown;
import witnessmark.domain.TraceMarkKind;
import witnessmark.domain.TrialVerdict;
import witnessmark.domain.TriggerKind;
import witnessmark.domain.Verdict;
import witnessmark.domain.Warmth;
import witnessmark.domain.WorkKind;
import witnessmark.domain.WorkResult;
import witnessmark.domain.image.Column;
import witnessmark.domain.image.RecordType;
import witnessmark.domain.image.RecordTypes;
import witnessmark.quantity.Counter;

/** The tables a new logbook has, against the records of the domain and against the steps as Flyway runs them. */
class SchemaTest {
    private static final Path RESOURCE = Path.of(System.getProperty("project.basedir", "."))
            .resolve("src/main/resources/witnessmark/store/schema.properties");

    private final Sql sql = new Sql();
    private final SchemaSteps steps = SchemaSteps.ours();
    private final LogbookSchema schema = new LogbookSchema(sql, new Canonical(), steps);

    @TempDir
    private Path folder;

    private Path made;

    @BeforeEach
    void make() throws Exception {
        made = Files.createFile(folder.resolve("made.witness"));
        schema.create(made);
    }

    @Test
    void the_steps_are_the_files_of_the_schema_folder_in_order() throws IOException {
        Path files = Path.of(System.getProperty("project.basedir", ".")).resolve("sql/schema");
        try (Stream<Path> listed = Files.list(files)) {
            assertThat(listed.map(file -> file.getFileName().toString().replace(".sql", ""))
                            .sorted())
                    .containsExactlyElementsOf(steps.names());
        }
        assertThat(steps.digests()).containsKey(steps.version());
    }

    @Test
    void a_new_logbook_has_the_schema_whose_digest_is_kept() throws Exception {
        String digest = digest(made);
        if (Boolean.getBoolean("pin.update")) {
            String kept = Files.readString(RESOURCE);
            String key = "sha256." + steps.version() + "=";
            Files.writeString(RESOURCE, kept.replaceFirst(key + ".*", key + digest));
            return;
        }
        assertThat(digest).isEqualTo(steps.digests().get(steps.version()));
    }

    @Test
    void flyway_makes_the_same_schema_from_the_same_steps() throws Exception {
        Path migrated = Files.createFile(folder.resolve("migrated.witness"));
        schema.migrate(migrated, 0);
        assertThat(digest(migrated)).isEqualTo(digest(made));
    }

    @Test
    void every_record_table_has_the_columns_of_its_records_and_those_all_tables_have() throws SQLException {
        for (RecordType<?> type : RecordTypes.all()) {
            List<String> expected = new ArrayList<>(List.of("id TEXT not null"));
            for (Column column : type.columns()) {
                expected.add(column.name() + " " + column.storage() + (column.nullable() ? "" : " not null"));
            }
            expected.addAll(List.of(
                    "standing TEXT not null",
                    "struck_because TEXT",
                    "made_at_ms INTEGER not null",
                    "made_by TEXT not null",
                    "amended_by TEXT not null",
                    "rev INTEGER not null",
                    "checksum TEXT not null"));
            assertThat(rows("SELECT name || ' ' || type || CASE \"notnull\" WHEN 1 THEN ' not null' ELSE '' END"
                            + " FROM pragma_table_info('" + type.name() + "') ORDER BY cid"))
                    .as("%s: what was added since stands at the end of its table", type.name())
                    .containsExactlyInAnyOrderElementsOf(expected);
        }
    }

    @Test
    void every_table_is_strict() throws SQLException {
        assertThat(rows("SELECT name FROM pragma_table_list WHERE type = 'table' AND strict = 0"
                        + " AND name NOT LIKE 'sqlite_%'"))
                .isEmpty();
    }

    @Test
    void every_reference_of_a_record_leads_to_its_table() throws SQLException {
        for (RecordType<?> type : RecordTypes.all()) {
            List<String> expected = new ArrayList<>(List.of("standing standing code", "amended_by amendment id"));
            type.components().stream()
                    .filter(component -> component.refersTo() != null)
                    .forEach(
                            component -> expected.add(component.columns().get(0).name() + " "
                                    + RecordTypes.of(component.refersTo()).name() + " id"));
            assertThat(rows("SELECT \"from\" || ' ' || \"table\" || ' ' || \"to\" FROM pragma_foreign_key_list('"
                            + type.name() + "')"))
                    .as(type.name())
                    .containsAll(expected);
        }
    }

    static Stream<Object[]> lists() {
        return Stream.of(
                new Object[] {"standing", codes(Standing.values())},
                new Object[] {"part_kind", codes(PartKind.values())},
                new Object[] {"run_kind", codes(RunKind.values())},
                new Object[] {"start_known", codes(StartKnown.values())},
                new Object[] {"speed_source", codes(SpeedSource.values())},
                new Object[] {"driver_asked", codes(DriverAsked.values())},
                new Object[] {"prior_kind", codes(PriorKind.values())},
                new Object[] {"work_kind", codes(WorkKind.values())},
                new Object[] {"work_result", codes(WorkResult.values())},
                new Object[] {"missed_how", codes(MissedHow.values())},
                new Object[] {"limit_action", codes(LimitAction.values())},
                new Object[] {"limit_rank", codes(LimitRank.values())},
                new Object[] {"reading_kind", codes(ReadingKind.values())},
                new Object[] {"grade", codes(Grade.values())},
                new Object[] {"warmth", codes(Warmth.values())},
                new Object[] {"trigger_kind", codes(TriggerKind.values())},
                new Object[] {"severity", codes(Severity.values())},
                new Object[] {"found_when", codes(FoundWhen.values())},
                new Object[] {"part_harm", codes(PartHarm.values())},
                new Object[] {"cause_area", codes(CauseArea.values())},
                new Object[] {"verdict", codes(Verdict.values())},
                new Object[] {"result_how", codes(ResultHow.values())},
                new Object[] {"rate_kind", codes(RateKind.values())},
                new Object[] {"cost_category", codes(CostCategory.values())},
                new Object[] {"cost_basis", codes(CostBasis.values())},
                new Object[] {"income_kind", codes(IncomeKind.values())},
                new Object[] {"measure_kind", codes(MeasureKind.values())},
                new Object[] {"spot", codes(Spot.values())},
                new Object[] {"how_stood", codes(HowStood.values())},
                new Object[] {"fit_verdict", codes(FitVerdict.values())},
                new Object[] {"gasket_class", codes(GasketClass.values())},
                new Object[] {"metal", codes(Metal.values())},
                new Object[] {"face_kind", codes(FaceKind.values())},
                new Object[] {"hole_kind", codes(HoleKind.values())},
                new Object[] {"face_method", codes(FaceMethod.values())},
                new Object[] {"face_mark_kind", codes(FaceMarkKind.values())},
                new Object[] {"front_side", codes(FrontSide.values())},
                new Object[] {"skim_shadow", codes(SkimShadow.values())},
                new Object[] {"retimed", codes(Retimed.values())},
                new Object[] {"heat_end", codes(HeatEnd.values())},
                new Object[] {"trace_mark_kind", codes(TraceMarkKind.values())},
                new Object[] {"dyno_figures", codes(DynoFigures.values())},
                new Object[] {"correction_kind", codes(CorrectionKind.values())},
                new Object[] {"air_pressure", codes(AirPressure.values())},
                new Object[] {"finding_place", codes(FindingPlace.values())},
                new Object[] {"finding_mark", codes(FindingMark.values())},
                new Object[] {"how_marked", codes(HowMarked.values())},
                new Object[] {"cause_state", codes(CauseState.values())},
                new Object[] {"how_sure", codes(HowSure.values())},
                new Object[] {"speaks", codes(Speaks.values())},
                new Object[] {"action_kind", codes(ActionKind.values())},
                new Object[] {"proof_by", codes(ProofBy.values())},
                new Object[] {"trial_verdict", codes(TrialVerdict.values())},
                new Object[] {
                    "counter",
                    Arrays.stream(Counter.values()).map(Counter::code).toList()
                });
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("lists")
    void a_closed_list_of_words_is_the_same_in_the_file_as_in_the_program(String table, List<String> codes)
            throws SQLException {
        assertThat(rows("SELECT code FROM " + table)).containsExactlyInAnyOrderElementsOf(codes);
    }

    private static List<String> codes(Coded... words) {
        return Arrays.stream(words).map(Coded::code).toList();
    }

    private String digest(Path file) throws SQLException {
        try (Database database = new Connections(sql).frozen(file)) {
            return schema.digest(database);
        }
    }

    private List<String> rows(String query) throws SQLException {
        List<String> found = new ArrayList<>();
        try (Connection connection = DriverManager.getConnection(Connections.address(made));
                Statement statement = connection.createStatement();
                ResultSet rows = statement.executeQuery(query)) {
            while (rows.next()) {
                found.add(rows.getString(1));
            }
        }
        return found;
    }
}
