package witnessmark.abuse;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import witnessmark.abuse.DiskControl.Call;
import witnessmark.abuse.DiskControl.Failure;
import witnessmark.domain.Entry;
import witnessmark.domain.Photo;
import witnessmark.domain.Run;
import witnessmark.logbook.port.Drafts.Draft;
import witnessmark.logbook.port.Drafts.Kept;
import witnessmark.logbook.port.Logbook;
import witnessmark.logbook.port.Photos;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Problem;
import witnessmark.store.Garage;
import witnessmark.store.Sentences;
import witnessmark.store.TestLogbooks;

/**
 * Goes through a short piece of work again and again, each time with another call to the disk failing, until it comes
 * to its end with none. After each the disk is well again, and the logbook opened anew is held against what was said.
 * What is wrong goes to standard output, a line each, and last the counts.
 */
final class FailingDiskProgram {
    private static final int NOT_READ = 127 - Call.READ.bit();
    private static final int NO_MORE = 100_000;
    /** Calls at the end of making a logbook, among them those that bring its first row into the file. */
    private static final int END_OF_MAKING = 50;
    /** After the backup made at first. */
    private static final long LATER_MILLIS = 86_400_000;

    private final Path folder;
    private final DiskControl control;
    private final boolean careless;
    private final Garage garage = new Garage();
    private final Map<String, Integer> counts = new TreeMap<>();
    private final byte[] made;
    private final Path card;

    private FailingDiskProgram(Path folder, DiskControl control, boolean careless) throws IOException {
        this.folder = folder;
        this.control = control;
        this.careless = careless;
        TestLogbooks first = new TestLogbooks(Files.createDirectories(folder.resolve("first")));
        try (Logbook logbook = first.create()) {
            TestLogbooks.write(logbook, garage.all()).orThrow();
        }
        made = Files.readAllBytes(first.file());
        card = CardPhoto.onCard(1);
    }

    /** The pieces of work, each with calls of its own that fail. */
    private enum Work {
        /** Opening a logbook, saving runs, keeping drafts, closing it. */
        SAVING,
        /** Making a logbook, and its first change. */
        CREATING,
        /** Making a backup, and another on closing. */
        BACKING_UP
    }

    /**
     * @param args folder, control file, every how manieth of calls that are many and alike, whether to say saved whatever
     *     comes of it
     */
    public static void main(String[] args) throws IOException {
        FailingDiskProgram program = new FailingDiskProgram(
                Path.of(args[0]), new DiskControl(Path.of(args[1])), Boolean.parseBoolean(args[3]));
        int step = Integer.parseInt(args[2]);
        if (program.careless) {
            program.everyCall(Work.SAVING, "EIO", NOT_READ, Failure.EIO, true, 9);
        } else {
            program.everyWork(step);
        }
        System.out.println("counts " + program.counts);
    }

    /** With one error every call fails in turn; with those of a full disk, in the short run, some of them. */
    private void everyWork(int step) throws IOException {
        for (boolean forever : new boolean[] {false, true}) {
            for (Work work : Work.values()) {
                int saving = forever && step > 1 ? 2 : 1;
                int every = work == Work.SAVING ? saving : step;
                int full = step == 1 ? 1 : 6 * every;
                everyCall(work, "EIO", NOT_READ, Failure.EIO, forever, every);
                everyCall(work, "EIO reading", Call.READ.bit(), Failure.EIO, forever, 3 * step);
                everyCall(work, "ENOSPC", Failure.ENOSPC.calls(), Failure.ENOSPC, forever, full);
                everyCall(work, "EDQUOT", Failure.EDQUOT.calls(), Failure.EDQUOT, forever, full + full / 2);
            }
        }
        if (step > 1) {
            endOfMaking("EIO", NOT_READ, Failure.EIO);
            endOfMaking("EIO reading", Call.READ.bit(), Failure.EIO);
        }
    }

    /** Each of the last calls before a new logbook is there, which are not like the many before them. */
    private void endOfMaking(String name, int calls, Failure how) throws IOException {
        TestLogbooks logbooks = new TestLogbooks(Files.createDirectories(folder.resolve("counted")));
        Files.deleteIfExists(logbooks.file());
        control.fail(calls, NO_MORE, how, false);
        try (Logbook counted = logbooks.files.create(logbooks.file()).orThrow()) {
            int end = control.counted();
            for (int at = Math.max(1, end - END_OF_MAKING); at <= end; at++) {
                fails(Work.CREATING, name, calls, how, false, at);
            }
        }
    }

    private void everyCall(Work work, String name, int calls, Failure how, boolean forever, int step)
            throws IOException {
        int at = 1;
        while (at < NO_MORE && fails(work, name, calls, how, forever, at)) {
            at += step;
        }
    }

    /** Whether it came to the call that was to fail. */
    private boolean fails(Work work, String name, int calls, Failure how, boolean forever, int at) throws IOException {
        Path place = folder.resolve("place");
        clear(place);
        Said said = new Said();
        if (work != Work.CREATING) {
            put(place, work == Work.SAVING);
        }
        Runnable begin = () -> {};
        Runnable arm = () -> control.fail(calls, at, how, forever);
        if (work != Work.BACKING_UP) {
            arm.run();
        } else {
            begin = arm;
        }
        try {
            work(place, work, begin, said);
        } catch (RuntimeException e) {
            said.wrong.add("a crash: " + e);
        }
        control.stop();
        boolean failed = control.failed() > 0;
        compare(place, said);
        counts.merge(work + " " + name, 1, Integer::sum);
        String where = work + ", " + name + (forever ? " from call " : " at call ") + at + ": ";
        said.wrong.forEach(each -> System.out.println("wrong " + where + each));
        return failed;
    }

    /** A logbook made before, and the sign of a backup of it if it is not to be backed up when it is opened. */
    private void put(Path place, boolean backedUp) throws IOException {
        WholeLogbook.put(new TestLogbooks(place).file(), made);
        Path backups = folder.resolve("first").resolve("data-device-a").resolve("backups");
        try (Stream<Path> all = Files.walk(backups)) {
            for (Path copy :
                    all.filter(Files::isRegularFile).filter(each -> backedUp).toList()) {
                Path to = place.resolve(folder.resolve("first").relativize(copy).toString());
                Files.createDirectories(to.getParent());
                Files.createFile(to);
            }
        }
    }

    /** What was said, and what is wrong with it. */
    private static final class Said {
        private final List<String> wrong = new ArrayList<>();
        private final Map<String, Boolean> runs = new TreeMap<>();
        private final Map<String, Boolean> photos = new TreeMap<>();
        private final Map<String, String> made = new HashMap<>();
    }

    private void work(Path place, Work work, Runnable begin, Said said) {
        TestLogbooks logbooks = new TestLogbooks(place);
        logbooks.clock.addAndGet(LATER_MILLIS);
        Outcome<Logbook> opened =
                work == Work.CREATING ? logbooks.files.create(logbooks.file()) : logbooks.files.open(logbooks.file());
        sentences(opened.problems(), said);
        if (!opened.didWork()) {
            return;
        }
        said.made.put("logbook", "");
        try (Logbook logbook = opened.orThrow()) {
            if (work == Work.CREATING) {
                sentences(TestLogbooks.write(logbook, garage.all()).problems(), said);
            } else if (work == Work.SAVING) {
                save(logbook, said);
            } else {
                begin.run();
                backUp(logbook, said);
            }
            if (work != Work.BACKING_UP) {
                control.stop(); // closing backs up, which is the third piece of work
            }
        }
    }

    private void save(Logbook logbook, Said said) {
        for (int hour = 1; hour <= 2; hour++) {
            Entry<Run> run = Garage.made(garage.run("run " + hour, garage.car7, null, hour));
            Outcome<?> written = TestLogbooks.write(logbook, run);
            sentences(written.problems(), said);
            said.runs.put(run.fact().name(), careless || written.didWork());
            Draft draft = new Draft(Map.of("text", "draft " + hour), Instant.ofEpochSecond(hour));
            if (logbook.drafts().keep("run", "", draft) != Kept.NOT_KEPT) {
                said.made.put("draft", "draft " + hour);
            }
            if (hour == 1) {
                photo(logbook, said);
            }
        }
    }

    private void photo(Logbook logbook, Said said) {
        Outcome<Photos.Taken> taken = logbook.photos().take(card);
        sentences(taken.problems(), said);
        if (taken.didWork()) {
            Entry<Photo> photo = CardPhoto.of(taken.orThrow().file());
            Outcome<?> written = TestLogbooks.write(logbook, photo);
            sentences(written.problems(), said);
            said.photos.put(photo.id().text(), written.didWork());
        }
    }

    private static void backUp(Logbook logbook, Said said) {
        Outcome<Path> copy = logbook.backUp();
        sentences(copy.problems(), said);
        if (copy.didWork() && copy.problems().isEmpty()) {
            said.made.put("backup", copy.orThrow().toString());
        }
    }

    private void compare(Path place, Said said) throws IOException {
        TestLogbooks logbooks = new TestLogbooks(place);
        if (!Files.exists(logbooks.file())) {
            if (said.made.containsKey("logbook")) {
                said.wrong.add("the logbook is gone");
            }
            return;
        }
        Outcome<Logbook> opened = logbooks.files.open(logbooks.file());
        if (!opened.didWork() || opened.orThrow().readOnly().isPresent()) {
            said.wrong.add("does not open any more: " + opened.problems());
            return;
        }
        try (Logbook logbook = opened.orThrow()) {
            List<Problem> found = logbook.verify();
            if (!found.isEmpty()) {
                said.wrong.add("not whole: " + found);
            }
            List<String> there = logbook.facts().of(Run.class).all().stream()
                    .map(run -> run.fact().name())
                    .collect(Collectors.toList());
            said.runs.forEach((name, saved) -> {
                if (saved && !there.contains(name)) {
                    said.wrong.add(name + " was said to be saved and is not there");
                }
                counts.merge(
                        !saved && there.contains(name) ? "refused and there all the same" : "runs", 1, Integer::sum);
            });
            CardPhoto.bare(logbook).forEach(name -> said.wrong.add(name + " is written and its bytes are not there"));
            said.photos.forEach((id, saved) -> {
                boolean written = logbook.facts().of(Photo.class).all().stream()
                        .anyMatch(photo -> photo.id().text().equals(id));
                if (saved && !written) {
                    said.wrong.add("a photo was said to be kept and is not there");
                }
                counts.merge(saved ? "photos" : "photos refused", 1, Integer::sum);
            });
            String draft = logbook.drafts()
                    .find("run", "")
                    .map(d -> d.fields().get("text"))
                    .orElse("");
            if (said.made.getOrDefault("draft", "").compareTo(draft) > 0) {
                said.wrong.add("the draft is '" + draft + "'");
            }
        }
        String copy = said.made.get("backup");
        if (copy != null && !Files.exists(Path.of(copy))) {
            said.wrong.add("the backup is gone");
        }
    }

    private static void sentences(List<Problem> problems, Said said) {
        try {
            Sentences.complete(problems);
        } catch (AssertionError e) {
            said.wrong.add("no whole sentence: " + problems);
        }
    }

    private static void clear(Path place) throws IOException {
        Files.createDirectories(place);
        try (Stream<Path> all = Files.walk(place)) {
            for (Path file : all.filter(Files::isRegularFile).toList()) {
                Files.delete(file);
            }
        }
    }
}
