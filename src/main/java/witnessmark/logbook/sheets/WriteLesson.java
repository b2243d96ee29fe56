package witnessmark.logbook.sheets;

import static witnessmark.logbook.sheets.SheetField.choice;
import static witnessmark.logbook.sheets.SheetField.of;
import static witnessmark.logbook.sheets.SheetField.text;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Coded;
import witnessmark.domain.Engine;
import witnessmark.domain.EngineDesign;
import witnessmark.domain.Entry;
import witnessmark.domain.Fact;
import witnessmark.domain.Id;
import witnessmark.domain.Incident;
import witnessmark.domain.Lesson;
import witnessmark.domain.MeasureKind;
import witnessmark.domain.PartKind;
import witnessmark.logbook.measuring.Signing;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Moment;

/** Writes what an incident taught: a figure or a question that every later build sheet it concerns asks. */
public final class WriteLesson implements LogSheet {
    public static final SheetField INCIDENT = choice("lesson_incident", 4);
    public static final SheetField WHAT = text("lesson_what", 4);
    public static final SheetField KIND = choice("lesson_kind", 2);
    public static final SheetField AT_LEAST = text("at_least", 1);
    public static final SheetField AT_MOST = text("at_most", 1);
    public static final SheetField QUESTION = text("lesson_question", 4);
    public static final SheetField DESIGN = choice("lesson_design", 2);
    public static final SheetField PART_KIND = choice("lesson_part_kind", 2);
    public static final SheetField FROM = of("lesson_from", FieldKind.DAY);
    public static final SheetField FROM_TIME = of("lesson_from_time", FieldKind.CLOCK);
    public static final SheetField BY = text("by", 1);

    @Override
    public String key() {
        return "lesson";
    }

    @Override
    public List<SheetGroup> groups() {
        return List.of(
                SheetGroup.of("lesson", List.of(INCIDENT), List.of(WHAT)),
                SheetGroup.of("lesson_asks", List.of(KIND, AT_LEAST, AT_MOST), List.of(QUESTION)),
                SheetGroup.of("lesson_where", List.of(DESIGN, PART_KIND), List.of(FROM, FROM_TIME, BY)));
    }

    @Override
    public Map<SheetField, String> fresh(SheetSight sight) {
        List<Entry<EngineDesign>> designs = sight.facts().of(EngineDesign.class).where(design -> true);
        Map<SheetField, String> out = new HashMap<>();
        out.put(INCIDENT, Incidents.onlyOpen(sight));
        out.put(DESIGN, designs.size() == 1 ? designs.get(0).id().text() : SheetWord.ALL_DESIGNS.key());
        out.put(FROM, sight.today().toString());
        out.put(BY, sight.who());
        return out;
    }

    @Override
    public Map<SheetField, String> picksFor(Id<Engine> engine, SheetSight sight) {
        return Incidents.ofEngine(INCIDENT, engine, sight);
    }

    @Override
    public boolean asks(SheetField field, SheetTyped typed, SheetSight sight) {
        boolean question = typed.text(KIND).isEmpty();
        return field.equals(QUESTION) ? question : !field.equals(AT_LEAST) && !field.equals(AT_MOST) || !question;
    }

    @Override
    public Map<SheetField, String> follows(SheetField picked, SheetTyped typed, SheetSight sight) {
        return picked.equals(INCIDENT)
                ? sight.find(Incident.class, typed.text(INCIDENT))
                        .map(incident -> incident.fact().engine())
                        .flatMap(engine -> sight.facts().of(Engine.class).find(engine))
                        .map(engine -> Map.of(DESIGN, engine.fact().design().text()))
                        .orElse(Map.of())
                : Map.of();
    }

    @Override
    public List<Choice> choices(SheetField field, SheetTyped typed, SheetSight sight) {
        return switch (field.key()) {
            case "lesson_incident" -> Choice.orNone(Incidents.choices(sight, incident -> true));
            case "lesson_kind" ->
                Choice.orNone(Arrays.stream(MeasureKind.values())
                        .sorted(Comparator.comparing(MeasureKind::code))
                        .map(kind -> Choice.of(kind.code(), kind))
                        .toList());
            case "lesson_design" -> {
                List<Choice> designs = new ArrayList<>(List.of(SheetWord.ALL_DESIGNS.choice()));
                designs.addAll(sight.all(EngineDesign.class, design -> true));
                yield designs;
            }
            case "lesson_part_kind" -> Choice.orNone(Choice.words(PartKind.values()));
            default -> List.of();
        };
    }

    @Override
    public void read(ReadSheet in) {
        Entry<Incident> incident = in.text(INCIDENT).isEmpty() ? null : in.chosen(INCIDENT, Incident.class);
        in.note(WHAT, SheetNote.of("lesson_what_example"));
        String what = in.needed(WHAT);
        MeasureKind kind = in.text(KIND).isEmpty() ? null : in.word(KIND, MeasureKind.class);
        Long least = kind == null ? null : SetSizeLimit.figure(in, AT_LEAST, kind);
        Long most = kind == null ? null : SetSizeLimit.figure(in, AT_MOST, kind);
        SetSizeLimit.crossed(in, AT_LEAST, least, AT_MOST, most);
        in.note(KIND, SheetNote.of(in.text(KIND).isEmpty() ? "lesson_is_question" : "lesson_is_figure"));
        in.note(QUESTION, SheetNote.of("lesson_question_example"));
        String question = in.text(KIND).isEmpty() ? in.needed(QUESTION) : "";
        boolean all = in.is(DESIGN, SheetWord.ALL_DESIGNS);
        Entry<EngineDesign> design = all ? null : in.chosen(DESIGN, EngineDesign.class);
        PartKind part = in.text(PART_KIND).isEmpty() ? null : in.word(PART_KIND, PartKind.class);
        in.note(PART_KIND, SheetNote.of("lesson_part_kind"));
        Moment from = new ReadValues(in).moment(FROM, FROM_TIME);
        String by = in.needed(BY);
        if (incident != null && from != null && from.isBefore(incident.fact().at())) {
            in.wrong(FROM, ProblemKind.EARLIER_THAN, FROM, from, incident.fact().at());
        }
        if (in.fine() && from != null) {
            Lesson lesson = new Lesson(
                    incident == null ? null : incident.id(),
                    what,
                    question,
                    kind,
                    least,
                    most,
                    design == null ? null : design.id(),
                    part,
                    from,
                    by,
                    null,
                    "",
                    "");
            beforeSigned(in, lesson);
            in.make(WHAT, lesson);
        }
    }

    /** What was signed without it is not asked it afterwards. */
    private static void beforeSigned(ReadSheet in, Lesson lesson) {
        Signing.before(in.sight().view(), lesson, in.corrected(Lesson.class).orElse(null))
                .ifPresent(signing -> in.wrong(
                        FROM,
                        ProblemKind.LESSON_BEFORE_SIGNING,
                        in.sight().name(Engine.class, signing.build().fact().engine()),
                        signing.build().fact().number(),
                        signing.at()));
    }

    @Override
    public Optional<Map<SheetField, String>> written(Fact fact, SheetSight sight) {
        if (!(fact instanceof Lesson lesson) || lesson.withdrawn() != null) {
            return Optional.empty();
        }
        Map<SheetField, String> out = new HashMap<>();
        out.put(INCIDENT, lesson.incident() == null ? "" : lesson.incident().text());
        out.put(WHAT, lesson.what());
        out.put(KIND, code(lesson.kind()));
        out.put(AT_LEAST, lesson.kind() == null ? "" : SetSizeLimit.shown(lesson.kind(), lesson.atLeast()));
        out.put(AT_MOST, lesson.kind() == null ? "" : SetSizeLimit.shown(lesson.kind(), lesson.atMost()));
        out.put(QUESTION, lesson.question());
        out.put(
                DESIGN,
                lesson.design() == null
                        ? SheetWord.ALL_DESIGNS.key()
                        : lesson.design().text());
        out.put(PART_KIND, code(lesson.partKind()));
        out.put(FROM, AsText.day(lesson.from()));
        out.put(FROM_TIME, AsText.clock(lesson.from()));
        out.put(BY, lesson.by());
        return Optional.of(out);
    }

    private static String code(@Nullable Coded word) {
        return word == null ? "" : word.code();
    }

    @Override
    public List<String> about(SheetTyped typed, SheetSight sight) {
        return List.of(typed.text(WHAT));
    }
}
