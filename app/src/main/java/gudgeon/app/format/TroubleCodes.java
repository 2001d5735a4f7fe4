package gudgeon.app.format;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.snakeyaml.engine.v2.nodes.NodeTuple;

/** Generic trouble codes, each the finding that it is. */
public final class TroubleCodes {
    private static final Pattern RANGE = Pattern.compile("P(\\d{4})(?: to P(\\d{4}))?");

    private final List<Range> ranges;

    private TroubleCodes(List<Range> ranges) {
        this.ranges = List.copyOf(ranges);
    }

    private record Range(int from, int to, String finding, int cylinder) {}

    /**
     * What a code says.
     *
     * @param finding id of the finding
     * @param cylinder the cylinder, from 1; 0 when it is of the engine
     */
    public record Meaning(String finding, int cylinder) {}

    static TroubleCodes read(byte[] bytes) {
        Problems problems = new Problems("codes.yaml");
        List<Range> ranges = new ArrayList<>();
        Tree.of(new String(bytes, StandardCharsets.UTF_8), problems).ifPresent(root -> {
            Fields top = Fields.of(root, "the file", problems);
            for (NodeTuple tuple : FaultReader.members(top, "codes", problems)) {
                Matcher matcher = RANGE.matcher(FaultReader.id(tuple));
                Fields fields = Fields.of(tuple.getValueNode(), "a code", problems);
                if (matcher.matches()) {
                    int from = Integer.parseInt(matcher.group(1));
                    int to = matcher.group(2) == null ? from : Integer.parseInt(matcher.group(2));
                    ranges.add(new Range(from, to, fields.text("finding", ""), fields.whole("cylinder", 0, 0, 1)));
                } else {
                    problems.fault(tuple.getKeyNode(), "this is no code", "as in P0301, or P0301 to P0312");
                }
            }
        });
        if (problems.anyFault()) {
            throw new IllegalStateException(problems.inFileOrder().getFirst().text());
        }
        return new TroubleCodes(ranges);
    }

    /** What a code says, when it is one of the generic ones that are known here. */
    public Optional<Meaning> find(String code) {
        Matcher matcher = RANGE.matcher(code.strip().toUpperCase(Locale.ROOT));
        if (!matcher.matches() || matcher.group(2) != null) {
            return Optional.empty();
        }
        int number = Integer.parseInt(matcher.group(1));
        return ranges.stream()
                .filter(range -> number >= range.from() && number <= range.to())
                .map(range -> new Meaning(range.finding(), range.cylinder() == 0 ? 0 : number - range.from() + 1))
                .findFirst();
    }
}
