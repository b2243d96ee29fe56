package witnessmark.logbook.bank;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Random;
import java.util.UUID;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import witnessmark.domain.BankLine;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.Standing;
import witnessmark.domain.StatementForm;
import witnessmark.domain.Team;
import witnessmark.exchange.CsvStatementFiles;
import witnessmark.logbook.port.StatementRows;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.EngineSpeed;
import witnessmark.quantity.Money;

/** Seeded statements written in a seeded dialect come back as they were; the same line is never taken twice. */
class TakeStatementTest {
    private static final Currency EUR = Currency.getInstance("EUR");
    private static final String ACCOUNT = "team account";

    @TempDir
    Path folder;

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 150);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void a_statement_in_any_dialect_comes_back_line_for_line(long seed) throws IOException {
        Random random = new Random(seed);
        Dialect dialect = new Dialect(random);
        List<BankLine> lines = lines(random, dialect.reference);
        StatementRows rows = rows(dialect.write(lines));
        StatementForm form = GuessForm.of(facts(List.of()), rows, ACCOUNT).orElseThrow();
        Statement statement = TakeStatement.read(facts(List.of()), rows, form, ACCOUNT);
        assertThat(statement.unread()).as("seed %d: %s", seed, dialect).isEmpty();
        assertThat(statement.fresh()).as("seed %d: %s", seed, dialect).isEqualTo(lines);
        assertThat(statement.odd()).hasSize(dialect.preamble ? 3 : 0);
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void the_same_statement_again_and_one_that_overlaps_bring_only_what_is_new(long seed) throws IOException {
        Random random = new Random(seed);
        Dialect dialect = new Dialect(random);
        List<BankLine> lines = lines(random, dialect.reference);
        StatementRows all = rows(dialect.write(lines));
        StatementForm form = GuessForm.of(facts(List.of()), all, ACCOUNT).orElseThrow();
        List<BankLine> first = lines.subList(0, lines.size() / 2);
        Facts half = facts(TakeStatement.read(facts(List.of()), rows(dialect.write(first)), form, ACCOUNT)
                .fresh());
        Statement whole = TakeStatement.read(half, all, form, ACCOUNT);
        assertThat(whole.known()).isEqualTo(first.size());
        assertThat(whole.fresh()).isEqualTo(lines.subList(first.size(), lines.size()));
        assertThat(TakeStatement.read(facts(lines), all, form, ACCOUNT).fresh()).isEmpty();
        assertThat(TakeStatement.read(facts(lines), all, form, "another account")
                        .fresh())
                .hasSameSizeAs(lines);
    }

    @Test
    void two_lines_that_read_the_same_on_one_statement_are_two() throws IOException {
        String text = "Date;Text;Amount\n1.4.2026;toll;-12,50\n1.4.2026;toll;-12,50\n2.4.2026;toll;-12,50\n";
        StatementRows rows = rows(text.getBytes(StandardCharsets.UTF_8));
        StatementForm form = GuessForm.of(facts(List.of()), rows, ACCOUNT).orElseThrow();
        List<BankLine> taken =
                TakeStatement.read(facts(List.of()), rows, form, ACCOUNT).fresh();
        assertThat(taken).extracting(BankLine::nth).containsExactly(1, 2, 1);
        assertThat(TakeStatement.read(facts(taken), rows, form, ACCOUNT).fresh())
                .isEmpty();
    }

    @Test
    void a_form_that_was_used_for_the_same_headings_is_used_again() throws IOException {
        String text = "Date,Amount,Text\n1/4/2026,-12.50,toll\n2/4/2026,-3.00,tea\n";
        StatementForm american = new StatementForm(
                "card", "Date\nAmount\nText", "Date", "M/d/uuuu", "Amount", "", "", "Text", "", "", "EUR", ".");
        Facts facts = facts(List.of())
                .with(List.of(new Entry<>(new Id<>(new UUID(9, 9)), american, Standing.IN_FORCE, null, 1)));
        assertThat(GuessForm.of(facts, rows(text.getBytes(StandardCharsets.UTF_8)), ACCOUNT))
                .contains(american);
    }

    /** A month of garbage: what can be read is, and every other row is named by its line, heading and text. */
    @Test
    void rows_that_cannot_be_read_are_named_and_the_others_taken() throws IOException {
        String text = "Date;Text;Amount\n"
                + "1.4.2026;entry;-520,00\n"
                + "31.2.2026;no such day;-1,00\n"
                + "2.4.2026;three decimals;-12,345\n"
                + "3.4.2026;a word;twelve\n"
                + "total;;\n"
                + "4.4.2026;refund;390,00\n"
                + "5.4.2026;tyres;-740,00\n".repeat(30);
        StatementRows rows = rows(text.getBytes(StandardCharsets.UTF_8));
        StatementForm form = GuessForm.of(facts(List.of()), rows, ACCOUNT).orElseThrow();
        Statement read = TakeStatement.read(facts(List.of()), rows, form, ACCOUNT);
        assertThat(read.fresh()).hasSize(32);
        assertThat(read.unread())
                .containsExactly(
                        new Statement.Unread(3, "Date", "31.2.2026"),
                        new Statement.Unread(4, "Amount", "-12,345"),
                        new Statement.Unread(5, "Amount", "twelve"),
                        new Statement.Unread(6, "Date", "total"));
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4})
    void noise_is_refused_or_read_as_nothing_and_never_thrown_over(long seed) throws IOException {
        Random random = new Random(seed);
        for (int i = 0; i < 200; i++) {
            byte[] noise = new byte[random.nextInt(400)];
            random.nextBytes(noise);
            if (random.nextBoolean()) {
                for (int k = 0; k < noise.length; k++) {
                    noise[k] = (byte) ",;\t|\"\n\r 0123456789.-abc".charAt(random.nextInt(23));
                }
            }
            Path file = folder.resolve("noise.csv");
            Files.write(file, noise);
            Outcome<StatementRows> read = new CsvStatementFiles().read(file);
            if (read.didWork()) {
                GuessForm.of(facts(List.of()), read.orThrow(), ACCOUNT)
                        .ifPresent(form -> TakeStatement.read(facts(List.of()), read.orThrow(), form, ACCOUNT));
            } else {
                assertThat(read.problems()).extracting(Problem::kind).containsOnly(ProblemKind.CANNOT_READ_FILE);
            }
        }
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            value = {
                "-1.037,50 | , | -1037.50 EUR",
                "1.037,50- | , | -1037.50 EUR",
                "1,037.50 CR | . | 1037.50 EUR",
                "1,037.50 DR | . | -1037.50 EUR",
                "(16.00) | . | -16.00 EUR",
                "16,00 S | , | -16.00 EUR",
                "16,00 H | , | 16.00 EUR",
                "1'037.50 | . | 1037.50 EUR",
                "1 037,50 | , | 1037.50 EUR",
                "+5 | . | 5.00 EUR",
                "-€5.10 | . | -5.10 EUR",
                "5.10 EUR | . | 5.10 EUR",
                "12.500 | . | 12.50 EUR",
            })
    void an_amount_is_read_as_banks_print_it(String text, char decimal, String expected) {
        assertThat(BankAmount.read(text, decimal, EUR)).contains(Money.parse(expected));
    }

    @ParameterizedTest(name = "\"{0}\"")
    @CsvSource(
            delimiter = '|',
            value = {
                "'' | .",
                "twelve | .",
                "12.345 | .",
                "1.2.3 | .",
                "1,23.4 | .",
                "12;5 | ,",
                "1,037.50 | ,",
                "- | ."
            })
    void what_is_no_amount_is_not_read(String text, char decimal) {
        assertThat(BankAmount.read(text, decimal, EUR)).isEmpty();
    }

    private StatementRows rows(byte[] bytes) throws IOException {
        Path file = folder.resolve("statement.csv");
        Files.write(file, bytes);
        return new CsvStatementFiles().read(file).orThrow();
    }

    /** Days rise, some past the 12th, so that day and month can be told apart; amounts of both signs. */
    private static List<BankLine> lines(Random random, boolean reference) {
        List<BankLine> lines = new ArrayList<>();
        for (int i = 0; i < 12 + random.nextInt(20); i++) {
            long minor = (1 + random.nextInt(400_000)) * (random.nextInt(3) == 0 ? 1L : -1L);
            lines.add(new BankLine(
                    ACCOUNT,
                    i == 0 ? java.time.LocalDate.of(2026, 4, 23) : Dialect.day(random),
                    new Money(i == 0 ? -123_456 : i == 1 ? 99_999 : minor, EUR),
                    "payee " + i + (random.nextInt(4) == 0 ? "; \"größer\", Ærø" : " Straße"),
                    reference ? "BK" + (1000 + i) : "",
                    1,
                    "statement.csv",
                    ""));
        }
        return lines;
    }

    private static Facts facts(List<BankLine> lines) {
        EngineSpeed any = new EngineSpeed(500);
        List<Entry<?>> entries = new ArrayList<>();
        entries.add(new Entry<>(
                new Id<>(new UUID(1, 1)),
                new Team("Team", ZoneId.of("Europe/London"), "EUR", any, any, any),
                Standing.IN_FORCE,
                null,
                1));
        for (int i = 0; i < lines.size(); i++) {
            entries.add(new Entry<>(new Id<>(new UUID(2, i)), lines.get(i), Standing.IN_FORCE, null, 1));
        }
        return Facts.none().with(entries);
    }
}
