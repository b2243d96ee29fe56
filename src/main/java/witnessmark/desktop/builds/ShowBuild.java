package witnessmark.desktop.builds;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import witnessmark.desktop.builds.BuildLines.JointLine;
import witnessmark.desktop.builds.BuildLines.PositionLine;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.form.FocusStays;
import witnessmark.logbook.building.BuildField;
import witnessmark.logbook.building.WriteBuildWork;
import witnessmark.wording.Texts;

/** Puts a build with what is typed on its page, and what is said of that. */
final class ShowBuild {
    private final Texts texts;
    private final LineWords words;
    private final Options options;
    private final BuildPanel panel;

    ShowBuild(BuildsContext context, BuildPanel panel) {
        this.texts = context.texts();
        this.words = new LineWords(texts, context.measures());
        this.options = new Options(texts, words.words());
        this.panel = panel;
    }

    /**
     * Shows a build as it stands.
     *
     * @param engine the engine's number
     * @param goTo goes to a field that needs a look
     */
    void show(BuildInHand shown, String engine, Consumer<BuildField> goTo) {
        BuildModel model = shown.model();
        BuildLines lines = words.lines(model, engine);
        panel.show(lines);
        FocusStays.on(
                panel,
                () -> panel.side().show(model, lines, title(model, lines), options, field -> said(shown, field)),
                panel::firstFocus);
        Map<BuildField, String> stopping = shown.stopping();
        List<String> failures = new ArrayList<>(shown.elsewhere());
        failures.add(shown.failure());
        panel.foot(shown.draftLine(), failures, List.copyOf(stopping.keySet()), field -> name(lines, field), goTo);
    }

    private FieldsPane.Said said(BuildInHand shown, BuildField field) {
        Optional<WriteBuildWork.Found> found = shown.model().said(field);
        String words = found.map(shown::sentence).orElse("");
        boolean stops = found.map(each -> each.problem().stops()).orElse(false);
        if (!words.isEmpty()) {
            return stops ? new FieldsPane.Said(words, "") : new FieldsPane.Said("", words);
        }
        return shown.model().isDry(field)
                ? new FieldsPane.Said("", texts.get("builds.dry"))
                : shown.model().isSeenByOne(field)
                        ? new FieldsPane.Said("", texts.get("builds.seen_by_one"))
                        : FieldsPane.Said.NOTHING;
    }

    private String title(BuildModel model, BuildLines lines) {
        return model.inHand().map(row -> rowName(lines, row)).orElse("");
    }

    private String rowName(BuildLines lines, String row) {
        return Stream.concat(
                        lines.positions().stream()
                                .filter(line -> line.row().equals(row))
                                .map(PositionLine::position),
                        lines.joints().stream()
                                .filter(line -> line.row().equals(row))
                                .map(JointLine::group))
                .findFirst()
                .orElse(texts.get("builds.joint.new"));
    }

    private String name(BuildLines lines, BuildField field) {
        String label = Caption.of(
                        texts.get("builds.field." + field.name().name().toLowerCase(java.util.Locale.ROOT)))
                .text();
        return field.row().equals(BuildField.BUILD)
                ? label
                : texts.get("builds.colon", rowName(lines, field.row()), label);
    }
}
