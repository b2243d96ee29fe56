package witnessmark.desktop.builds;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.builds.BuildLines.GapLine;
import witnessmark.desktop.builds.BuildLines.JointLine;
import witnessmark.desktop.builds.BuildLines.PositionLine;
import witnessmark.desktop.form.SeamState;
import witnessmark.desktop.lessons.LessonLineWords;
import witnessmark.domain.Build;
import witnessmark.domain.Coded;
import witnessmark.domain.JointMethod;
import witnessmark.domain.PartKind;
import witnessmark.domain.SignOff;
import witnessmark.ledger.result.BuildGap;
import witnessmark.ledger.result.BuildPosition;
import witnessmark.ledger.result.JointGroup;
import witnessmark.ledger.result.Mark;
import witnessmark.logbook.building.BuildField;
import witnessmark.logbook.building.BuildField.Name;
import witnessmark.logbook.building.BuildPage;
import witnessmark.wording.BuildPageWords;
import witnessmark.wording.LifeWords;
import witnessmark.wording.Measures;
import witnessmark.wording.RecordWords;
import witnessmark.wording.Texts;

/** Words the page of a build with what is typed on it. The same page and the same text always give the same lines. */
final class LineWords {
    /** Before the rows of groups that are written; no row of fields begins so. */
    private static final String GROUP = "group ";

    /** So many of what lies on the shelf are named beside a position. */
    private static final int FEW = 3;

    private final Texts texts;
    private final Measures measures;
    private final BuildPageWords words;
    private final RecordWords records;
    private final LifeWords lives;
    private final LessonLineWords lessons;

    LineWords(Texts texts, Measures measures) {
        this.texts = texts;
        this.measures = measures;
        this.words = new BuildPageWords(texts, measures);
        this.records = new RecordWords(texts);
        this.lives = new LifeWords(texts, measures);
        this.lessons = new LessonLineWords(texts, measures);
    }

    BuildPageWords words() {
        return words;
    }

    /**
     * The lines of a build; of one that is opened here and of which nothing can be seen yet, its name alone.
     *
     * @param engine the engine's number
     */
    BuildLines lines(BuildModel model, String engine) {
        Optional<BuildPage> seen = model.page();
        if (seen.isEmpty()) {
            String title = texts.get("builds.new", engine);
            return new BuildLines(
                    title,
                    texts.get("builds.new.zones"),
                    "",
                    texts.get("builds.new.pick"),
                    SeamState.APART,
                    true,
                    List.of(),
                    List.of(),
                    List.of(),
                    List.of());
        }
        BuildPage page = seen.get();
        Build build = page.build().fact();
        SignOff signed = page.signed() == null ? null : page.signed().fact();
        Set<String> typed = typed(model);
        return new BuildLines(
                words.name(engine, build),
                model.build() == null && model.written() == null
                        ? texts.get("builds.unsaved", words.span(build))
                        : words.span(build),
                words.signed(signed, build),
                words.open(page.gaps()),
                page.gaps().stream()
                        .map(gap -> state(gap.kind()))
                        .min(SeamState::compareTo)
                        .orElse(SeamState.APART),
                model.isOpen(),
                page.positions().stream().map(at -> position(page, at, typed)).toList(),
                joints(model, page),
                page.lessons().stream()
                        .map(check -> lessons.line(page.facts(), check, model.written() != null && model.canWrite()))
                        .toList(),
                page.gaps().stream().map(gap -> gap(page, gap)).toList());
    }

    private static Set<String> typed(BuildModel model) {
        return model.kept().entrySet().stream()
                .filter(each -> !each.getValue().isBlank())
                .flatMap(each -> BuildField.parse(each.getKey()).stream())
                .map(BuildField::row)
                .collect(Collectors.toSet());
    }

    private PositionLine position(BuildPage page, BuildPosition at, Set<String> typed) {
        String row = BuildField.row(at.position().id());
        Mark worst = at.worst();
        return new PositionLine(
                row,
                page.positions().indexOf(at),
                at.in() == null ? SeamState.APART : worst == null ? SeamState.NOT_KNOWN : SeamState.of(worst.state()),
                records.label(records.word(at.zone())),
                words.position(at),
                row(at.out().stream()
                        .map(out -> words.out(page.facts(), out.fact()))
                        .toList()),
                at.fresh() ? texts.get("builds.fresh", words.in(page.facts(), at)) : words.in(page.facts(), at),
                at.running() == null ? "" : lives.life(at.running()),
                at.running() == null ? null : (Long) at.running().highest(),
                at.in() != null && worst == null ? texts.get("builds.no_limit") : words.why(worst),
                typed.contains(row) ? texts.get("builds.not_saved") : "",
                about(page, at));
    }

    /** All of it in full: what came out and why, what is in it since when, and how that stands. */
    private String about(BuildPage page, BuildPosition at) {
        List<String> said = new ArrayList<>();
        at.out().forEach(out -> said.add(words.cameOut(page.facts(), out.fact())));
        if (at.in() != null && at.running() != null) {
            said.add(texts.get("builds.in_it", words.in(page.facts(), at), words.wentIn(at), lives.life(at.running())));
            said.add(at.worst() == null ? texts.get("builds.no_limit") : words.stands(at.worst()));
        }
        if (page.open() && !at.fresh()) {
            List<String> free =
                    page.free(at.position().id()).stream().map(words::free).toList();
            said.add(
                    free.isEmpty()
                            ? texts.get("builds.shelf.none")
                            : texts.get(
                                    "builds.shelf",
                                    String.join("; ", free.subList(0, Math.min(FEW, free.size()))),
                                    free.size() > FEW ? 1 : 0,
                                    free.size() - FEW));
        }
        return said.stream().map(records::label).collect(Collectors.joining("\n"));
    }

    private String row(List<String> said) {
        return said.isEmpty() ? "" : measures.row(said);
    }

    private List<JointLine> joints(BuildModel model, BuildPage page) {
        List<JointLine> lines = new ArrayList<>();
        for (int number : model.draft().joints()) {
            lines.add(typed(model, number));
        }
        BuildPage written = model.written();
        for (JointGroup group : Objects.requireNonNullElse(written, page).joints()) {
            lines.add(new JointLine(
                    row(group),
                    group.tightened().isEmpty()
                            ? SeamState.APART
                            : group.dry() || group.seenByOne() ? SeamState.DUE : SeamState.WITHIN,
                    words.group(group.fasteners(), group.which()),
                    String.join("; ", words.tightened(page.facts(), group)),
                    String.join("\n", words.tightened(page.facts(), group))));
        }
        return lines;
    }

    /** The row of a group that is written. */
    static String row(JointGroup group) {
        return GROUP + group.fasteners().code() + " " + group.which();
    }

    /** The group that is written under that row, or null. */
    static @Nullable JointGroup group(BuildModel model, String row) {
        return model.page().stream()
                .flatMap(page -> page.joints().stream())
                .filter(group -> row(group).equals(row))
                .findFirst()
                .orElse(null);
    }

    private JointLine typed(BuildModel model, int number) {
        PartKind kind =
                Coded.find(PartKind.class, text(model, number, Name.FASTENERS)).orElse(null);
        String which = text(model, number, Name.WHICH);
        String method = Coded.find(JointMethod.class, text(model, number, Name.METHOD))
                .map(found -> records.label(records.word(found)))
                .orElse("");
        String lubricant = text(model, number, Name.LUBRICANT);
        return new JointLine(
                BuildField.ofJoint(number, Name.VALUE).row(),
                SeamState.NOT_KNOWN,
                kind == null ? texts.get("builds.joint.new") : words.group(kind, which),
                texts.get(
                        "builds.joint.typed",
                        method,
                        text(model, number, Name.VALUE).isEmpty()
                                ? texts.get("builds.value.not")
                                : text(model, number, Name.VALUE),
                        lubricant.isEmpty()
                                ? texts.get("builds.lubricant.not")
                                : texts.get("builds.lubricant", lubricant)),
                "");
    }

    private static String text(BuildModel model, int number, Name name) {
        return model.text(BuildField.ofJoint(number, name)).strip();
    }

    private GapLine gap(BuildPage page, BuildGap gap) {
        @Nullable BuildPosition at = gap.position();
        @Nullable JointGroup joint = gap.joint();
        return new GapLine(
                state(gap.kind()),
                words.gap(page.facts(), gap),
                at != null ? BuildField.row(at.position().id()) : joint != null ? row(joint) : null,
                way(gap.kind()));
    }

    private static GapLine.@Nullable Way way(BuildGap.Kind kind) {
        return switch (kind) {
            case OUTSIDE, NOT_MEASURED -> GapLine.Way.SHEET;
            case LESSON -> GapLine.Way.LESSONS;
            default -> null;
        };
    }

    private static SeamState state(BuildGap.Kind kind) {
        return switch (kind) {
            case HELD -> SeamState.HELD;
            case OVER, MARKED, OUTSIDE -> SeamState.OVER;
            case NOT_KNOWN, LESSON, NOT_MEASURED, NO_LUBRICANT -> SeamState.NOT_KNOWN;
            case DUE, SEEN_BY_ONE, SIGNED_BY_ONE -> SeamState.DUE;
            case EMPTY, NOT_TIGHTENED, NOT_CLOSED, NOT_SIGNED -> SeamState.APART;
        };
    }
}
