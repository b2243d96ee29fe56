package witnessmark.command;

import java.util.List;
import java.util.stream.Collectors;
import picocli.CommandLine;
import picocli.CommandLine.IParameterExceptionHandler;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** Says what is wrong with the arguments of a command, in words or as JSON when that is asked for. */
final class WrongArguments implements IParameterExceptionHandler {
    private final Tools tools;

    WrongArguments(Tools tools) {
        this.tools = tools;
    }

    @Override
    public int handleParseException(ParameterException wrong, String[] args) {
        CommandLine command = wrong.getCommandLine();
        boolean json = List.of(args).contains("--json");
        return new Answer(tools, command.getCommandName(), json)
                .refuse(
                        tools.texts()
                                .get(
                                        "command.usage",
                                        said(wrong),
                                        command.getCommandSpec().qualifiedName()),
                        Exit.USAGE);
    }

    private String said(ParameterException wrong) {
        if (wrong instanceof MissingParameterException missing) {
            List<String> names =
                    missing.getMissing().stream().map(WrongArguments::name).toList();
            return tools.texts().get("command.usage.missing", tools.measures().all(names));
        }
        CommandLine command = wrong.getCommandLine();
        if (wrong instanceof UnmatchedArgumentException unknown && command.getParent() == null) {
            return tools.texts()
                    .get(
                            "command.usage.nocommand",
                            unknown.getUnmatched().get(0),
                            tools.measures()
                                    .all(List.copyOf(command.getSubcommands().keySet())));
        }
        if (wrong instanceof UnmatchedArgumentException unknown) {
            return tools.texts()
                    .get(
                            "command.usage.unknown",
                            unknown.getUnmatched().stream().collect(Collectors.joining(" ")));
        }
        ArgSpec at = wrong.getArgSpec();
        return at == null
                ? tools.texts().get("command.usage.other")
                : tools.texts().get("command.usage.unread", name(at), String.valueOf(wrong.getValue()));
    }

    private static String name(ArgSpec argument) {
        return argument instanceof OptionSpec option ? option.longestName() : argument.paramLabel();
    }
}
