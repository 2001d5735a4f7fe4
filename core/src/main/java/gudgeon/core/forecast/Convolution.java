package gudgeon.core.forecast;

/** Sums of independent variables on a common grid: fast Fourier transform, padded so that nothing wraps round. */
final class Convolution {
    private Convolution() {}

    /**
     * The first {@code a.length} masses of the sum; what lies beyond is left out. Absolute error about 1e-15 per mass.
     *
     * @param a masses, as many as {@code b}, a power of two
     */
    static double[] of(double[] a, double[] b) {
        int n = 2 * a.length;
        double[] re = new double[n];
        double[] im = new double[n];
        // one transform for both: a in the real part, b in the imaginary one
        System.arraycopy(a, 0, re, 0, a.length);
        System.arraycopy(b, 0, im, 0, b.length);
        transform(re, im, false);
        double[] productRe = new double[n];
        double[] productIm = new double[n];
        for (int k = 0; k < n; k++) {
            int m = (n - k) % n;
            double aRe = (re[k] + re[m]) / 2;
            double aIm = (im[k] - im[m]) / 2;
            double bRe = (im[k] + im[m]) / 2;
            double bIm = (re[m] - re[k]) / 2;
            productRe[k] = aRe * bRe - aIm * bIm;
            productIm[k] = aRe * bIm + aIm * bRe;
        }
        transform(productRe, productIm, true);
        double[] sum = new double[a.length];
        for (int k = 0; k < sum.length; k++) {
            sum[k] = Math.max(0, productRe[k] / n);
        }
        return sum;
    }

    private static void transform(double[] re, double[] im, boolean back) {
        int n = re.length;
        reorder(re, im);
        for (int half = 1; half < n; half *= 2) {
            for (int k = 0; k < half; k++) {
                double angle = (back ? Math.PI : -Math.PI) * k / half;
                double cos = Math.cos(angle);
                double sin = Math.sin(angle);
                for (int i = k; i < n; i += 2 * half) {
                    int j = i + half;
                    double tRe = re[j] * cos - im[j] * sin;
                    double tIm = re[j] * sin + im[j] * cos;
                    re[j] = re[i] - tRe;
                    im[j] = im[i] - tIm;
                    re[i] += tRe;
                    im[i] += tIm;
                }
            }
        }
    }

    private static void reorder(double[] re, double[] im) {
        int n = re.length;
        for (int i = 1, j = 0; i < n; i++) {
            int bit = n >> 1;
            for (; (j & bit) != 0; bit >>= 1) {
                j ^= bit;
            }
            j ^= bit;
            if (i < j) {
                double r = re[i];
                re[i] = re[j];
                re[j] = r;
                double m = im[i];
                im[i] = im[j];
                im[j] = m;
            }
        }
    }
}
