package witnessmark.desktop.beforewego;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import witnessmark.desktop.form.BoardLine;
import witnessmark.domain.Run;
import witnessmark.logbook.standing.LastOut;
import witnessmark.logbook.standing.LifeMoved;
import witnessmark.logbook.standing.MarkOn;
import witnessmark.logbook.standing.NextEvent;
import witnessmark.logbook.standing.PartCount;
import witnessmark.logbook.standing.Standing;
import witnessmark.quantity.Counter;
import witnessmark.quantity.Moment;
import witnessmark.quantity.RunningTime;
import witnessmark.wording.Amounts;
import witnessmark.wording.LifeWords;
import witnessmark.wording.Measures;
import witnessmark.wording.RecordWords;
import witnessmark.wording.Texts;

/** Words the standing of the team. The same standing always gives the same lines. */
public final class BeforeWeGoModel {
    /** Rows filled up with what stands nearest to its limit, when fewer ask for a hand. */
    static final int ROWS = 4;

    /** No more rows than this, however many ask for a hand: the table under them has every one. */
    static final int MOST = 24;

    private final Texts texts;
    private final Measures measures;
    private final Amounts amounts;
    private final LifeWords lives;
    private final RecordWords records;
    private final MarkWords marks;
    private final OpenWords open;

    public BeforeWeGoModel(Texts texts, Measures measures) {
        this.texts = texts;
        this.measures = measures;
        this.amounts = new Amounts(texts, measures);
        this.lives = new LifeWords(texts, measures);
        this.records = new RecordWords(texts);
        this.marks = new MarkWords(texts, measures);
        this.open = new OpenWords(texts, measures);
    }

    public StandingLines lines(Standing standing) {
        PartCount count = standing.goingParts();
        List<MarkOn> must = standing.going().stream().filter(MarkOn::calls).toList();
        List<MarkOn> due = standing.going().stream().filter(MarkOn::comesDue).toList();
        int shown = Math.min(MOST, must.size() + due.size());
        int calling = standing.calling();
        return new StandingLines(
                measures.date(standing.day()),
                board(standing, calling),
                new NextRunModel(texts, measures).lines(standing.nextRuns(), standing.day()),
                calling,
                must.stream().limit(MOST).map(marks::line).toList(),
                due.stream()
                        .limit(Math.max(0, MOST - must.size()))
                        .map(marks::line)
                        .toList(),
                nearest(standing.going(), ROWS - shown).stream()
                        .map(marks::line)
                        .toList(),
                must.size() + due.size() - shown,
                new RunsOutModel(texts, measures, marks).lines(standing),
                texts.get("beforewego.quiet", count.inside(), count.notKnown(), count.noLimit()),
                elsewhere(standing.elsewhereParts()),
                all(standing),
                standing.lastOut().stream().map(this::lastOut).toList(),
                standing.moved().stream().map(this::moved).toList(),
                open.bare(standing.open()),
                open.unlogged(standing.open()),
                open.incomplete(standing.open()),
                open.jobs(
                        standing.open(),
                        standing.next() == null ? null : standing.next().event().name()),
                open.out(standing.open()),
                open.incidents(standing.open()),
                open.readings(standing.open()),
                open.refunds(
                        standing.open(),
                        standing.next() == null ? null : standing.next().event()),
                open.borrowed(standing.open()),
                open.others(standing.open()),
                standing.steps());
    }

    private Board board(Standing standing, int calling) {
        NextEvent next = standing.next();
        if (standing.steps().left()) {
            return new Board(texts.get("beforewego.board.new"), texts.get("beforewego.board.new.under"), List.of());
        }
        if (next == null) {
            return new Board(texts.get("beforewego.board.none"), texts.get("beforewego.board.none.under"), List.of());
        }
        List<BoardLine.Figure> figures = new ArrayList<>();
        if (!next.running()) {
            figures.add(figure(next.days(), "beforewego.board.days"));
        }
        if (next.cars() == 0) {
            figures.add(new BoardLine.Figure(
                    texts.get("beforewego.board.noCars"), texts.get("beforewego.board.noCars.under")));
            if (next.timetable() > 0) {
                figures.add(figure(next.timetable(), "beforewego.board.timetable"));
            }
            return new Board(
                    title(next, calling), texts.get("beforewego.board.noEntry", under(next, calling)), figures);
        }
        figures.add(figure(next.cars(), "beforewego.board.cars"));
        if (next.planned() > 0) {
            figures.add(
                    next.running()
                            ? figure(next.left(), "beforewego.board.runsLeft")
                            : figure(next.planned(), "beforewego.board.runs"));
        }
        return new Board(title(next, calling), under(next, calling), figures);
    }

    /** What must be done stands larger than the event's name; with nothing to do the name does. */
    private String title(NextEvent next, int calling) {
        return calling == 0
                ? next.event().name()
                : texts.get(next.runsLeft() ? "beforewego.board.nextRun" : "beforewego.board.jobs", calling);
    }

    private String under(NextEvent next, int calling) {
        return calling == 0
                ? under(next)
                : texts.get("beforewego.board.at", under(next), next.event().name());
    }

    private String under(NextEvent next) {
        Moment leaves = next.truckLeaves();
        if (next.running()) {
            String first = measures.date(next.event().firstDay());
            return next.event().firstDay().equals(next.event().lastDay())
                    ? texts.get("beforewego.board.running.day", first)
                    : texts.get(
                            "beforewego.board.running",
                            first,
                            measures.date(next.event().lastDay()));
        }
        return leaves != null
                ? texts.get("beforewego.board.leaves", measures.moment(leaves))
                : texts.get(
                        "beforewego.board.begins", measures.date(next.event().firstDay()));
    }

    private BoardLine.Figure figure(long value, String words) {
        return new BoardLine.Figure(measures.number(value), texts.get(words, value));
    }

    /** What stands nearest to its limit of what asks for nothing, each part once; none when no more rows are wanted. */
    private static List<MarkOn> nearest(List<MarkOn> going, int rows) {
        List<MarkOn> nearest = new ArrayList<>();
        Set<String> shown = new HashSet<>();
        for (MarkOn on : going) {
            boolean quiet = !on.calls() && !on.comesDue() && on.use() != null;
            if (quiet && nearest.size() < rows && shown.add(on.subject())) {
                nearest.add(on);
            }
        }
        return nearest;
    }

    private String elsewhere(PartCount count) {
        return count.all() == 0
                ? ""
                : texts.get(
                        count.held() == 0 ? "beforewego.elsewhere" : "beforewego.elsewhere.held",
                        count.over() + count.runOn(),
                        count.notKnown(),
                        count.inside() + count.due(),
                        count.noLimit(),
                        count.held());
    }

    private List<MarkLine> all(Standing standing) {
        return Stream.concat(
                        Stream.concat(standing.going().stream(), standing.elsewhere().stream())
                                .map(marks::line),
                        standing.withoutLimit().stream().map(marks::line))
                .toList();
    }

    private OutLine lastOut(LastOut out) {
        Run run = out.run().fact();
        List<String> first = new ArrayList<>();
        first.add(texts.get(
                "beforewego.out.run",
                texts.get(
                        "beforewego.out.day",
                        measures.weekday(run.start().day()),
                        measures.shortDate(run.start().day())),
                run.name().isEmpty() ? records.word(run.kind()) : lowered(run.name()),
                measures.running(run.running())));
        first.add(run.laps() == null ? texts.get("beforewego.out.noLaps") : amounts.amount(Counter.LAPS, run.laps()));
        String highest = run.highest() == null
                ? texts.get("beforewego.out.noHighest")
                : texts.get("beforewego.out.highest", measures.speed(run.highest()));
        String water = run.waterHighest() == null
                ? texts.get("beforewego.out.noWater")
                : texts.get("beforewego.out.water", measures.temperature(run.waterHighest()));
        return new OutLine(
                texts.get("beforewego.out.title", out.name(), out.engine()),
                texts.get("beforewego.comma", first.get(0), first.get(1)),
                texts.get("beforewego.comma", highest, water),
                out.run().id().text());
    }

    /** Inside a sentence a run's name begins small: "race 2". A name in capitals stays. */
    private String lowered(String name) {
        boolean word = name.length() > 1 && Character.isLowerCase(name.charAt(1));
        return word ? name.substring(0, 1).toLowerCase(texts.locale()) + name.substring(1) : name;
    }

    private OutLine moved(LifeMoved moved) {
        Run first = moved.runs().get(0).fact();
        String outing = first.name().isEmpty() ? records.label(records.word(first.kind())) : first.name();
        String event = moved.event() == null ? outing : moved.event();
        return new OutLine(
                texts.get("beforewego.moved.title", moved.number(), before(moved), lives.brief(moved.now())),
                texts.get("beforewego.moved.event", event, moved.runs().size()),
                texts.get("beforewego.moved.parts", lives.brief(moved.added()), moved.parts()),
                moved.engine().text());
    }

    /** A figure without its unit, which stands behind the one after it: "about 9.00". */
    private String before(LifeMoved moved) {
        if (!moved.now().complete()) {
            return measures.atLeast(hoursAlone(moved.leastBefore()));
        }
        String shown = hoursAlone(moved.before());
        return moved.aboutBefore() ? measures.about(shown) : shown;
    }

    private String hoursAlone(long millis) {
        return measures.number(new RunningTime(millis).hours(2), 2);
    }
}
