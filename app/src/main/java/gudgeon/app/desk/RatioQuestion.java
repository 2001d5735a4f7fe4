package gudgeon.app.desk;

import gudgeon.core.geometry.CombustionSpace;
import gudgeon.core.geometry.CombustionSpace.Doubt;
import gudgeon.core.geometry.CombustionSpace.Uncertainties;
import java.util.List;

/**
 * What is the compression ratio, how sure is it, and what would a change make of it?
 *
 * @param space as measured
 * @param doubts standard uncertainties of what was measured
 * @param change what is thought of; all zero or the same when nothing is
 */
public record RatioQuestion(CombustionSpace space, Uncertainties doubts, Change change) {
    /** Coverage factor of the expanded uncertainty: about 95 % for a normal spread. */
    public static final double COVERAGE = 2;

    /**
     * A change that is thought of.
     *
     * @param headSkim_mm off the head's face
     * @param mouth_mm2 the chamber's mouth in the head's face
     * @param blockSkim_mm off the block's face
     * @param gasket_mm thickness of the new gasket; that of the old one when it stays
     * @param bore_mm the new bore; the old one when it stays
     */
    public record Change(double headSkim_mm, double mouth_mm2, double blockSkim_mm, double gasket_mm, double bore_mm) {}

    /**
     * The answer.
     *
     * @param sweptCm3 swept volume of one cylinder
     * @param leftCm3 what is left above the piston
     * @param gasketCm3 of that, in the gasket
     * @param deckCm3 of that, between deck and piston
     * @param ratio compression ratio
     * @param standardUncertainty of the ratio
     * @param expandedUncertainty the same times {@link #COVERAGE}
     * @param doubts what contributes, largest first
     * @param squishMm gap between the flats, cold
     * @param after the same after the change
     */
    public record Answer(
            double sweptCm3,
            double leftCm3,
            double gasketCm3,
            double deckCm3,
            double ratio,
            double standardUncertainty,
            double expandedUncertainty,
            List<Doubt> doubts,
            double squishMm,
            After after) {}

    /** After the change: swept volume, what is left, ratio and squish. */
    public record After(double sweptCm3, double leftCm3, double ratio, double squishMm) {}

    /** Works it out. */
    public Answer ask() {
        CombustionSpace changed = space.withHeadSkimmed(change.headSkim_mm(), change.mouth_mm2())
                .withBlockSkimmed(change.blockSkim_mm())
                .withGasket(change.gasket_mm(), space.gasket_d_mm())
                .withBore(change.bore_mm());
        double doubt = space.standardUncertainty(doubts);
        return new Answer(
                space.cylinder().swept_cm3(),
                space.clearance_cm3(),
                space.gasket_cm3(),
                space.deck_cm3(),
                space.compressionRatio(),
                doubt,
                COVERAGE * doubt,
                space.doubts(doubts),
                space.squish_mm(),
                new After(
                        changed.cylinder().swept_cm3(),
                        changed.clearance_cm3(),
                        changed.compressionRatio(),
                        changed.squish_mm()));
    }
}
