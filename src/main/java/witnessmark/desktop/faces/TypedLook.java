package witnessmark.desktop.faces;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.form.KeptDraft;
import witnessmark.domain.FaceKind;
import witnessmark.domain.Id;
import witnessmark.fit.result.face.Face;
import witnessmark.logbook.faces.FacePage;
import witnessmark.logbook.faces.FaceText;
import witnessmark.logbook.faces.SeeFaces;
import witnessmark.logbook.port.Drafts;
import witnessmark.logbook.port.Written;
import witnessmark.logbook.sheets.LookAtFace;
import witnessmark.logbook.sheets.SheetField;
import witnessmark.logbook.sheets.SheetUnits;
import witnessmark.logbook.sheets.WriteSheet;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Problem;
import witnessmark.quantity.Length;
import witnessmark.quantity.typed.TypedFigure;
import witnessmark.wording.Problems;
import witnessmark.wording.Texts;
import witnessmark.wording.Units;

/** What is found on a face while it is typed: kept as a draft, drawn as far as it is understood, written as one change. */
final class TypedLook {
    private static final Logger LOG = LoggerFactory.getLogger(TypedLook.class);
    private static final String FORM = "face look";
    private static final Length DIAL = Length.ofMillimetres(new BigDecimal("0.01"));

    private final FacesContext context;
    private final Texts texts;
    private final Problems problems;
    private final FaceEntry entry;
    private final Runnable redraw;
    private final Runnable written;
    private final WriteSheet sheets;
    private final LookAtFace sheet = new LookAtFace();
    private @Nullable FacePage page;
    private @Nullable KeptDraft draft;
    private boolean dirty;
    private boolean working;

    /**
     * @param redraw what is drawn has changed
     * @param written it is in the logbook
     */
    TypedLook(FacesContext context, FaceEntry entry, Runnable redraw, Runnable written) {
        this.context = context;
        this.texts = context.tools().texts();
        this.problems = new Problems(texts, context.measures());
        this.entry = entry;
        this.redraw = redraw;
        this.written = written;
        Units units = context.measures().units();
        this.sheets = new WriteSheet(
                context.book(),
                context.ids(),
                new SheetUnits(
                        units.length(), units.pressure(), units.temperature(), units.distance(), context.days()));
    }

    /** Whether something is typed that is not written. */
    boolean isDirty() {
        return page != null && dirty;
    }

    boolean isOpen() {
        return page != null;
    }

    /** Begins on a part, with the draft that was kept of it. */
    void open(FacePage of) {
        page = of;
        dirty = false;
        KeptDraft kept = new KeptDraft(
                context.book(),
                context.tools().tasks(),
                texts,
                FORM,
                of.part().id().text(),
                () -> dirty,
                this::fields,
                this::said);
        draft = kept;
        load(Map.of());
        context.tools()
                .tasks()
                .run(
                        texts.get("form.draft.finding"),
                        kept::find,
                        found -> found.ifPresent(before -> restore(kept, before)),
                        failure -> LOG.error("the draft of a face could not be looked for", failure));
    }

    private void restore(KeptDraft kept, Drafts.Draft before) {
        if (draft == kept && !dirty) {
            kept.found(before, () -> load(before.fields()));
            dirty = true;
            redraw.run();
        }
    }

    private void load(Map<String, String> fields) {
        FacePage of = Objects.requireNonNull(page);
        List<FaceKind> faces = Stream.of(FaceKind.values())
                .filter(SeeFaces.faces(of.kind())::contains)
                .toList();
        entry.load(of.part().fact().mark(), faces, context.book().today().day().toString(), fields);
        said();
    }

    private Map<String, String> fields() {
        Map<String, String> fields = new HashMap<>();
        typed().forEach((field, text) -> fields.put(field.key(), text));
        return fields;
    }

    private Map<SheetField, String> typed() {
        FacePage of = page;
        return of == null
                ? Map.of()
                : entry.typed(of.part().id().text(), context.book().who());
    }

    void changed() {
        KeptDraft kept = draft;
        dirty = !entry.text().isBlank();
        if (kept != null && page != null) {
            kept.typed();
            entry.refused(List.of());
        }
    }

    void close() {
        KeptDraft kept = draft;
        if (kept != null) {
            kept.now();
        }
        page = null;
        draft = null;
    }

    @Nullable
    FaceKind face() {
        return entry.face();
    }

    /** The lines as they are understood so far. */
    List<FaceText.Line> lines(Face face) {
        if (page == null) {
            return List.of();
        }
        Optional<Length> finest = TypedFigure.read(
                        entry.finest(), context.measures().units().length())
                .only();
        List<FaceText.Line> all = new FaceText(
                        face,
                        new Id<>(new UUID(0, 0)),
                        finest.filter(step -> step.nanometres() > 0).orElse(DIAL),
                        entry.fromExhaust())
                .read(entry.text());
        int understood = (int) all.stream()
                .filter(line -> line.point() != null || line.edge() != null || line.mark() != null)
                .count();
        String wrong = all.stream()
                .map(FaceText.Line::problem)
                .flatMap(Stream::ofNullable)
                .findFirst()
                .map(problems::note)
                .orElse("");
        entry.understood(understood, wrong);
        return all;
    }

    /**
     * Which reading of the map the caret is in, or −1.
     *
     * @param before how many are drawn before those typed
     */
    int inHand(int before) {
        FacePage of = page;
        if (of == null || of.face() == null) {
            return -1;
        }
        int line = entry.line();
        int reading = -1;
        for (FaceText.Line each : lines(of.face())) {
            if (each.point() != null) {
                reading++;
            }
            if (each.number() == line) {
                return each.point() == null ? -1 : before + reading;
            }
        }
        return -1;
    }

    void save() {
        FacePage of = page;
        KeptDraft kept = draft;
        if (of == null || kept == null || working) {
            return;
        }
        Map<SheetField, String> typed = typed();
        List<Problem> stops = sheets.read(sheet, typed).problems().stream()
                .filter(Problem::stops)
                .toList();
        if (!stops.isEmpty()) {
            entry.refused(stops.stream().map(problems::sentence).toList());
            return;
        }
        working = true;
        kept.hold();
        String mark = of.part().fact().mark();
        String why = texts.get("facemap.entry.why", mark);
        context.tools()
                .tasks()
                .write(
                        why,
                        () -> {
                            Outcome<Written> outcome = sheets.save(sheet, typed, why);
                            if (outcome.didWork()) {
                                kept.discardHere();
                            }
                            return outcome;
                        },
                        outcome -> saved(outcome, kept, mark),
                        this::couldNot);
    }

    private void saved(Outcome<Written> outcome, KeptDraft kept, String mark) {
        working = false;
        if (!outcome.didWork()) {
            entry.refused(outcome.problems().stream().map(problems::sentence).toList());
            kept.typed();
            return;
        }
        kept.gone();
        page = null;
        draft = null;
        context.window()
                .say(
                        texts.get("facemap.entry.saved", mark),
                        Caption.of(texts.get("facemap.entry.undo")),
                        context.undo());
        context.window().changed();
        written.run();
    }

    private void couldNot(Throwable thrown) {
        LOG.error("what was found on a face could not be written", thrown);
        working = false;
        entry.refused(List.of(texts.get("facemap.entry.failed")));
        KeptDraft kept = draft;
        if (kept != null) {
            kept.typed();
        }
    }

    private void said() {
        KeptDraft kept = draft;
        entry.draft(kept == null ? "" : kept.line());
    }
}
