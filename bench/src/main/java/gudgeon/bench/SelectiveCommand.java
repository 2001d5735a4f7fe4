package gudgeon.bench;

import gudgeon.bench.selective.PublishedExamples;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

@Command(name = "selective", description = "Published examples of selective disassembly, computed from a folder.")
final class SelectiveCommand implements Callable<Integer> {
    @Parameters(description = "Folder with the examples.")
    String folder = "";

    @Mixin
    Main.Output output = new Main.Output();

    @Override
    public Integer call() throws IOException {
        Table table = new Table();
        for (PublishedExamples.Line line : PublishedExamples.all(Path.of(folder))) {
            Map<String, Object> row = table.row();
            row.put("example", line.example());
            row.put("question", line.question());
            row.put("value", line.value());
            row.put("how", line.how());
        }
        output.print(
                "selective",
                "# Published examples of selective disassembly\n\n" + Table.circumstances()
                        + "\nComputed from the data in the folder. What could not be read there says so.\n",
                table);
        return 0;
    }
}
