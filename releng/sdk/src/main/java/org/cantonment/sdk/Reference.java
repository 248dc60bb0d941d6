package org.cantonment.sdk;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

import javax.tools.DocumentationTool;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;

/** The reference: web pages of all packages that authors may use, written by the JDK's own tool. */
final class Reference {

    private Reference() {
    }

    /**
     * Writes the pages.
     *
     * @param pieces whose packages
     * @param library a jar that their signatures name
     * @param folder where to
     * @throws IOException if it cannot be written
     * @throws IllegalStateException if the tool finds fault with the sources, or is not there
     */
    static void write(List<Piece> pieces, Path library, Path folder) throws IOException {
        DocumentationTool tool = ToolProvider.getSystemDocumentationTool();
        if (tool == null) {
            throw new IllegalStateException("This Java has no javadoc; a whole JDK 17 is needed.");
        }
        List<Path> files = new ArrayList<>();
        for (Piece piece : pieces) {
            files.addAll(piece.files());
        }
        String sources = pieces.stream().map(p -> p.sources().toString())
                .collect(Collectors.joining(File.pathSeparator));
        Files.createDirectories(folder);
        // without time stamps the same sources give the same bytes
        List<String> options = List.of("-d", folder.toString(), "-classpath", library.toString(), "-sourcepath", sources,
                "-encoding", "UTF-8", "-charset", "UTF-8", "-docencoding", "UTF-8", "-locale", "en", "-notimestamp",
                "-quiet", "-Xdoclint:all,-missing", "-windowtitle", "Cantonment", "-doctitle",
                "Cantonment: for authors of checks");
        try (StandardJavaFileManager manager = tool.getStandardFileManager(null, null, null)) {
            boolean written = tool.getTask(null, manager, null, null, options, manager.getJavaFileObjectsFromPaths(files))
                    .call();
            if (!written) {
                throw new IllegalStateException("The reference could not be written; see above.");
            }
        }
    }
}
