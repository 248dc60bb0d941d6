package org.cantonment.rules.guest;

import java.lang.invoke.MethodHandle;
import java.lang.invoke.MethodHandles;
import java.lang.invoke.MethodType;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;

/**
 * How much memory a thread has taken since it began, what it gave back included. Found by name, because the type that
 * knows it is the Java machine's own and no part of Java; where it is missing, nothing is known and nothing is cut off.
 */
final class Allocation {

    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();
    private static final MethodHandle BYTES = find();

    private Allocation() {
    }

    private static MethodHandle find() {
        try {
            Class<?> type = Class.forName("com.sun.management.ThreadMXBean", false, ClassLoader.getPlatformClassLoader());
            if (!type.isInstance(THREADS)) {
                return null;
            }
            return MethodHandles.publicLookup().findVirtual(type, "getThreadAllocatedBytes",
                    MethodType.methodType(long.class, long.class)).bindTo(THREADS);
        } catch (ReflectiveOperationException | LinkageError missing) {
            return null;
        }
    }

    /** Bytes; 0 if nobody knows. */
    static long bytes(long thread) {
        if (BYTES == null) {
            return 0;
        }
        try {
            return Math.max(0, (long) BYTES.invoke(thread));
        } catch (Throwable unsupported) {
            return 0;
        }
    }

    /** Whether anybody knows. */
    static boolean known() {
        return bytes(Thread.currentThread().getId()) > 0;
    }

    /** Nanoseconds that a thread has really worked; what has passed on the clock where nobody knows. */
    static long worked(long thread, long passed) {
        long nanos = THREADS.isThreadCpuTimeSupported() ? THREADS.getThreadCpuTime(thread) : -1;
        return nanos < 0 ? passed : nanos;
    }
}
