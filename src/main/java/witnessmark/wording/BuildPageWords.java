package witnessmark.wording;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Build;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Fitment;
import witnessmark.domain.Joint;
import witnessmark.domain.Part;
import witnessmark.domain.PartKind;
import witnessmark.domain.SignOff;
import witnessmark.domain.Tool;
import witnessmark.ledger.result.BuildGap;
import witnessmark.ledger.result.BuildPosition;
import witnessmark.ledger.result.FreePart;
import witnessmark.ledger.result.JointGroup;
import witnessmark.ledger.result.LimitUse;
import witnessmark.ledger.result.Mark;
import witnessmark.ledger.result.StockLevel;
import witnessmark.quantity.Dimension;

/** What was done in a build and what is still open in it, in words. It says what is written; never that an engine may run. */
public final class BuildPageWords {
    private static final Pattern BARE = Pattern.compile("[0-9]+(?:[.,][0-9]+)?");

    private final Texts texts;
    private final Measures measures;
    private final RecordWords records;
    private final LifeWords lives;
    private final ReasonWords reasons;
    private final StandWords stands;
    private final MeasureWords figures;
    private final FitWords fit;
    private final FindingWords findings;

    public BuildPageWords(Texts texts, Measures measures) {
        this.texts = texts;
        this.measures = measures;
        this.records = new RecordWords(texts);
        this.lives = new LifeWords(texts, measures);
        this.reasons = new ReasonWords(texts, measures);
        this.stands = new StandWords(texts, measures);
        this.figures = new MeasureWords(texts, measures);
        this.fit = new FitWords(texts, measures);
        this.findings = new FindingWords(texts, measures);
    }

    /** "K05, build 3". */
    public String name(String engine, Build build) {
        return texts.get("builds.name", engine, build.number());
    }

    /** "Covers, head, sump. Open since 16 Jun 2026." */
    public String span(Build build) {
        String zones = records.label(
                measures.row(build.zones().stream().map(records::word).toList()));
        String opened = measures.date(build.opened().day());
        return build.closed() == null
                ? texts.get("builds.opened", zones, opened)
                : texts.get(
                        "builds.closed",
                        zones,
                        opened,
                        measures.date(build.closed().day()));
    }

    /** Who signed its sheet; where nobody did, who closed it under his name. */
    public String signed(@Nullable SignOff signed, Build build) {
        if (signed == null) {
            return build.signedBy().isBlank()
                    ? texts.get("builds.signed.not")
                    : texts.get("builds.signed.closed", build.signedBy());
        }
        String day = measures.date(signed.at().day());
        return signed.seenByTwo()
                ? texts.get("builds.signed.two", day, signed.by(), signed.second())
                : texts.get("builds.signed.one", day, signed.by());
    }

    /** "5 things and 64 figures still open": the figures as the build sheet counts them. */
    public String open(List<BuildGap> gaps) {
        if (gaps.isEmpty()) {
            return texts.get("builds.open.none");
        }
        long things = gaps.stream().filter(gap -> !ofSheet(gap)).count();
        int figures = gaps.stream()
                .filter(BuildPageWords::ofSheet)
                .mapToInt(BuildGap::count)
                .sum();
        if (things == 0 || figures == 0) {
            return texts.get(things == 0 ? "builds.open.figures" : "builds.open.count", things + figures);
        }
        return texts.get("builds.open.both", things, figures);
    }

    private static boolean ofSheet(BuildGap gap) {
        return gap.kind() == BuildGap.Kind.OUTSIDE || gap.kind() == BuildGap.Kind.NOT_MEASURED;
    }

    private String figures(BuildGap gap) {
        return gap.kind() == BuildGap.Kind.OUTSIDE ? fit.outside(gap.count()) : fit.missing(gap.count());
    }

    /** One thing that is open. */
    public String gap(Facts facts, BuildGap gap) {
        String key = "builds.gap." + gap.kind().name().toLowerCase(Locale.ROOT);
        BuildPosition at = gap.position();
        JointGroup joint = gap.joint();
        if (joint != null) {
            return texts.get(key, group(joint.fasteners(), joint.which()));
        }
        if (ofSheet(gap)) {
            return texts.get("builds.gap.sheet", figures(gap));
        }
        if (at == null) {
            return texts.get(key, gap.count());
        }
        Entry<Fitment> in = at.in();
        if (in != null && !gap.found().isEmpty()) {
            return texts.get(
                    key,
                    part(facts, in.fact()),
                    gap.found().stream()
                            .map(each -> findings.named(each.fact()))
                            .collect(Collectors.joining("; ")));
        }
        Mark worst = at.worst();
        return in == null || worst == null
                ? texts.get(key, position(at))
                : texts.get(key, position(at), part(facts, in.fact()), reasons.why(worst));
    }

    public String position(BuildPosition at) {
        return records.label(at.position().fact().name());
    }

    /** The mark of what is or was fitted. */
    public String part(Facts facts, Fitment fitment) {
        return facts.of(Part.class).get(fitment.part()).mark();
    }

    /** "BE-05-1 came out: copper showing, scored". */
    public String cameOut(Facts facts, Fitment fitment) {
        String part = part(facts, fitment);
        String said = reason(fitment);
        return said.isEmpty() ? texts.get("builds.came_out", part) : texts.get("builds.came_out.why", part, said);
    }

    /** The same where it is said above what came out: "BE-05-1: copper showing, scored". */
    public String out(Facts facts, Fitment fitment) {
        String part = part(facts, fitment);
        String said = reason(fitment);
        return said.isEmpty() ? part : texts.get("builds.colon", part, said);
    }

    private String reason(Fitment fitment) {
        String why = fitment.why();
        return why.isEmpty() || fitment.condition().isEmpty()
                ? why + fitment.condition()
                : texts.get("builds.comma", why, fitment.condition());
    }

    /** How what is in a position stands: "12.87 h", "over, renew springs: 0.9 h over". */
    public String stands(@Nullable Mark worst) {
        return worst == null ? "" : texts.get("builds.colon", stands.state(worst.state()), reasons.why(worst));
    }

    /** The same where its state is said beside it, the figure first: "0.9 h over: renew springs". */
    public String why(@Nullable Mark worst) {
        if (worst == null) {
            return "";
        }
        return worst.reason() instanceof LimitUse use
                ? texts.get("builds.colon", lives.limit(use), use.limit().fact().name())
                : reasons.why(worst);
    }

    /** "S-15, Orrow springs, 3.2 h"; with how it stands where something holds it. */
    public String free(FreePart free) {
        List<String> said = new ArrayList<>();
        Entry<Part> part = free.part();
        StockLevel batch = free.batch();
        String design = free.design().fact().name();
        if (part != null && free.running() != null) {
            said.add(texts.get("builds.free.part", part.fact().mark(), design, lives.life(free.running())));
        } else if (batch != null) {
            said.add(texts.get("builds.free.batch", design, batch.batch().fact().batch(), batch.onShelf()));
        }
        if (free.worst() != null) {
            said.add(stands.state(free.worst().state()).toLowerCase(texts.locale()));
        }
        if (!free.marked().isEmpty()) {
            said.add(texts.get(
                    "builds.free.marked", findings.words(free.marked().get(0).fact())));
        }
        if (free.kept()) {
            said.add(texts.get("builds.free.kept"));
        }
        return measures.row(said);
    }

    /** "Rod bolts, all eight". */
    public String group(PartKind fasteners, String which) {
        String kind = records.word(fasteners);
        boolean other = fasteners == PartKind.OTHER && !which.isBlank();
        return records.label(other ? which : which.isBlank() ? kind : texts.get("builds.comma", kind, which));
    }

    /** How a group was tightened, stage by stage; or that it was not. */
    public List<String> tightened(Facts facts, JointGroup group) {
        Entry<Build> before = group.before();
        if (group.tightened().isEmpty()) {
            return List.of(
                    before == null
                            ? texts.get("builds.tightened.not")
                            : texts.get(
                                    "builds.tightened.not.before", before.fact().number()));
        }
        return group.tightened().stream()
                .map(joint -> stage(facts, joint.fact()))
                .toList();
    }

    /** The method, the value and the lubricant always stand together: the one says nothing without the others. */
    private String stage(Facts facts, Joint joint) {
        String lubricant = joint.lubricant().isBlank()
                ? texts.get("builds.lubricant.not")
                : texts.get("builds.lubricant", joint.lubricant());
        List<String> said = new ArrayList<>();
        said.add(texts.get("builds.tightened", records.label(records.word(joint.method())), value(joint), lubricant));
        said.add(
                joint.tool() == null
                        ? texts.get("builds.tool.not")
                        : texts.get(
                                "builds.tool",
                                facts.of(Tool.class).get(joint.tool()).mark()));
        said.add(texts.get("builds.by", joint.by()));
        said.add(joint.second().isBlank() ? texts.get("builds.seen.not") : texts.get("builds.seen", joint.second()));
        String line = measures.row(said);
        return joint.stage().isBlank() ? line : texts.get("builds.tightened.stage", joint.stage(), line);
    }

    /** What was typed; a bare figure with the unit it is taken in. */
    private String value(Joint joint) {
        @Nullable
        Dimension taken = switch (joint.method()) {
            case TORQUE -> Dimension.TORQUE;
            case ANGLE -> Dimension.ANGLE;
            case STRETCH -> Dimension.LENGTH;
            case TORQUE_AND_ANGLE -> null; // two figures
        };
        return taken != null && BARE.matcher(joint.value()).matches()
                ? texts.get("measures.figure", joint.value(), figures.sign(taken))
                : joint.value();
    }

    /** What stands in a position, short. */
    public String in(Facts facts, BuildPosition at) {
        Entry<Fitment> in = at.in();
        return in == null ? texts.get("builds.empty") : part(facts, in.fact());
    }

    /** When what is there went in in this build, or that it stayed in; empty for an empty position. */
    public String wentIn(BuildPosition at) {
        Entry<Fitment> in = at.in();
        return in == null
                ? ""
                : at.fresh()
                        ? texts.get(
                                "builds.went_in",
                                measures.shortDate(in.fact().from().day()))
                        : texts.get("builds.stays");
    }

    public String caution() {
        return texts.get("builds.caution");
    }
}
