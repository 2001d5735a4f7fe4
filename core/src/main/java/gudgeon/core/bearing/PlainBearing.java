package gudgeon.core.bearing;

/**
 * A plain bearing under a steady load.
 *
 * @param viscosity_Pas dynamic viscosity of the oil, in Pa·s, above 0
 * @param speed_per_s turns a second, above 0
 * @param load_N load, in N, above 0
 * @param radius_m the journal's radius, in m
 * @param clearance_m radial clearance, in m
 * @param length_m length of the bush, in m
 */
public record PlainBearing(
        double viscosity_Pas,
        double speed_per_s,
        double load_N,
        double radius_m,
        double clearance_m,
        double length_m) {
    public PlainBearing {
        positive("The viscosity", viscosity_Pas);
        positive("The speed", speed_per_s);
        positive("The load", load_N);
        positive("The radius", radius_m);
        positive("The clearance", clearance_m);
        positive("The length", length_m);
    }

    /** Load over projected area, W/(2rL), in Pa. */
    public double pressure_Pa() {
        return load_N / (2 * radius_m * length_m);
    }

    /** Sommerfeld number (r/c)² μN/P. */
    public double sommerfeld() {
        double ratio = radius_m / clearance_m;
        return ratio * ratio * viscosity_Pas * speed_per_s / pressure_Pa();
    }

    /** The film that carries the load. */
    public OilFilm film() {
        return OilFilm.carrying(length_m / (2 * radius_m), sommerfeld());
    }

    /** Least film thickness in m. */
    public double leastFilm_m(OilFilm film) {
        return clearance_m * film.leastFilmRatio();
    }

    /** Coefficient of friction. */
    public double friction(OilFilm film) {
        return film.frictionVariable() * clearance_m / radius_m;
    }

    /** Friction torque, f W r, in N·m. */
    public double torque_Nm(OilFilm film) {
        return friction(film) * load_N * radius_m;
    }

    /** Petroff's friction force: the gap sheared evenly, μ U A / c, in N. */
    public double petroffForce_N() {
        double speed_m_per_s = 2 * Math.PI * radius_m * speed_per_s;
        double area_m2 = 2 * Math.PI * radius_m * length_m;
        return viscosity_Pas * speed_m_per_s * area_m2 / clearance_m;
    }

    private static void positive(String what, double value) {
        if (!(value > 0) || !Double.isFinite(value)) {
            throw new IllegalArgumentException(what + " is " + value + "; it must be above 0.");
        }
    }
}
