package witnessmark.wording;

import java.text.ChoiceFormat;
import java.text.FieldPosition;
import java.text.Format;
import java.text.MessageFormat;
import java.text.ParsePosition;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.MissingResourceException;
import java.util.ResourceBundle;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;

/** The sentences of one language, by key. A key starts with the name of its bundle: {@code runsheet.save}. */
public final class Texts {
    /** The bundles, each a file under {@code i18n}. */
    public static final List<String> BUNDLES = List.of(
            "shell",
            "keeping",
            "form",
            "runsheet",
            "engines",
            "history",
            "beforewego",
            "shelf",
            "bench",
            "builds",
            "incidents",
            "cases",
            "prompts",
            "photos",
            "casesheet",
            "tags",
            "problems",
            "records",
            "measures",
            "calendar",
            "command",
            "money",
            "bank",
            "season",
            "fit",
            "speed",
            "faces",
            "facemap",
            "trends",
            "trace",
            "traces",
            "traceview",
            "tracekept",
            "dyno",
            "proof",
            "lessons",
            "trials",
            "strip",
            "trialview",
            "jobsheet",
            "paper",
            "seasonsheet",
            "buildsheet",
            "facesheet",
            "tracesheet",
            "help",
            "sheets");

    private final Map<String, String> patterns;
    private final Locale locale;
    private final Figures figures;

    private Texts(Locale locale, UnaryOperator<String> change) {
        this.locale = locale;
        this.figures = new Figures(locale);
        this.patterns = new HashMap<>();
        for (String name : BUNDLES) {
            ResourceBundle bundle = ResourceBundle.getBundle("i18n." + name, locale);
            for (String key : bundle.keySet()) {
                if (!key.startsWith(name + ".") || patterns.put(key, change.apply(bundle.getString(key))) != null) {
                    throw new IllegalStateException("the key " + key + " of bundle " + name + " is misnamed or twice");
                }
            }
        }
    }

    public static Texts in(Locale locale) {
        return new Texts(locale, UnaryOperator.identity());
    }

    /** Every sentence a third longer and in odd letters, to find those that are cut, glued or not from a bundle. */
    public static Texts pseudo() {
        return new Texts(Locale.UK, Pseudo::of);
    }

    /**
     * The sentence with its blanks filled, in the syntax of {@link MessageFormat}.
     *
     * @throws MissingResourceException if there is no such key
     */
    public String get(String key, Object... blanks) {
        String pattern = patterns.get(key);
        if (pattern == null) {
            throw new MissingResourceException("no sentence is called " + key, Texts.class.getName(), key);
        }
        return sentence(pattern, blanks);
    }

    private String sentence(String pattern, Object... blanks) {
        MessageFormat sentence = new MessageFormat(pattern, locale);
        @Nullable Format[] formats = sentence.getFormats();
        for (int i = 0; i < formats.length; i++) {
            sentence.setFormat(i, new Blank(formats[i], blanks));
        }
        return sentence.format(blanks);
    }

    /** One blank: whole numbers as {@link Figures} shows them, and again inside the words a number chooses. */
    private final class Blank extends Format {
        private final transient @Nullable Format own;
        private final transient Object[] blanks;

        Blank(@Nullable Format own, Object[] blanks) {
            this.own = own;
            this.blanks = blanks;
        }

        @Override
        public StringBuffer format(Object value, StringBuffer to, FieldPosition at) {
            if (own == null) {
                boolean whole = value instanceof Integer || value instanceof Long;
                return to.append(whole ? figures.whole(((Number) value).longValue()) : value);
            }
            String chosen = own.format(value);
            return to.append(own instanceof ChoiceFormat && chosen.contains("{") ? sentence(chosen, blanks) : chosen);
        }

        @Override
        public Object parseObject(String text, ParsePosition at) {
            throw new UnsupportedOperationException("sentences are not read back");
        }
    }

    public boolean has(String key) {
        return patterns.containsKey(key);
    }

    public Set<String> keys() {
        return new TreeSet<>(patterns.keySet());
    }

    /** The sentence with its blanks unfilled. */
    public String pattern(String key) {
        String pattern = patterns.get(key);
        if (pattern == null) {
            throw new MissingResourceException("no sentence is called " + key, Texts.class.getName(), key);
        }
        return pattern;
    }

    public Locale locale() {
        return locale;
    }
}
