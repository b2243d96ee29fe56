package witnessmark.desktop.start;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javax.swing.JButton;
import witnessmark.logbook.ImportSeason;
import witnessmark.logbook.port.Written;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Problem;

/** Season folders in and out. What was read is shown before anything of it is taken. */
final class SeasonFolder {
    private final StartContext context;
    private final Reports reports;

    SeasonFolder(StartContext context, Reports reports) {
        this.context = context;
        this.reports = reports;
    }

    /** Asks for a folder and reads it. */
    void bringIn() {
        context.choosing().seasonToRead().ifPresent(this::read);
    }

    void read(Path folder) {
        reports.say("beforewego.import.reading", folder);
        context.tasks()
                .run(
                        reports.texts().get("beforewego.import.reading", folder),
                        () -> context.uses().importing().read(folder),
                        outcome -> shown(folder, outcome),
                        reports::failed);
    }

    private void shown(Path folder, Outcome<ImportSeason.Reading> outcome) {
        if (!outcome.didWork()) {
            reports.refused(reports.texts().get("beforewego.import"), outcome.problems());
            return;
        }
        show(folder, outcome.orThrow(), false);
        reports.say("beforewego.import.read");
    }

    /** Shows what a choice comes to; the other is a button away. */
    private void show(Path folder, ImportSeason.Reading reading, boolean folders) {
        ReportModel model = reports.model();
        ImportSeason.Plan plan = folders ? reading.taking() : reading.keeping();
        List<String> sentences = new ArrayList<>();
        sentences.add(reports.texts().get("beforewego.import.from", folder));
        sentences.add(model.rows(plan, folders));
        sentences.addAll(model.samples(plan));
        model.known(reading, folders).ifPresent(sentences::add);
        if (plan.stops() || plan.any()) {
            sentences.add(model.verdict(reading, plan));
        }
        reports.show(
                new ReportPage.Content(
                        reports.texts().get("beforewego.import"), sentences, model.lines(plan.problems())),
                ways(folder, reading, folders));
    }

    /** The main one is last: mending comes before taking what is good when nothing of a table could be read. */
    private List<JButton> ways(Path folder, ImportSeason.Reading reading, boolean folders) {
        List<JButton> ways = new ArrayList<>();
        ImportSeason.Plan plan = folders ? reading.taking() : reading.keeping();
        boolean any = plan.any();
        Runnable take = () -> take(folder, plan);
        if (reading.differing() > 0) {
            String key = folders ? "beforewego.import.keepOurs" : "beforewego.import.takeTheirs";
            ways.add(reports.way(key, () -> show(folder, reading, !folders)));
        }
        ways.add(reports.way("beforewego.import.leave", reports::dismiss));
        if (!plan.stops()) {
            if (any) {
                ways.add(reports.main(takeAll(reading, folders), take));
            }
        } else if (reading.unread().isEmpty() && any) {
            ways.add(reports.way("beforewego.import.again", () -> read(folder)));
            ways.add(reports.main("beforewego.import.takeGood", take));
        } else {
            if (any) {
                ways.add(reports.way("beforewego.import.takeGood", take));
            }
            ways.add(reports.main("beforewego.import.again", () -> read(folder)));
        }
        return ways;
    }

    private static String takeAll(ImportSeason.Reading reading, boolean folders) {
        return reading.differing() > 0 && !folders ? "beforewego.import.takeNew" : "beforewego.import.takeAll";
    }

    private void take(Path folder, ImportSeason.Plan plan) {
        String name = String.valueOf(folder.getFileName());
        String from =
                reports.texts().get("beforewego.import.who", context.logbook().who(), name);
        String why = reports.texts().get("beforewego.import.why", name);
        context.tasks()
                .write(
                        reports.texts().get("beforewego.import.taking", name),
                        () -> context.uses().importing().write(plan, true, from, why),
                        outcome -> taken(name, plan, outcome),
                        reports::failed);
    }

    private void taken(String name, ImportSeason.Plan plan, Outcome<Written> outcome) {
        if (!outcome.didWork()) {
            reports.refused(reports.texts().get("beforewego.import"), outcome.problems());
            return;
        }
        reports.dismiss();
        context.window().changed();
        reports.sayUndoable("beforewego.import.taken", plan.entries().size(), name);
    }

    /** Asks for a folder and writes the whole logbook to it, or into a new one within when it is not empty. */
    void writeOut() {
        context.choosing().seasonToWrite().ifPresent(this::write);
    }

    void write(Path chosen) {
        reports.say("beforewego.export.writing");
        context.tasks()
                .run(
                        reports.texts().get("beforewego.export.writing"),
                        () -> {
                            Path target = target(chosen);
                            return new WrittenOut(
                                    target, context.uses().exporting().export(context.logbook(), target));
                        },
                        this::written,
                        reports::failed);
    }

    private Path target(Path chosen) throws IOException {
        if (!Files.isDirectory(chosen)) {
            return chosen;
        }
        try (Stream<Path> in = Files.list(chosen)) {
            return in.findAny().isEmpty()
                    ? chosen
                    : chosen.resolve(LogbookNames.seasonFolder(
                            context.logbook().logbook().path(),
                            context.logbook().today().day()));
        }
    }

    private void written(WrittenOut out) {
        if (out.rows().didWork()) {
            reports.say("beforewego.export.written", out.rows().orThrow(), out.folder());
            partly(out);
        } else {
            reports.refused(
                    reports.texts().get("beforewego.export.title"), out.rows().problems());
        }
    }

    /** What could not be written is shown, and stays until somebody has read it. */
    private void partly(WrittenOut out) {
        List<Problem> problems = out.rows().problems();
        if (!problems.isEmpty()) {
            reports.show(
                    new ReportPage.Content(
                            reports.texts().get("beforewego.export.title"),
                            List.of(reports.texts()
                                    .get("beforewego.export.written", out.rows().orThrow(), out.folder())),
                            reports.model().lines(problems)),
                    List.of(reports.way("beforewego.import.leave", reports::dismiss)));
        }
    }

    /** Where a season was written to, and how many rows. */
    private record WrittenOut(Path folder, Outcome<Integer> rows) {}
}
