package witnessmark.launch;

import java.util.List;
import witnessmark.desktop.shell.AboutFacts;
import witnessmark.wording.Texts;

/** What the About page tells: version and where things are kept. */
final class About {
    private About() {}

    static AboutFacts of(Outside outside, Texts texts, OpenBook book) {
        String version = About.class.getPackage().getImplementationVersion();
        return new AboutFacts(
                version == null ? "0.1.0" : version,
                List.of(
                        new AboutFacts.Kept(
                                texts.get("shell.about.kept.logbook"),
                                book.desk().logbook().path().toString()),
                        new AboutFacts.Kept(
                                texts.get("shell.about.kept.data"),
                                outside.data().path().toString()),
                        new AboutFacts.Kept(
                                texts.get("shell.about.kept.backups"),
                                outside.data().backups().toString()),
                        new AboutFacts.Kept(
                                texts.get("shell.about.kept.log"),
                                outside.data().path().resolve(Logs.FOLDER).toString())));
    }
}
