package witnessmark.desktop.form;

import java.awt.Container;
import java.awt.Dimension;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import java.util.function.Supplier;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;

/**
 * MigLayout that measures what is in it once for each question asked from outside. Where text wraps, MigLayout asks
 * everything in a panel for its least, its preferred and its greatest size whenever it is asked for one of them itself:
 * panels within panels then take three times as long with each level. Nothing moves while sizes are asked for, so that
 * the answers hold until the outermost question is answered.
 */
public final class FormLayout extends MigLayout {
    private static final long serialVersionUID = 1;

    private enum Size {
        LEAST,
        PREFERRED,
        GREATEST
    }

    private final transient Map<Size, Dimension> answers = new EnumMap<>(Size.class);
    /** The question from outside for which the answers hold. */
    private transient @Nullable Object answered;
    /** The question from outside, while it is asked here. */
    private transient @Nullable Object asked;

    public FormLayout(String layout) {
        super(layout);
    }

    public FormLayout(String layout, String columns) {
        super(layout, columns);
    }

    public FormLayout(String layout, String columns, String rows) {
        super(layout, columns, rows);
    }

    @Override
    public Dimension minimumLayoutSize(Container parent) {
        return answer(parent, Size.LEAST, () -> super.minimumLayoutSize(parent));
    }

    @Override
    public Dimension preferredLayoutSize(Container parent) {
        return answer(parent, Size.PREFERRED, () -> super.preferredLayoutSize(parent));
    }

    @Override
    public Dimension maximumLayoutSize(Container parent) {
        return answer(parent, Size.GREATEST, () -> super.maximumLayoutSize(parent));
    }

    @Override
    public void invalidateLayout(Container parent) {
        answered = null;
        super.invalidateLayout(parent);
    }

    private Dimension answer(Container parent, Size size, Supplier<Dimension> measured) {
        Object before = question(parent);
        if (before != null) {
            return answer(before, size, measured);
        }
        Object question = new Object();
        asked = question;
        try {
            return answer(question, size, measured);
        } finally {
            asked = null;
        }
    }

    private Dimension answer(Object question, Size size, Supplier<Dimension> measured) {
        if (answered != question) {
            answers.clear();
            answered = question;
        }
        Dimension known = answers.get(size);
        if (known == null) {
            known = measured.get();
            if (Objects.equals(answered, question)) { // nothing was given another width meanwhile
                answers.put(size, known);
            }
        }
        return new Dimension(known);
    }

    /** The question that is being asked of what this is in. */
    private static @Nullable Object question(Container parent) {
        for (Container at = parent; at != null; at = at.getParent()) {
            if (at.getLayout() instanceof FormLayout layout && layout.asked != null) {
                return layout.asked;
            }
        }
        return null;
    }
}
