package witnessmark.desktop.faces;

import java.awt.event.KeyEvent;
import java.awt.geom.Rectangle2D;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import javax.swing.JLabel;
import javax.swing.JPanel;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.form.Buttons;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.form.ChoiceBox;
import witnessmark.desktop.form.FieldBox;
import witnessmark.desktop.form.FormFoot;
import witnessmark.desktop.form.FormKeys;
import witnessmark.desktop.form.FormLayout;
import witnessmark.desktop.form.Keys;
import witnessmark.desktop.form.Lettering;
import witnessmark.desktop.form.NotesBox;
import witnessmark.desktop.form.NoticeStrip;
import witnessmark.desktop.form.Styles;
import witnessmark.domain.FaceKind;
import witnessmark.domain.FaceMethod;
import witnessmark.logbook.sheets.LookAtFace;
import witnessmark.logbook.sheets.SheetField;
import witnessmark.wording.RecordWords;
import witnessmark.wording.Texts;

/** What is found on a face as it is typed or marked on the map, a line for each. */
final class FaceEntry extends JPanel {
    private static final int LINES = 12;

    private final transient Texts texts;
    private final transient RecordWords words;
    private final JLabel title = Lettering.cutLine(" ", Styles.SECTION);
    private final ChoiceBox<FaceKind> face;
    private final FieldBox day;
    private final ChoiceBox<FaceMethod> method;
    private final FieldBox finest;
    private final ChoiceBox<String> counted;
    private final NotesBox lines;
    private final NoticeStrip refused = new NoticeStrip();
    private final FormFoot foot;
    private boolean loading;

    /** What hears of it. */
    interface Told {
        /** Something was typed or chosen, or the caret went to another line. */
        void changed();

        void save();

        void close();
    }

    FaceEntry(Texts texts, Told told) {
        super(new FormLayout("insets 0, gap 8 6, fillx, hidemode 3", "[0::,grow,fill][0::,grow,fill]"));
        this.texts = texts;
        this.words = new RecordWords(texts);
        setOpaque(false);
        face = new ChoiceBox<>(texts, Caption.of(texts.get("facemap.entry.face")), words::word);
        day = new FieldBox(Caption.of(texts.get("facemap.entry.day")));
        method = new ChoiceBox<>(texts, Caption.of(texts.get("facemap.entry.method")), words::word);
        finest = new FieldBox(Caption.of(texts.get("facemap.entry.finest")));
        counted = new ChoiceBox<>(
                texts,
                Caption.of(texts.get("facemap.entry.counted")),
                from -> texts.get(
                        from.equals(LookAtFace.FROM_EXHAUST)
                                ? "facemap.entry.counted.exhaust"
                                : "facemap.entry.counted.inlet"));
        lines = new NotesBox(Caption.of(texts.get("facemap.entry.lines")), LINES);
        foot = new FormFoot(List.of(
                Buttons.plain(Caption.of(texts.get("facemap.entry.close")), told::close),
                Buttons.main(Caption.of(texts.get("facemap.entry.save")), Keys.menu(KeyEvent.VK_ENTER), told::save)));
        method.load(Arrays.asList(FaceMethod.values()), FaceMethod.PLATE_AND_DIAL);
        counted.load(List.of(LookAtFace.FROM_INLET, LookAtFace.FROM_EXHAUST), LookAtFace.FROM_INLET);
        FormKeys.bindWithin(this, Keys.menu(KeyEvent.VK_ENTER), "wm-save", told::save);
        hear(told);
        add(title, "span, growx, wmin 0, wrap");
        add(Lettering.paragraph(texts.get("facemap.entry.how"), Styles.NOTE), "span, growx, wmin 0, wrap");
        add(face, "growx, wmin 0");
        add(day, "growx, wmin 0, wrap");
        add(method, "span, growx, wmin 0, wrap");
        add(finest, "growx, wmin 0");
        add(counted, "growx, wmin 0, wrap");
        add(lines, "span, growx, wmin 0, wrap");
        add(refused, "span, growx, wmin 0, wrap");
        add(foot, "span, growx, wmin 0");
    }

    private void hear(Told told) {
        Runnable changed = () -> {
            if (!loading) {
                told.changed();
            }
        };
        face.onChange(changed);
        day.onChange(changed);
        finest.onChange(changed);
        counted.onChange(changed);
        lines.onChange(changed);
        method.onChange(() -> {
            finest.load(step(method.chosen()));
            changed.run();
        });
        lines.area().addCaretListener(e -> changed.run());
    }

    private static String step(@Nullable FaceMethod method) {
        return method == FaceMethod.STRAIGHTEDGE
                ? "0.03"
                : method == FaceMethod.EYE || method == FaceMethod.BLUE ? "1" : "0.01";
    }

    /** Begins on another face, with what was kept of it. */
    void load(String part, List<FaceKind> faces, String today, Map<String, String> kept) {
        loading = true;
        title.setText(texts.get("facemap.entry.title", part));
        FaceKind wanted = faces.stream()
                .filter(each -> each.code().equals(kept.get(LookAtFace.FACE.key())))
                .findFirst()
                .orElse(faces.isEmpty() ? null : faces.get(0));
        face.load(faces, wanted);
        day.load(kept.getOrDefault(LookAtFace.WHEN.key(), today));
        method.choose(Stream.of(FaceMethod.values())
                .filter(each -> each.code().equals(kept.get(LookAtFace.METHOD.key())))
                .findFirst()
                .orElse(FaceMethod.PLATE_AND_DIAL));
        finest.load(kept.getOrDefault(LookAtFace.FINEST.key(), step(method.chosen())));
        counted.choose(kept.getOrDefault(LookAtFace.COUNTED.key(), LookAtFace.FROM_INLET));
        lines.load(kept.getOrDefault(LookAtFace.FOUND.key(), ""));
        refused.dismiss();
        loading = false;
    }

    /** What stands in the fields, as the sheet takes it. */
    Map<SheetField, String> typed(String part, String by) {
        Map<SheetField, String> typed = new HashMap<>();
        typed.put(LookAtFace.PART, part);
        typed.put(LookAtFace.BY, by);
        typed.put(LookAtFace.FACE, face.chosen() == null ? "" : face.chosen().code());
        typed.put(LookAtFace.WHEN, day.text());
        typed.put(
                LookAtFace.METHOD,
                method.chosen() == null ? "" : method.chosen().code());
        typed.put(LookAtFace.FINEST, finest.text());
        typed.put(LookAtFace.COUNTED, counted.chosen() == null ? "" : counted.chosen());
        typed.put(LookAtFace.FOUND, lines.text());
        return typed;
    }

    String text() {
        return lines.text();
    }

    String finest() {
        return finest.text();
    }

    boolean fromExhaust() {
        return LookAtFace.FROM_EXHAUST.equals(counted.chosen());
    }

    @Nullable
    FaceKind face() {
        return face.chosen();
    }

    /** The line the caret is in, counted from 1. */
    int line() {
        String before = lines.text()
                .substring(
                        0,
                        Math.min(lines.area().getCaretPosition(), lines.text().length()));
        return (int) before.chars().filter(letter -> letter == '\n').count() + 1;
    }

    /**
     * What somebody marked on the map becomes a line; its depth is typed behind it.
     *
     * @param width of the face
     */
    void marked(Rectangle2D place, double width) {
        String start = lines.text().isEmpty() || lines.text().endsWith("\n") ? "" : "\n";
        double y = fromExhaust() ? width - place.getCenterY() : place.getCenterY();
        String at = whole(place.getCenterX()) + " " + whole(y);
        String line = place.getWidth() > 0
                ? "low area " + at + " " + whole(place.getWidth()) + "x" + whole(place.getHeight()) + " "
                : at + " ";
        lines.area().append(start + line);
        lines.area().setCaretPosition(lines.area().getDocument().getLength());
        lines.area().requestFocusInWindow();
    }

    private static String whole(double millimetres) {
        return Long.toString(Math.round(millimetres));
    }

    /** What was understood, and what was not. */
    void understood(int understood, String problem) {
        if (problem.isEmpty()) {
            lines.echo(texts.get("facemap.entry.understood", understood));
        } else {
            lines.query(problem);
        }
    }

    void refused(List<String> sentences) {
        refused.say(sentences, List::of);
    }

    void draft(String line) {
        foot.draft(line);
    }

    NotesBox lines() {
        return lines;
    }
}
