package witnessmark.logbook.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import witnessmark.domain.Car;
import witnessmark.domain.Entry;
import witnessmark.domain.Event;
import witnessmark.domain.EventEntry;
import witnessmark.domain.Id;
import witnessmark.domain.image.RecordTypes;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;

/**
 * How a cost is shared between cars: {@code 41 1, 57 1} in parts, {@code 41 60 %, 57 40 %} or {@code 60/40} in percent, which
 * are the whole together; nothing for all cars alike. The cars are those entered at the event, or all.
 */
final class SharesTyped {
    private static final Pattern PERCENTS = Pattern.compile("\\d{1,3}( ?/ ?\\d{1,3})+( ?%)?");
    private static final Pattern ONE = Pattern.compile("(?<car>.+?)(?:[ :=]+(?<parts>\\d{1,6})(?<percent> ?%)?)?");
    private static final int WHOLE = 100;

    /** One car's share. */
    record Share(Entry<Car> car, int parts) {}

    private SharesTyped() {}

    /** The shares; none where something is wrong, and then noted. */
    static List<Share> read(ReadSheet in, SheetField field, SheetField event) {
        List<Entry<Car>> cars = cars(in.sight(), in.text(event));
        String text = in.text(field);
        List<Share> shares;
        if (text.isEmpty()) {
            shares = cars.stream().map(car -> new Share(car, 1)).toList();
        } else if (PERCENTS.matcher(text).matches()) {
            shares = percents(in, field, text, cars);
        } else {
            shares = named(in, field, text);
        }
        if (!shares.isEmpty()) {
            int sum = shares.stream().mapToInt(Share::parts).sum();
            in.readBack(field, List.of());
            in.note(field, SheetNote.echo("shared_by", said(shares, sum)));
        }
        return shares;
    }

    /** "41: 1/2, 57: 1/2". */
    static String said(List<Share> shares, int sum) {
        return String.join(
                ", ",
                shares.stream()
                        .map(share -> share.car().fact().name() + ": " + share.parts() + "/" + sum)
                        .toList());
    }

    /** Of cars of an event, those entered; all when none is, or no event is picked. */
    static List<Entry<Car>> cars(SheetSight sight, String event) {
        List<Id<Car>> entered =
                sight
                        .facts()
                        .of(EventEntry.class)
                        .where(entry -> entry.event().text().equals(event))
                        .stream()
                        .map(entry -> entry.fact().car())
                        .toList();
        boolean known = sight.find(Event.class, event).isPresent() && !entered.isEmpty();
        return sight.facts()
                .of(Car.class)
                .inForce()
                .filter(car -> !known || entered.contains(car.id()))
                .toList();
    }

    private static List<Share> percents(ReadSheet in, SheetField field, String text, List<Entry<Car>> cars) {
        List<Integer> parts = Pattern.compile("/")
                .splitAsStream(text.replace("%", ""))
                .map(each -> Integer.parseInt(each.strip()))
                .toList();
        List<Share> shares = new ArrayList<>();
        for (int i = 0; i < Math.min(parts.size(), cars.size()); i++) {
            shares.add(new Share(cars.get(i), parts.get(i)));
        }
        if (parts.size() != cars.size()) {
            in.wrong(field, Problem.unread(field, text, example(cars)));
            return List.of();
        }
        return whole(in, field, shares);
    }

    private static List<Share> named(ReadSheet in, SheetField field, String text) {
        List<Share> shares = new ArrayList<>();
        int percents = 0;
        for (String each : Words.listed(text)) {
            Matcher one = ONE.matcher(each);
            Optional<Entry<Car>> car = one.matches()
                    ? in.sight().facts().of(Car.class).named(one.group("car").replaceFirst("(?i)^car ", ""))
                    : Optional.empty();
            if (car.isEmpty()) {
                in.wrong(
                        field,
                        ProblemKind.NOT_FOUND,
                        RecordTypes.of(Car.class),
                        one.matches() ? one.group("car") : each);
                return List.of();
            }
            percents += one.group("percent") == null ? 0 : 1;
            shares.add(new Share(car.get(), one.group("parts") == null ? 1 : Integer.parseInt(one.group("parts"))));
        }
        long apart = shares.stream().map(share -> share.car().id()).distinct().count();
        if (apart < shares.size() || percents > 0 && percents < shares.size()) {
            in.wrong(field, Problem.unread(field, text, example(cars(in.sight(), ""))));
            return List.of();
        }
        return percents > 0 ? whole(in, field, shares) : some(in, field, shares);
    }

    private static List<Share> whole(ReadSheet in, SheetField field, List<Share> shares) {
        int sum = shares.stream().mapToInt(Share::parts).sum();
        if (sum != WHOLE) {
            in.wrong(field, ProblemKind.SHARES_NOT_WHOLE, sum);
            return List.of();
        }
        return some(in, field, shares);
    }

    /** Nobody has a share of nothing: a car without one is left out. */
    private static List<Share> some(ReadSheet in, SheetField field, List<Share> shares) {
        List<Share> some = shares.stream().filter(share -> share.parts() > 0).toList();
        if (some.isEmpty()) {
            in.wrong(field, ProblemKind.SHARES_NOT_WHOLE, 0);
        }
        return some;
    }

    private static String example(List<Entry<Car>> cars) {
        return cars.isEmpty()
                ? "41 1, 57 1"
                : String.join(
                        ", ", cars.stream().map(car -> car.fact().name() + " 1").toList());
    }
}
