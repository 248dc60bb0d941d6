import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * Writes the target platform and the root pom's dependencyManagement from one list of pins, so that the two cannot
 * drift apart.
 *
 * <pre>
 * java releng/pins/Pins.java            writes both files
 * java releng/pins/Pins.java --check    writes nothing; exit 1 if either file differs from the list
 * </pre>
 *
 * Exit 2: the list itself cannot be read.
 */
public final class Pins {

    private static final String BEGIN = "<!-- pins: begin (written by releng/pins/Pins.java) -->";
    private static final String END = "<!-- pins: end -->";

    /** One jar, and the bnd instructions for it if it has no OSGi manifest of its own. */
    private record Pin(String group, String artifact, String version, List<String> instructions) {

        String key() {
            return group + ":" + artifact;
        }

        String xml(String indent) {
            return indent + "<dependency>\n" + indent + "  <groupId>" + group + "</groupId>\n" + indent
                    + "  <artifactId>" + artifact + "</artifactId>\n" + indent + "  <version>" + version
                    + "</version>\n" + indent + "  <type>jar</type>\n" + indent + "</dependency>\n";
        }
    }

    /** What is wrong with the list, in one sentence. */
    private static final class BadPins extends Exception {
        private static final long serialVersionUID = 1;

        BadPins(String message) {
            super(message);
        }
    }

    private Pins() {
    }

    public static void main(String[] args) throws IOException {
        boolean check = args.length == 1 && args[0].equals("--check");
        if (args.length > 1 || args.length == 1 && !check) {
            System.err.println("usage: java releng/pins/Pins.java [--check]");
            System.exit(2);
        }
        Path root = root();
        try {
            List<Pin> pins = read(root.resolve("releng/pins/pins.txt"));
            Path target = root.resolve("releng/platform/org.cantonment.platform.target");
            Path pom = root.resolve("pom.xml");
            boolean same = settle(target, target(pins), check) & settle(pom, managed(pom, pins), check);
            if (!same && check) {
                System.err.println("Run: java releng/pins/Pins.java");
                System.exit(1);
            }
            System.out.println(pins.size() + " pins: " + (same ? "nothing to write" : "written"));
        } catch (BadPins e) {
            System.err.println(e.getMessage());
            System.exit(2);
        }
    }

    private static Path root() {
        Path here = Path.of("").toAbsolutePath();
        while (here != null && !Files.exists(here.resolve("releng/pins/pins.txt"))) {
            here = here.getParent();
        }
        if (here == null) {
            System.err.println("releng/pins/pins.txt is not in this folder or above it: run inside the project.");
            System.exit(2);
        }
        return here;
    }

    private static List<Pin> read(Path list) throws IOException, BadPins {
        List<Pin> pins = new ArrayList<>();
        Set<String> seen = new LinkedHashSet<>();
        int number = 0;
        for (String line : Files.readAllLines(list, StandardCharsets.UTF_8)) {
            number++;
            if (line.isBlank() || line.startsWith("#")) {
                continue;
            }
            String place = list.getFileName() + ", line " + number + ": ";
            if (Character.isWhitespace(line.charAt(0))) {
                instruction(pins, line, place);
            } else {
                Pin pin = pin(line, place);
                if (!seen.add(pin.key())) {
                    throw new BadPins(place + pin.key() + " is pinned twice.");
                }
                pins.add(pin);
            }
        }
        return pins;
    }

    private static void instruction(List<Pin> pins, String line, String place) throws BadPins {
        if (pins.isEmpty() || !line.contains(":")) {
            throw new BadPins(place + "an instruction ('Header: value') must stand under a pin.");
        }
        pins.get(pins.size() - 1).instructions().add(line.strip());
    }

    private static Pin pin(String line, String place) throws BadPins {
        String[] parts = line.strip().split(":");
        if (parts.length != 3) {
            throw new BadPins(place + "'" + line.strip() + "' is not group:artifact:version.");
        }
        return new Pin(parts[0], parts[1], parts[2], new ArrayList<>());
    }

    private static String target(List<Pin> pins) {
        StringBuilder out = new StringBuilder();
        out.append("<?xml version=\"1.0\" encoding=\"UTF-8\" standalone=\"no\"?>\n<?pde version=\"3.8\"?>\n");
        out.append("<!-- Written by releng/pins/Pins.java from releng/pins/pins.txt: change the list, not this. -->\n");
        out.append("<target name=\"Cantonment\">\n  <locations>\n");
        location(out, "error", pins.stream().filter(p -> p.instructions().isEmpty()).toList());
        for (Pin pin : pins) {
            if (!pin.instructions().isEmpty()) {
                location(out, "generate", List.of(pin));
            }
        }
        out.append("  </locations>\n  <targetJRE path=\"org.eclipse.jdt.launching.JRE_CONTAINER/"
                + "org.eclipse.jdt.internal.debug.ui.launcher.StandardVMType/JavaSE-17\"/>\n</target>\n");
        return out.toString();
    }

    private static void location(StringBuilder out, String missing, List<Pin> pins) {
        out.append("    <location includeDependencyDepth=\"none\" includeDependencyScopes=\"compile\""
                + " includeSource=\"false\" missingManifest=\"" + missing + "\" type=\"Maven\">\n");
        out.append("      <dependencies>\n");
        pins.forEach(p -> out.append(p.xml("        ")));
        out.append("      </dependencies>\n");
        if (missing.equals("generate")) {
            out.append("      <instructions><![CDATA[\n");
            pins.forEach(p -> p.instructions().forEach(i -> out.append(i).append('\n')));
            out.append("]]></instructions>\n");
        }
        out.append("    </location>\n");
    }

    private static String managed(Path pom, List<Pin> pins) throws IOException, BadPins {
        String text = Files.readString(pom);
        int begin = text.indexOf(BEGIN);
        int end = text.indexOf(END);
        if (begin < 0 || end < begin) {
            throw new BadPins("The root pom.xml has lost its marks '" + BEGIN + "' and '" + END + "'.");
        }
        StringBuilder block = new StringBuilder(BEGIN).append('\n');
        pins.forEach(p -> block.append(p.xml("      ").replace("        <type>jar</type>\n", "")));
        return text.substring(0, begin) + block + "      " + text.substring(end);
    }

    private static boolean settle(Path file, String wanted, boolean check) throws IOException {
        boolean same = Files.exists(file) && Files.readString(file).equals(wanted);
        if (!same && check) {
            System.err.println(file + " differs from releng/pins/pins.txt.");
        } else if (!same) {
            Files.createDirectories(file.getParent());
            Files.writeString(file, wanted);
        }
        return same;
    }
}
