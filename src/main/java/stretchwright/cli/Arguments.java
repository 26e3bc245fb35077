package stretchwright.cli;

import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.OverwrittenOptionException;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;
import stretchwright.ground.Part;
import stretchwright.ground.Said;

/** What is wrong with the arguments of a command, in our own words: those of the argument parser are English only. */
final class Arguments extends ParameterException {
    private static final long serialVersionUID = 1L;

    private final transient Said wrong;

    Arguments(CommandLine line, Said wrong) {
        super(line, wrong.key());
        this.wrong = wrong;
    }

    static Said wrong(ParameterException e) {
        if (e instanceof Arguments ours) {
            return ours.wrong;
        }
        if (e instanceof MissingParameterException missing) {
            List<String> names =
                    missing.getMissing().stream().map(Arguments::name).toList();
            return Tell.said("args.missing", Tell.words(names));
        }
        if (e instanceof UnmatchedArgumentException unmatched) {
            Part what = Tell.words(
                    unmatched.getUnmatched().stream().map(Arguments::shown).toList());
            List<Part.Text> meant =
                    unmatched.getSuggestions().stream().map(Part::text).toList();
            return meant.isEmpty()
                    ? Tell.said("args.unknown", what)
                    : Tell.said("args.meant", what, Part.listed(Part.Join.OR, meant));
        }
        ArgSpec about = e.getArgSpec();
        if (e instanceof OverwrittenOptionException && about != null) {
            return Tell.said("args.twice", Part.text(name(about)));
        }
        return about != null && e.getValue() != null
                ? Tell.said("args.value", Part.text(name(about)), Part.text(shown(e.getValue())))
                : Tell.said("args.other", Part.text(shown(String.valueOf(e.getMessage()))));
    }

    private static String name(ArgSpec argument) {
        return argument instanceof OptionSpec option
                ? option.longestName() + (option.arity().max() == 0 ? "" : "=" + argument.paramLabel())
                : argument.paramLabel();
    }

    /** On one line, in quotes. */
    private static String shown(String typed) {
        return "\"" + typed.replaceAll("\\s+", " ") + "\"";
    }
}
