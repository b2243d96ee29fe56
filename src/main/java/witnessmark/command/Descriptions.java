package witnessmark.command;

import java.util.Collections;
import java.util.Enumeration;
import java.util.List;
import java.util.ResourceBundle;
import org.jspecify.annotations.Nullable;
import witnessmark.wording.Texts;

/** The descriptions of commands and options as they are read, out of the program's sentences. */
final class Descriptions extends ResourceBundle {
    private final Texts texts;
    /** Sought out once: they are asked for again with each command there is. */
    private final List<String> keys;

    Descriptions(Texts texts) {
        this.texts = texts;
        this.keys =
                texts.keys().stream().filter(key -> key.startsWith("command.")).toList();
    }

    @Override
    protected @Nullable Object handleGetObject(String key) {
        return texts.has(key) ? texts.get(key) : null;
    }

    @Override
    public Enumeration<String> getKeys() {
        return Collections.enumeration(keys);
    }
}
