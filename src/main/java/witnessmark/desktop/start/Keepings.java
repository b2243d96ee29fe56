package witnessmark.desktop.start;

import java.util.List;
import javax.swing.JButton;
import witnessmark.desktop.form.SheetTools;
import witnessmark.desktop.keeping.KeepingContext;
import witnessmark.desktop.shell.Aside;
import witnessmark.outcome.Problem;

/** What keeping stands on, made of what beginning stands on. */
final class Keepings implements KeepingContext.Tell {
    private final StartContext context;
    private final Reports reports;

    Keepings(StartContext context, Reports reports) {
        this.context = context;
        this.reports = reports;
    }

    KeepingContext context() {
        Choosing choosing = context.choosing();
        return new KeepingContext(
                new SheetTools(context.texts(), context.tasks(), context.settings()),
                context.measures(),
                context.problems(),
                context.window(),
                context.logbook(),
                context.copies().sample(),
                context.copies().all(),
                context.copies().elsewhere(),
                context.copies().aside(),
                new KeepingContext.Choose(
                        choosing::copy,
                        context.here().folder(),
                        suggested -> suggested.flatMap(choosing::newLogbook).map(LogbookNames::ended),
                        choosing::copiesFolder,
                        choosing::secondPlace),
                this,
                context.opening()::open,
                context.opening()::restore,
                context.copies().clock(),
                context.here().zone());
    }

    @Override
    public void show(Aside page) {
        reports.show(page);
    }

    @Override
    public void dismiss() {
        reports.dismiss();
    }

    @Override
    public void refused(String title, List<Problem> problems) {
        reports.refused(title, problems);
    }

    @Override
    public void report(String title, List<String> sentences, List<Problem> found, List<JButton> ways) {
        reports.show(new ReportPage.Content(title, sentences, reports.model().lines(found)), ways);
    }

    @Override
    public void say(String title, String help, List<String> sentences, List<JButton> ways) {
        reports.show(new ReportPage.Content(title, help, sentences, List.of()), ways);
    }

    @Override
    public void failed(Throwable failure) {
        reports.failed(failure);
    }
}
