package org.cantonment.workbench.author;

import java.io.IOException;
import java.io.InputStream;
import java.net.URI;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemNotFoundException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.Enumeration;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

import org.eclipse.core.runtime.Platform;
import org.eclipse.core.runtime.URIUtil;
import org.eclipse.osgi.service.datalocation.Location;
import org.osgi.framework.Bundle;
import org.osgi.framework.FrameworkUtil;

/** What the installation brings along for authors: the template, and the sdk. */
public final class Bundled {

    private static final String FOLDER = "/template/";

    private Bundled() {
    }

    /**
     * The template; the build put it into this bundle.
     *
     * @throws IOException if it cannot be read
     */
    public static Template template() throws IOException {
        Bundle bundle = FrameworkUtil.getBundle(Bundled.class);
        Enumeration<URL> found = bundle.findEntries(FOLDER, "*", true);
        Map<String, String> files = new TreeMap<>();
        for (URL url : Collections.list(found == null ? Collections.emptyEnumeration() : found)) {
            if (!url.getPath().endsWith("/")) {
                try (InputStream in = url.openStream()) {
                    files.put(url.getPath().substring(FOLDER.length()),
                            new String(in.readAllBytes(), StandardCharsets.UTF_8));
                }
            }
        }
        if (files.isEmpty()) {
            throw new IOException("This installation has lost the template of checks; install it again.");
        }
        return new Template(files);
    }

    /** The folder of the sdk beside the plug-ins, if this installation has it. */
    public static Optional<Path> sdk() {
        Location install = Platform.getInstallLocation();
        if (install == null || install.getURL() == null) {
            return Optional.empty();
        }
        try {
            URI place = URIUtil.toURI(install.getURL());
            Path sdk = Path.of(place).resolve("sdk");
            return Files.isDirectory(sdk.resolve("repository")) ? Optional.of(sdk) : Optional.empty();
        } catch (URISyntaxException | IllegalArgumentException | FileSystemNotFoundException remote) {
            return Optional.empty(); // installed where there is no folder to build from
        }
    }
}
