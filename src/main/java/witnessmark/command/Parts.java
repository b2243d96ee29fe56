package witnessmark.command;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import witnessmark.ledger.result.Away;
import witnessmark.ledger.result.Life;
import witnessmark.ledger.result.PutAside;
import witnessmark.ledger.result.StockLevel;
import witnessmark.ledger.result.Where;
import witnessmark.logbook.Desk;
import witnessmark.logbook.engines.FittedTime;
import witnessmark.logbook.shelf.SeeShelf;
import witnessmark.logbook.shelf.Shelf;
import witnessmark.logbook.shelf.ShelfPart;
import witnessmark.logbook.shelf.StockRow;
import witnessmark.wording.WhereWords;

/** Where every part is and what is left in it, and how much stock there is. */
@Command(name = "parts", mixinStandardHelpOptions = true)
final class Parts implements Callable<Integer> {
    @Mixin
    private Open open = new Open();

    @Option(names = "--as-of", paramLabel = "DAY", descriptionKey = "command.asof")
    private @Nullable String asOf;

    @Option(names = "--json", descriptionKey = "command.json")
    private boolean json;

    private final Tools tools;
    private final MarkText marks;
    private final WhereWords words;

    Parts(Tools tools) {
        this.tools = tools;
        this.marks = new MarkText(tools);
        this.words = new WhereWords(tools.texts(), tools.measures());
    }

    @Override
    public Integer call() {
        return open.with(new Answer(tools, "parts", json), asOf, this::work);
    }

    private int work(Desk desk, Answer answer) {
        Shelf shelf = SeeShelf.of(desk.view());
        if (json) {
            answer.print(asJson(answer, shelf));
        } else {
            print(answer, shelf);
        }
        return Exit.WORKED;
    }

    private void print(Answer answer, Shelf shelf) {
        answer.line(tools.texts()
                .get(
                        "command.parts.heading",
                        shelf.parts().size(),
                        tools.measures().date(shelf.day()),
                        shelf.needHand()));
        for (ShelfPart part : shelf.parts()) {
            answer.line("  %-12s %-22s %-22s %-15s %12s  %s"
                    .formatted(
                            part.mark(),
                            tools.words()
                                    .label(tools.words()
                                            .word(part.row().design().kind())),
                            words.where(part.where(), place(part)),
                            words.since(part.where()),
                            tools.lives().life(part.row().running()),
                            said(part))
                    .stripTrailing());
        }
        if (!shelf.stock().isEmpty()) {
            answer.line(tools.texts().get("command.parts.stock"));
        }
        for (StockRow row : shelf.stock()) {
            answer.line("  %-12s %-30s %s"
                    .formatted(row.level().batch().fact().batch(), row.design().name(), words.stock(row.level())));
        }
    }

    private String said(ShelfPart part) {
        List<String> said = new ArrayList<>(words.why(part.where()));
        if (part.where().borrowed()) {
            said.add(words.goesBack(part.before() == null ? "" : named(part.before())));
        }
        if (part.worst() != null) {
            said.add(marks.state(part.worst()) + ", " + marks.why(part.worst()));
        } else if (part.where().state() != Where.State.SCRAPPED && part.where().state() != Where.State.SPLIT) {
            said.add(tools.texts().get("shelf.noLimit"));
        }
        return said.isEmpty() ? "" : tools.measures().row(said);
    }

    /** "K03, car 41", "car 41". */
    private String place(ShelfPart part) {
        if (part.there() == null) {
            return "";
        }
        String named = named(part.there());
        return part.car() == null ? named : named + ", " + tools.texts().get("command.due.car", part.car());
    }

    private String named(FittedTime time) {
        return time.engine() == null ? tools.texts().get("command.due.car", time.place()) : time.place();
    }

    private ObjectNode asJson(Answer answer, Shelf shelf) {
        ObjectNode root = answer.node();
        root.put("asOf", shelf.day().toString()).put("needHand", shelf.needHand());
        ArrayNode parts = root.putArray("parts");
        shelf.parts().forEach(part -> add(parts.addObject(), part));
        ArrayNode stock = root.putArray("stock");
        shelf.stock().forEach(row -> add(stock.addObject(), row));
        return root;
    }

    private void add(ObjectNode node, ShelfPart part) {
        Where where = part.where();
        FittedTime there = part.there();
        FittedTime before = part.before();
        Life life = part.row().running();
        node.put("part", part.mark())
                .put("kind", part.row().design().kind().code())
                .put("design", part.row().design().name())
                .put("batch", part.row().part().fact().batch())
                .put("where", code(where.state()))
                .put("since", where.since() == null ? null : where.since().text())
                .put("needsHand", where.needsHand())
                .put("engine", there == null || there.engine() == null ? null : there.place())
                .put("car", there != null && there.engine() == null ? there.place() : part.car())
                .put("position", there == null ? null : there.position())
                .put("borrowed", where.borrowed())
                .put("before", before == null ? null : before.place())
                .put("runningLowest", life.lowest())
                .put("runningHighest", life.highest())
                .put("runningComplete", life.complete())
                .put("state", part.worst() == null ? null : code(part.worst().state()));
        Away away = where.away();
        if (away != null) {
            LocalDate promised = away.promised();
            node.putObject("away")
                    .put("with", away.sent().fact().sentTo())
                    .put("asked", away.sent().fact().asked())
                    .put("promised", promised == null ? null : promised.toString())
                    .put("daysLate", away.daysLate())
                    .put("daysSilent", away.daysSilent());
        }
        asides(node.putArray("aside"), where.asides());
        asides(node.putArray("membersAside"), where.members());
        ArrayNode kept = node.putArray("keptFor");
        part.keptFor().forEach(job -> kept.add(job.fact().what()));
    }

    private static void asides(ArrayNode rows, List<PutAside> asides) {
        for (PutAside aside : asides) {
            rows.addObject()
                    .put("how", code(aside.kind()))
                    .put("member", aside.member())
                    .put("from", aside.from().text())
                    .put("words", aside.words());
        }
    }

    private static void add(ObjectNode node, StockRow row) {
        StockLevel level = row.level();
        LocalDate useBy = level.batch().fact().useBy();
        node.put("batch", level.batch().fact().batch())
                .put("design", row.design().name())
                .put("onShelf", level.onShelf())
                .put("kept", level.kept())
                .put("free", level.free())
                .put("useBy", useBy == null ? null : useBy.toString())
                .put("freeOfDesign", level.freeOfDesign())
                .put("leastOfDesign", level.leastOfDesign())
                .put("missing", level.missing())
                .put("short", level.isShort())
                .put("onOrder", level.onOrder());
    }

    private static String code(Enum<?> word) {
        return word.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
