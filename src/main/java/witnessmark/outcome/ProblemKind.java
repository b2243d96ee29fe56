package witnessmark.outcome;

/**
 * The closed list of what can go wrong. The comment of each names its facts in order. A kind that {@link #stops()}
 * prevents saving; the others are queries a person may overrule, and are recorded as overruled.
 */
@SuppressWarnings("length: a closed list of a comment and a line each, read where it is named")
public enum ProblemKind {
    // What people typed
    /** field name, text as typed, example that works. */
    CANNOT_READ(3, true),
    /** field name, text as typed, example that works: a figure below zero where none can be. */
    LESS_THAN_NOTHING(3, true),
    /** field name, text as typed, first reading, second reading. */
    TWO_READINGS(4, true),
    /** field name. */
    NEEDED(1, true),
    /** field name, value, usual low, usual high: unlike this engine's own history or physics. */
    UNUSUAL(4, false),
    /** field name, value, usual low, usual high, value that was perhaps meant. */
    UNUSUAL_MEANT(5, false),
    /** field name, value, allowed low, allowed high. */
    OUT_OF_RANGE(4, true),
    /** line as typed, its day, first day of the event, last day: a run cannot be planned outside its event. */
    OUTSIDE_EVENT(4, true),
    /** line as typed, first day of the event, last day, example that works: it does not say on which of these days. */
    LINE_WITHOUT_DAY(4, true),
    /** field name, day or moment, what it cannot come before. */
    EARLIER_THAN(3, true),
    /** field name, text as typed, other field, what was picked in it: one of the two cannot be meant. */
    SAYS_OTHERWISE(4, true),

    // Running
    /** engine, run named, its start, its end: the runs of one engine overlap. */
    RUNS_OVERLAP(4, true),
    /** engine, run named, its start, its end: the two overlap, and one of the times is only estimated. */
    RUNS_OVERLAP_ABOUT(4, false),
    /** engine, run named, its start, running time: perhaps the same run twice. */
    PERHAPS_SAME_RUN(4, false),
    /** start, today. */
    RUN_IN_FUTURE(2, true),
    /** time out, the time now: the clock has not come to it. */
    RUN_STILL_TO_COME(2, false),
    /** running time, shortest usual, longest usual. */
    RUN_LENGTH_UNUSUAL(3, false),
    /** running time, laps, time a lap took, shortest usual, longest usual, how many runs say so, whose: a circuit's or an engine's. */
    PACE_UNUSUAL(7, false),
    /** highest engine speed, speed above which it is an over-rev: none is counted. */
    OVER_REV_NOT_COUNTED(2, false),
    /** over-revs counted, highest engine speed, speed above which it would be one. */
    OVER_REV_NOT_REACHED(3, false),
    /** running time: zero. */
    RUN_OF_NO_LENGTH(1, true),
    /** running time, longest that can be one run. */
    RUN_TOO_LONG(2, true),
    /** planned run, car, when it was logged. */
    PLANNED_RUN_TAKEN(3, true),
    /** engine, car, moment: the engine was not in that car. */
    ENGINE_NOT_IN_CAR(3, true),
    /** car: no engine is written down in it at that time. */
    NO_ENGINE_IN_CAR(1, true),
    /** car, engine, day: it went in that day without a time, so the car had none before the evening. */
    ENGINE_IN_THAT_EVENING(3, true),
    /** engine that went in, when: before or after that change? */
    BEFORE_OR_AFTER_CHANGE(2, true),
    /** engine that went in, engine that was there before, the day: it went in without a time, so the run goes to what was there before. */
    ENGINE_CHANGED_WITHOUT_TIME(3, false),
    /** planned run, its day: the run is logged on another. */
    PLANNED_FOR_ANOTHER_DAY(2, false),
    /** parts that went in that day without a time, the day: the run goes to what was there before. */
    FITTED_WITHOUT_TIME(2, false),
    /** planned run, its day, first day of its event, last day: it was written so. */
    PLANNED_OUTSIDE_EVENT(4, false),
    /** planned run, another of that timetable, when that goes out, when it is back. */
    PLANNED_RUNS_OVERLAP(4, false),
    /** when the truck leaves, first day of the event. */
    TRUCK_AFTER_BEGIN(2, false),
    /** engine, empty positions. */
    ENGINE_INCOMPLETE(2, false),
    /** part of the whole, whole: a share longer than the running time. field name, value, running time. */
    LONGER_THAN_RUN(3, true),
    /** run named, start, end, moment of change: a fitment changes inside a run. */
    CHANGE_INSIDE_RUN(4, true),
    /** engine, build number, since when it was open: a run says the engine went out then. */
    BUILD_OPEN(3, false),
    /** engine, when its first build was begun: a run is from before. */
    RUN_BEFORE_FIRST_BUILD(2, false),
    /** engine, build number, the other's number, moment at which both were open. */
    BUILDS_OVERLAP(4, true),
    /** hours told, from, to, how long that is: no engine runs longer than the time that passed. */
    TOLD_LONGER_THAN_TIME(4, true),

    // Parts and where they are
    /** part, fitted on, bought on. */
    FITTED_BEFORE_BOUGHT(3, true),
    /** position, place (engine or car), part there, part wanted, moment. */
    TWO_PARTS_IN_POSITION(5, true),
    /** position, place (engine or car), part that goes in there at the moment wanted or later, when it does. */
    FITTED_LATER(4, true),
    /** part, place it is in, place wanted, moment. */
    PART_IN_TWO_PLACES(4, true),
    /** part, place of its first use: a single-use part used twice. */
    SINGLE_USE_AGAIN(2, true),
    /** engine, car it is in, car wanted, moment. */
    ENGINE_IN_TWO_CARS(4, true),
    /** engine, car it is in: that car is left without an engine. */
    ENGINE_LEAVES_CAR(2, false),
    /** car, engine that goes in there at the moment wanted or later, when it does. */
    ENGINE_IN_CAR_LATER(3, true),
    /** car, engine in it, engine wanted, moment. */
    TWO_ENGINES_IN_CAR(4, true),
    /** what, from, to: it ends before it begins. */
    ENDS_BEFORE_IT_BEGINS(3, true),
    /** part, moment the prior life is stated at, run of it that was earlier. */
    PRIOR_LIFE_OVERLAPS_RUNS(3, false),
    /** part, the set it was split off: it is fitted where a whole set sits. */
    MEMBER_ALONE(2, false),
    /** part or engine, the moment both are stated at, who says the one, who says the other. */
    PRIOR_LIVES_DIFFER(4, false),
    /** position, design or car it belongs to, place. */
    POSITION_OF_ANOTHER_DESIGN(3, true),
    /** part, since when, why: it is in quarantine. */
    PART_IN_QUARANTINE(3, true),
    /** part, with whom, since when. */
    PART_AWAY(3, true),
    /** part, when it was taken out of use. */
    PART_SCRAPPED(2, true),
    /** part, place it is fitted in, moment: it cannot be put aside, sent away or scrapped there. */
    PART_STILL_FITTED(3, true),
    /** engine, with whom, since when: a run while it was away. */
    RUN_WHILE_AWAY(3, false),
    /** what, how many are on the shelf, how many would be taken. */
    STOCK_BELOW_NOTHING(3, true),
    /** what was counted, how many: so many lie there by what is written, and there is nothing to write. */
    AS_WRITTEN_ALREADY(2, true),
    /** part: an incident names it already. */
    PART_NAMED_ALREADY(1, true),
    /** incident, other incident: they are linked already. */
    LINKED_ALREADY(2, true),
    /** cause: how that finding speaks to it is written already. */
    WEIGHED_ALREADY(1, true),
    /** trial, day on which it was judged. */
    JUDGED_ALREADY(2, true),
    /** design, design it is held against: the two are parts of different kinds. */
    DESIGN_OF_ANOTHER_KIND(2, true),
    /** share of the blame, what is left of it. */
    SHARE_BEYOND_WHOLE(2, true),
    /** incident: what it took of that start, event or run is written already. */
    SHARE_WRITTEN_ALREADY(1, true),
    /** tool, since when it is out of use, day it was used. */
    TOOL_OUT_OF_USE(3, true),
    /** tool, day its calibration was due again, day it was used. */
    TOOL_NOT_CALIBRATED(3, false),
    /** A place that is no cylinder of the engine: field, typed, how many cylinders. */
    NOT_A_CYLINDER(3, false),
    /** A spring read stronger than the last time with nothing run since: field, figure, figure before. */
    FORCE_CAME_BACK(3, false),
    /** hour meter, what it showed, when, the less it showed later, when. */
    METER_BACKWARDS(5, false),
    /** notice: no part of the logbook is meant. */
    NOTICE_OF_NOTHING(1, false),

    // Faces and skims
    /** which line, what stands there, how one is written. */
    FACE_LINE_UNREAD(3, true),
    /** which line, from the front end, from the inlet edge, length of the face, its width. */
    OFF_THE_FACE(5, true),
    /** which line, figure, step of what it was measured with. */
    FINER_THAN_TOOL(3, true),
    /** which line, feeler, the thinnest there is. */
    FEELER_TOO_FINE(3, true),
    /** which line, what goes, what does not. */
    STOPS_BEFORE_IT_GOES(3, true),
    /** from the front end, from the inlet edge: a zone seen before would be met only with the face turned over. */
    PERHAPS_MIRRORED(2, false),
    /** what the passes took together, what is to have come off. */
    PASSES_NOT_REMOVED(2, true),
    /** what came off by the corners before and what is left, what is to have come off. */
    SKIM_NOT_AS_THICKNESS(2, false),
    /** thickness left, the least there may be: it has to be accepted as it is. */
    BELOW_LEAST_THICKNESS(2, true),

    // Dyno sheets
    /** which line, what stands there, how one is written. */
    DYNO_LINE_UNREAD(3, true),
    /** which line, how many figures it has, how many its heading or the first line has. */
    DYNO_LINE_WIDTH(3, true),
    /** which line, of what, figure, least it can be, most: something else was typed. */
    DYNO_OUT_OF_RANGE(5, true),
    /** which line, speed, the line that has it already in this pull. */
    DYNO_SPEED_TWICE(3, true),
    /** which line: a heading has to name the speed, and torque or power, each once. */
    DYNO_NO_TORQUE(1, true),
    /** which line, power that stands there, power of its speed and torque. */
    DYNO_POWER_OTHERWISE(3, false),
    /** pull: it has one speed alone, which is no curve. */
    DYNO_ONE_SPEED(1, false),
    /** factor, least that is still a correction, most. */
    DYNO_FACTOR_BEYOND(3, false),

    // Money
    /** got back and carried on together, paid: no more comes back than was paid. */
    MORE_BACK_THAN_PAID(2, true),
    /** field name, currency of the amount: what belongs to an amount is in its currency, and nothing or more. */
    OTHER_CURRENCY(2, true),
    /** what the shares come to, in percent. */
    SHARES_NOT_WHOLE(1, true),
    /** a cost that is written is not shared in a correction. */
    SHARED_ANEW(0, true),
    /** day: no rate of an hour of own work holds on it. */
    NO_HOUR_RATE(1, true),
    /** day, its season: not the one of today, or of the event. */
    DAY_OF_ANOTHER_SEASON(2, false),
    /** what, how much is written for it there already. */
    WRITTEN_FOR_IT_ALREADY(2, false),
    /** season, its last day: it is not over. */
    SEASON_NOT_OVER(2, false),

    // Limits and holds
    /** limit, counter: no run says it. */
    COUNTER_NOT_RECORDED(2, false),
    /** limit, other limit: the look would come no sooner than the renewing. */
    LIMITS_CONTRADICT(2, false),
    /** trigger, kinds of part that have no place there. */
    TRIGGER_WITHOUT_PARTS(2, false),
    /** limit: the rule book's. */
    RULE_BOOK_NOT_PASSED(1, true),
    /** limit: the new figure does not lie past it. */
    RUN_ON_NOT_PAST_LIMIT(1, true),
    /** what would go on: more than the new figure has run already. */
    RUN_ON_OVER_ALREADY(1, true),
    /** part, date printed on it. */
    PRINTED_DATE_NOT_PASSED(2, true),
    /** on a list of limits nothing is filled in that is not set already. */
    NO_NEW_FIGURE(0, true),
    /** limit, whose it is: nobody was asked. */
    NOBODY_ASKED(2, false),
    /** when it happened: signed clear before. */
    CLEARED_BEFORE(1, true),
    /** who held it and clears it. */
    CLEARS_OWN_HOLD(1, false),
    /** what was to be looked at before it is signed clear, and is neither named as done nor written down since. */
    NOT_LOOKED_AT(1, false),
    /** the same: it is to be signed clear without, and nobody said why. */
    SIGNED_WITHOUT(1, true),
    /** how many figures of a build sheet, which: outside their limits or not measured, and nobody accepted them. */
    SHEET_LEFT_OPEN(2, false),
    /** how many lessons, what they teach: not met or not answered, and nobody accepted that. */
    LESSONS_OPEN(2, true),
    /** engine, number of its build, when that was signed: a lesson would be asked on it from before. */
    LESSON_BEFORE_SIGNING(3, true),
    /** lesson: withdrawn already. */
    LESSON_WITHDRAWN(1, true),
    /** A finding that nobody has weighed against the cause has no why and nothing to take away. */
    NOT_WEIGHED(0, true),
    /** A position of a strip that is marked, and nobody has said by what. */
    NOT_MARKED(0, true),
    /** The finding was struck out meanwhile. */
    FINDING_GONE(0, true),

    // Records
    /** kind of record: what is typed cannot be true together. */
    NOT_TOGETHER(1, true),
    /** kind of record, name looked for. */
    NOT_FOUND(2, true),
    /** field, letters it has, most it may have. */
    NAME_TOO_LONG(3, true),
    /** kind of record, name: already taken. */
    NAME_TAKEN(2, true),
    /** kind of record, name: changed by somebody else meanwhile. */
    CHANGED_MEANWHILE(2, true),
    /** kind of record, name, rule as the database words it. */
    REFUSED_BY_LOGBOOK(3, true),
    /** nothing to undo or redo. */
    NOTHING_TO_UNDO(0, true),

    // Text files
    /** file name. */
    FILE_MISSING(1, true),
    /** file name. */
    FILE_UNKNOWN(1, true),
    /** file name, encoding expected. */
    WRONG_ENCODING(2, true),
    /** file, what its fields are parted by in place of commas. */
    OTHER_SEPARATOR(2, true),
    /** column heading. */
    COLUMN_UNKNOWN(1, true),
    /** which column from the left, from 1: it has no heading. */
    COLUMN_UNNAMED(1, true),
    /** column heading. */
    COLUMN_MISSING(1, true),
    /** file: the rows cannot be told apart from there on, since a quotation mark is missing or one too many. */
    QUOTES_ASTRAY(1, true),
    /** fields found, fields expected. */
    ROW_LENGTH(2, true),
    /** column heading, text, form expected. */
    VALUE_UNREADABLE(3, true),
    /** text that stands in the place of an id. */
    ID_UNREADABLE(1, true),
    /** column heading, text, kind of record looked for. */
    REFERENCE_UNKNOWN(3, true),
    /** how many rows, file: they name what is left out of that file, and nothing else is wrong with them. */
    ROWS_WAIT(2, true),
    /** how many rows of the file come without the bytes kept beside them: those are not in the folder. */
    KEPT_MISSING(1, false),
    /** The file is not what its name says, or more than one reading takes. */
    KEPT_NOT_AS_NAMED(0, false),
    /** id or name. */
    DUPLICATE(1, true),
    /** rows found, rows stated: the file ends before all that was written to it. */
    FILE_CUT_SHORT(2, true),
    /** folder. */
    NOT_A_SEASON_FOLDER(1, true),
    /** folder, a folder in it that is a season folder. */
    SEASON_FOLDER_WITHIN(2, true),
    /** folder: its index does not say what its tables are. */
    SEASON_INDEX_UNREADABLE(1, true),
    /** version found, newest version known. */
    SEASON_FOLDER_NEWER(2, true),
    /** the folder's team, the logbook's. */
    ANOTHER_TEAM(2, true),
    /** kind of record, its name, field, the folder's value, the logbook's; empty for none: the logbook keeps its own. */
    DIFFERS_FROM_LOGBOOK(5, false),
    /** folder: it has something in it that is not ours. */
    FOLDER_NOT_EMPTY(1, true),
    /** folder, a table in it that was changed since it was written out. */
    FOLDER_CHANGED(2, true),

    // Logbook files
    /** path. */
    NO_SUCH_FILE(1, true),
    /** path, where backups of logbooks are: there is no file at the path. */
    LOGBOOK_GONE(2, true),
    /** path, what it is instead. */
    NOT_A_LOGBOOK(2, true),
    /** path, version found, newest version known. */
    LOGBOOK_NEWER(3, false),
    /** path, what the check found. */
    LOGBOOK_DAMAGED(2, true),
    /** path, schema expected: another hand has changed the tables. */
    LOGBOOK_ALTERED(1, true),
    /** where the sample's working copy lies now, which could not be opened: another was made from the sample's folder. */
    SAMPLE_MADE_ANEW(1, false),
    /** folder of the sample, whose story cannot be read: today is the clock's. */
    SAMPLE_DAY_UNKNOWN(1, false),
    /** path, log beside it: the writes there belong to a file that is no longer at the path. */
    LOG_OF_ANOTHER(2, true),
    /** how many, path, when the last of them was saved, when the last was that is there: seen there, and missing now. */
    CHANGES_MISSING(4, false),
    /** path, host, person, since. */
    LOGBOOK_IN_USE(4, false),
    /** path. */
    PLACE_READ_ONLY(1, false),
    /** path, when it was made: a backup or another copy that the program made, which stays what it was. */
    LOGBOOK_IS_COPY(2, false),
    /** path. */
    FILE_EXISTS(1, true),
    /** path, where its backups are. */
    FILE_MOVED_AWAY(2, true),
    /** path, what the system said. */
    CANNOT_WRITE(2, true),
    /** path, what the system said. */
    CANNOT_READ_FILE(2, true),
    /** path. */
    DISK_FULL(1, true),
    /** the logbook is open read-only. */
    OPEN_READ_ONLY(0, true),
    /** day the logbook is seen as of. */
    AS_OF_EARLIER_DAY(1, true),
    /** backup path, what was wrong with it. */
    BACKUP_NOT_GOOD(2, false),
    /** copy: it is not as it was written, so nothing is restored from it; what is wrong stands beside. */
    COPY_NOT_GOOD(1, true),
    /** second place: it is not there now. */
    PLACE_GONE(1, false),
    /** second place. */
    PLACE_FULL(1, false),
    /** second place: nothing can be written there. */
    PLACE_NOT_WRITABLE(1, false),
    /** second place, what the system said. */
    PLACE_FAILED(2, false),
    /** second place: it lies on the disk of the logbook itself. */
    PLACE_ON_SAME_DISK(1, false),
    /** second place, whose copies lie there too. */
    COPIES_OF_ANOTHER(2, false),
    /** record kind, name: salvaged, and perhaps not what was written. */
    SALVAGED_DOUBTFUL(2, false),
    /** record kind, name: it could not be salvaged. */
    NOT_SALVAGED(2, false),
    /** how many changes of the history could not be read. */
    CHANGES_UNREADABLE(1, false),
    /** What is kept of a trace's samples is not what was written; the trace, or the logbook. */
    SAMPLES_CHANGED(1, false),
    /** how many, file: entries that could not be written when they were saved, and are not in the logbook since. */
    ENTRIES_KEPT_ASIDE(2, false),
    /** record kind, name: its checksum does not match its history. */
    RECORD_NOT_AS_WRITTEN(2, true),
    /** amendment's running number, device: the chain of entries is broken there. */
    CHAIN_BROKEN(2, true),
    /** no display to open a window on. */
    NO_DISPLAY(0, true),

    // Traces
    /** a trace with nothing in it. */
    TRACE_EMPTY(0, true),
    /** it holds no text. */
    TRACE_NOT_TEXT(0, true),
    /** no row of figures was found. */
    TRACE_WITHOUT_FIGURES(0, true),
    /** how many columns are read at most. */
    TRACE_TOO_WIDE(1, true),
    /** heading somebody named, headings there are. */
    TRACE_NO_SUCH_COLUMN(2, true),
    /** how often time began anew. */
    TRACE_TIME_JUMPS(1, true),
    /** how many bytes were read before, what the system said. */
    TRACE_BROKE_OFF(2, true),
    /** how many bytes were read before. */
    TRACE_STOPPED(1, true),
    /** what the system said: its samples cannot be written. */
    TRACE_NOT_KEPT(1, true),
    /** how long it lasts by its time, how long the run lasted, how many times as much it is: a wrong time base. */
    TRACE_TIME_BASE(3, true),
    /** how long it lasts, how long the run lasted: its last row is cut off, so the rest of it is missing. */
    TRACE_ENDS_EARLY(2, true),
    /** how many rows were read, how long they last: the file ends too early, and what follows is missing. */
    TRACE_CUT_SHORT(2, false),
    /** by its checksum something in it is not as it was written. */
    TRACE_SUSPECT(0, false),
    /** file: it grew while it was read. */
    TRACE_GROWS(1, true),
    /** the file it was brought in as, run, its start: the same samples are in the logbook. */
    TRACE_BROUGHT_BEFORE(3, true),
    /** run, the file of the trace it has. */
    TRACE_OF_RUN_ALREADY(2, false),
    /** file, the car it is named after, the car of the run. */
    TRACE_OF_OTHER_CAR(3, false),
    /** share of the run it logged, percent. */
    TRACE_COVERS_LITTLE(1, false),

    // Photos
    /** file: there is nothing in it. */
    PHOTO_EMPTY(1, true),
    /** file: it is no picture, whatever it is called. */
    PHOTO_NO_PICTURE(1, true),
    /** file: a drawing in words. */
    PHOTO_IS_DRAWING(1, true),
    /** file, MB it may have at most. */
    PHOTO_TOO_LARGE(2, true),
    /** file, width and height it claims to have. */
    PHOTO_TOO_MANY_PIXELS(3, true),
    /** file: pictures of a telephone that nothing here draws. */
    PHOTO_HEIC(1, false),
    /** file, what it is: it is kept, and nothing here draws it. */
    PHOTO_WITHOUT_PICTURE(2, false),
    /** file: it ends before its picture does. */
    PHOTO_BREAKS_OFF(1, false),
    /** file, how many pictures follow each other in it. */
    PHOTO_MOVES(2, false),
    /** file: the same bytes are in the logbook, about the same thing. */
    PHOTO_HERE_ALREADY(1, false),
    /** file: a photo of the logbook whose bytes were missing or spoilt has them again. */
    PHOTO_MENDED(1, false),
    /** file, what it is: it cannot be drawn. */
    PHOTO_NOT_DRAWN(2, true),
    /** file, what it is: where it was taken can only be left out by drawing it anew. */
    PHOTO_PLACE_STAYS(2, true),
    /** file, folder: its bytes are not there. */
    PHOTO_MISSING(2, true),
    /** file, place: its bytes are not what they were. */
    PHOTO_CHANGED(2, true),
    /** how many photos of a season folder are not in it. */
    PHOTOS_NOT_IN_FOLDER(1, false),
    /** how many, where to, what the system said: they are in no copy there. */
    PHOTOS_NOT_COPIED(3, false),

    // Archives
    /** part of what is packed is missing. */
    PACKED_ENDS_EARLY(0, true),
    /** what was unpacked is not what was packed, by the checksum after it. */
    PACKED_CHECK(0, true),
    /** what the archive says is wrong with it. */
    PACKED_DAMAGED(1, true),
    /** bytes it may unpack to at most. */
    PACKED_TOO_LARGE(1, true),
    /** how many times as large it unpacks. */
    PACKED_TOO_DENSE(1, true),
    /** entries it may have at most. */
    PACKED_TOO_MANY(1, true),
    /** name of the archive within. */
    PACKED_WITHIN(1, true),
    /** no file in the archive. */
    PACKED_EMPTY(0, true),
    /** names of the files in it, of which one is to be named. */
    PACKED_SEVERAL(1, true),
    /** name that is not in it, names of the files in it. */
    PACKED_NOT_IN_IT(2, true);

    private final int facts;
    private final boolean stops;

    ProblemKind(int facts, boolean stops) {
        this.facts = facts;
        this.stops = stops;
    }

    /** How many facts a problem of this kind carries. */
    public int facts() {
        return facts;
    }

    public boolean stops() {
        return stops;
    }
}
