package witnessmark.store;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Comparator;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Car;
import witnessmark.logbook.port.Drafts.Draft;
import witnessmark.logbook.port.Logbook;
import witnessmark.outcome.Outcome;

/**
 * A program with a store of its own, told line by line on standard input what to do. It answers each with one line:
 * {@code worked}, {@code except} or {@code did not}, then, after tabs, each problem's kind and sentence.
 */
final class ChildMain {
    private final String host;
    private SqliteLogbookFiles files;
    private @Nullable Logbook logbook;

    private ChildMain(Path data, String host) {
        this.host = host;
        this.files = filesIn(data);
    }

    private SqliteLogbookFiles filesIn(Path data) {
        return new SqliteLogbookFiles(data, System::currentTimeMillis, () -> host, new Holder(host, "Bea"));
    }

    /** @param args the data folder, the computer's name */
    public static void main(String[] args) throws Exception {
        ChildMain child = new ChildMain(Path.of(args[0]), args[1]);
        BufferedReader in = new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8));
        for (String line = in.readLine(); line != null; line = in.readLine()) {
            String[] words = line.split(" ", 2);
            System.out.println(child.answer(words[0], words.length > 1 ? words[1] : ""));
        }
    }

    private String answer(String verb, String rest) throws IOException, InterruptedException {
        return switch (verb) {
            case "home" -> {
                files = filesIn(Path.of(rest));
                yield "worked";
            }
            case "create" -> taken(files.create(Path.of(rest)));
            case "open" -> taken(files.open(Path.of(rest)));
            case "car" -> said(TestLogbooks.write(book(), Garage.made(new Car(rest, ""))));
            case "cars" -> names();
            case "backup" -> said(book().backUp());
            case "begin" -> said(book().secondPlace().begin(Path.of(rest)));
            case "second" -> said(book().secondPlace().write(Path.of(rest)));
            case "verify" -> book().verify().isEmpty() ? "worked" : "did not " + book().verify();
            case "keep" -> book().drafts().keep("form", "", draft(rest)).toString();
            case "draft" ->
                book().drafts()
                        .find("form", "")
                        .map(d -> d.fields().get("text"))
                        .orElse("none");
            case "shell" -> "status " + shell(rest);
            case "close" -> {
                book().close();
                yield "worked";
            }
            default -> throw new IllegalArgumentException(verb);
        };
    }

    private String taken(Outcome<Logbook> opened) {
        if (opened.didWork()) {
            logbook = opened.orThrow();
        }
        return said(opened);
    }

    private Logbook book() {
        Logbook open = logbook;
        if (open == null) {
            throw new IllegalStateException("no logbook is open");
        }
        return open;
    }

    private String names() {
        return book().facts().of(Car.class).all().stream()
                .map(entry -> entry.fact().name())
                .sorted(Comparator.naturalOrder())
                .collect(Collectors.joining(","));
    }

    private static Draft draft(String text) {
        return new Draft(Map.of("text", text), Instant.now());
    }

    private static int shell(String command) throws IOException, InterruptedException {
        return new ProcessBuilder("sh", "-c", command)
                .redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start()
                .waitFor();
    }

    private static String said(Outcome<?> outcome) {
        String start = outcome instanceof Outcome.Worked<?> ? "worked" : outcome.didWork() ? "except" : "did not";
        return outcome.problems().stream()
                .map(problem -> "\t" + problem.kind() + "\t" + Sentences.of(problem))
                .collect(Collectors.joining("", start, ""));
    }
}
