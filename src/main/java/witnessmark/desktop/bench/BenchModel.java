package witnessmark.desktop.bench;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.form.KeptDraft;
import witnessmark.domain.MeasurePlace;
import witnessmark.domain.Measurement;
import witnessmark.logbook.measuring.SheetPage;
import witnessmark.logbook.measuring.WriteFigures;

/** One build's sheet with what is typed on it and not yet written. What is typed stays as typed. */
final class BenchModel {
    private static final String HOW = " how";

    private final Map<MeasurePlace, Entered> entered = new TreeMap<>();
    private final Set<MeasurePlace> left = new HashSet<>();
    private final List<Runnable> listeners = new ArrayList<>();
    private final Hows hows;
    private SheetPage page;
    private How how;

    /**
     * What is typed at a place.
     *
     * @param text exactly as typed
     * @param how what was set while it was typed
     */
    record Entered(String text, How how) {}

    BenchModel(SheetPage page, How how, Hows hows) {
        this.page = page;
        this.hows = hows;
        this.how = how;
    }

    /** Told after every change of what is typed. */
    void onChange(Runnable listener) {
        listeners.add(listener);
    }

    SheetPage page() {
        return page;
    }

    /** The logbook says something else now; what was typed stays unless it is written just so. */
    void become(SheetPage now) {
        page = now;
        entered.entrySet()
                .removeIf(typed -> same(typed.getKey(), typed.getValue().text()));
    }

    private boolean same(MeasurePlace place, String text) {
        return text.strip().equals(written(place));
    }

    /** What is written at a place, as it was typed; empty when nothing is. */
    String written(MeasurePlace place) {
        return page.figure(place).map(Measurement::typed).orElse("");
    }

    /** What stands in the field. */
    String text(MeasurePlace place) {
        Entered typed = entered.get(place);
        return typed == null ? written(place) : typed.text();
    }

    /** Something is typed at a place. An empty text takes nothing away: what is written stays. */
    void type(MeasurePlace place, String text) {
        if (text.equals(text(place))) {
            return;
        }
        if (!text.isBlank() && same(place, text)) {
            entered.remove(place);
        } else {
            Entered before = entered.get(place);
            entered.put(place, new Entered(text, before == null ? how : before.how()));
        }
        tell();
    }

    /**
     * The field was left: from now on it is told when what stands in it cannot be read. Where it was emptied, what is
     * written stands in it again.
     */
    void leave(MeasurePlace place) {
        Entered typed = entered.get(place);
        if (typed != null && typed.text().isBlank()) {
            entered.remove(place);
            tell();
        } else if (typed != null && left.add(place)) {
            tell();
        }
    }

    boolean wasLeft(MeasurePlace place) {
        return left.contains(place);
    }

    /** What is typed there and not written. */
    Optional<Entered> entered(MeasurePlace place) {
        return Optional.ofNullable(entered.get(place))
                .filter(typed -> !typed.text().isBlank());
    }

    Hows hows() {
        return hows;
    }

    /** What is set for what is typed next. */
    How how() {
        return how;
    }

    /** Sets it for what is typed next, and for the field in hand where that is typed already. */
    void how(How next, @Nullable MeasurePlace inHand) {
        how = next;
        Entered typed = inHand == null ? null : entered.get(inHand);
        if (typed != null) {
            entered.put(Objects.requireNonNull(inHand), new Entered(typed.text(), next));
        }
        tell();
    }

    boolean isDirty() {
        return entered.values().stream().anyMatch(typed -> !typed.text().isBlank());
    }

    /** What is to be written, in measuring order. */
    Map<MeasurePlace, Entered> toWrite() {
        Map<MeasurePlace, Entered> all = new LinkedHashMap<>();
        page.order().forEach(place -> entered(place).ifPresent(typed -> all.put(place, typed)));
        return all;
    }

    /** The places at which stands what cannot be read, in measuring order. */
    List<MeasurePlace> stopped() {
        return page.order().stream()
                .filter(place -> entered(place)
                        .filter(typed -> !hows.reads(typed.how())
                                || WriteFigures.read(page, place, typed.text()).parts() == null)
                        .isPresent())
                .toList();
    }

    /** Somebody wants to write: every field is told of as if it had been left. */
    void ask() {
        left.addAll(entered.keySet());
        tell();
    }

    /** It is written: what was typed since stays. */
    void written(Map<MeasurePlace, Entered> saved) {
        saved.forEach(entered::remove);
        left.clear();
        tell();
    }

    /** The first place where nothing stands yet, or the first of all. */
    Optional<MeasurePlace> firstEmpty() {
        return page.order().stream()
                .filter(place -> text(place).isBlank())
                .findFirst()
                .or(() -> page.order().stream().findFirst());
    }

    // The draft

    Map<String, String> draft(@Nullable MeasurePlace caret) {
        Map<String, String> kept = new HashMap<>();
        toWrite().forEach((place, typed) -> {
            kept.put(key(place), typed.text());
            kept.put(key(place) + HOW, typed.how().kept());
        });
        if (caret != null) {
            kept.put(KeptDraft.CARET, key(caret));
        }
        return kept;
    }

    /** Puts a draft on the sheet, and says where the caret was. What was typed meanwhile stays. */
    Optional<MeasurePlace> restore(Map<String, String> kept) {
        MeasurePlace caret = null;
        for (MeasurePlace place : page.order()) {
            String text = kept.get(key(place));
            if (text != null && !entered.containsKey(place) && !same(place, text)) {
                entered.put(place, new Entered(text, How.from(kept.getOrDefault(key(place) + HOW, ""), how)));
                left.add(place);
            }
            if (key(place).equals(kept.get(KeptDraft.CARET))) {
                caret = place;
            }
        }
        tell();
        return Optional.ofNullable(caret);
    }

    /** How a place is named in a draft. */
    private static String key(MeasurePlace place) {
        return place.kind().code()
                + (place.number() == null ? "" : " " + place.number())
                + (place.spot() == null ? "" : ", " + place.spot().code());
    }

    private void tell() {
        List.copyOf(listeners).forEach(Runnable::run);
    }
}
