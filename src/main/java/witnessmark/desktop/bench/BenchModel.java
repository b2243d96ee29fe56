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
    private @Nullable SheetPage typed;
    private How how;

    /**
     * What is typed at a place.
     *
     * @param text exactly as typed
     * @param how what was set while it was typed
     */
    record Entered(String text, How how) {}

    /**
     * All that what is said of a field depends on.
     *
     * @param typed the sheet with what is typed elsewhere
     * @param left whether the field was left with it
     */
    record Basis(SheetPage page, SheetPage typed, @Nullable Entered entered, boolean left) {
        /** Whether it is the same; sheets are, only where nothing came between. */
        boolean is(@Nullable Basis other) {
            return other != null
                    && page == other.page
                    && typed == other.typed
                    && left == other.left
                    && Objects.equals(entered, other.entered);
        }
    }

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
        entered.entrySet().removeIf(each -> same(each.getKey(), each.getValue().text()));
        if (!isDirty()) {
            typed = null;
        }
    }

    /** The sheet as it would stand with what could be read when it was last worked out, else as it is written. */
    SheetPage typed() {
        return typed == null || !isDirty() ? page : typed;
    }

    /** It is worked out how the sheet would stand. */
    void typed(SheetPage with) {
        typed = isDirty() ? with : null;
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

    /** Something is typed at a place. Where a figure is written, an empty text takes it back once that is written. */
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

    /** The field was left: from now on it is told when what stands in it cannot be read. */
    void leave(MeasurePlace place) {
        if (!entered.containsKey(place)) {
            return;
        }
        if (!counts(place)) {
            entered.remove(place);
            tell();
        } else if (left.add(place)) {
            tell();
        }
    }

    boolean wasLeft(MeasurePlace place) {
        return left.contains(place);
    }

    Basis basis(MeasurePlace place) {
        return new Basis(page, typed(), entered.get(place), left.contains(place));
    }

    /** What is typed there and not written; empty where a figure is taken back. */
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
        return entered.keySet().stream().anyMatch(this::counts);
    }

    /** Whether what stands at a place is to be written: a figure, or nothing where one is written. */
    private boolean counts(MeasurePlace place) {
        Entered typed = entered.get(place);
        return typed != null && (!typed.text().isBlank() || !written(place).isEmpty());
    }

    /** What is to be written, in measuring order; an empty text takes a figure back. */
    Map<MeasurePlace, Entered> toWrite() {
        Map<MeasurePlace, Entered> all = new LinkedHashMap<>();
        page.order().stream()
                .filter(this::counts)
                .forEach(place -> all.put(place, Objects.requireNonNull(entered.get(place))));
        return all;
    }

    /** Whether the figure written at a place is taken back. */
    boolean takesBack(MeasurePlace place) {
        return counts(place) && entered(place).isEmpty();
    }

    /** The same without what cannot be read. */
    Map<MeasurePlace, Entered> readable() {
        Map<MeasurePlace, Entered> all = toWrite();
        stopped().forEach(all::remove);
        return all;
    }

    /** What is typed at a place, read; its neighbours are those written and those typed. */
    WriteFigures.Understood read(MeasurePlace place, String text) {
        return WriteFigures.read(page, typed(), place, text);
    }

    /** The places that were left with what cannot be read or is doubtful, in measuring order, the former first. */
    List<MeasurePlace> needLook() {
        List<MeasurePlace> look = new ArrayList<>();
        List<MeasurePlace> unlike = new ArrayList<>();
        for (MeasurePlace place : page.order()) {
            Entered typed = left.contains(place) ? entered(place).orElse(null) : null;
            if (typed != null) {
                WriteFigures.Understood read = read(place, typed.text());
                if (read.parts() == null || !hows.reads(typed.how())) {
                    look.add(place);
                } else if (read.doubts().contains(WriteFigures.Doubt.UNLIKE_OTHERS)) {
                    unlike.add(place);
                }
            }
        }
        look.addAll(unlike);
        return look;
    }

    /** The places at which stands what cannot be read, in measuring order. */
    List<MeasurePlace> stopped() {
        return page.order().stream()
                .filter(place -> entered(place)
                        .filter(typed -> !hows.reads(typed.how())
                                || read(place, typed.text()).parts() == null)
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
        typed = null;
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
