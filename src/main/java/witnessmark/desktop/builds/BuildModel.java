package witnessmark.desktop.builds;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Build;
import witnessmark.domain.Engine;
import witnessmark.domain.Id;
import witnessmark.domain.JointMethod;
import witnessmark.domain.Position;
import witnessmark.ledger.result.BuildGap;
import witnessmark.ledger.result.BuildPosition;
import witnessmark.ledger.result.FreePart;
import witnessmark.ledger.result.JointGroup;
import witnessmark.ledger.result.ProposedPart;
import witnessmark.logbook.building.BuildDraft;
import witnessmark.logbook.building.BuildField;
import witnessmark.logbook.building.BuildField.Name;
import witnessmark.logbook.building.BuildPage;
import witnessmark.logbook.building.Goes;
import witnessmark.logbook.building.WriteBuildWork;
import witnessmark.outcome.ProblemKind;

/** One build with what is typed on its page and not yet written. What is typed stays as typed. */
final class BuildModel {
    /** What stands there before anybody types: nothing of it alone is worth keeping. */
    private static final Set<Name> GIVEN = Set.of(Name.WHEN, Name.OPENED);

    /** What goes on from one group of fasteners to the next; never what it was tightened to. */
    private static final List<Name> CARRIED =
            List.of(Name.METHOD, Name.LUBRICANT, Name.TOOL, Name.TIGHTENED_BY, Name.LOOKED_ON);

    /** What is said of a part that comes out. */
    private static final Set<Name> OUT_OF =
            Set.of(Name.OUT, Name.WHY, Name.CONDITION, Name.MEMBER, Name.SENT_TO, Name.ASKED);

    private final Id<Engine> engine;
    private final @Nullable Id<Build> build;
    private final String who;
    private final Map<BuildField, String> texts = new HashMap<>();
    private final Map<String, FreePart> known = new HashMap<>();
    private final Set<String> left = new HashSet<>();
    private final List<Runnable> listeners = new ArrayList<>();
    private @Nullable BuildPage written;
    private WriteBuildWork.@Nullable Reading reading;
    private @Nullable BuildPage lastRead;
    private @Nullable String inHand;
    private String why = "";
    private boolean askedFor;
    private boolean editable = true;

    /**
     * @param build which build, or null for one that is opened here
     * @param today what stands in the days at first
     */
    BuildModel(Id<Engine> engine, @Nullable Id<Build> build, String today, String who) {
        this.engine = engine;
        this.build = build;
        texts.put(BuildField.of(Name.WHEN), today);
        if (build == null) {
            texts.put(BuildField.of(Name.OPENED), today);
        }
        this.who = who;
    }

    /** Told after every change of what is typed. */
    void onChange(Runnable listener) {
        listeners.add(listener);
    }

    Id<Engine> engine() {
        return engine;
    }

    @Nullable
    Id<Build> build() {
        return build;
    }

    /** The build as it is written, or null for one that is not. */
    @Nullable
    BuildPage written() {
        return written;
    }

    /**
     * The logbook says something else now; what is typed stays, but for what was to come out of a position that is empty
     * now: there is nothing left that it could be about.
     */
    void become(@Nullable BuildPage now) {
        BuildPage before = written;
        written = now;
        learn(now);
        if (before != null && now != null) {
            now.positions().stream()
                    .filter(at -> at.in() == null
                            && before.position(at.position().id())
                                    .filter(then -> then.in() != null)
                                    .isPresent())
                    .map(at -> at.position().id())
                    .forEach(position -> OUT_OF.forEach(name -> texts.remove(BuildField.of(position, name))));
        }
    }

    /** What the typed text came to. */
    void read(WriteBuildWork.Reading now) {
        reading = now;
        BuildPage then = now.page();
        lastRead = then == null ? lastRead : then;
        learn(then);
    }

    /**
     * The build as it will stand once what is typed is written, as far as that is known; else as it is. Of one that is opened
     * here what was read last stays in sight while a field cannot be read, as long as anything is opened.
     */
    Optional<BuildPage> page() {
        BuildPage then = reading == null ? null : reading.page();
        if (then != null && isDirty()) {
            return Optional.of(then);
        }
        boolean unread = then == null && !text(BuildField.of(Name.ZONES)).isBlank();
        return Optional.ofNullable(written)
                .or(() -> Optional.ofNullable(then))
                .or(() -> Optional.ofNullable(unread ? lastRead : null));
    }

    private void learn(@Nullable BuildPage page) {
        if (page != null) {
            page.free().values().stream().flatMap(List::stream).forEach(free -> known.put(BuildDraft.part(free), free));
        }
    }

    /** Whether anything can be typed: a closed build is only looked at, and signed on its sheet. */
    boolean isOpen() {
        return editable && (written == null || written.open());
    }

    /** Whether anything can be written, if only an answer on a sheet. */
    boolean canWrite() {
        return editable;
    }

    /** Whether anything can be written at all: an earlier day is only looked at. */
    void editable(boolean yes) {
        editable = yes;
    }

    // What is typed

    String text(BuildField field) {
        return texts.getOrDefault(field, "");
    }

    BuildDraft draft() {
        return new BuildDraft(engine, build, texts);
    }

    void type(BuildField field, String text) {
        if (text.equals(text(field))) {
            return;
        }
        texts.put(field, text);
        follow(field, text);
        askedFor = false;
        tell();
    }

    /** What comes to stand in other fields once something is picked in this one, where nobody typed there. */
    private void follow(BuildField field, String text) {
        Optional<Id<Position>> position = BuildField.position(field.row());
        if (field.name() == Name.WHY) {
            why = text;
        }
        if (position.isEmpty() || text.isEmpty()) {
            return;
        }
        if (field.name() == Name.IN
                && isFilled(position.get())
                && goes(position.get()).isEmpty()) {
            texts.put(BuildField.of(position.get(), Name.OUT), Goes.SHELF.code());
        }
        BuildField reason = BuildField.of(position.get(), Name.WHY);
        boolean comesOut = field.name() == Name.OUT || field.name() == Name.IN && isFilled(position.get());
        if (comesOut && text(reason).isEmpty()) {
            texts.put(reason, why);
        }
    }

    /** Whether something is written in a position now. */
    boolean isFilled(Id<Position> position) {
        BuildPage now = written;
        return now != null
                ? now.position(position).map(at -> at.in() != null).orElse(false)
                : page().flatMap(then -> then.position(position))
                        .map(at -> at.in() != null && !at.fresh() || !at.out().isEmpty())
                        .orElse(false);
    }

    Optional<Goes> goes(Id<Position> position) {
        return draft().goes(position);
    }

    /** What can go into a position: what is free once all else that is typed is done, and what is picked there. */
    List<FreePart> free(Id<Position> position) {
        List<FreePart> all =
                new ArrayList<>(page().map(then -> then.free(position)).orElse(List.of()));
        FreePart picked = known.get(text(BuildField.of(position, Name.IN)));
        if (picked != null
                && all.stream().noneMatch(each -> BuildDraft.part(each).equals(BuildDraft.part(picked)))) {
            all.add(0, picked);
        }
        return all;
    }

    Optional<FreePart> picked(Id<Position> position) {
        return Optional.ofNullable(known.get(text(BuildField.of(position, Name.IN))));
    }

    /** A group of fasteners to be tightened, named as it was before; what it is tightened to is typed. */
    String tighten(@Nullable JointGroup group) {
        int number = draft().joints().stream().mapToInt(each -> each).max().orElse(0) + 1;
        Map<Name, String> before = new HashMap<>();
        if (number > 1) {
            CARRIED.forEach(name -> before.put(name, text(BuildField.ofJoint(number - 1, name))));
        }
        texts.put(BuildField.ofJoint(number, Name.METHOD), before.getOrDefault(Name.METHOD, JointMethod.TORQUE.code()));
        texts.put(BuildField.ofJoint(number, Name.TIGHTENED_BY), before.getOrDefault(Name.TIGHTENED_BY, who));
        for (Name name : List.of(Name.LUBRICANT, Name.TOOL, Name.LOOKED_ON)) {
            texts.put(BuildField.ofJoint(number, name), before.getOrDefault(name, ""));
        }
        if (group != null) {
            texts.put(
                    BuildField.ofJoint(number, Name.FASTENERS),
                    group.fasteners().code());
            texts.put(BuildField.ofJoint(number, Name.WHICH), group.which());
        }
        tell();
        return BuildField.ofJoint(number, Name.VALUE).row();
    }

    /** A group that is not to be written after all. */
    void drop(String row) {
        texts.keySet().removeIf(field -> field.row().equals(row));
        if (row.equals(inHand)) {
            inHand = null;
        }
        tell();
    }

    /** What is proposed goes into positions in which nothing is and nothing is picked. Says how many. */
    int propose(List<ProposedPart> proposed) {
        int picked = 0;
        for (ProposedPart each : proposed) {
            BuildField in = BuildField.of(each.position().id(), Name.IN);
            FreePart part = each.part();
            if (part != null && text(in).isEmpty()) {
                String key = BuildDraft.part(part);
                known.put(key, part);
                texts.put(in, key);
                picked++;
            }
        }
        tell();
        return picked;
    }

    /** What is picked already, by the text of its identity. */
    Set<String> taken() {
        return texts.entrySet().stream()
                .filter(each ->
                        each.getKey().name() == Name.IN && !each.getValue().isEmpty())
                .map(Map.Entry::getValue)
                .collect(Collectors.toSet());
    }

    /** The positions that are empty once what is typed is done. */
    List<BuildPosition> empty() {
        return page().stream()
                .flatMap(then -> then.positions().stream())
                .filter(at -> at.in() == null
                        && text(BuildField.of(at.position().id(), Name.IN)).isEmpty())
                .toList();
    }

    boolean isDirty() {
        return texts.entrySet().stream()
                .anyMatch(each -> !each.getValue().isBlank()
                        && !GIVEN.contains(each.getKey().name()));
    }

    // What is asked for

    /** The row whose fields are seen: a position or a group of fasteners. */
    Optional<String> inHand() {
        return Optional.ofNullable(inHand);
    }

    /** Another row is taken in hand; the one before counts as left. */
    void hold(@Nullable String row) {
        if (inHand != null && !inHand.equals(row)) {
            left.add(inHand);
        }
        inHand = row;
    }

    boolean asks(BuildField field) {
        Optional<Id<Position>> position = BuildField.position(field.row());
        return position.map(id -> asks(id, field.name())).orElse(field.row().startsWith("joint") || asks(field.name()));
    }

    private boolean asks(Name name) {
        boolean fresh = build == null;
        return switch (name) {
            case OPENED, OPENED_TIME, NOTE -> fresh;
            case CLOSED_TIME -> !text(BuildField.of(Name.CLOSED)).isBlank();
            case SECOND, WORDS -> !text(BuildField.of(Name.SIGNED)).isBlank();
            default -> true;
        };
    }

    private boolean asks(Id<Position> position, Name name) {
        Optional<Goes> goes = goes(position);
        boolean filled = isFilled(position);
        return switch (name) {
            case OUT -> filled;
            case WHY, CONDITION -> filled && goes.isPresent();
            case MEMBER ->
                goes.filter(to -> to == Goes.QUARANTINE || to == Goes.SCRAP).isPresent();
            case SENT_TO, ASKED -> goes.filter(to -> to == Goes.AWAY).isPresent();
            case MARK -> picked(position).filter(free -> free.batch() != null).isPresent();
            case ACCEPTED ->
                !text(BuildField.of(position, name)).isBlank()
                        || found(BuildField.of(position, name)).isPresent();
            default -> true;
        };
    }

    // What is wrong

    /** What is wrong in a field, once it is to be said. */
    Optional<WriteBuildWork.Found> said(BuildField field) {
        return found(field).filter(this::isSaid);
    }

    /** Whether the lubricant is missing of a torque or an angle that is typed. */
    boolean isDry(BuildField field) {
        return field.name() == Name.LUBRICANT
                && text(field).isBlank()
                && !text(new BuildField(field.row(), Name.VALUE)).isBlank()
                && !text(new BuildField(field.row(), Name.METHOD)).equals(JointMethod.STRETCH.code());
    }

    /** Whether somebody signs or tightens, and nobody else is named who looked. */
    boolean isSeenByOne(BuildField field) {
        Name by = field.name() == Name.SECOND ? Name.SIGNED : Name.VALUE;
        return (field.name() == Name.SECOND || field.name() == Name.LOOKED_ON)
                && text(field).isBlank()
                && !text(new BuildField(field.row(), by)).isBlank();
    }

    private Optional<WriteBuildWork.Found> found(BuildField field) {
        return all().filter(each -> field.equals(each.field())).findFirst();
    }

    /** What is needed and missing is said once the row was left, or somebody wants to write. */
    private boolean isSaid(WriteBuildWork.Found each) {
        BuildField field = each.field();
        return each.problem().kind() != ProblemKind.NEEDED || field == null || left.contains(field.row());
    }

    private Stream<WriteBuildWork.Found> all() {
        WriteBuildWork.Reading now = reading;
        return now == null || !isDirty()
                ? Stream.empty()
                : Stream.concat(now.found().stream(), now.contradictions().stream());
    }

    /** Everything that keeps it from being written and is to be said. */
    List<WriteBuildWork.Found> stopping() {
        return all().filter(each -> each.problem().stops() && isSaid(each)).toList();
    }

    /** Somebody wants to write: everything is told of as if it had been left. */
    void ask() {
        texts.keySet().forEach(field -> left.add(field.row()));
        tell();
    }

    /** Whether the build is to be closed with this open, and nobody was asked yet; asks once. */
    boolean asksToClose(List<BuildGap> gaps) {
        boolean asks = !askedFor && !text(BuildField.of(Name.CLOSED)).isBlank() && !gaps.isEmpty();
        askedFor = asks;
        return asks;
    }

    /** What is open besides closing and signing, once what is typed is written. */
    List<BuildGap> gaps() {
        Set<BuildGap.Kind> formal = Set.of(BuildGap.Kind.NOT_CLOSED, BuildGap.Kind.NOT_SIGNED, BuildGap.Kind.DUE);
        return page().stream()
                .flatMap(then -> then.gaps().stream())
                .filter(gap -> !formal.contains(gap.kind()))
                .toList();
    }

    /** Everything is written: what was typed since stays. */
    void written(Map<BuildField, String> saved) {
        saved.forEach((field, text) -> {
            if (text.equals(texts.get(field)) && field.name() != Name.WHEN) {
                texts.remove(field);
            }
        });
        left.clear();
        reading = null;
        if (inHand != null && BuildField.joint(inHand).isPresent()) {
            inHand = null;
        }
        tell();
    }

    // The draft

    Map<String, String> kept() {
        Map<String, String> kept = new HashMap<>();
        texts.forEach((field, text) -> kept.put(field.key(), text));
        return kept;
    }

    /** Puts a draft on the page. What was typed meanwhile stays. */
    void restore(Map<String, String> kept) {
        boolean typing = isDirty();
        kept.forEach((key, text) -> BuildField.parse(key).ifPresent(field -> {
            if (!typing || text(field).isEmpty()) {
                texts.put(field, text);
            }
        }));
        tell();
    }

    private void tell() {
        List.copyOf(listeners).forEach(Runnable::run);
    }
}
