package gudgeon.app.desk;

/** A head on a block, held by one joint of a torque and an angle stage; invented, values typical. */
public final class Finch {
    public static final String ENGINE = """
            format: 1
            engine: { id: finch-1, name: Finch 1, base: block }
            zones:
              top: { name: Top }
            parts:
              block: { mass: 30 kg }
              head: { name: Cylinder head, mass: 8 kg, keep: [orientation] }
            joints:
              head-bolts:
                between: [head, block]
                fasteners: [{ count: 4, kind: bolt, thread: M10x1.25, length: 90 mm, drive: hexagon 14 mm, at: [[0, 0], [80, 0], [80, 60], [0, 60]] }]
                tighten: [{ torque: 30 N·m, thread: oiled }, { angle: 90 °, thread: oiled }]
                pattern: cross
            """;

    private Finch() {}
}
