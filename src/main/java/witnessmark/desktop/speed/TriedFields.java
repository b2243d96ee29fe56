package witnessmark.desktop.speed;

import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import javax.swing.JPanel;
import witnessmark.desktop.form.Buttons;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.form.FieldBox;
import witnessmark.desktop.form.FormLayout;
import witnessmark.fit.result.WhatIf;
import witnessmark.logbook.measuring.TriedText;
import witnessmark.logbook.measuring.TriedText.Tried;
import witnessmark.wording.Texts;

/** What somebody would like to try: an empty field is as it is. Nothing of it is ever written. */
final class TriedFields extends JPanel {
    private final transient Texts texts;
    private final Map<Tried, FieldBox> fields = new EnumMap<>(Tried.class);
    private final transient Runnable changed;
    private boolean quiet;

    /** @param changed told when something else is tried, as soon as it can be read */
    TriedFields(Texts texts, Runnable changed) {
        super(new FormLayout("insets 0, gap 12 4, fillx, wrap 2", "[0::,grow,fill][0::,grow,fill]"));
        this.texts = texts;
        this.changed = changed;
        setOpaque(false);
        for (Tried tried : Tried.values()) {
            FieldBox field = new FieldBox(
                            Caption.of(texts.get("speed.try." + tried.name().toLowerCase(Locale.ROOT))))
                    .unit(tried.unit() == null ? "rpm" : tried.unit().sign());
            field.onChange(this::tell);
            fields.put(tried, field);
            add(field, "growx, wmin 0");
        }
        add(Buttons.plain(Caption.of(texts.get("speed.try.clear")), this::clear), "span 2, growx 0, gaptop 4");
    }

    List<FieldBox> fields() {
        return List.copyOf(fields.values());
    }

    /** As it is again. */
    void clear() {
        quiet = true;
        fields.values().forEach(field -> field.load(""));
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
        Map<Tried, String> typed = new EnumMap<>(Tried.class);
        fields.forEach((tried, field) -> typed.put(tried, field.text()));
        TriedText read = TriedText.of(typed);
        fields.forEach((tried, field) -> {
            String example = read.unread().get(tried);
            if (example == null) {
                field.note("");
            } else {
                field.stop(texts.get("speed.try.unreadable", field.text(), example));
            }
        });
        return read.unread().isEmpty() ? Optional.of(read.whatIf()) : Optional.empty();
    }
}
