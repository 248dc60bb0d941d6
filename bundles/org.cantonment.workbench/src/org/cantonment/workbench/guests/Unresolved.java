package org.cantonment.workbench.guests;

import java.util.stream.Collectors;

import org.cantonment.rules.api.RuleCheck;
import org.cantonment.rules.guest.Guests;
import org.osgi.framework.Bundle;
import org.osgi.framework.BundleContext;
import org.osgi.framework.BundleException;
import org.osgi.framework.Constants;

/** Plug-ins that would give checks but lack something, such as a newer version of the door. */
final class Unresolved {

    private static final String DOOR = RuleCheck.class.getPackageName();

    private Unresolved() {
    }

    /** Notes every installed plug-in that asks for the door and cannot be used. */
    static void refuse(BundleContext context, Guests guests) {
        for (Bundle bundle : context.getBundles()) {
            String imports = bundle.getHeaders("").get(Constants.IMPORT_PACKAGE);
            if (bundle.getState() == Bundle.INSTALLED && imports != null && imports.contains(DOOR)
                    && !bundle.getLocation().startsWith(DropFolder.LOCATION)) {
                try {
                    bundle.start(Bundle.START_TRANSIENT);
                } catch (BundleException lacking) {
                    guests.refuse(Origins.installed(bundle), "The " + Origins.installed(bundle).words()
                            + " cannot be used here: " + why(lacking));
                }
            }
        }
    }

    /** What is missing, in a sentence, from the many lines of the framework. */
    static String why(BundleException failed) {
        String text = String.valueOf(failed.getMessage());
        String missing = text.lines().map(String::strip).filter(line -> line.contains("Unresolved requirement:"))
                .map(Unresolved::requirement).distinct().limit(3).collect(Collectors.joining(", "));
        if (!missing.isEmpty()) {
            return "it needs " + missing + ", which this version of Cantonment does not have.";
        }
        Throwable cause = failed.getCause() == null ? failed : failed.getCause();
        return "it fails as it starts (" + cause.toString().lines().findFirst().orElse("").strip() + ").";
    }

    private static String requirement(String line) {
        String bare = line.substring(line.indexOf("Unresolved requirement:") + "Unresolved requirement:".length()).strip();
        int resolution = bare.indexOf("; resolution:");
        return bare.substring(0, resolution < 0 ? bare.length() : resolution).replace("Import-Package:", "the package")
                .replace("Require-Bundle:", "the plug-in").replace("Require-Capability:", "the capability")
                .replace("; version=", " in version ").replace("\"", "").replaceAll("\\s+", " ");
    }
}
