package org.cantonment.workbench.tests.driver;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.jar.Attributes;
import java.util.jar.JarOutputStream;
import java.util.jar.Manifest;
import java.util.zip.ZipEntry;

import org.cantonment.workbench.tests.visitor.FordCheck;
import org.cantonment.workbench.tests.visitor.FordPlugin;

/** Packs plug-ins with a check as a stranger's build would. */
public final class PluginJar {

    private final Map<String, String> headers = new LinkedHashMap<>();

    private PluginJar() {
    }

    /** A plug-in whose check says something. */
    public static PluginJar of(String plugin, String check, String words) {
        PluginJar jar = new PluginJar();
        return jar.with("Bundle-ManifestVersion", "2").with("Bundle-SymbolicName", plugin).with("Bundle-Version", "1.0.0")
                .with("Bundle-Activator", FordPlugin.class.getName()).with(FordPlugin.NAME, check)
                .with(FordPlugin.WORDS, words).door("[1.0,2)");
    }

    /** Built against these versions of the door. */
    public PluginJar door(String range) {
        return with("Import-Package", "org.osgi.framework,org.cantonment.rules.api;version=\"" + range
                + "\",org.cantonment.domain.common;version=\"[1.0,2)\",org.cantonment.domain.finding;version=\"[1.0,2)\""
                + ",org.cantonment.domain.force;version=\"[1.0,2)\"");
    }

    /** With another header. */
    public PluginJar with(String header, String value) {
        headers.put(header, value);
        return this;
    }

    /** The bytes of the jar. */
    public byte[] bytes() {
        Manifest manifest = new Manifest();
        manifest.getMainAttributes().put(Attributes.Name.MANIFEST_VERSION, "1.0");
        headers.forEach((name, value) -> manifest.getMainAttributes().putValue(name, value));
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (JarOutputStream jar = new JarOutputStream(bytes, manifest)) {
            for (Class<?> type : new Class<?>[] { FordPlugin.class, FordCheck.class }) {
                String path = type.getName().replace('.', '/') + ".class";
                jar.putNextEntry(new ZipEntry(path));
                try (InputStream in = type.getClassLoader().getResourceAsStream(path)) {
                    in.transferTo(jar);
                }
            }
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
        return bytes.toByteArray();
    }

    /** Puts the jar into a folder, whole at once. */
    public Path into(Path folder, String name) {
        try {
            Files.createDirectories(folder);
            Path part = Files.write(folder.resolve(name + ".part"), bytes());
            return Files.move(part, folder.resolve(name), StandardCopyOption.REPLACE_EXISTING);
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }
}
