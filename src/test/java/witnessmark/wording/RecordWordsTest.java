package witnessmark.wording;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.junit.jupiter.api.Test;
import witnessmark.domain.Coded;
import witnessmark.domain.EngineInCar;
import witnessmark.domain.LimitRank;
import witnessmark.domain.PartKind;
import witnessmark.domain.Zone;
import witnessmark.domain.image.RecordType;
import witnessmark.domain.image.RecordTypes;
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
        for (Counter counter : Counter.values()) {
            expected.add("records.counter." + counter.code().replace(' ', '_'));
        }
        assertThat(texts.keys().stream().filter(key -> key.startsWith("records.")))
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
        for (Counter counter : Counter.values()) {
            names.add(words.counter(counter));
        }
        assertThat(names).allSatisfy(name -> assertThat(name).matches("[a-z][a-z -]*[a-z]"));
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
                        .map(JavaClass::reflect)
                        .toList();
    }
}
