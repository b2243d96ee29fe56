package witnessmark.desktop.shell;

import java.util.List;

/** The sizes offered, 1.0 being normal. */
final class Zoom {
    static final List<Float> STEPS = List.of(1.0f, 1.1f, 1.25f, 1.5f, 1.75f, 2.0f);

    private Zoom() {}

    /** The next size up, or the largest. */
    static float larger(float now) {
        return STEPS.stream().filter(step -> step > now + 0.001f).findFirst().orElse(STEPS.get(STEPS.size() - 1));
    }

    /** The next size down, or normal. */
    static float smaller(float now) {
        float found = STEPS.get(0);
        for (float step : STEPS) {
            found = step < now - 0.001f ? step : found;
        }
        return found;
    }

    /** The size remembered, held to what is offered; normal for what cannot be read. */
    static float read(String text) {
        try {
            float wanted = Float.parseFloat(text);
            return STEPS.contains(wanted) ? wanted : 1.0f;
        } catch (NumberFormatException unreadable) {
            return 1.0f;
        }
    }
}
