package witnessmark.sample;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import witnessmark.domain.Build;
import witnessmark.domain.Concession;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.FitVerdict;
import witnessmark.domain.Id;
import witnessmark.domain.MeasureKind;
import witnessmark.domain.Measurement;
import witnessmark.domain.SignOff;
import witnessmark.domain.SignedCheck;
import witnessmark.domain.Standing;
import witnessmark.exchange.CsvSeasonFolders;
import witnessmark.logbook.measuring.SeeBuildSheet;
import witnessmark.logbook.measuring.SheetPage;
import witnessmark.logbook.measuring.SignBuildSheet;
import witnessmark.logbook.measuring.SinceSigned;

/**
 * The three sheets the sample's crew measured last winter are signed, on the day each build was closed, with the rows the
 * program's own signing writes on that day. After a change of the checks {@code -DupdateGolden=true} signs them anew.
 */
class SampleSigningsTest {
    private static final List<String> FILES = List.of("signed-checks.csv", "season.json");

    @TempDir
    Path place;

    private static Facts shipped() {
        return Facts.none()
                .with(new CsvSeasonFolders()
                        .read(SampleBooks.FOLDER, Facts.none())
                        .orThrow());
    }

    private static List<Entry<SignOff>> signings(Facts facts) {
        return facts.of(SignOff.class)
                .inForce()
                .sorted(Comparator.comparing(sign -> sign.fact().at()))
                .toList();
    }

    private static SheetPage page(Facts facts, Entry<SignOff> signing) {
        return SeeBuildSheet.of(
                        SampleViews.on(facts, signing.fact().at().day()),
                        signing.fact().build())
                .orElseThrow();
    }

    @Test
    void what_was_signed_is_what_the_program_would_have_written_that_day() throws IOException {
        Facts facts = shipped();
        List<Entry<SignedCheck>> written = new ArrayList<>();
        for (Entry<SignOff> signing : signings(facts)) {
            List<SignedCheck> checks = SignBuildSheet.checks(page(facts, signing), signing.id());
            for (int at = 0; at < checks.size(); at++) {
                written.add(new Entry<>(after(signing.id(), at + 1), checks.get(at), Standing.IN_FORCE, null, 1));
            }
        }
        if (Boolean.getBoolean("updateGolden")) {
            write(written);
        }
        List<Entry<SignedCheck>> kept = shipped().of(SignedCheck.class).all().stream()
                .sorted(Comparator.comparing(Entry::id))
                .toList();
        assertThat(kept)
                .extracting(Entry::fact)
                .isEqualTo(written.stream().map(Entry::fact).toList());
    }

    /** Ids of the moment of the signing, in the order the checks were kept. */
    private static Id<SignedCheck> after(Id<SignOff> signing, int number) {
        UUID first = UUID.fromString(signing.text());
        return new Id<>(new UUID(first.getMostSignificantBits() + number, first.getLeastSignificantBits() ^ number));
    }

    private void write(List<Entry<SignedCheck>> checks) throws IOException {
        List<Entry<?>> others = new CsvSeasonFolders()
                .read(SampleBooks.FOLDER, Facts.none()).orThrow().stream()
                        .filter(entry -> !(entry.fact() instanceof SignedCheck))
                        .toList();
        new CsvSeasonFolders()
                .write(
                        Facts.none().with(others).with(checks),
                        SampleBooks.kept(SampleBooks.FOLDER),
                        place.resolve("signed"))
                .orThrow();
        for (String file : FILES) {
            Files.copy(
                    place.resolve("signed").resolve(file),
                    SampleBooks.FOLDER.resolve(file),
                    StandardCopyOption.REPLACE_EXISTING);
        }
    }

    /** Design 14.9: three build sheets, signed by the two who closed the builds, after the last figure was measured. */
    @Test
    void each_measured_sheet_is_signed_by_two_on_the_day_its_build_was_closed() {
        Facts facts = shipped();
        assertThat(signings(facts))
                .extracting(sign ->
                        facts.of(Engine.class).get(build(facts, sign).engine()).number())
                .containsExactly("K03", "K05", "K06");
        assertThat(signings(facts)).allSatisfy(sign -> {
            SignOff fact = sign.fact();
            assertThat(fact.at()).isEqualTo(build(facts, sign).closed());
            assertThat(fact.seenByTwo()).isTrue();
            assertThat(build(facts, sign).signedBy()).isEqualTo(fact.by() + " and " + fact.second());
            assertThat(facts.of(Measurement.class)
                            .where(figure -> figure.build().equals(fact.build())))
                    .isNotEmpty()
                    .allMatch(figure -> figure.fact().at().isBefore(fact.at()));
        });
    }

    private static Build build(Facts facts, Entry<SignOff> signing) {
        return facts.of(Build.class).get(signing.fact().build());
    }

    /** Design 06: K05 stands 0.99 mm from the head on two cylinders, and its bolts and housings were not measured. */
    @Test
    void what_was_outside_or_not_measured_on_k05_was_signed_as_accepted() {
        Facts facts = shipped();
        Entry<SignOff> k05 = signings(facts).get(1);
        List<SignedCheck> open = facts
                .of(SignedCheck.class)
                .where(check -> check.signOff().equals(k05.id()))
                .stream()
                .map(Entry::fact)
                .filter(check -> check.verdict() == FitVerdict.OUTSIDE
                        || !check.accepted().isEmpty())
                .toList();
        assertThat(open).allMatch(check -> check.accepted().endsWith(", Crew chief"));
        assertThat(open)
                .filteredOn(check -> check.kind() == MeasureKind.CROWN_TO_HEAD)
                .extracting(SignedCheck::number, SignedCheck::value)
                .containsExactly(tuple(1, 990_000L), tuple(3, 990_000L));
        assertThat(facts.of(Concession.class).where(each -> k05.fact().build().equals(each.build())))
                .extracting(each -> each.fact().kind())
                .allMatch(kind -> open.stream().anyMatch(check -> check.kind() == kind));
    }

    @Test
    void on_the_evening_it_opens_every_signed_sheet_stands_as_it_was_signed() {
        Facts facts = shipped();
        for (Entry<SignOff> signing : signings(facts)) {
            SheetPage page = SeeBuildSheet.of(
                            SampleViews.on(facts, SampleViews.OPENING),
                            signing.fact().build())
                    .orElseThrow();
            assertThat(page.signed()).isEqualTo(signing);
            assertThat(SinceSigned.of(page)).isEmpty();
        }
    }
}
