package gudgeon.core.measuring;

import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.DecompositionSolver;
import org.hipparchus.linear.LUDecomposition;

/** A small regular matrix, solved with it and with its transpose. */
final class Dense {
    private static final double SINGULAR = 1e-14;

    private final double[][] matrix;

    Dense(double[][] matrix) {
        this.matrix = matrix;
    }

    double[] solve(double[] right) {
        return solver(new Array2DRowRealMatrix(matrix, false))
                .solve(new ArrayRealVector(right, false))
                .toArray();
    }

    double[] solveTransposed(double[] right) {
        Array2DRowRealMatrix transposed = new Array2DRowRealMatrix(matrix.length, matrix.length);
        for (int i = 0; i < matrix.length; i++) {
            transposed.setColumn(i, matrix[i]);
        }
        return solver(transposed).solve(new ArrayRealVector(right, false)).toArray();
    }

    private static DecompositionSolver solver(Array2DRowRealMatrix matrix) {
        return new LUDecomposition(matrix, SINGULAR).getSolver();
    }
}
