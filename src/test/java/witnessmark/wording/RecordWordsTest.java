package witnessmark.wording;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import witnessmark.domain.Build;
import witnessmark.domain.ChannelKind;
import witnessmark.domain.ChannelUnit;
import witnessmark.domain.Coded;
import witnessmark.domain.EngineInCar;
import witnessmark.domain.Fact;
import witnessmark.domain.Fitment;
import witnessmark.domain.LimitRank;
import witnessmark.domain.PartKind;
import witnessmark.domain.Run;
import witnessmark.domain.Zone;
import witnessmark.domain.image.Component;
import witnessmark.domain.image.RecordType;
import witnessmark.domain.image.RecordTypes;
import witnessmark.ledger.result.Counted;
import witnessmark.quantity.Counter;

class RecordWordsTest {
    private final Texts texts = Texts.in(Locale.UK);
    private final RecordWords words = new RecordWords(texts);

    @Test
    void every_kind_of_record_every_word_of_a_list_and_every_counter_has_words_and_nothing_else_has() {
        Set<String> expected = new HashSet<>();
        for (RecordType<?> type : RecordTypes.all()) {
            expected.add(RecordWords.typeKey(type.kind()) + ".one");
            expected.add(RecordWords.typeKey(type.kind()) + ".many");
        }
        for (Coded word : allWords()) {
            expected.add(RecordWords.wordKey(word));
        }
        for (Counter counter : List.of(Counter.values())) {
            expected.add("records.counter." + counter.code().replace(' ', '_'));
        }
        for (Counted counted : Counted.values()) {
            expected.add("records.counted." + counted.name().toLowerCase(Locale.ROOT));
        }
        assertThat(texts.keys().stream()
                        .filter(key -> key.startsWith("records.")
                                && !key.startsWith("records.field.")
                                && !key.startsWith("records.run_field.")
                                && !key.startsWith("records.told_field.")
                                && !key.startsWith("records.value.")))
                .containsExactlyInAnyOrderElementsOf(expected);
    }

    @Test
    void every_name_can_be_asked_for_and_stands_inside_a_sentence() {
        List<String> names = new ArrayList<>();
        for (RecordType<?> type : RecordTypes.all()) {
            names.add(words.one(type.kind()));
            names.add(words.many(type.kind()));
        }
        for (Coded word : allWords()) {
            names.add(words.word(word));
        }
        for (Counter counter : List.of(Counter.values())) {
            names.add(words.counter(counter));
        }
        // a published standard keeps the name it has
        assertThat(names)
                .allSatisfy(name -> assertThat(name).matches("[a-z][a-zA-Z0-9, -]*[a-zA-Z]|SAE J\\d+|(ISO|DIN) \\d+"));
    }

    @Test
    void every_part_of_every_entry_has_a_label_and_no_label_is_left_over() {
        Set<String> labels = new HashSet<>();
        for (RecordType<?> type : RecordTypes.all()) {
            for (Component field : type.components()) {
                assertThat(words.field(type.kind(), field)).matches("[A-Z][a-z -]*[a-z]");
                String name = field.name().replaceAll("([A-Z])", "_$1").toLowerCase(Locale.ROOT);
                labels.add("records.field." + name);
                labels.add("records.field." + type.name() + "." + name);
            }
        }
        assertThat(labels)
                .containsAll(texts.keys().stream()
                        .filter(key -> key.startsWith("records.field."))
                        .toList());
    }

    @Test
    void no_two_parts_of_one_entry_have_the_same_label() {
        for (RecordType<?> type : RecordTypes.all()) {
            assertThat(type.components().stream().map(field -> words.field(type.kind(), field)))
                    .as(type.name())
                    .doesNotHaveDuplicates();
        }
    }

    /** Who reads "By" beside an empty field would put a name where a day is asked for, or a day where a name is. */
    @Test
    void a_day_is_never_called_as_a_person_is() {
        Map<String, Set<Boolean>> days = new TreeMap<>();
        for (RecordType<?> type : RecordTypes.all()) {
            for (Component field : type.components()) {
                String label = words.field(type.kind(), field);
                if (label.equals("By") || label.endsWith(" by") || label.equals("Due")) {
                    days.computeIfAbsent(label, each -> new TreeSet<>()).add(field.type() == LocalDate.class);
                }
            }
        }
        assertThat(days).containsEntry("By", Set.of(false)).containsEntry("Due", Set.of(true));
        assertThat(days.values()).allSatisfy(each -> assertThat(each).hasSize(1));
    }

    @Test
    void a_label_shared_by_all_entries_gives_way_to_an_entrys_own() {
        assertThat(field(Fitment.class, "to")).isEqualTo("Taken off");
        assertThat(field(Build.class, "note")).isEqualTo("Note");
        assertThat(field(Run.class, "waterHighest")).isEqualTo("Water");
        assertThat(words.counted(Counted.NOT_READ)).isEqualTo("not read");
    }

    private String field(Class<? extends Fact> kind, String name) {
        return RecordTypes.of(kind).components().stream()
                .filter(field -> field.name().equals(name))
                .map(field -> words.field(kind, field))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void two_words_of_one_list_are_never_called_the_same() {
        for (Class<?> list : lists()) {
            List<String> names = new ArrayList<>();
            for (Object word : list.getEnumConstants()) {
                names.add(words.word((Coded) word));
            }
            assertThat(names).as(list.getSimpleName()).doesNotHaveDuplicates();
        }
    }

    @Test
    void the_words_are_those_of_the_trade() {
        assertThat(words.one(EngineInCar.class)).isEqualTo("engine in a car");
        assertThat(words.many(EngineInCar.class)).isEqualTo("engines in cars");
        assertThat(words.word(PartKind.BIG_END_SHELLS)).isEqualTo("big-end shells");
        assertThat(words.word(LimitRank.RULE_BOOK)).isEqualTo("rule book");
        assertThat(words.word(Zone.OUT_OF_CAR)).isEqualTo("out of the car");
        assertThat(words.counter(Counter.HIGH_SPEED)).isEqualTo("high-speed time");
        assertThat(words.label("big-end shells")).isEqualTo("Big-end shells");
        assertThat(words.label("")).isEmpty();
    }

    private static List<Coded> allWords() {
        List<Coded> all = new ArrayList<>();
        for (Class<?> list : lists()) {
            for (Object word : list.getEnumConstants()) {
                all.add((Coded) word);
            }
        }
        return all;
    }

    /** Every closed list of the domain, found among its classes. */
    private static List<? extends Class<?>> lists() {
        return new ClassFileImporter()
                .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS).importPackagesOf(Coded.class).stream()
                        .filter(JavaClass::isEnum)
                        .filter(each -> each.isAssignableTo(Coded.class))
                        // no entry holds a channel; what it is called stands with the traces
                        .filter(each ->
                                !each.isEquivalentTo(ChannelKind.class) && !each.isEquivalentTo(ChannelUnit.class))
                        .map(JavaClass::reflect)
                        .toList();
    }
}
