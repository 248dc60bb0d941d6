package org.cantonment.desk.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

import org.cantonment.testkit.Project;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;

/** Asks about buying and reads the answers. */
final class ShoppingAnswers {
    private ShoppingAnswers() {
    }

    /** The answer in JSON, held against its schema. */
    static JsonObject json(Path folder, String... call) {
        String[] words = Stream.concat(Stream.of(call), Stream.of("--json")).toArray(String[]::new);
        Shell shell = Shell.in(folder, words);
        assertTrue(shell.code() < 2, shell.err());
        JsonObject answer = JsonParser.parseString(shell.out()).getAsJsonObject();
        try {
            assertEquals(List.of(), new JsonSchema(JsonParser.parseString(Files.readString(Project.file("docs/json/" + call[0]
                    + ".schema.json"))).getAsJsonObject()).check(answer));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return answer;
    }

    /** "1 W-24, 2 W-3" for the boxes of a plan, in its order. */
    static String boxes(JsonObject plan) {
        return String.join(", ", objects(plan, "orders").flatMap(order -> objects(order, "boxes"))
                .map(box -> box.get("count") + " " + name(box.get("box"))).toList());
    }

    /** "1 Car-Frame" for what is left over. */
    static String left(JsonObject plan) {
        return String.join(", ", objects(plan, "leftovers").map(one -> one.get("count") + " " + name(one.get("what")))
                .toList());
    }

    /** "1 Crank, 1 Gun" for what is built. */
    static String builds(JsonObject plan) {
        return String.join(", ", objects(plan, "builds").map(one -> one.get("count") + " "
                + name(objects(one, "gives").findFirst().orElseThrow().get("what"))).toList());
    }

    static Stream<JsonObject> objects(JsonObject of, String name) {
        return of.getAsJsonArray(name).asList().stream().map(JsonElement::getAsJsonObject);
    }

    static String text(JsonObject of, String name) {
        return of.get(name).getAsString();
    }

    private static String name(JsonElement id) {
        return id.getAsString().substring(id.getAsString().lastIndexOf('/') + 1);
    }

    /** A call that is wrong says why, and nothing else. */
    static void assertWrong(Path folder, String why, String... call) {
        Shell shell = Shell.in(folder, call);
        assertEquals(2, shell.code(), shell.out() + shell.err());
        assertEquals("", shell.out());
        assertTrue(shell.err().contains(why), shell.err());
    }
}
