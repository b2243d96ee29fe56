package witnessmark.desktop.start;

import java.nio.file.Path;
import java.util.List;
import witnessmark.desktop.keeping.KeepingPages;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Problem;

/** Backups and checks of the logbook in hand. */
final class Keeping {
    private final StartContext context;
    private final Reports reports;

    private final KeepingPages copies;

    Keeping(StartContext context, Reports reports, KeepingPages copies) {
        this.copies = copies;
        this.context = context;
        this.reports = reports;
    }

    void backUp() {
        reports.say("beforewego.backup.working");
        context.tasks()
                .write(
                        reports.texts().get("beforewego.backup.working"),
                        () -> context.logbook().logbook().backUp(),
                        this::backedUp,
                        reports::failed);
    }

    private void backedUp(Outcome<Path> outcome) {
        if (!outcome.didWork()) {
            reports.refused(reports.texts().get("beforewego.backup.title"), outcome.problems());
            return;
        }
        if (outcome.problems().isEmpty()) {
            reports.say("beforewego.backup.done", outcome.orThrow());
        } else {
            reports.refused(reports.texts().get("beforewego.backup.title"), outcome.problems());
        }
    }

    void check() {
        reports.say("beforewego.check.working");
        context.tasks()
                .write(
                        reports.texts().get("beforewego.check.working"),
                        () -> context.logbook().logbook().verifyWithPhotos(),
                        this::checked,
                        reports::failed);
    }

    void checked(List<Problem> found) {
        if (found.isEmpty()) {
            reports.say("beforewego.check.good");
            return;
        }
        reports.say("beforewego.check.found", found.size());
        reports.show(
                new ReportPage.Content(
                        reports.texts().get("beforewego.check.title"),
                        List.of(
                                reports.texts().get("beforewego.check.found", found.size()),
                                reports.texts().get("beforewego.check.meaning")),
                        reports.model().lines(found)),
                List.of(
                        reports.way("beforewego.report.close", reports::dismiss),
                        reports.way("beforewego.check.backUp", () -> {
                            reports.dismiss();
                            backUp();
                        }),
                        reports.way(
                                "keeping.notice.salvage",
                                () -> copies.salvage(context.logbook().logbook().path())),
                        reports.main("keeping.notice.restore", copies::restore)));
    }
}
