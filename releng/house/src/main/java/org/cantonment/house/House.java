package org.cantonment.house;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** Holds every room against the plan and tells all differences. */
final class House {

    static final String PREFIX = "org.cantonment.";

    private final Path root;
    private final Plan plan;
    private final List<String> findings = new ArrayList<>();

    private House(Path root, Plan plan) {
        this.root = root;
        this.plan = plan;
    }

    /**
     * Inspects a project.
     *
     * @param root the folder with DEVELOPERS.md and bundles/
     * @return one sentence for each difference, in a fixed order; empty if the house is in order
     * @throws IOException if files cannot be read
     * @throws IllegalArgumentException if the plan itself makes no sense
     */
    static List<String> inspect(Path root) throws IOException {
        House house = new House(root, Plan.read(root.resolve("DEVELOPERS.md")));
        house.inspect();
        return List.copyOf(house.findings);
    }

    private void inspect() throws IOException {
        Set<String> built = rooms();
        for (String name : plan.rooms().keySet()) {
            if (!name.startsWith("*") && !built.contains(name)) {
                findings.add("`" + name + "` has a row in DEVELOPERS.md but no folder bundles/" + PREFIX + name + ".");
            }
        }
        for (String name : built) {
            Plan.Room room = plan.room(name);
            if (room == null) {
                findings.add("bundles/" + PREFIX + name + " has no row in DEVELOPERS.md.");
            } else {
                doors(name, room);
                words(name, room);
            }
        }
        findings.addAll(Sources.inspect(root));
    }

    private Set<String> rooms() throws IOException {
        Set<String> names = new TreeSet<>();
        try (var folders = Files.list(root.resolve("bundles"))) {
            folders.filter(f -> Files.exists(f.resolve("META-INF/MANIFEST.MF")))
                    .map(f -> f.getFileName().toString()).filter(n -> n.startsWith(PREFIX))
                    .forEach(n -> names.add(n.substring(PREFIX.length())));
        }
        return names;
    }

    private void doors(String name, Plan.Room room) throws IOException {
        Set<String> entered = new TreeSet<>();
        for (String door : Door.enters(folder(name))) {
            String owner = plan.owner(door);
            if (owner == null) {
                findings.add("`" + name + "` enters " + door + ", which no library of DEVELOPERS.md goes by.");
            } else {
                entered.add(owner);
                if (!room.mayEnterAnything() && !room.mayEnter().contains(owner)) {
                    findings.add("`" + name + "` enters " + door + " of '" + owner
                            + "', which DEVELOPERS.md does not allow.");
                }
            }
        }
        for (String allowed : room.mayEnter()) {
            if (!room.mayEnterAnything() && !entered.contains(allowed)) {
                findings.add("`" + name + "` may enter '" + allowed
                        + "' by DEVELOPERS.md, but its manifest never does.");
            }
        }
    }

    private void words(String name, Plan.Room room) throws IOException {
        boolean window = name.matches("(editor|workbench)(\\.tests)?");
        for (Path file : Sources.texts(folder(name))) {
            String text = Files.readString(file);
            if (room.ground() && text.contains("org.eclipse.")) {
                findings.add(at(file) + " names org.eclipse., which the ground floor does not know.");
            }
            if (!window && text.contains("org.eclipse.swt")) {
                findings.add(at(file) + " names org.eclipse.swt; only editor and workbench know it.");
            }
        }
    }

    private Path folder(String name) {
        return root.resolve("bundles").resolve(PREFIX + name);
    }

    private String at(Path file) {
        return root.relativize(file).toString().replace('\\', '/');
    }
}
