package witnessmark.desktop.runsheet;

import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import witnessmark.desktop.form.Caption;
import witnessmark.domain.Car;
import witnessmark.domain.Coded;
import witnessmark.domain.Engine;
import witnessmark.domain.Event;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.Person;
import witnessmark.domain.PlannedRun;
import witnessmark.domain.Run;
import witnessmark.domain.RunKind;
import witnessmark.ledger.result.About;
import witnessmark.ledger.result.Life;
import witnessmark.logbook.engines.Amended;
import witnessmark.logbook.run.Choice;
import witnessmark.logbook.run.Note;
import witnessmark.logbook.run.RunField;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Distance;
import witnessmark.quantity.EngineSpeed;
import witnessmark.quantity.Moment;
import witnessmark.quantity.Pressure;
import witnessmark.quantity.RunningTime;
import witnessmark.quantity.Temperature;
import witnessmark.quantity.Volume;
import witnessmark.quantity.typed.Unit;
import witnessmark.wording.LifeWords;
import witnessmark.wording.Measures;
import witnessmark.wording.Problems;
import witnessmark.wording.RecordWords;
import witnessmark.wording.Texts;

/** The sentences of the run sheet: lines under fields, choices, what was saved. */
final class RunWords {
    /** So many letters stand under a field. */
    private static final int LINE = 27;

    private final Texts texts;
    private final Measures measures;
    private final Problems problems;
    private final RecordWords records;
    private final LifeWords lives;

    RunWords(Texts texts, Measures measures) {
        this.texts = texts;
        this.measures = measures;
        this.problems = new Problems(texts, measures);
        this.records = new RecordWords(texts);
        this.lives = new LifeWords(texts, measures);
    }

    Texts texts() {
        return texts;
    }

    Measures measures() {
        return measures;
    }

    RecordWords records() {
        return records;
    }

    /** The label of a field, with {@code &} before its letter. */
    String label(RunField field) {
        return texts.get("runsheet.field." + field.key());
    }

    /** The label of a field without its letter. */
    String name(RunField field) {
        return Caption.of(label(field)).text();
    }

    /** The labels of fields named by their keys, as a run says which were queried; in lower case, inside a sentence. */
    List<String> fields(String keys) {
        return Stream.of(keys.split(" "))
                .flatMap(key -> RunField.of(key).stream())
                .map(field -> name(field).toLowerCase(texts.locale()))
                .toList();
    }

    /** The unit at the right edge of a field, empty for none. */
    String unit(RunField field) {
        return switch (field) {
            case RUNNING, WARM_UP, TRACK, LOADED -> texts.get("runsheet.unit.minutes");
            case HIGHEST -> texts.get("runsheet.unit.speed");
            case WATER, OIL, AMBIENT -> measures.sign(measures.units().temperature());
            case OIL_PRESSURE -> measures.sign(measures.units().pressure());
            case OIL_ADDED -> measures.sign(measures.units().volume());
            case DISTANCE -> measures.sign(measures.units().distance());
            default -> "";
        };
    }

    /** The line under a field, short enough to stand there. */
    String line(FieldLine line) {
        Problem problem = line.problem();
        Object was = line.was();
        if (problem != null) {
            return shortly(problem);
        }
        return was == null ? note(line) : was(line.note(), before(was));
    }

    /** What was written, beside what is understood of a time, which can always be misread. */
    private String was(Note note, String before) {
        if (note.kind() == Note.Kind.UNDERSTOOD && note.facts().get(0) instanceof RunningTime time) {
            String both = texts.get("runsheet.note.was_understood", measures.running(time), before);
            return both.length() <= LINE ? both : texts.get("runsheet.note.was", before);
        }
        String line = texts.get("runsheet.note.was", before);
        return line.length() <= LINE ? line : line.substring(0, LINE - 1).strip() + "…";
    }

    private String before(Object was) {
        String before = was instanceof Choice choice ? choice(choice) : String.valueOf(was);
        return before.isBlank() ? texts.get("runsheet.note.was_empty") : before;
    }

    /** The same in full, for the tip and for screen readers. */
    String inFull(FieldLine line) {
        Problem problem = line.problem();
        Object was = line.was();
        String now = problem == null ? note(line) : problems.note(problem);
        if (was == null) {
            return now;
        }
        String written = texts.get("runsheet.note.was_in_full", before(was));
        return now.isBlank() ? written : texts.get("runsheet.note.beside", now, written);
    }

    /** What happened, what it means for what is typed, what to do. */
    String sentence(Problem problem) {
        return problems.typed(problem);
    }

    private String note(FieldLine line) {
        Note note = line.note();
        boolean typedDay = line.level() == FieldLine.Level.ECHO
                && (note.kind() == Note.Kind.TODAY || note.kind() == Note.Kind.DAYS_AGO);
        String key = "runsheet.note." + note.kind().name().toLowerCase(Locale.ROOT) + (typedDay ? "_typed" : "");
        List<Object> blanks = new ArrayList<>();
        for (Object fact : note.facts()) {
            blanks.add(blank(note.kind(), fact));
        }
        return texts.get(key, blanks.toArray());
    }

    private Object blank(Note.Kind kind, Object fact) {
        if (fact instanceof Long days) {
            return days;
        }
        if (fact instanceof LocalDate day && (kind == Note.Kind.ENGINE_SINCE || kind == Note.Kind.ENGINE_RUN)) {
            return measures.shortDate(day);
        }
        if (fact instanceof LocalDate day && kind == Note.Kind.NEXT_EVENT) {
            return measures.moment(Moment.endOf(day, ZoneOffset.UTC));
        }
        return kind == Note.Kind.LAST_RUN || kind == Note.Kind.USUAL_PACE ? figure(fact) : word(fact);
    }

    private String shortly(Problem problem) {
        boolean unread = problem.kind() == ProblemKind.CANNOT_READ || problem.kind() == ProblemKind.LESS_THAN_NOTHING;
        return ShortFacts.sentence(texts, problem, fact -> unread ? example(fact) : figure(fact))
                .orElseGet(() -> problems.note(problem));
    }

    /** What can be typed, with its unit: that may be what could not be read. */
    private String example(Object fact) {
        return fact instanceof RunningTime ? figure(fact) : word(fact);
    }

    /** A fact with its unit. */
    private String word(Object fact) {
        if (fact instanceof Life life) {
            return lives.life(life);
        }
        if (fact instanceof RunningTime time) {
            return measures.runningBothWays(time);
        }
        if (fact instanceof LocalDate day) {
            return measures.date(day);
        }
        if (fact instanceof About about) {
            return measures.about(measures.time(about.at().wallClock().toLocalTime()));
        }
        if (fact instanceof Moment moment) {
            return measures.time(moment.wallClock().toLocalTime());
        }
        if (fact instanceof EngineSpeed speed) {
            return measures.speed(speed);
        }
        if (fact instanceof Temperature temperature) {
            return measures.temperature(temperature);
        }
        if (fact instanceof Pressure pressure) {
            return measures.pressure(pressure);
        }
        if (fact instanceof Volume volume) {
            return measures.volume(volume);
        }
        if (fact instanceof Distance distance) {
            return measures.distance(distance);
        }
        return figure(fact);
    }

    /** A fact in the field's own unit, which stands beside it. */
    private String figure(Object fact) {
        if (fact instanceof EngineSpeed speed) {
            return measures.number(speed.rpm());
        }
        if (fact instanceof Temperature temperature) {
            return number(measures.units().temperature(), temperature, 0);
        }
        if (fact instanceof Pressure pressure) {
            return number(measures.units().pressure(), pressure, 1);
        }
        if (fact instanceof Volume volume) {
            return number(measures.units().volume(), volume, 1);
        }
        if (fact instanceof Distance distance) {
            return number(measures.units().distance(), distance, 1);
        }
        if (fact instanceof RunningTime time) {
            return measures.running(time);
        }
        if (fact instanceof Integer count) {
            return measures.number(count);
        }
        if (fact instanceof LocalDate || fact instanceof Moment || fact instanceof About || fact instanceof Life) {
            return word(fact);
        }
        return fact instanceof Coded coded ? records.word(coded) : String.valueOf(fact);
    }

    private <Q> String number(Unit<Q> unit, Q quantity, int decimals) {
        return measures.number(unit.in(quantity, decimals), decimals);
    }

    /** How a choice reads in its list. */
    String choice(Choice choice) {
        if (choice.facts().isEmpty()) {
            return texts.get("runsheet.choice.none");
        }
        Object first = choice.facts().get(0);
        if (first instanceof Car car) {
            return choice.facts().size() > 1 && choice.facts().get(1) instanceof Engine engine
                    ? texts.get("runsheet.choice.car", car.name(), engine.number())
                    : texts.get("runsheet.choice.car_alone", car.name());
        }
        if (first instanceof Engine engine) {
            return texts.get("runsheet.choice.dyno", engine.number());
        }
        if (first instanceof Event event) {
            return event.name();
        }
        if (first instanceof PlannedRun planned) {
            return planned.name();
        }
        if (first instanceof Person person) {
            return person.name();
        }
        if (first instanceof RunKind kind) {
            return records.label(records.word(kind));
        }
        return first instanceof Coded coded ? records.label(records.word(coded)) : String.valueOf(first);
    }

    /** What a run is called in the history and when it was saved: {@code car 41, Practice 1, 28 min 20 s}. */
    String run(Run run, String car) {
        String time = measures.running(run.running());
        String day = measures.moment(Moment.endOf(run.start().day(), run.start().zone()));
        return car.isEmpty()
                ? texts.get("runsheet.run.dyno", run.name(), day, time)
                : texts.get("runsheet.run.car", car, run.name(), day, time);
    }

    /** What a written run is called: {@code Practice 1 of car 41}. */
    String named(Run run, Facts facts) {
        Id<Car> car = run.car();
        return car == null
                ? texts.get(
                        "runsheet.named.dyno",
                        run.name(),
                        facts.of(Engine.class).get(run.engine()).number())
                : texts.get(
                        "runsheet.named.car",
                        run.name(),
                        facts.of(Car.class).get(car).name());
    }

    /** Who wrote an entry and when; its latest change comes first. */
    String writtenBy(List<Amended> history, ZoneId zone) {
        if (history.isEmpty()) {
            return texts.get("runsheet.written.by_nobody");
        }
        Amended first = history.get(history.size() - 1);
        return texts.get("runsheet.written.by", first.who(), measures.fullMoment(Moment.of(first.at(), zone)));
    }

    /** Who changed it last, when and why; empty when nobody did. */
    String changedBy(List<Amended> history, ZoneId zone) {
        if (history.size() < 2) {
            return "";
        }
        Amended last = history.get(0);
        return texts.get(
                "runsheet.written.changed_by", last.who(), measures.fullMoment(Moment.of(last.at(), zone)), last.why());
    }
}
