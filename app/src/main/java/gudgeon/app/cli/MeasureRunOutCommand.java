package gudgeon.app.cli;

import gudgeon.core.measuring.Derived;
import gudgeon.core.measuring.DialDifference;
import gudgeon.core.measuring.Instrument;
import gudgeon.core.measuring.InstrumentKind;
import gudgeon.core.measuring.Judged;
import gudgeon.core.measuring.Judging;
import gudgeon.core.measuring.Remark;
import gudgeon.core.measuring.Repeatability;
import gudgeon.core.measuring.ShaftLine;
import gudgeon.core.measuring.Sheet;
import gudgeon.core.measuring.Turn;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** A shaft turned in V-blocks under a dial. */
@Command(
        name = "runout",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        header =
                "Run-out of a shaft in V-blocks: total, where the axis lies, oval, and with three places whether it is bent.",
        description = "FILE is a table with the headings: angle deg, height mm, and along mm for several places.",
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "0:Done, whatever the verdict",
            "2:Wrong usage, or the table has a fault",
            "4:The file cannot be read"
        },
        footer = {"", "Example: gudgeon measure runout crank.csv --most 0.04mm"})
final class MeasureRunOutCommand implements Callable<Integer> {
    private final Screen screen;

    @Mixin
    private MeasureOptions options = new MeasureOptions();

    @Mixin
    private MeasureLimits limits = new MeasureLimits();

    @Parameters(index = "0", paramLabel = "FILE", description = "The table.")
    private String file = "";

    /** What was asked. */
    private record Request(Instrument dial, Repeatability repeatability, Judging judging, List<Place> places) {}

    /** The readings of one place. */
    private record Place(double along_mm, List<Turn.Dial> dials) {}

    MeasureRunOutCommand(Screen screen) {
        this.screen = screen;
    }

    @Override
    public Integer call() {
        List<Place> places = places(MeasureFile.read(file, options));
        Instrument dial = options.instrument(InstrumentKind.DIAL);
        Repeatability repeats = options.repeatability(dial);
        Judging judging = limits.judging(options, List.of(Derived.Trait.RUN_OUT));
        List<Judged> judged = new ArrayList<>();
        List<Remark> remarks = new ArrayList<>();
        List<ShaftLine.Station> stations = new ArrayList<>();
        for (Place place : places) {
            Turn turn = options.build(() -> Turn.of(place.dials()));
            String where =
                    places.size() == 1 ? "the shaft" : "at " + options.figures().length(place.along_mm());
            Derived runOut = DialDifference.of(Derived.Trait.RUN_OUT, turn.runOut_mm(), dial, repeats, where);
            judged.addAll(judging.of(where, runOut, 1, OptionalDouble.of(dial.maximumError_mm())));
            remarks.add(new Remark.Harmonics(place.along_mm(), turn));
            stations.add(new ShaftLine.Station(place.along_mm(), turn));
        }
        if (stations.size() > 2) {
            ShaftLine.Bow bow = options.build(() -> ShaftLine.of(stations)).largest();
            remarks.add(new Remark.Bow(bow.along_mm(), bow.bow_mm(), bow.direction_deg(), 2 * bow.bow_mm()));
        }
        return new MeasureText(screen, options)
                .print(new Request(dial, repeats, judging, places), new Sheet("shaft", judged, remarks));
    }

    private static List<Place> places(MeasureFile table) {
        Map<Double, List<Turn.Dial>> places = new TreeMap<>();
        for (int row = 0; row < table.size(); row++) {
            double along = table.has("along") ? table.length(row, "along") : 0;
            places.computeIfAbsent(along, key -> new ArrayList<>())
                    .add(new Turn.Dial(table.angle(row, "angle"), table.length(row, "height")));
        }
        List<Place> list = new ArrayList<>();
        places.forEach((along, dials) -> list.add(new Place(along, dials)));
        return list;
    }
}
