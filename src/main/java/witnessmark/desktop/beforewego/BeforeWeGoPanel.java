package witnessmark.desktop.beforewego;

import java.awt.CardLayout;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.function.Consumer;
import java.util.stream.Stream;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.form.BoardLine;
import witnessmark.desktop.form.Buttons;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.form.FormLayout;
import witnessmark.desktop.form.NoticeStrip;
import witnessmark.desktop.form.ScrollPage;
import witnessmark.desktop.form.SheetTools;
import witnessmark.logbook.sheets.Prefilled;
import witnessmark.wording.Texts;

/** The page: board, nearest limits, last out, lives moved; in a new logbook the first steps in their place. */
final class BeforeWeGoPanel extends JPanel {
    private static final String STANDING = "standing";
    private static final String STEPS = "steps";

    private final NoticeStrip notice = new NoticeStrip();
    private final BoardLine board = new BoardLine();
    private final CardLayout cards = new CardLayout();
    private final JPanel below = new JPanel(cards);
    private final NextRunSheet next;
    private final MarksSheet nearest;
    private final OutSheet lastOut;
    private final OutSheet moved;
    private final OutSheet jobs;
    private final OutSheet out;
    private final OutSheet bare;
    private final OutSheet unlogged;
    private final OutSheet incomplete;
    private final OutSheet incidents;
    private final OutSheet readings;
    private final OutSheet refunds;
    private final OutSheet borrowed;
    private final OutSheet others;
    private final OutSheet begun;
    private final FirstStepsSheet steps;
    private final JButton logRun;
    private boolean stepsShown;

    /** Where rows lead. */
    record Opening(
            Consumer<MarkLine> limit,
            Consumer<OutLine> run,
            Consumer<OutLine> engine,
            Consumer<OutLine> incident,
            Consumer<OutLine> trends,
            Consumer<OutLine> open,
            Consumer<Prefilled> sheet,
            Consumer<NextRunLines.Tick> tick,
            Consumer<String> planJob,
            Runnable print) {}

    BeforeWeGoPanel(SheetTools tools, BeginActions actions, Runnable importSeason, Opening opening) {
        super(new FormLayout("insets 0, gap 0, fill", "[0::,grow,fill]", "[]14[0::,grow,fill]"));
        Texts texts = tools.texts();
        setOpaque(false);
        below.setOpaque(false);
        next = new NextRunSheet(texts, opening.tick(), opening.planJob());
        nearest = new MarksSheet(tools, actions, opening.limit());
        logRun = Buttons.plain(Caption.of(texts.get("beforewego.logRun")), actions.logRun());
        lastOut = new OutSheet(texts, "beforewego.lastOut", "beforewego.lastOut.none", opening.run(), logRun);
        lastOut.onJob(line -> opening.planJob().accept(line.record()));
        moved = new OutSheet(texts, "beforewego.moved", "beforewego.lastOut.none", opening.engine(), null);
        steps = new FirstStepsSheet(texts, actions, importSeason);
        Consumer<OutLine> toSheet = line -> opening.sheet().accept(Objects.requireNonNull(line.sheet()));
        JButton print = Buttons.plain(Caption.of(texts.get("jobsheet.button")), opening.print());
        jobs = new OutSheet(texts, "beforewego.jobs", null, opening.open(), print);
        out = new OutSheet(texts, "beforewego.out.others", null, opening.open(), null);
        bare = new OutSheet(texts, "beforewego.bare", null, toSheet, null);
        unlogged = new OutSheet(texts, "beforewego.unlogged", null, toSheet, null);
        incomplete = new OutSheet(texts, "beforewego.incomplete", null, toSheet, null);
        incidents = new OutSheet(
                texts,
                "beforewego.incidents",
                null,
                line -> (line.sheet() == null ? opening.incident() : toSheet).accept(line),
                null);
        readings = new OutSheet(texts, "beforewego.readings", null, opening.trends(), null);
        refunds = new OutSheet(texts, "beforewego.refunds", null, opening.open(), null);
        borrowed = new OutSheet(texts, "beforewego.borrowed", null, toSheet, null);
        begun = new OutSheet(texts, "beforewego.begun", null, line -> goOn(opening, line), null);
        others = new OutSheet(texts, "beforewego.open.shelf", null, opening.open(), null);
        below.add(standing(), STANDING);
        below.add(steps.component(), STEPS);
        JPanel head = new JPanel(new FormLayout("insets 0, gap 0, fillx, hidemode 3, wrap", "[0::,grow,fill]"));
        head.setOpaque(false);
        head.add(notice);
        head.add(board);
        add(head, "growx, wrap");
        add(new ScrollPage(below), "grow");
    }

    /**
     * @param unsaved what was begun and not saved
     * @param now what the clock shows
     */
    void show(StandingLines lines, List<OutLine> unsaved, Instant now) {
        notice.dismiss();
        begun.show(unsaved);
        board.show(
                lines.board().sentence(), lines.board().under(), lines.board().figures());
        stepsShown = lines.steps().left();
        if (stepsShown) {
            steps.show(lines.steps());
        } else {
            next.show(lines.nextRuns(), now);
            nearest.show(lines);
            lastOut.show(lines.lastOut());
            moved.show(lines.moved());
            jobs.show(lines.jobs());
            out.show(lines.out());
            bare.show(lines.bare());
            unlogged.show(lines.unlogged());
            incomplete.show(lines.incomplete());
            incidents.show(lines.incidents());
            readings.show(lines.readings());
            refunds.show(lines.refunds());
            borrowed.show(lines.borrowed());
            others.show(lines.others());
        }
        cards.show(below, stepsShown ? STEPS : STANDING);
        revalidate();
        repaint();
    }

    /** Says how long until the next run of each car. */
    void tell(Instant now) {
        next.tell(now);
    }

    private static void goOn(Opening opening, OutLine line) {
        Prefilled sheet = line.sheet();
        if (sheet == null) {
            opening.open().accept(line);
        } else {
            opening.sheet().accept(sheet);
        }
    }

    void failed(String sentence, JButton again) {
        notice.show(sentence, List.of(again));
    }

    JComponent firstFocus() {
        if (stepsShown) {
            return steps.next();
        }
        return Stream.of(next.first(), bare.first(), incomplete.first(), nearest.first())
                .filter(Objects::nonNull)
                .findFirst()
                .orElse(logRun);
    }

    /** Where the focus goes once what was ticked is shown; null when nothing was. */
    @Nullable
    JComponent afterTick() {
        return next.afterTick();
    }

    MarksSheet nearest() {
        return nearest;
    }

    FirstStepsSheet steps() {
        return steps;
    }

    private JPanel standing() {
        JPanel main =
                new JPanel(new FormLayout("insets 0, gap 0, fill, hidemode 3", "[0::,grow,fill]", "[][][][grow,fill]"));
        main.setOpaque(false);
        main.add(next.component(), "cell 0 0, growx, gapbottom 16");
        main.add(bare.component(), "cell 0 1, growx, gapbottom 16");
        main.add(incomplete.component(), "cell 0 2, growx, gapbottom 16");
        main.add(nearest.component(), "cell 0 3, grow");
        return new SideBySide(
                main,
                List.of(
                        begun.component(),
                        unlogged.component(),
                        lastOut.component(),
                        readings.component(),
                        incidents.component(),
                        jobs.component(),
                        refunds.component(),
                        out.component(),
                        borrowed.component(),
                        others.component(),
                        moved.component()));
    }
}
