package gudgeon.app.desk;

import gudgeon.core.geometry.Compression;
import gudgeon.core.geometry.SliderCrank;
import gudgeon.core.geometry.StandardAtmosphere;

/**
 * What gauge pressure may a sound cylinder show when it is cranked, here?
 *
 * @param crank crank and rod
 * @param ratio geometric compression ratio
 * @param inletCloses_deg crank degrees after bottom dead centre
 * @param height_m above the sea
 */
public record CrankingQuestion(SliderCrank crank, double ratio, double inletCloses_deg, double height_m) {
    /**
     * The answer.
     *
     * @param effectiveRatio from where the inlet closes
     * @param airKPa pressure of the standard air at that height
     * @param leastBar gauge pressure for a slow, cold engine
     * @param mostBar gauge pressure for a quick, warm one
     */
    public record Answer(double effectiveRatio, double airKPa, double leastBar, double mostBar) {}

    /** Works it out. */
    public Answer ask() {
        double effective = crank.effectiveRatio(ratio, inletCloses_deg);
        double air_Pa = StandardAtmosphere.pressure_Pa(height_m);
        Compression.Band band = Compression.cranking(effective, air_Pa);
        return new Answer(effective, air_Pa / 1000, band.least_Pa() / 1e5, band.most_Pa() / 1e5);
    }
}
