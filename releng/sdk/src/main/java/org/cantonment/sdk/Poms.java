package org.cantonment.sdk;

import java.util.List;
import java.util.stream.Collectors;

/** The small XML files of a Maven repository. */
final class Poms {

    private static final String HEAD = "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n";

    private Poms() {
    }

    static String pom(String group, String artifact, String version, String title, List<String> dependencies) {
        return HEAD + """
                <project xmlns="http://maven.apache.org/POM/4.0.0">
                  <modelVersion>4.0.0</modelVersion>
                  <groupId>%s</groupId>
                  <artifactId>%s</artifactId>
                  <version>%s</version>
                  <name>%s</name>
                  <dependencies>
                %s
                  </dependencies>
                </project>
                """.formatted(group, artifact, version, title,
                dependencies.stream().map(Poms::dependency).collect(Collectors.joining("\n")));
    }

    private static String dependency(String coordinates) {
        String[] parts = coordinates.split(":");
        return """
                    <dependency>
                      <groupId>%s</groupId>
                      <artifactId>%s</artifactId>
                      <version>%s</version>
                    </dependency>""".formatted(parts[0], parts[1], parts[2]).indent(4).stripTrailing();
    }

    /** Which files make up a snapshot. */
    static String metadata(String group, String artifact, String version, String numbered) {
        String[] time = numbered.substring(version.indexOf("SNAPSHOT")).split("-");
        String updated = time[0].replace(".", "");
        StringBuilder files = new StringBuilder();
        for (String[] file : new String[][] {{"", "jar"}, {"sources", "jar"}, {"javadoc", "jar"}, {"", "pom"}}) {
            files.append("      <snapshotVersion>\n");
            if (!file[0].isEmpty()) {
                files.append("        <classifier>").append(file[0]).append("</classifier>\n");
            }
            files.append("        <extension>").append(file[1]).append("</extension>\n        <value>").append(numbered)
                    .append("</value>\n        <updated>").append(updated).append("</updated>\n      </snapshotVersion>\n");
        }
        return HEAD + """
                <metadata modelVersion="1.1.0">
                  <groupId>%s</groupId>
                  <artifactId>%s</artifactId>
                  <version>%s</version>
                  <versioning>
                    <snapshot>
                      <timestamp>%s</timestamp>
                      <buildNumber>%s</buildNumber>
                    </snapshot>
                    <lastUpdated>%s</lastUpdated>
                    <snapshotVersions>
                %s    </snapshotVersions>
                  </versioning>
                </metadata>
                """.formatted(group, artifact, version, time[0], time[1], updated, files);
    }
}
