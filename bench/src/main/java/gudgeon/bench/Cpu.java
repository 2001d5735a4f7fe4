package gudgeon.bench;

import java.lang.management.ManagementFactory;
import java.util.function.BooleanSupplier;

/** Seconds of processor time of the whole program, all its threads, compiler and collector included. */
public final class Cpu {
    private Cpu() {}

    /** Processor seconds so far. */
    public static double seconds() {
        if (ManagementFactory.getOperatingSystemMXBean() instanceof com.sun.management.OperatingSystemMXBean system) {
            return system.getProcessCpuTime() / 1e9;
        }
        return System.nanoTime() / 1e9;
    }

    /** Processor seconds of the calling thread so far. */
    public static double threadSeconds() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() / 1e9;
    }

    /** Becomes true when so many processor seconds have been used from now on. */
    public static BooleanSupplier after(double seconds) {
        double end = seconds() + seconds;
        return () -> seconds() >= end;
    }

    /** Bytes that the calling thread has asked for so far. */
    public static long threadBytes() {
        return ManagementFactory.getThreadMXBean() instanceof com.sun.management.ThreadMXBean threads
                ? threads.getCurrentThreadAllocatedBytes()
                : 0;
    }

    /** Load of the machine over the last minute. */
    public static double load() {
        return ManagementFactory.getOperatingSystemMXBean().getSystemLoadAverage();
    }
}
