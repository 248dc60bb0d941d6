package org.cantonment.workbench.guests;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.jar.JarFile;
import java.util.jar.Manifest;

import org.cantonment.rules.guest.Guests;
import org.cantonment.rules.guest.Origin;
import org.eclipse.core.runtime.ILog;
import org.osgi.framework.Bundle;
import org.osgi.framework.BundleContext;
import org.osgi.framework.BundleException;
import org.osgi.framework.Constants;

/** One jar in one state: not taken in yet, taken in as a plug-in, or refused. */
final class Dropped {

    private final Path jar;
    private final JarState state;
    private int looks;
    private boolean settled;
    private Bundle bundle;
    private Origin refused;

    Dropped(Path jar, JarState state) {
        this.jar = jar;
        this.state = state;
    }

    boolean is(JarState now) {
        return state.equals(now);
    }

    /** Takes the jar in, unless that was done or it is still being copied. @param patience looks that it is waited for */
    void enter(BundleContext context, Map<Bundle, Origin> origins, Guests guests, int patience) {
        if (settled && (bundle == null || bundle.getState() != Bundle.UNINSTALLED)) {
            return; // an installation by the update site takes out whatever it does not know
        }
        looks++;
        Optional<Manifest> manifest = manifest();
        // A jar's table of contents is its end: what opens is whole. One look more lets a slow copy grow.
        if (manifest.isEmpty() && looks <= patience || manifest.isPresent() && patience > 0 && looks < 2) {
            return;
        }
        settled = true;
        String name = manifest.map(found -> found.getMainAttributes().getValue(Constants.BUNDLE_SYMBOLICNAME)).orElse(null);
        if (name == null) {
            refuse(guests, jar.getFileName().toString(), "", "is no plug-in"
                    + (manifest.isEmpty() ? ": it is no jar, or not a whole one." : ": its manifest has no Bundle-SymbolicName."));
        } else {
            install(context, origins, guests, name.split(";")[0].strip());
        }
    }

    private Optional<Manifest> manifest() {
        try (JarFile open = new JarFile(jar.toFile(), false)) {
            return Optional.of(Optional.ofNullable(open.getManifest()).orElseGet(Manifest::new));
        } catch (IOException | SecurityException notWhole) {
            return Optional.empty();
        }
    }

    private void install(BundleContext context, Map<Bundle, Origin> origins, Guests guests, String name) {
        String location = DropFolder.LOCATION + jar;
        try (InputStream bytes = Files.newInputStream(jar)) {
            Bundle left = context.getBundle(location);
            if (left != null) {
                left.uninstall(); // from a run that did not end well
            }
            bundle = context.installBundle(location, bytes);
            origins.put(bundle, new Origin(bundle.getSymbolicName(), bundle.getVersion().toString(), Optional.of(jar),
                    state.changed()));
            bundle.start(Bundle.START_TRANSIENT);
        } catch (BundleException failed) {
            String version = bundle == null ? "" : bundle.getVersion().toString();
            String why = failed.getType() == BundleException.DUPLICATE_BUNDLE_ERROR
                    ? "is not taken in: a plug-in " + name + " of this version is here already."
                    : "cannot be used here: " + Unresolved.why(failed);
            uninstall(origins);
            refuse(guests, name, version, why);
        } catch (IOException unreadable) {
            uninstall(origins);
            refuse(guests, name, "", "cannot be read (" + unreadable.getMessage() + ").");
        }
    }

    private void refuse(Guests guests, String plugin, String version, String why) {
        refused = new Origin(plugin, version, Optional.of(jar), state.changed());
        guests.refuse(refused, "The jar " + jar.getFileName() + " in the folder of checks " + why);
    }

    /** Takes the jar out. */
    void leave(Map<Bundle, Origin> origins, Guests guests) {
        uninstall(origins);
        if (refused != null) {
            guests.welcome(refused);
        }
    }

    private void uninstall(Map<Bundle, Origin> origins) {
        if (bundle == null) {
            return;
        }
        try {
            bundle.uninstall();
        } catch (BundleException | IllegalStateException failed) {
            ILog.of(Dropped.class).warn("A dropped plug-in could not be taken out: " + jar, failed);
        }
        origins.remove(bundle);
        bundle = null;
    }
}
