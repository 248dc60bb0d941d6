package org.cantonment.desk.files;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * A file's text, whatever bytes it holds. A mark at the beginning (BOM) is no part of the text; a byte that is no UTF-8
 * stands in the text as U+FFFD.
 *
 * @param text    the text as an editor shows it; offsets count from here
 * @param mark    whether the file begins with a mark
 * @param charset what the bytes were read as: UTF-8, or UTF-16 where the mark says so
 * @param broken  offsets into the text of the places that are no text, in order, at most {@link #MOST_BROKEN}
 */
public record TextReading(String text, boolean mark, Charset charset, List<Integer> broken) {
    /** After so many broken places a file is plainly no text, and no more are named. */
    public static final int MOST_BROKEN = 20;

    public TextReading {
        broken = List.copyOf(broken);
    }

    /**
     * Reads a file.
     *
     * @throws IOException if it is not there, no file, too large or may not be read; the message is a sentence's end
     */
    public static TextReading of(Path file) throws IOException {
        try {
            if (Files.isDirectory(file)) {
                throw new IOException("is a folder, not a file");
            }
            if (Files.size(file) > BookFiles.MOST_BYTES) {
                throw new IOException("is larger than " + (BookFiles.MOST_BYTES >> 20) + " MB and was not read");
            }
            return of(Files.readAllBytes(file));
        } catch (java.nio.file.FileSystemException e) {
            throw new IOException(Trouble.of(e), e);
        }
    }

    /** Reads bytes as a file's text. */
    public static TextReading of(byte[] bytes) {
        if (starts(bytes, 0xEF, 0xBB, 0xBF)) {
            return decode(bytes, 3, true, StandardCharsets.UTF_8);
        }
        if (starts(bytes, 0xFF, 0xFE)) {
            return decode(bytes, 2, true, StandardCharsets.UTF_16LE);
        }
        if (starts(bytes, 0xFE, 0xFF)) {
            return decode(bytes, 2, true, StandardCharsets.UTF_16BE);
        }
        return decode(bytes, 0, false, StandardCharsets.UTF_8);
    }

    private static boolean starts(byte[] bytes, int... mark) {
        if (bytes.length < mark.length) {
            return false;
        }
        for (int i = 0; i < mark.length; i++) {
            if ((bytes[i] & 0xFF) != mark[i]) {
                return false;
            }
        }
        return true;
    }

    private static TextReading decode(byte[] bytes, int from, boolean mark, Charset charset) {
        String quick = new String(bytes, from, bytes.length - from, charset);
        if (quick.indexOf('\uFFFD') < 0) {
            return new TextReading(quick, mark, charset, List.of());
        }
        return slowly(ByteBuffer.wrap(bytes, from, bytes.length - from), mark, charset);
    }

    // The quick way cannot tell a broken byte from a replacement character that somebody wrote.
    private static TextReading slowly(ByteBuffer in, boolean mark, Charset charset) {
        CharsetDecoder decoder = charset.newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT).onUnmappableCharacter(CodingErrorAction.REPORT);
        CharBuffer out = CharBuffer.allocate(in.remaining() + 1);
        List<Integer> broken = new ArrayList<>();
        while (true) {
            CoderResult result = decoder.decode(in, out, true);
            if (result.isUnderflow()) {
                break;
            }
            if (result.isOverflow()) {
                throw new UncheckedIOException(new CharacterCodingException());
            }
            in.position(Math.min(in.limit(), in.position() + result.length()));
            if (broken.size() < MOST_BROKEN) {
                broken.add(out.position());
            }
            out.put('\uFFFD');
        }
        return new TextReading(out.flip().toString(), mark, charset, broken);
    }
}
