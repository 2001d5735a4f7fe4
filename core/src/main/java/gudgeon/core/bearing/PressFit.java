package gudgeon.core.bearing;

/**
 * A shaft pressed into a hub of the same material, both elastic: Lamé's thick cylinders.
 *
 * @param shaft_mm joint diameter, in mm, above the shaft's bore
 * @param shaftBore_mm bore of the shaft, in mm; 0 for a solid one
 * @param hub_mm outer diameter of the hub, in mm, above the joint's
 * @param interference_mm by how much the shaft's diameter exceeds the hole's, in mm, 0 or more
 * @param length_mm length of the joint, in mm
 * @param friction coefficient of friction, 0 to 1
 * @param modulus_GPa modulus of elasticity, in GPa
 */
public record PressFit(
        double shaft_mm,
        double shaftBore_mm,
        double hub_mm,
        double interference_mm,
        double length_mm,
        double friction,
        double modulus_GPa) {
    public PressFit {
        if (!(shaftBore_mm >= 0 && shaft_mm > shaftBore_mm && hub_mm > shaft_mm && Double.isFinite(hub_mm))) {
            throw new IllegalArgumentException("The shaft's bore " + shaftBore_mm + " mm, the joint " + shaft_mm
                    + " mm and the hub " + hub_mm + " mm must grow in this order.");
        }
        if (!(interference_mm >= 0 && length_mm > 0 && modulus_GPa > 0 && friction >= 0 && friction <= 1)) {
            throw new IllegalArgumentException("An interference of " + interference_mm + " mm, a length of " + length_mm
                    + " mm, a modulus of " + modulus_GPa + " GPa and a friction of " + friction
                    + " do not make a press fit: 0 or more, above 0, above 0, and 0 to 1 are needed.");
        }
    }

    /** Pressure between the two, in MPa: (δ/d) E / (hub's + shaft's ratio), Poisson's ratio cancels for one material. */
    public double pressure_MPa() {
        double d2 = shaft_mm * shaft_mm;
        double hub = (hub_mm * hub_mm + d2) / (hub_mm * hub_mm - d2);
        double shaft = (d2 + shaftBore_mm * shaftBore_mm) / (d2 - shaftBore_mm * shaftBore_mm);
        return interference_mm / shaft_mm * modulus_GPa * 1000 / (hub + shaft);
    }

    /** Force to slip along, p π d L μ, in N. */
    public double axialForce_N() {
        return pressure_MPa() * Math.PI * shaft_mm * length_mm * friction;
    }

    /** Torque to slip round, in N·m. */
    public double torque_Nm() {
        return axialForce_N() * shaft_mm / 2 / 1000;
    }

    /** Hoop stress at the hub's bore, in MPa. */
    public double hubHoop_MPa() {
        double d2 = shaft_mm * shaft_mm;
        return pressure_MPa() * (hub_mm * hub_mm + d2) / (hub_mm * hub_mm - d2);
    }
}
