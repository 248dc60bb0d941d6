package org.cantonment.rules.guest;

import java.nio.file.Path;
import java.util.Comparator;
import java.util.Optional;

/**
 * Where a check comes from.
 *
 * @param plugin the symbolic name of its plug-in
 * @param version the plug-in's version
 * @param file the jar in the folder for dropped jars; empty if it was installed
 * @param since milliseconds since 1970: when the plug-in came, or the jar was last changed
 */
public record Origin(String plugin, String version, Optional<Path> file, long since) implements Comparable<Origin> {

    private static final Comparator<Origin> ORDER = Comparator.comparing((Origin origin) -> origin.file().isPresent())
            .thenComparingLong(origin -> origin.file().isPresent() ? origin.since() : 0).thenComparing(Origin::plugin)
            .thenComparing(Origin::version).thenComparing(origin -> origin.file().map(Path::toString).orElse(""))
            .thenComparingLong(Origin::since);

    /** An installed plug-in. */
    public static Origin installed(String plugin, String version, long since) {
        return new Origin(plugin, version, Optional.empty(), since);
    }

    /** What was installed before what was dropped, what was dropped earlier first: who keeps a name that two have. */
    @Override
    public int compareTo(Origin other) {
        return ORDER.compare(this, other);
    }

    /** "plug-in org.example.fords 1.2.0 (fords.jar)". */
    public String words() {
        return "plug-in " + plugin + (version.isEmpty() ? "" : " " + version)
                + file.map(jar -> " (" + jar.getFileName() + ')').orElse("");
    }
}
