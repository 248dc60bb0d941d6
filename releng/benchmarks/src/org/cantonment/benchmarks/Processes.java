package org.cantonment.benchmarks;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Programs started from here, one after another. */
final class Processes {
    private Processes() {
    }

    /** Runs one part of these benchmarks in a Java of its own, and returns the nanoseconds that it says it took. */
    static long java(String... args) throws IOException {
        return within(2048, args);
    }

    /** Runs one part of these benchmarks in a Java of its own with so many megabytes, and returns the number that it says. */
    static long within(int megabytes, String... args) throws IOException {
        List<String> call = new ArrayList<>(List.of(javaProgram(), "-Xmx" + megabytes + "m",
                "-Dlog4j.defaultInitOverride=true", "-cp",
                System.getProperty("java.class.path"), Bench.class.getName()));
        call.addAll(List.of(args));
        return Long.parseLong(output(call, Path.of("")).strip());
    }

    /** Runs a program and returns how many nanoseconds that took from outside. */
    static long timed(List<String> call, Path folder) throws IOException {
        long begin = System.nanoTime();
        output(call, folder);
        return System.nanoTime() - begin;
    }

    static String javaProgram() {
        return Path.of(System.getProperty("java.home"), "bin", "java").toString();
    }

    private static String output(List<String> call, Path folder) throws IOException {
        Process process = new ProcessBuilder(call).directory(folder.toAbsolutePath().toFile())
                .redirectError(ProcessBuilder.Redirect.DISCARD).start();
        process.getOutputStream().close();
        String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        try {
            int code = process.waitFor();
            if (code > 1) {
                throw new IOException("Ended with " + code + ": " + String.join(" ", call));
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IOException("Interrupted", e);
        }
        return out;
    }
}
