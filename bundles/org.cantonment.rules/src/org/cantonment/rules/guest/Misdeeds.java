package org.cantonment.rules.guest;

/** What foreign code did, as the end of a sentence that begins with its name. */
final class Misdeeds {

    private static final int LONGEST = 200;

    private Misdeeds() {
    }

    static String words(Throwable failed) {
        if (failed instanceof Nonsense) {
            return failed.getMessage();
        }
        if (failed instanceof StackOverflowError) {
            return "called itself without end (StackOverflowError)";
        }
        if (failed instanceof OutOfMemoryError) {
            return "took more memory than there is (OutOfMemoryError)";
        }
        if (failed instanceof LinkageError) {
            return "does not fit this version of Cantonment: " + shortened(failed.toString());
        }
        if (failed instanceof UnsupportedOperationException && ofCollections(failed)) {
            return "tried to change what it was given";
        }
        return "failed: " + shortened(failed.toString());
    }

    private static boolean ofCollections(Throwable failed) {
        StackTraceElement[] trace = failed.getStackTrace();
        return trace.length > 0 && (trace[0].getClassName().startsWith("java.util.ImmutableCollections")
                || trace[0].getClassName().startsWith("java.util.Collections$Unmodifiable"));
    }

    /** On one line, and not without end. */
    static String shortened(String text) {
        String line = text.replaceAll("\\s+", " ").strip();
        return line.length() <= LONGEST ? line : line.substring(0, LONGEST - 1) + '\u2026';
    }
}
