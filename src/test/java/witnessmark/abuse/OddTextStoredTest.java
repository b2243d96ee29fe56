package witnessmark.abuse;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import witnessmark.domain.Entry;
import witnessmark.domain.Fact;
import witnessmark.domain.Standing;
import witnessmark.domain.image.Component;
import witnessmark.domain.image.EntryImage;
import witnessmark.domain.image.RecordType;
import witnessmark.domain.image.RecordTypes;
import witnessmark.logbook.port.Logbook;
import witnessmark.logbook.port.Written;
import witnessmark.outcome.Outcome;
import witnessmark.store.RandomFacts;
import witnessmark.store.Sentences;
import witnessmark.store.TestLogbooks;

/**
 * Texts that are statements, markup, escapes or halves of characters, in every text of every kind of record: what a
 * logbook takes it gives back to the letter, now and when it is opened again, and whatever it refuses it refuses in a
 * sentence.
 */
class OddTextStoredTest {
    @TempDir(factory = InMemory.class)
    Path folder;

    private int taken;
    private int refused;

    /** Half a character is none: it has no place in a file. */
    private static final Pattern HALF = Pattern.compile("[\\x{D800}-\\x{DFFF}]");

    @Test
    void every_text_of_every_record_comes_back_as_it_was_typed() {
        TestLogbooks logbooks = new TestLogbooks(folder);
        RandomFacts random = new RandomFacts(Numbers.seed());
        Map<Object, Entry<?>> written = new HashMap<>();
        try (Logbook logbook = logbooks.create()) {
            List<Entry<?>> all = random.oneOfEach(logbook.facts());
            TestLogbooks.write(logbook, all).orThrow();
            all.forEach(entry -> written.put(entry.id(), entry));
            Set<Class<?>> kinds = new HashSet<>();
            // two of a kind could not both go by the same name
            List<Entry<?>> firsts = all.stream()
                    .filter(entry -> kinds.add(entry.fact().getClass()))
                    .toList();
            for (String text : OddTexts.all()) {
                for (Entry<?> first : firsts) {
                    write(logbook, written.get(first.id()), text, written);
                }
            }
            assertThat(Truth.entries(logbook.facts())).isEqualTo(written);
            assertThat(logbook.verify()).isEmpty();
        }
        try (Logbook logbook = logbooks.open()) {
            assertThat(Truth.entries(logbook.facts())).isEqualTo(written);
        }
        Numbers.tell("R17 odd texts stored", Map.of("taken", taken, "refused", refused));
        assertThat(taken).isGreaterThan(100 * refused / 10);
    }

    private <F extends Fact> void write(Logbook logbook, Entry<F> entry, String text, Map<Object, Entry<?>> written) {
        @SuppressWarnings("unchecked") // a fact is of its own class
        RecordType<F> type = (RecordType<F>) RecordTypes.of(entry.fact().getClass());
        List<Component> components = type.components();
        @Nullable Object[] values = new Object[components.size()];
        boolean any = false;
        for (int i = 0; i < values.length; i++) {
            boolean words = components.get(i).type() == String.class;
            values[i] = words ? text : components.get(i).value(entry.fact());
            any |= words;
        }
        if (!any) {
            return;
        }
        Entry<F> next;
        try {
            next = new Entry<>(entry.id(), type.of(values), Standing.IN_FORCE, null, entry.rev() + 1);
        } catch (IllegalArgumentException | IllegalStateException noSuchFact) {
            refused++; // the record itself knows such a text is none, as an empty name
            return;
        }
        List<Entry<?>> change = new ArrayList<>(List.of(next));
        Outcome<Written> outcome = TestLogbooks.write(logbook, change);
        Sentences.complete(outcome.problems());
        if (outcome.didWork()) {
            taken++;
            Entry<F> now = logbook.facts().of(type.kind()).find(next.id()).orElseThrow();
            assertThat(now.fact()).as(text).isEqualTo(HALF.matcher(text).find() ? now.fact() : next.fact());
            assertThat(EntryImage.of(now).toString()).doesNotContainPattern(HALF);
            logbook.amendments(outcome.orThrow().change())
                    .forEach(inFile -> assertThat(EntryImage.of(now))
                            .as("in memory as in the file")
                            .containsAllEntriesOf(inFile.after()));
            written.put(next.id(), now);
        } else {
            refused++;
        }
    }
}
