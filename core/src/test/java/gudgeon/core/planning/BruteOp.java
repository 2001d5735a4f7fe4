package gudgeon.core.planning;

import java.util.List;

/** A joint or ready operation of {@link BruteModel}: sets of parts and operations as bits. */
final class BruteOp {
    String id = "";
    long between;
    boolean joint;
    boolean flexible;
    double holds;
    long strap;
    boolean licensed;
    boolean available = true;
    boolean rests;
    long needs;
    long[][][] access = {};
    long[][] hold = {};
    long first;
    String zone = "";
    List<String> tools = List.of();
    long cost;
    List<Integer> opens = List.of();
    long carries;
}
