package org.cantonment.desk.files;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFileAttributeView;

/** Writes a file in one step: whoever reads it meanwhile, or after a crash, finds the old text or the new, whole. */
public final class SafeWrite {
    private SafeWrite() {
    }

    /**
     * Puts a new text into an existing file, keeping its encoding, its mark, its permissions, and a link as a link.
     *
     * @param file   the file
     * @param before how it was read
     * @param text   what it is to hold from now on
     * @throws IOException if it could not be written; the old text stands then. The message is a sentence's end
     */
    public static void replace(Path file, TextReading before, String text) throws IOException {
        try {
            Path real = file.toRealPath();
            if (!Files.isWritable(real)) {
                throw new IOException("may not be written: no permission");
            }
            Path beside = Files.createTempFile(real.getParent(), ".cantonment-", ".tmp");
            try {
                fill(beside, bytes(before, text));
                keepPermissions(real, beside);
                move(beside, real);
            } finally {
                Files.deleteIfExists(beside);
            }
        } catch (FileSystemException e) {
            throw new IOException(Trouble.of(e).replace("read", "written"), e);
        }
    }

    private static ByteBuffer bytes(TextReading before, String text) {
        Charset charset = before.charset();
        String marked = before.mark() ? '\uFEFF' + text : text;
        return charset.equals(StandardCharsets.UTF_8)
                ? ByteBuffer.wrap(marked.getBytes(StandardCharsets.UTF_8)) : charset.encode(marked);
    }

    private static void fill(Path file, ByteBuffer bytes) throws IOException {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
            while (bytes.hasRemaining()) {
                channel.write(bytes);
            }
            channel.force(true);
        }
    }

    private static void keepPermissions(Path from, Path to) throws IOException {
        PosixFileAttributeView old = Files.getFileAttributeView(from, PosixFileAttributeView.class);
        PosixFileAttributeView young = Files.getFileAttributeView(to, PosixFileAttributeView.class);
        if (old != null && young != null) {
            young.setPermissions(old.readAttributes().permissions());
        }
    }

    private static void move(Path from, Path to) throws IOException {
        try {
            Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
        }
    }
}
