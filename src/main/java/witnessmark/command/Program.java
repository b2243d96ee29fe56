package witnessmark.command;

import java.io.File;
import java.util.List;
import java.util.Set;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;
import witnessmark.outcome.Problem;

/** The command line as a whole. */
@Command(
        name = "witness-mark",
        mixinStandardHelpOptions = true,
        version = "witness-mark 0.1.0",
        synopsisSubcommandLabel = "COMMAND")
public final class Program implements Runnable {
    private static final Set<String> COMMANDS = Set.of(
            "new",
            "import",
            "export",
            "life",
            "due",
            "parts",
            "meters",
            "cost",
            "incident",
            "build",
            "buildsheet",
            "atspeed",
            "stackup",
            "skims",
            "trends",
            "dyno",
            "proof",
            "common",
            "way",
            "lessons",
            "trial",
            "strip",
            "case",
            "tags",
            "flatness",
            "trace",
            "traces",
            "statement",
            "reconcile",
            "calendar",
            "jobsheet",
            "starting-values",
            "log",
            "verify",
            "backups",
            "restore",
            "salvage",
            "--help",
            "-h",
            "--version",
            "-V");

    @Spec
    @SuppressWarnings("NullAway.Init") // set by picocli before anything runs
    private CommandSpec spec;

    private final Tools tools;

    private Program(Tools tools) {
        this.tools = tools;
    }

    /**
     * Whether the arguments are for the command line. A file, or what is written like the name of one, is a logbook to
     * open in the window; any other word is a command, if only a misspelt one.
     */
    public static boolean isFor(String... args) {
        if (args.length == 0) {
            return false;
        }
        String first = args[0];
        boolean file = first.endsWith(".witness")
                || first.contains("/")
                || first.contains(File.separator)
                || new File(first).exists();
        return COMMANDS.contains(first) || !file;
    }

    /**
     * Runs one command.
     *
     * @return the exit code: 0 worked, 1 did not, 2 wrong arguments, 3 worked except for what was printed
     */
    public static int run(Tools tools, String... args) {
        CommandLine line = new CommandLine(new Program(tools))
                .addSubcommand(new New(tools))
                .addSubcommand(new Import(tools))
                .addSubcommand(new Export(tools))
                .addSubcommand(new LifeOf(tools))
                .addSubcommand(new Due(tools))
                .addSubcommand(new Parts(tools))
                .addSubcommand(new Meters(tools))
                .addSubcommand(new Cost(tools))
                .addSubcommand(new IncidentOf(tools))
                .addSubcommand(new BuildOf(tools))
                .addSubcommand(new BuildSheet(tools))
                .addSubcommand(new SpeedOf(tools))
                .addSubcommand(new StackUpOf(tools))
                .addSubcommand(new Skims(tools))
                .addSubcommand(new TrendsOf(tools))
                .addSubcommand(new TracesOf(tools))
                .addSubcommand(new DynoOf(tools))
                .addSubcommand(new ProofOf(tools))
                .addSubcommand(new TrialOf(tools))
                .addSubcommand(new StripOf(tools))
                .addSubcommand(new CommonTo(tools))
                .addSubcommand(new WayOf(tools))
                .addSubcommand(new LessonsOf(tools))
                .addSubcommand(new CaseOf(tools))
                .addSubcommand(new TagsOf(tools))
                .addSubcommand(new FlatnessOf(tools))
                .addSubcommand(new TraceOf(tools))
                .addSubcommand(new TakeInStatement(tools))
                .addSubcommand(new ReconcileBank(tools))
                .addSubcommand("calendar", new WritesFile(tools, "calendar", "entries", tools.calendar()::write))
                .addSubcommand("jobsheet", new WritesFile(tools, "jobsheet", "pages", tools.jobSheet()::write))
                .addSubcommand(new StartingList(tools))
                .addSubcommand(new Log(tools))
                .addSubcommand(new Verify(tools))
                .addSubcommand(new ListBackups(tools))
                .addSubcommand(new Restore(tools))
                .addSubcommand(new SalvageLogbook(tools));
        line.setCommandName(tools.called());
        line.setResourceBundle(new Descriptions(tools.texts()));
        describe(line.getCommandSpec(), tools.texts().get("command.about"));
        line.getSubcommands()
                .forEach((name, command) ->
                        describe(command.getCommandSpec(), tools.texts().get("command." + name + ".about")));
        line.setParameterExceptionHandler(new WrongArguments(tools));
        line.setOut(tools.out());
        line.setErr(tools.err());
        int code = line.execute(args);
        tools.out().flush();
        tools.err().flush();
        return code;
    }

    private static void describe(CommandSpec command, String about) {
        command.usageMessage().description(about);
    }

    /**
     * Says why the program cannot go on, where there is no window to say it in.
     *
     * @return the exit code
     */
    public static int say(Tools tools, List<Problem> problems) {
        new Answer(tools, "", false).problems(problems);
        tools.err().flush();
        return Exit.USAGE;
    }

    @Override
    public void run() {
        spec.commandLine().usage(tools.out());
    }
}
