package witnessmark.command;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.function.LongConsumer;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import witnessmark.fit.result.AtSpeed;
import witnessmark.fit.result.Closing;
import witnessmark.fit.result.RodLoad;
import witnessmark.fit.result.SpeedAnswer;
import witnessmark.logbook.Desk;
import witnessmark.logbook.View;
import witnessmark.logbook.measuring.SeeAtSpeed;
import witnessmark.logbook.measuring.SeeBuildSheet;
import witnessmark.logbook.measuring.SpeedPage;
import witnessmark.logbook.measuring.TriedText;
import witnessmark.logbook.measuring.TriedText.Tried;
import witnessmark.outcome.Problem;
import witnessmark.wording.SpeedWords;

/** What an engine's clearances become at speed, worked out of its build sheet; with what somebody would like to try. */
@Command(name = "atspeed", mixinStandardHelpOptions = true)
final class SpeedOf implements Callable<Integer> {
    private static final String ROD = "--rod-section";
    private static final String GASKET = "--gasket";
    private static final String CROWN = "--crown-cut";
    private static final String DECK = "--deck-skim";
    private static final String HEAD = "--head-skim";
    private static final String LINE = "--red-line";

    @Mixin
    private Open open = new Open();

    @Parameters(index = "1", paramLabel = "ENGINE", descriptionKey = "command.buildsheet.engine")
    @SuppressWarnings("NullAway.Init") // a required parameter
    private String engine;

    @Option(names = "--build", paramLabel = "NUMBER", descriptionKey = "command.buildsheet.build")
    private @Nullable Integer number;

    @Option(names = "--as-of", paramLabel = "DAY", descriptionKey = "command.asof")
    private @Nullable String asOf;

    @Option(names = ROD, paramLabel = "AREA", descriptionKey = "command.atspeed.rod")
    private @Nullable String rodArea;

    @Option(names = GASKET, paramLabel = "THICKNESS", descriptionKey = "command.atspeed.gasket")
    private @Nullable String gasket;

    @Option(names = CROWN, paramLabel = "DEPTH", descriptionKey = "command.atspeed.crown")
    private @Nullable String crownCut;

    @Option(names = DECK, paramLabel = "DEPTH", descriptionKey = "command.atspeed.deck")
    private @Nullable String deckSkim;

    @Option(names = HEAD, paramLabel = "DEPTH", descriptionKey = "command.atspeed.head")
    private @Nullable String headSkim;

    @Option(names = LINE, paramLabel = "SPEED", descriptionKey = "command.atspeed.redline")
    private @Nullable String redLine;

    @Option(names = "--json", descriptionKey = "command.json")
    private boolean json;

    private final Tools tools;

    SpeedOf(Tools tools) {
        this.tools = tools;
    }

    @Override
    public Integer call() {
        return open.with(new Answer(tools, "atspeed", json), asOf, this::work);
    }

    private int work(Desk desk, Answer answer) {
        View view = desk.view();
        TriedText tried = TriedText.of(typed());
        if (!tried.unread().isEmpty()) {
            return answer.didNot(tried.unread().entrySet().stream()
                    .sorted(Map.Entry.comparingByKey())
                    .map(each -> Problem.unread(
                            option(each.getKey()), typed().getOrDefault(each.getKey(), ""), each.getValue()))
                    .toList());
        }
        return new NamedBuild(engine, number)
                .with(
                        answer,
                        view,
                        found -> SeeBuildSheet.build(view, found, number)
                                .flatMap(build -> SeeAtSpeed.of(view, build.id(), tried.whatIf())),
                        page -> told(answer, view, page));
    }

    private int told(Answer answer, View view, SpeedPage page) {
        if (json) {
            answer.print(asJson(answer, view, page));
        } else {
            print(answer, page);
        }
        return Exit.WORKED;
    }

    private static String option(Tried tried) {
        return switch (tried) {
            case ROD_AREA -> ROD;
            case GASKET -> GASKET;
            case CROWN_CUT -> CROWN;
            case DECK_SKIM -> DECK;
            case HEAD_SKIM -> HEAD;
            case RED_LINE -> LINE;
        };
    }

    private Map<Tried, String> typed() {
        Map<Tried, String> typed = new EnumMap<>(Tried.class);
        put(typed, Tried.ROD_AREA, rodArea);
        put(typed, Tried.GASKET, gasket);
        put(typed, Tried.CROWN_CUT, crownCut);
        put(typed, Tried.DECK_SKIM, deckSkim);
        put(typed, Tried.HEAD_SKIM, headSkim);
        put(typed, Tried.RED_LINE, redLine);
        return typed;
    }

    private static void put(Map<Tried, String> typed, Tried tried, @Nullable String text) {
        if (text != null) {
            typed.put(tried, text);
        }
    }

    private void print(Answer answer, SpeedPage page) {
        SpeedWords words = new SpeedWords(tools.texts(), tools.measures());
        SpeedAnswer speed = page.answer();
        answer.line(tools.texts()
                .get(
                        "command.buildsheet.heading",
                        page.engine().fact().number(),
                        page.build().fact().number(),
                        tools.measures().date(page.build().fact().opened().day())));
        if (page.whatIf().any()) {
            answer.line(tools.texts().get("speed.whatif.tried"));
        }
        answer.line(words.headline(speed, page.squish()));
        words.beside(speed).forEach(answer::line);
        words.rings(speed).forEach(answer::line);
        Integer rpm = speed.judgedAt();
        if (rpm != null) {
            speed.nearest(rpm).ifPresent(side -> {
                answer.line("");
                words.column(side, rpm).forEach(line -> answer.line(FitText.columnLine(line)));
            });
        }
        answer.line("");
        answer.line(words.conditions(speed.conditions()));
        words.missing(speed).forEach(answer::line);
        int plain = page.loads().size() - page.overRevs();
        for (int i = 0; i < page.loads().size(); i++) {
            answer.line(words.load(page.loads().get(i), i >= plain));
        }
        if (page.marks() != null) {
            words.marks(page.marks()).forEach(answer::line);
        }
        answer.line("");
        answer.line(tools.texts().get("speed.caution"));
    }

    private ObjectNode asJson(Answer answer, View view, SpeedPage page) {
        SpeedAnswer speed = page.answer();
        ObjectNode root = answer.node()
                .put("asOf", view.day().toString())
                .put("engine", page.engine().fact().number())
                .put("build", page.build().fact().number())
                .put("verdict", code(speed.verdict()));
        put(root, "redLine", speed.redLine());
        put(root, "seen", speed.seen());
        put(root, "judgedAt", speed.judgedAt());
        ArrayNode sides = root.putArray("sides");
        speed.hot().forEach(side -> put(sides.addObject().put("cold", false), side, speed));
        speed.cold().forEach(side -> put(sides.addObject().put("cold", true), side, speed));
        ArrayNode lacks = root.putArray("lacks");
        speed.lacks().stream().sorted().forEach(lack -> lacks.add(code(lack)));
        ArrayNode taken = root.putArray("taken");
        speed.taken().stream().sorted().forEach(each -> taken.add(code(each)));
        ArrayNode loads = root.putArray("rodBolts");
        page.loads().forEach(load -> put(loads.addObject(), load));
        return root;
    }

    private static void put(ObjectNode node, AtSpeed side, SpeedAnswer speed) {
        node.put("cylinder", side.place().number())
                .put(
                        "spot",
                        side.place().spot() == null ? "" : side.place().spot().code())
                .put("atRest", round(side.deck() + side.above()))
                .put("deckAtRest", round(side.deck()));
        if (side.overhang() != null) {
            node.put("ringOverCrown", round(side.overhang()));
        }
        Integer rpm = speed.judgedAt();
        if (rpm != null) {
            AtSpeed.Band band = side.headAt(rpm);
            node.putObject("atSpeed")
                    .put("rpm", rpm)
                    .put("low", round(band.low()))
                    .put("likely", round(band.likely()))
                    .put("high", round(band.high()));
            ObjectNode closes = node.putObject("closes");
            for (Closing closing : side.closings()) {
                closes.put(code(closing.kind()), round(closing.at(rpm / side.reference())));
            }
        }
    }

    private static void put(ObjectNode node, RodLoad load) {
        node.put("rpm", load.rpm()).put("rodNewtons", Math.round(load.rod()));
        put(load.bolt() == null ? null : Math.round(load.bolt()), newtons -> node.put("boltNewtons", newtons));
        if (load.margin() != null) {
            node.put("margin", round(load.margin()));
        }
    }

    private static void put(@Nullable Long figure, LongConsumer into) {
        if (figure != null) {
            into.accept(figure);
        }
    }

    private static void put(ObjectNode node, String name, @Nullable Integer figure) {
        if (figure != null) {
            node.put(name, figure);
        }
    }

    private static double round(double millimetres) {
        return Math.round(millimetres * 1000) / 1000.0;
    }

    private static String code(Enum<?> word) {
        return word.name().toLowerCase(Locale.ROOT);
    }
}
