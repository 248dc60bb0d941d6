package org.cantonment.house;

import java.io.IOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** What hand-written sources must keep to. */
final class Sources {

    /** The most lines a hand-written source file may have. */
    static final int MOST_LINES = 600;

    private static final Set<String> NOT_BY_HAND = Set.of("target", "bin", "src-gen", "xtext-gen", "template", ".git");
    private static final Set<String> SOURCES = Set.of("java", "xtext", "mwe2");
    private static final Set<String> PLACES = Set.of("bundles", "releng", "examples");

    private Sources() {
    }

    /**
     * Finds hand-written source files that are too long and packages without package-info.
     *
     * @throws IOException if files cannot be read
     */
    static List<String> inspect(Path root) throws IOException {
        List<String> findings = new ArrayList<>();
        Set<Path> packages = new TreeSet<>();
        for (String place : new TreeSet<>(PLACES)) {
            for (Path file : files(root.resolve(place))) {
                if (SOURCES.contains(extension(file))) {
                    measure(root, file, findings);
                    if (extension(file).equals("java") && inPackage(file)) {
                        packages.add(file.getParent());
                    }
                }
            }
        }
        packages.stream().filter(p -> !documented(p))
                .forEach(p -> findings.add(root.relativize(p) + " has no package-info.java."));
        return findings;
    }

    /**
     * A package split over src/main and src/test is one package: saying its purpose once, in src/main, is enough.
     */
    private static boolean documented(Path folder) {
        String other = folder.toString().replace("/src/test/java/", "/src/main/java/");
        return Files.exists(folder.resolve("package-info.java"))
                || Files.exists(Path.of(other, "package-info.java"));
    }

    /** The Java sources and the manifest of a bundle, generated ones left out. */
    static List<Path> texts(Path bundle) throws IOException {
        return files(bundle).stream().filter(f -> SOURCES.contains(extension(f))
                || f.endsWith("META-INF/MANIFEST.MF")).toList();
    }

    private static void measure(Path root, Path file, List<String> findings) throws IOException {
        long lines;
        try (var all = Files.lines(file)) {
            lines = all.count();
        }
        if (lines > MOST_LINES) {
            findings.add(root.relativize(file) + " has " + lines + " lines; " + MOST_LINES + " is the most.");
        }
    }

    private static boolean inPackage(Path file) throws IOException {
        try (var lines = Files.lines(file)) {
            return lines.anyMatch(l -> l.startsWith("package "));
        }
    }

    private static String extension(Path file) {
        String name = file.getFileName().toString();
        return name.substring(name.lastIndexOf('.') + 1);
    }

    private static List<Path> files(Path start) throws IOException {
        List<Path> found = new ArrayList<>();
        if (!Files.isDirectory(start)) {
            return found;
        }
        Files.walkFileTree(start, new SimpleFileVisitor<>() {
            @Override
            public FileVisitResult preVisitDirectory(Path folder, BasicFileAttributes attributes) {
                boolean skip = NOT_BY_HAND.contains(folder.getFileName().toString());
                return skip ? FileVisitResult.SKIP_SUBTREE : FileVisitResult.CONTINUE;
            }

            @Override
            public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
                found.add(file);
                return FileVisitResult.CONTINUE;
            }
        });
        found.sort(null);
        return found;
    }
}
