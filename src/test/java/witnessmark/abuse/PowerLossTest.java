package witnessmark.abuse;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.function.BooleanSupplier;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Power cuts while a logbook is made, written, backed up, closed and opened again, and while it is opened after another
 * cut. The acts of the program on its disk are replayed up to any of them, with what was not synced kept, dropped, torn
 * or in another order; each state is opened in the program's own way. What was said to be saved is there, a change is
 * there whole or not at all, no photo is written without its bytes, the check finds nothing, and a backup that has its name is
 * whole.
 */
class PowerLossTest {
    /** So many cuts leave somewhat more than twice as many states to be judged, copies counted. */
    private static final int STATES = Numbers.of("cuts", 1_400, 100_000);
    /** So many of them, at most, lie within openings after another cut. */
    private static final int RECOVERIES = Numbers.of("recoveries", 6, 60);

    /** Each state of these is brought to the newest form first, which takes its time. */
    private static final int MIGRATIONS = Numbers.of("migrations", 40, 2_000);

    private static final String LOGBOOK = "team.witness";
    /** Where the files of a state that is wrong are kept to be looked into. */
    private static final Path KEPT =
            Path.of(System.getProperty("project.build.directory", "target")).resolve("power-cuts");

    @TempDir(factory = InMemory.class)
    static Path folder;

    private static DiskLibrary library;

    @BeforeAll
    static void build() throws Exception {
        library = DiskLibrary.builtIn(folder);
    }

    /**
     * One program on its disk.
     *
     * @param before what it finds there
     * @param said what had been said by then
     */
    private record Scene(Path folder, SimulatedDisk before, SaidSoFar said, List<DiskLog.Act> acts) {}

    @Test
    void whatever_was_said_to_be_saved_survives_a_power_cut_and_nothing_is_half_there() throws Exception {
        Random random = Numbers.random("cuts");
        Scene season = season("season", List.of());
        List<String> wrong = new ArrayList<>();
        FoundAfterCut found = new FoundAfterCut(Files.createDirectories(folder.resolve("state")), idOf(season), KEPT);
        Map<String, Integer> counts = new TreeMap<>();
        cut(season, STATES * 3 / 4, random, found, wrong);
        counts.put("acts", season.acts().size());
        assertThat(withoutPhotos(season, found)).as("the test itself").contains("its bytes are not there");
        for (Scene recovery : recoveries(season, found, random)) {
            cut(recovery, STATES / 4 / RECOVERIES, random, found, wrong);
        }
        counts.put("states", found.states());
        counts.put("distinct", found.distinct());
        counts.put("wrong", wrong.size());
        Numbers.tell("R2 power loss", counts);
        assertThat(wrong).as("seed %d", Numbers.seed()).isEmpty();
    }

    /** What is found of all that was done where somebody took the photos away. */
    private static String withoutPhotos(Scene season, FoundAfterCut found) throws IOException {
        Map<String, byte[]> files = season.before().after(PowerCut.KEPT, new Random(0));
        assertThat(files.keySet().removeIf(name -> name.contains(".photos/"))).isTrue();
        return judged(files, season.folder(), season.folder().resolve(LOGBOOK), season.said(), found);
    }

    /** A program that brings an older logbook to the newest form, and then writes on. */
    @Test
    void an_older_logbook_survives_a_power_cut_while_it_is_brought_to_the_newest_form() throws Exception {
        Path place = Files.createDirectories(folder.resolve("older"));
        WholeLogbook.put(place.resolve(LOGBOOK), OldFormsTest.kept(7));
        SimulatedDisk before = SimulatedDisk.of(place);
        Map<String, byte[]> untouched = before.after(PowerCut.KEPT, new Random(0));
        List<DiskLog.Act> acts =
                watched("recover", "older", place, List.of(), place).acts();
        Scene scene = new Scene(place, before, new SaidSoFar(), acts);
        FoundAfterCut found =
                new FoundAfterCut(Files.createDirectories(folder.resolve("older-state")), idOf(scene), KEPT);
        FoundAfterCut.Found first = found.open(untouched, place, place.resolve(LOGBOOK));
        List<String> wrong = new ArrayList<>();
        SaidSoFar said = SaidSoFar.startingWith(first.records(), first.draft());
        cut(new Scene(place, before, said, acts), MIGRATIONS, Numbers.random("migrations"), found, wrong);
        Numbers.tell(
                "R11 power loss in a change of form",
                Map.of("acts", acts.size(), "states", found.states(), "distinct", found.distinct()));
        assertThat(wrong).as("seed %d", Numbers.seed()).isEmpty();
    }

    /** The test itself is tested: a logbook that does not wait for the disk loses what it said was saved. */
    @Test
    void a_logbook_that_does_not_wait_for_the_disk_is_found_out() throws Exception {
        Path instead = Files.createDirectories(folder.resolve("instead/sql/query/file"));
        Files.writeString(instead.resolve("cell_size_check.sql"), "PRAGMA synchronous = NORMAL;\n");
        Scene season = season("careless", List.of(folder.resolve("instead")));
        List<String> wrong = new ArrayList<>();
        FoundAfterCut found =
                new FoundAfterCut(Files.createDirectories(folder.resolve("careless-state")), idOf(season), null);
        BooleanSupplier enough = () -> wrong.stream().anyMatch(PowerLossTest::isLoss);
        cut(season, 120, Numbers.random("careless"), found, wrong, enough);
        Numbers.tell("R2 with synchronous=NORMAL", Map.of("states", found.states(), "wrong", wrong.size()));
        assertThat(wrong).as("seed %d", Numbers.seed()).anyMatch(PowerLossTest::isLoss);
    }

    private static boolean isLoss(String fault) {
        return fault.contains("lost of what was saved");
    }

    private static Scene season(String name, List<Path> before) throws Exception {
        Path place = Files.createDirectories(folder.resolve(name));
        SimulatedDisk empty = SimulatedDisk.of(place);
        DiskLog log = watched("season", name, place, before, place);
        return new Scene(place, empty, new SaidSoFar(), log.acts());
    }

    private static String idOf(Scene season) throws IOException {
        try (Stream<Path> backups = Files.list(season.folder().resolve("data-device-a/backups"))) {
            return backups.findFirst().orElseThrow().getFileName().toString();
        }
    }

    private static DiskLog watched(String verb, String name, Path watched, List<Path> before, Path... places)
            throws Exception {
        Path log = folder.resolve(name + ".log");
        List<String> arguments = new ArrayList<>(List.of(verb));
        for (Path place : places) {
            arguments.add(place.toString());
        }
        Path said = folder.resolve(name + ".out");
        int end = library.program(
                        DiskProgram.class,
                        before,
                        Map.of("DISK_FOLDER", watched.toString(), "DISK_LOG", log.toString()),
                        arguments.toArray(String[]::new))
                .redirectErrorStream(true)
                .redirectOutput(said.toFile())
                .start()
                .waitFor();
        assertThat(end).as(Files.readString(said)).isZero();
        return DiskLog.read(log);
    }

    /** Programs that open what cuts left, each in a folder of its own, themselves watched. */
    private static List<Scene> recoveries(Scene season, FoundAfterCut found, Random random) throws Exception {
        Path all = Files.createDirectories(folder.resolve("recoveries"));
        List<Path> places = new ArrayList<>();
        List<SimulatedDisk> before = new ArrayList<>();
        List<SaidSoFar> said = new ArrayList<>();
        for (int i = 0; i < RECOVERIES; i++) {
            Path place = Files.createDirectories(all.resolve("r" + i));
            int at = season.acts().size() - 1 - random.nextInt(season.acts().size() / 3);
            SimulatedDisk disk = new SimulatedDisk();
            season.acts().subList(0, at).forEach(disk::take);
            Map<String, byte[]> left = disk.after(any(random), random);
            for (Map.Entry<String, byte[]> file : left.entrySet()) {
                Path to = place.resolve(
                        season.folder().relativize(Path.of(file.getKey())).toString());
                Files.createDirectories(to.getParent());
                WholeLogbook.put(to, file.getValue());
            }
            FoundAfterCut.Found first =
                    found.open(left, season.folder(), season.folder().resolve(LOGBOOK));
            places.add(place);
            before.add(SimulatedDisk.of(place));
            said.add(SaidSoFar.startingWith(first.records(), first.draft()));
        }
        List<DiskLog.Act> acts = watched("recover", "recoveries", all, List.of(), places.toArray(Path[]::new))
                .acts();
        List<Scene> scenes = new ArrayList<>();
        int from = 0;
        for (int i = 0; i < places.size(); i++) {
            int to = from + 1;
            while (to < acts.size() && !acts.get(to).text().startsWith("at ")) {
                to++;
            }
            scenes.add(new Scene(places.get(i), before.get(i), said.get(i), acts.subList(from, to)));
            from = to;
        }
        return scenes;
    }

    private static PowerCut any(Random random) {
        return PowerCut.values()[random.nextInt(PowerCut.values().length)];
    }

    private static void cut(Scene scene, int states, Random random, FoundAfterCut found, List<String> wrong)
            throws IOException {
        cut(scene, states, random, found, wrong, () -> false);
    }

    private static void cut(
            Scene scene, int states, Random random, FoundAfterCut found, List<String> wrong, BooleanSupplier enough)
            throws IOException {
        Map<Integer, Integer> cuts = cuts(scene.acts(), states, random);
        Path logbook = scene.folder().resolve(LOGBOOK);
        SimulatedDisk disk = scene.before();
        SaidSoFar said = scene.said();
        int at = 0;
        for (DiskLog.Act act : scene.acts()) {
            disk.take(act);
            if (act.kind() == DiskLog.Kind.SAID) {
                said.take(act.text());
            }
            at++;
            for (int i = 0; i < cuts.getOrDefault(at, 0) && !enough.getAsBoolean(); i++) {
                PowerCut cut = any(random);
                Map<String, byte[]> files = disk.after(cut, random);
                String fault = judged(files, scene.folder(), logbook, said, found);
                if (!fault.isEmpty()) {
                    wrong.add("act " + at + " of " + scene.folder().getFileName() + ", " + cut + ": " + fault);
                    found.keep(files, "act-" + at + "-" + cut);
                }
            }
        }
    }

    /** How many cuts come after which act: half anywhere, half where one thing was done and another begins. */
    private static Map<Integer, Integer> cuts(List<DiskLog.Act> acts, int states, Random random) {
        List<Integer> turns = new ArrayList<>(List.of(acts.size()));
        for (int at = 1; at < acts.size(); at++) {
            if (acts.get(at - 1).kind() != DiskLog.Kind.WRITE || acts.get(at).kind() != DiskLog.Kind.WRITE) {
                turns.add(at);
            }
        }
        Map<Integer, Integer> cuts = new HashMap<>();
        for (int i = 0; i < states; i++) {
            int at = i % 2 == 0 ? 1 + random.nextInt(acts.size()) : turns.get(random.nextInt(turns.size()));
            cuts.merge(at, 1, Integer::sum);
        }
        return cuts;
    }

    private static String judged(
            Map<String, byte[]> files, Path folder, Path logbook, SaidSoFar said, FoundAfterCut found)
            throws IOException {
        if (!files.containsKey(logbook.toString())) {
            return said.isMade() ? "the logbook is gone" : "";
        }
        FoundAfterCut.Found state = found.open(files, folder, logbook);
        String records = state.opened() ? said.wrongIn(state.records(), state.draft()) : "";
        if (!records.isEmpty()) {
            return records;
        }
        if (!state.bare().isEmpty()) {
            return "a photo is written and its bytes are not there: " + state.bare();
        }
        if (!state.opened() || !state.faults().isEmpty()) {
            return "does not open as it should: " + state.faults();
        }
        for (String backup : said.backups()) {
            if (!files.containsKey(backup)) {
                return "a backup that was said to be made is gone";
            }
        }
        for (String name : files.keySet()) {
            if (name.contains("/backups/") && name.endsWith(".witness")) {
                Path takenOut = folder.resolve("taken out.witness"); // where it lies it is never written in
                FoundAfterCut.Found copy = found.open(Map.of(takenOut.toString(), files.get(name)), folder, takenOut);
                if (!copy.opened() || !copy.faults().isEmpty()) {
                    return "a backup is not whole: " + copy.faults();
                }
            }
        }
        return "";
    }
}
