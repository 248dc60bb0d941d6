package org.cantonment.desk.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeFalse;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;

import org.cantonment.desk.files.FolderScan;
import org.cantonment.desk.files.SafeWrite;
import org.cantonment.desk.files.TextReading;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files are found, read and written whatever they hold and however they are linked. */
class FilesTest {
    @TempDir
    Path folder;

    @Test
    void booksAreFoundInTheOrderOfTheirNames() throws IOException {
        touch("b.list");
        touch("a.rules");
        touch("in/c.week");
        touch("in/readme.txt");
        touch(".hidden/d.list");
        assertEquals(List.of("a.rules", "b.list", "in/c.week"), found());
    }

    @Test
    void aFolderThatLeadsBackToItselfIsEnteredOnce() throws IOException {
        touch("in/c.week");
        link("in/again", folder);
        link("round", folder.resolve("in"));
        assertEquals(List.of("in/c.week"), found());
    }

    @Test
    void aFileThatIsAlsoLinkedToIsReadOnce() throws IOException {
        touch("z.list");
        link("a.list", folder.resolve("z.list"));
        assertEquals(1, found().size());
    }

    @Test
    void aLinkToNothingIsTrouble() throws IOException {
        link("gone.list", folder.resolve("nowhere.list"));
        FolderScan scan = FolderScan.of(folder);
        assertEquals(List.of(), scan.books());
        assertEquals(1, scan.troubles().size());
        assertEquals("is not there", scan.troubles().get(0).why());
    }

    @Test
    void aFolderThatMayNotBeReadIsTrouble() throws IOException {
        assumeFalse("root".equals(System.getProperty("user.name")), "root may read everything");
        Path closed = Files.createDirectory(folder.resolve("closed"));
        assumeTrue(closed.getFileSystem().supportedFileAttributeViews().contains("posix"));
        Files.setPosixFilePermissions(closed, PosixFilePermissions.fromString("---------"));
        FolderScan scan = FolderScan.of(folder);
        Files.setPosixFilePermissions(closed, PosixFilePermissions.fromString("rwx------"));
        assertEquals(closed, scan.troubles().get(0).path());
    }

    @Test
    void aMarkIsNoPartOfTheText() {
        TextReading reading = TextReading.of("\uFEFFlist by Ombra\r\n".getBytes(StandardCharsets.UTF_8));
        assertEquals("list by Ombra\r\n", reading.text());
        assertTrue(reading.mark());
        assertEquals(List.of(), reading.broken());
    }

    @Test
    void textWrittenWithTwoBytesToALetterIsReadByItsMark() {
        byte[] bytes = "\uFEFFlist".getBytes(StandardCharsets.UTF_16LE);
        assertEquals("list", TextReading.of(bytes).text());
        assertEquals(StandardCharsets.UTF_16LE, TextReading.of(bytes).charset());
    }

    @Test
    void bytesThatAreNoTextAreNamedAndTheRestIsRead() {
        byte[] bytes = "a?b\uFFFDc?".getBytes(StandardCharsets.UTF_8);
        bytes[1] = (byte) 0xE4;
        bytes[bytes.length - 1] = (byte) 0xC3;
        TextReading reading = TextReading.of(bytes);
        assertEquals("a\uFFFDb\uFFFDc\uFFFD", reading.text());
        // The sign in the middle was written by somebody: it is no broken byte.
        assertEquals(List.of(1, 5), reading.broken());
    }

    @Test
    void aFolderIsNoFile() throws IOException {
        Path inner = Files.createDirectory(folder.resolve("x.list"));
        assertEquals("is a folder, not a file",
                assertThrows(IOException.class, () -> TextReading.of(inner)).getMessage());
        assertEquals("is not there",
                assertThrows(IOException.class, () -> TextReading.of(folder.resolve("no.list"))).getMessage());
    }

    @Test
    void aFileIsReplacedWithItsMarkItsLinkAndItsPermissions() throws IOException {
        Path file = folder.resolve("a.list");
        Files.write(file, "\uFEFFold".getBytes(StandardCharsets.UTF_8));
        boolean posix = file.getFileSystem().supportedFileAttributeViews().contains("posix");
        if (posix) {
            Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-rw-r--"));
        }
        Path link = link("b.list", file);
        SafeWrite.replace(link, TextReading.of(link), "new");
        assertEquals("\uFEFFnew", Files.readString(file));
        assertTrue(Files.isSymbolicLink(link));
        if (posix) {
            assertEquals("rw-rw-r--", PosixFilePermissions.toString(Files.getPosixFilePermissions(file)));
        }
        try (var all = Files.list(folder)) {
            assertEquals(2, all.count(), "nothing is left lying about");
        }
    }

    private List<String> found() {
        return FolderScan.of(folder).books().stream()
                .map(p -> folder.relativize(p).toString().replace('\\', '/')).toList();
    }

    private void touch(String name) throws IOException {
        Path file = folder.resolve(name);
        Files.createDirectories(file.getParent());
        Files.writeString(file, "");
    }

    private Path link(String name, Path target) throws IOException {
        Path link = folder.resolve(name);
        try {
            return Files.createSymbolicLink(link, target);
        } catch (UnsupportedOperationException e) {
            assumeTrue(false, "no links on this system");
            return link;
        }
    }
}
