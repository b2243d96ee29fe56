package witnessmark.desktop.builds;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import witnessmark.domain.Coded;
import witnessmark.domain.Entry;
import witnessmark.domain.Fact;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.JointMethod;
import witnessmark.domain.Part;
import witnessmark.domain.PartKind;
import witnessmark.domain.Position;
import witnessmark.domain.SetMember;
import witnessmark.domain.Tool;
import witnessmark.logbook.building.BuildDraft;
import witnessmark.logbook.building.BuildField;
import witnessmark.logbook.building.BuildPage;
import witnessmark.logbook.building.Goes;
import witnessmark.wording.BuildPageWords;
import witnessmark.wording.RecordWords;
import witnessmark.wording.Texts;

/** What can be picked in the fields of a build's page. */
final class Options {
    private final Texts texts;
    private final RecordWords records;
    private final BuildPageWords words;

    Options(Texts texts, BuildPageWords words) {
        this.texts = texts;
        this.records = new RecordWords(texts);
        this.words = words;
    }

    /** Whether a field is picked rather than typed. */
    static boolean has(BuildField.Name name) {
        return switch (name) {
            case OUT, MEMBER, IN, FASTENERS, METHOD, TOOL -> true;
            default -> false;
        };
    }

    /** What can be picked in a field as things stand. */
    List<Option> of(BuildModel model, BuildField field) {
        List<Option> all = new ArrayList<>();
        switch (field.name()) {
            case OUT -> {
                all.add(new Option("", texts.get("builds.out.stays")));
                for (Goes goes : Goes.values()) {
                    all.add(new Option(goes.code(), texts.get("builds.out." + goes.code())));
                }
            }
            case MEMBER -> {
                all.add(new Option("", texts.get("builds.member.whole")));
                BuildField.position(field.row()).ifPresent(position -> all.addAll(members(model, position)));
            }
            case IN -> {
                all.add(new Option("", texts.get("builds.in.nothing")));
                BuildField.position(field.row())
                        .ifPresent(position -> model.free(position)
                                .forEach(free -> all.add(new Option(BuildDraft.part(free), words.free(free)))));
            }
            case FASTENERS -> all.addAll(words(PartKind.values()));
            case METHOD -> all.addAll(words(JointMethod.values()));
            case TOOL -> {
                all.add(new Option("", texts.get("builds.tool.none")));
                model.page().ifPresent(page -> all.addAll(tools(page.facts())));
            }
            default -> {} // typed
        }
        return all;
    }

    private List<Option> words(Coded[] list) {
        return Arrays.stream(list)
                .map(word -> new Option(word.code(), records.label(records.word(word))))
                .toList();
    }

    /** Wrenches and what else tightens first, each with what it is. */
    private List<Option> tools(Facts facts) {
        return facts.of(Tool.class).where(tool -> tool.outOfUse() == null).stream()
                .sorted(Comparator.comparing((Entry<Tool> tool) -> tool.fact().kind())
                        .thenComparing(tool -> tool.fact().mark()))
                .map(tool -> new Option(
                        tool.id().text(),
                        texts.get(
                                "builds.comma",
                                tool.fact().mark(),
                                records.word(tool.fact().kind()))))
                .toList();
    }

    /** The members still together of the set that comes out of a position. */
    private static List<Option> members(BuildModel model, Id<Position> position) {
        BuildPage page = model.page().orElse(null);
        if (page == null) {
            return List.of();
        }
        Facts facts = page.facts();
        Id<Part> set = page.position(position)
                .map(at -> at.out().isEmpty() ? at.in() : at.out().get(at.out().size() - 1))
                .map(fitment -> fitment.fact().part())
                .orElse(null);
        List<String> gone =
                facts
                        .of(Part.class)
                        .where(part -> part.ofSet() != null && part.ofSet().equals(set))
                        .stream()
                        .map(part -> String.valueOf(part.fact().memberMark()))
                        .toList();
        return facts
                .of(SetMember.class)
                .where(member -> member.set().equals(set) && !gone.contains(member.mark()))
                .stream()
                .sorted(Comparator.comparingInt(member -> member.fact().ordinal()))
                .map(Options::option)
                .toList();
    }

    private static <F extends Fact> Option option(Entry<F> entry) {
        return new Option(entry.id().text(), String.valueOf(entry.fact().knownAs()));
    }
}
