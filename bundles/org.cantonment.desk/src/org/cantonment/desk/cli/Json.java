package org.cantonment.desk.cli;

import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;

import org.cantonment.notation.text.TextChange;

import com.google.gson.stream.JsonWriter;

/** What all answers in JSON have in common. */
final class Json {
    private Json() {
    }

    /** Writes to a JSON writer. */
    @FunctionalInterface
    interface Writing {
        void to(JsonWriter json) throws IOException;
    }

    /** One value, on several lines, without a line end behind it. */
    static String text(Writing writing) {
        StringWriter text = new StringWriter();
        try (JsonWriter json = new JsonWriter(text)) {
            json.setIndent("  ");
            json.setHtmlSafe(false);
            writing.to(json);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString();
    }

    static void edit(JsonWriter json, TextChange edit) throws IOException {
        json.beginObject();
        json.name("offset").value(edit.offset());
        json.name("length").value(edit.length());
        json.name("text").value(edit.text());
        json.endObject();
    }
}
