package gudgeon.app.cli;

import gudgeon.app.store.StoreFile;
import java.nio.file.Path;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Which job, in which store, and how to answer: the same for every command about a job. */
final class JobOptions {
    @Spec(Spec.Target.MIXEE)
    @SuppressWarnings("NullAway.Init") // set by the command line before the command runs
    private CommandSpec spec;

    @Option(
            names = "--store",
            paramLabel = "FILE",
            defaultValue = "",
            description = "File with the books. Default: books.sqlite in your data folder.")
    private String store = "";

    @Option(
            names = "--job",
            paramLabel = "JOB",
            defaultValue = "",
            description = "Id of the job, or its beginning. Not needed when there is only one.")
    private String job = "";

    @Option(names = "--by", paramLabel = "NAME", defaultValue = "", description = "Who says so.")
    private String by = "";

    @Option(names = "--json", description = "Answer as JSON (docs/json.md), and print nothing else.")
    private boolean json;

    Path store() {
        try {
            return StoreFile.of(store, System.getenv());
        } catch (IllegalArgumentException e) {
            throw wrong(String.valueOf(e.getMessage()));
        }
    }

    String job() {
        return job;
    }

    String by() {
        return by;
    }

    boolean json() {
        return json;
    }

    /** Wrong usage, with what would be right. */
    ParameterException wrong(String message) {
        return new ParameterException(spec.commandLine(), message);
    }
}
