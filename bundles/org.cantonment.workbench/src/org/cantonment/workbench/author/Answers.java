package org.cantonment.workbench.author;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;

/**
 * What somebody says about the check that they are going to write.
 *
 * @param id the plug-in's id, which is its Java package too: {@code lake.club.checks}
 * @param name the check's name in a campaign: {@code Ferry-Load}
 * @param about what it checks, in a sentence
 * @param parameter the name of its one setting: {@code Share}
 * @param maker whose it is, as the workbench shows it when it is installed
 * @param sdk where the sdk lies; empty if whoever builds has to say so
 */
public record Answers(String id, String name, String about, String parameter, String maker, Optional<Path> sdk) {

    /** The name of the check's class: {@code FerryLoad}. */
    String className() {
        return name.replace("-", "");
    }

    /** What people see: {@code Ferry load}. */
    String label() {
        return name.charAt(0) + name.substring(1).replace('-', ' ').toLowerCase(Locale.ROOT);
    }

    /** How the check's findings begin, behind {@code check.}: {@code ferry-load}. */
    String code() {
        return name.toLowerCase(Locale.ROOT);
    }

    /** The name of the constant for the setting: {@code SHARE}. */
    String constant() {
        return parameter.replace('-', '_').toUpperCase(Locale.ROOT);
    }

    /** The folder of the package, from the folder of the sources: {@code lake/club/checks}. */
    String packageFolder() {
        return id.replace('.', '/');
    }
}
