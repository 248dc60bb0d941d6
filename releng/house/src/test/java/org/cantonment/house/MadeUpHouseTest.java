package org.cantonment.house;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Each rule of the house, broken in a made-up house of three rooms. */
class MadeUpHouseTest {

    private static final String PLAN = """
            | room | purpose | may enter |
            | --- | --- | --- |
            | **Ground floor** | | |
            | `cellar` | stores | coins |
            | **Top floor** | | |
            | `attic` | looks out | `cellar`, windows |
            | `*.tests` | tests | anything |

            | library | goes by |
            | --- | --- |
            | coins | `org.coins` |
            | windows | `org.eclipse.ui`, `org.eclipse.swt` |
            """;

    @TempDir
    private Path root;

    @BeforeEach
    void build() throws IOException {
        write("DEVELOPERS.md", PLAN);
        room("cellar", "Import-Package: org.coins;version=\"[1.0,2)\"");
        room("attic", "Require-Bundle: org.cantonment.cellar,\n org.eclipse.ui;bundle-version=\"3.0\"");
    }

    @Test
    void aHouseInOrderHasNoFinding() throws IOException {
        assertEquals(List.of(), House.inspect(root));
    }

    @Test
    void aRoomOutsideTheTable() throws IOException {
        room("shed", "");
        only("bundles/org.cantonment.shed has no row in DEVELOPERS.md.");
    }

    @Test
    void aRowWithoutARoom() throws IOException {
        write("DEVELOPERS.md", PLAN.replace("| `attic`", "| `tower` | none | nothing |\n| `attic`"));
        only("`tower` has a row in DEVELOPERS.md but no folder bundles/org.cantonment.tower.");
    }

    @Test
    void aTestBundleIsCoveredByThePattern() throws IOException {
        room("cellar.tests", "Require-Bundle: org.cantonment.cellar, org.cantonment.attic");
        assertEquals(List.of(), House.inspect(root));
    }

    @Test
    void anArrowThatPointsUp() throws IOException {
        room("cellar", "Import-Package: org.coins\nRequire-Bundle: org.cantonment.attic");
        only("`cellar` enters org.cantonment.attic of 'attic', which DEVELOPERS.md does not allow.");
    }

    @Test
    void aLibraryThatNobodyAllowed() throws IOException {
        room("attic", "Require-Bundle: org.cantonment.cellar, org.eclipse.ui\nImport-Package: org.coins;resolution:=optional");
        only("`attic` enters org.coins of 'coins', which DEVELOPERS.md does not allow.");
    }

    @Test
    void aLibraryThatNobodyKnows() throws IOException {
        room("attic", "Require-Bundle: org.cantonment.cellar, org.eclipse.ui, org.strange");
        only("`attic` enters org.strange, which no library of DEVELOPERS.md goes by.");
    }

    @Test
    void aPermissionThatNobodyUses() throws IOException {
        room("attic", "Require-Bundle: org.eclipse.ui");
        only("`attic` may enter 'cellar' by DEVELOPERS.md, but its manifest never does.");
    }

    @Test
    void eclipseOnTheGroundFloor() throws IOException {
        source("cellar", "Store", "/* see org.eclipse.core */ class Store { }");
        only("bundles/org.cantonment.cellar/src/org/cantonment/cellar/Store.java names org.eclipse.,"
                + " which the ground floor does not know.");
    }

    @Test
    void windowsOutsideTheWindowRooms() throws IOException {
        source("attic", "View", "import org.eclipse.swt.SWT; class View { }");
        only("bundles/org.cantonment.attic/src/org/cantonment/attic/View.java names org.eclipse.swt;"
                + " only editor and workbench know it.");
    }

    @Test
    void aFileTooLong() throws IOException {
        source("cellar", "Long", "\n".repeat(Sources.MOST_LINES - 1));
        assertEquals(List.of(), House.inspect(root));
        source("cellar", "Long", "\n".repeat(Sources.MOST_LINES));
        only("bundles/org.cantonment.cellar/src/org/cantonment/cellar/Long.java has 601 lines; 600 is the most.");
    }

    @Test
    void generatedCodeMayBeLong() throws IOException {
        write("bundles/org.cantonment.cellar/src-gen/org/cantonment/cellar/Made.java", "package p;\n".repeat(1000));
        assertEquals(List.of(), House.inspect(root));
    }

    @Test
    void aPackageWithoutItsPurpose() throws IOException {
        write("bundles/org.cantonment.cellar/src/org/cantonment/cellar/deep/Deep.java",
                "package org.cantonment.cellar.deep;\nclass Deep { }\n");
        only("bundles/org.cantonment.cellar/src/org/cantonment/cellar/deep has no package-info.java.");
    }

    @Test
    void aPlanThatNamesNothingReal() throws IOException {
        write("DEVELOPERS.md", PLAN.replace("`cellar`, windows", "`cellar`, doors"));
        String message = assertThrows(IllegalArgumentException.class, () -> House.inspect(root)).getMessage();
        assertTrue(message.contains("'doors'"), message);
    }

    @Test
    void aPlanThatIsLost() throws IOException {
        write("DEVELOPERS.md", "# Nothing\n");
        assertThrows(IllegalArgumentException.class, () -> House.inspect(root));
    }

    private void only(String finding) throws IOException {
        assertEquals(List.of(finding), House.inspect(root));
    }

    private void room(String name, String doors) throws IOException {
        write("bundles/org.cantonment." + name + "/META-INF/MANIFEST.MF",
                "Manifest-Version: 1.0\nBundle-SymbolicName: org.cantonment." + name + "\n"
                        + (doors.isEmpty() ? "" : doors + "\n"));
        String folder = "bundles/org.cantonment." + name + "/src/org/cantonment/" + name.replace('.', '/');
        write(folder + "/package-info.java", "/** A room. */\npackage org.cantonment." + name + ";\n");
    }

    private void source(String room, String type, String body) throws IOException {
        write("bundles/org.cantonment." + room + "/src/org/cantonment/" + room + "/" + type + ".java",
                "package org.cantonment." + room + ";" + body + "\n");
    }

    private void write(String path, String text) throws IOException {
        Path file = root.resolve(path);
        Files.createDirectories(file.getParent());
        Files.writeString(file, text);
    }
}
