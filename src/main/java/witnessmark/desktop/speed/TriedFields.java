package witnessmark.desktop.speed;

import java.util.List;
import java.util.Optional;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.form.Buttons;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.form.FieldBox;
import witnessmark.fit.result.WhatIf;
import witnessmark.quantity.EngineSpeed;
import witnessmark.quantity.typed.MeasureUnit;
import witnessmark.quantity.typed.Typed;
import witnessmark.quantity.typed.TypedFigure;
import witnessmark.quantity.typed.TypedMeasure;
import witnessmark.wording.Texts;

/** What somebody would like to try: an empty field is as it is. Nothing of it is ever written. */
final class TriedFields extends JPanel {
    private final transient Texts texts;
    private final FieldBox redLine;
    private final FieldBox gasket;
    private final FieldBox crownCut;
    private final FieldBox deckSkim;
    private final FieldBox headSkim;
    private final FieldBox rodArea;
    private final transient Runnable changed;
    private boolean quiet;

    /** @param changed told when something else is tried, as soon as it can be read */
    TriedFields(Texts texts, Runnable changed) {
        super(new MigLayout("insets 0, gap 12 4, fillx, wrap 2", "[0::,grow,fill][0::,grow,fill]"));
        this.texts = texts;
        this.changed = changed;
        setOpaque(false);
        redLine = field("speed.try.redline", "rpm");
        gasket = field("speed.try.gasket", MeasureUnit.MILLIMETRE.sign());
        crownCut = field("speed.try.crown", MeasureUnit.MILLIMETRE.sign());
        deckSkim = field("speed.try.deck", MeasureUnit.MILLIMETRE.sign());
        headSkim = field("speed.try.head", MeasureUnit.MILLIMETRE.sign());
        rodArea = field("speed.try.rod", MeasureUnit.SQUARE_MILLIMETRE.sign());
        fields().forEach(field -> add(field, "growx, wmin 0"));
        add(Buttons.plain(Caption.of(texts.get("speed.try.clear")), this::clear), "span 2, growx 0, gaptop 4");
    }

    private FieldBox field(String key, String unit) {
        FieldBox field = new FieldBox(Caption.of(texts.get(key))).unit(unit);
        field.onChange(this::tell);
        return field;
    }

    List<FieldBox> fields() {
        return List.of(redLine, gasket, crownCut, deckSkim, headSkim, rodArea);
    }

    /** As it is again. */
    void clear() {
        quiet = true;
        fields().forEach(field -> field.load(""));
        quiet = false;
        tell();
    }

    private void tell() {
        if (!quiet) {
            changed.run();
        }
    }

    /** What is tried; empty while something cannot be read, which then says so beside its field. */
    Optional<WhatIf> whatIf() {
        Read<Integer> line = speed();
        Read<Long> thick = measure(gasket, MeasureUnit.MILLIMETRE);
        Read<Long> crown = measure(crownCut, MeasureUnit.MILLIMETRE);
        Read<Long> deck = measure(deckSkim, MeasureUnit.MILLIMETRE);
        Read<Long> head = measure(headSkim, MeasureUnit.MILLIMETRE);
        Read<Long> area = measure(rodArea, MeasureUnit.SQUARE_MILLIMETRE);
        boolean fine = line.fine() && thick.fine() && crown.fine() && deck.fine() && head.fine() && area.fine();
        return fine
                ? Optional.of(new WhatIf(
                        area.value(), thick.value(), crown.value(), deck.value(), head.value(), line.value()))
                : Optional.empty();
    }

    private record Read<T>(boolean fine, @Nullable T value) {}

    private Read<Long> measure(FieldBox field, MeasureUnit unit) {
        if (field.text().isBlank()) {
            field.note("");
            return new Read<>(true, null);
        }
        Typed<TypedMeasure> typed = TypedMeasure.read(field.text(), unit, false);
        Long parts = typed.only()
                .map(TypedMeasure::parts)
                .filter(figure -> figure >= 0 && (figure > 0 || unit != MeasureUnit.SQUARE_MILLIMETRE))
                .orElse(null);
        return read(field, parts, typed instanceof Typed.Unreadable<TypedMeasure> no ? no.example() : "0.2");
    }

    private Read<Integer> speed() {
        if (redLine.text().isBlank()) {
            redLine.note("");
            return new Read<>(true, null);
        }
        Integer rpm = TypedFigure.engineSpeed(redLine.text())
                .only()
                .map(EngineSpeed::rpm)
                .filter(figure -> figure > 0)
                .orElse(null);
        return read(redLine, rpm, "8200");
    }

    private <T> Read<T> read(FieldBox field, @Nullable T value, String example) {
        if (value == null) {
            field.stop(texts.get("speed.try.unreadable", field.text(), example));
        } else {
            field.note("");
        }
        return new Read<>(value != null, value);
    }
}
