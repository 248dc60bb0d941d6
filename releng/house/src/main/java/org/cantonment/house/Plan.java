package org.cantonment.house;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The plan of the house as DEVELOPERS.md draws it: a table of rooms and a table of outside libraries.
 *
 * @param rooms the rooms by name, such as {@code notation.ide}
 * @param libraries for each library's name the beginnings of the bundle and package names it goes by
 */
record Plan(Map<String, Room> rooms, Map<String, List<String>> libraries) {

    private static final Pattern QUOTED = Pattern.compile("`([^`]+)`");
    private static final String ANYTHING = "anything";

    /**
     * One room.
     *
     * @param name its name; {@code *.tests} stands for every room whose name ends so
     * @param mayEnter names of rooms and libraries
     * @param ground whether it stands on the ground floor, where nothing of Eclipse is known
     */
    record Room(String name, Set<String> mayEnter, boolean ground) {

        boolean mayEnterAnything() {
            return mayEnter.contains(ANYTHING);
        }
    }

    /**
     * Reads the two tables.
     *
     * @throws IOException if the file cannot be read
     * @throws IllegalArgumentException if a table is missing or a room may enter something that neither table names
     */
    static Plan read(Path developers) throws IOException {
        Map<String, Room> rooms = new TreeMap<>();
        Map<String, List<String>> libraries = new TreeMap<>();
        String table = "";
        boolean ground = false;
        for (String line : Files.readAllLines(developers)) {
            List<String> cells = cells(line);
            if (cells.isEmpty()) {
                table = "";
            } else if (table.isEmpty()) {
                table = String.join(" | ", cells);
            } else if (cells.get(0).startsWith("**")) {
                ground = cells.get(0).toLowerCase(java.util.Locale.ROOT).startsWith("**ground floor");
            } else if (table.equals("room | purpose | may enter") && !cells.get(0).startsWith("-")) {
                Room room = room(cells, ground);
                rooms.put(room.name(), room);
            } else if (table.equals("library | goes by") && !cells.get(0).startsWith("-")) {
                libraries.put(cells.get(0), quoted(cells.get(1)));
            }
        }
        Plan plan = new Plan(rooms, libraries);
        plan.check();
        return plan;
    }

    private void check() {
        if (rooms.isEmpty() || libraries.isEmpty()) {
            throw new IllegalArgumentException("DEVELOPERS.md has lost its table"
                    + " '| room | purpose | may enter |' or '| library | goes by |'.");
        }
        for (Room room : rooms.values()) {
            for (String name : room.mayEnter()) {
                if (!rooms.containsKey(name) && !libraries.containsKey(name) && !name.equals(ANYTHING)) {
                    throw new IllegalArgumentException("DEVELOPERS.md lets `" + room.name() + "` enter '" + name
                            + "', which is neither a room nor a library of its tables.");
                }
            }
        }
    }

    private static Room room(List<String> cells, boolean ground) {
        if (cells.size() != 3 || quoted(cells.get(0)).isEmpty()) {
            throw new IllegalArgumentException("A row of DEVELOPERS.md's rooms is not"
                    + " '| `room` | purpose | may enter |': " + cells);
        }
        Set<String> mayEnter = new LinkedHashSet<>();
        for (String name : cells.get(2).split(",")) {
            if (!name.isBlank() && !name.strip().equals("nothing")) {
                mayEnter.add(name.strip().replace("`", ""));
            }
        }
        return new Room(quoted(cells.get(0)).get(0), mayEnter, ground);
    }

    /** The room of that name, or the pattern that covers it; null if the plan knows neither. */
    Room room(String name) {
        Room own = rooms.get(name);
        int dot = name.lastIndexOf('.');
        return own != null || dot < 0 ? own : rooms.get("*" + name.substring(dot));
    }

    /**
     * What a bundle or package name belongs to: a room of ours or a library. Of several beginnings the longest counts.
     *
     * @return the room's or library's name, or null if the plan has neither
     */
    String owner(String bundleOrPackage) {
        String owner = null;
        int longest = -1;
        for (String room : rooms.keySet()) {
            String start = House.PREFIX + room;
            if (begins(bundleOrPackage, start) && start.length() > longest) {
                owner = room;
                longest = start.length();
            }
        }
        for (Map.Entry<String, List<String>> library : libraries.entrySet()) {
            for (String start : library.getValue()) {
                if (begins(bundleOrPackage, start) && start.length() > longest) {
                    owner = library.getKey();
                    longest = start.length();
                }
            }
        }
        return owner;
    }

    private static boolean begins(String name, String start) {
        return name.equals(start) || name.startsWith(start + ".");
    }

    private static List<String> cells(String line) {
        List<String> cells = new ArrayList<>();
        if (line.strip().startsWith("|")) {
            String inner = line.strip().replaceAll("^\\||\\|$", "");
            for (String cell : inner.split("\\|", -1)) {
                cells.add(cell.strip());
            }
        }
        return cells;
    }

    private static List<String> quoted(String cell) {
        List<String> names = new ArrayList<>();
        Matcher matcher = QUOTED.matcher(cell);
        while (matcher.find()) {
            names.add(matcher.group(1));
        }
        return names;
    }
}
