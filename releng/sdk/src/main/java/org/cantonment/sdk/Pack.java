package org.cantonment.sdk;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.joda.money.CurrencyUnit;

/**
 * Makes the folder {@code cantonment-sdk} and the same as a zip, from bundles that are built.
 *
 * <p>Arguments: the project's root folder, the version, and the folder to write to. Same input, same bytes.
 */
public final class Pack {

    private static final String MONEY = "org.joda:joda-money:";
    private static final String EXAMPLE = "examples/lake-club-checks";

    private Pack() {
    }

    /**
     * @param args root folder, version, folder to write to
     * @throws IOException if something cannot be read or written
     */
    public static void main(String[] args) throws IOException {
        if (args.length != 3) {
            throw new IllegalArgumentException("Wanted: root folder, version, folder to write to");
        }
        Path root = Path.of(args[0]).toRealPath();
        String version = args[1];
        Path target = Path.of(args[2]).toAbsolutePath();
        Path sdk = target.resolve("cantonment-sdk");
        Trees.delete(sdk);
        Files.createDirectories(sdk);

        Piece domain = new Piece(root, "org.cantonment.domain", version, "");
        Piece rules = new Piece(root, "org.cantonment.rules", version, "org/cantonment/rules/api");
        Path reference = sdk.resolve("reference");
        Path money = moneyJar();
        Reference.write(List.of(domain, rules), money, reference);
        Repository repository = new Repository(sdk.resolve("repository"), version);
        repository.add(domain, reference, "Cantonment: the records that checks see and hand back",
                List.of(MONEY + moneyVersion(root, money)));
        repository.add(rules, reference, "Cantonment: the door for checks that others write",
                List.of("org.cantonment:org.cantonment.domain:" + version));

        Trees.copy(root.resolve(EXAMPLE), sdk.resolve(EXAMPLE));
        Files.copy(root.resolve("releng/sdk/README.md"), sdk.resolve("README.md"));
        Files.copy(root.resolve("docs/LICENSE"), sdk.resolve("LICENSE"));
        Zip.write(sdk, "cantonment-sdk/", target.resolve("cantonment-sdk-" + version + ".zip"));
    }

    /** The version of the money library by the one list of outside jars; what is compiled against here must be the same. */
    private static String moneyVersion(Path root, Path jar) throws IOException {
        String pin = Files.readAllLines(root.resolve("releng/pins/pins.txt")).stream().filter(l -> l.startsWith(MONEY))
                .findFirst().orElseThrow(() -> new IllegalStateException("releng/pins/pins.txt has lost " + MONEY));
        String version = pin.substring(MONEY.length()).strip();
        if (!jar.getFileName().toString().contains(version)) {
            throw new IllegalStateException("releng/sdk/pom.xml has " + jar.getFileName() + ", releng/pins/pins.txt has "
                    + pin.strip());
        }
        return version;
    }

    private static Path moneyJar() {
        try {
            return Path.of(CurrencyUnit.class.getProtectionDomain().getCodeSource().getLocation().toURI());
        } catch (URISyntaxException impossible) {
            throw new IllegalStateException(impossible);
        }
    }
}
