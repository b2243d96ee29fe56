package witnessmark.desktop.start;

import static org.assertj.core.api.Assertions.assertThat;
import static witnessmark.report.PdfText.solid;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import witnessmark.desktop.shell.Command;
import witnessmark.desktop.testing.Looks;
import witnessmark.desktop.testing.UiTest;
import witnessmark.domain.Build;
import witnessmark.domain.Engine;
import witnessmark.domain.Id;
import witnessmark.logbook.View;
import witnessmark.logbook.measuring.SeeBuildSheet;
import witnessmark.report.PdfText;

/** A build sheet's pages from the window: asked where to, written as the bench shows it, opened. */
@UiTest
class BuildSheetOutTest {
    private static final String PRINT = "buildsheet.command.print";

    @TempDir
    Path folder;

    private StartedWindow window;

    @BeforeEach
    void open() {
        window = new StartedWindow(folder, Looks.light());
    }

    @AfterEach
    void close() {
        window.close();
    }

    private Id<Build> k05() {
        View view = window.logbook.view();
        Id<Engine> engine =
                view.facts().of(Engine.class).named("K05").orElseThrow().id();
        return SeeBuildSheet.build(view, engine, 1).orElseThrow().id();
    }

    @Test
    void it_is_found_by_what_it_makes_and_has_no_key_of_its_own_in_the_menus() {
        Command command = window.commands.stream()
                .filter(each -> each.key().equals(PRINT))
                .findFirst()
                .orElseThrow();
        assertThat(command.name()).isEqualTo("Print a build sheet…");
        assertThat(command.tip()).contains("PDF", "boxes to fill by hand");
        assertThat(command.accelerator()).isNull();
    }

    @Test
    void the_sheet_on_the_bench_is_written_under_its_name_says_so_and_opens_when_wanted() throws IOException {
        window.start.buildShown(() -> Optional.of(k05()));
        window.answer = folder.resolve("sheet.pdf");
        window.perform(PRINT);
        assertThat(Objects.requireNonNull(window.suggestedName).getFileName()).hasToString("build-sheet-K05-1.pdf");
        assertThat(window.said()).contains("Build sheet written: ", window.answer.toString());
        assertThat(PdfText.of(Files.readAllBytes(window.answer)).solid())
                .contains(solid("Build sheet of K05, build 1"), solid("As of Wed 8 Jul 2026"));
        window.press("Open it");
        assertThat(window.opened).containsExactly("show sheet.pdf");
    }

    @Test
    void before_the_bench_was_looked_at_it_is_the_sheet_that_comes_up_first_there() throws IOException {
        window.answer = folder.resolve("first");
        window.start.printBuild();
        window.settle();
        assertThat(PdfText.of(Files.readAllBytes(folder.resolve("first.pdf"))).solid())
                .contains(solid("Build sheet of K05, build 3"), solid("still open"));
    }

    @Test
    void what_somebody_else_keeps_there_stays() throws IOException {
        window.answer = Files.writeString(folder.resolve("drawing.pdf"), "%PDF-1.7 a drawing");
        window.perform(PRINT);
        assertThat(window.said()).contains("is already there");
        assertThat(window.answer).hasContent("%PDF-1.7 a drawing");
    }
}
