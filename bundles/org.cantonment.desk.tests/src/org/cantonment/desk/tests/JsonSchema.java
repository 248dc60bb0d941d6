package org.cantonment.desk.tests;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;

/** Holds a JSON text against those parts of JSON Schema (draft 2020-12) that the project's schemas use; no others. */
final class JsonSchema {
    private final JsonObject root;
    private final List<String> wrong = new ArrayList<>();

    JsonSchema(JsonObject root) {
        this.root = root;
    }

    /** What does not hold; empty if all does. */
    List<String> check(JsonElement value) {
        wrong.clear();
        check(root, value, "$");
        return List.copyOf(wrong);
    }

    private void check(JsonObject schema, JsonElement value, String at) {
        for (Map.Entry<String, JsonElement> keyword : schema.entrySet()) {
            JsonElement rule = keyword.getValue();
            switch (keyword.getKey()) {
                case "$schema", "$id", "$defs", "title", "description" -> { }
                case "$ref" -> check(resolve(rule.getAsString()), value, at);
                case "type" -> must(hasType(value, rule.getAsString()), at + " is no " + rule);
                case "const" -> must(value.equals(rule), at + " is not " + rule);
                case "enum" -> must(rule.getAsJsonArray().contains(value), at + " is none of " + rule);
                case "minimum" -> must(value.getAsInt() >= rule.getAsInt(), at + " is below " + rule);
                case "minLength" -> must(value.getAsString().length() >= rule.getAsInt(), at + " is too short");
                case "pattern" -> must(value.getAsString().matches(rule.getAsString()), at + " is not like " + rule);
                case "items" -> items(rule.getAsJsonObject(), value, at);
                case "required" -> rule.getAsJsonArray().forEach(name ->
                        must(value.getAsJsonObject().has(name.getAsString()), at + " lacks " + name));
                case "properties" -> properties(rule.getAsJsonObject(), value.getAsJsonObject(), at);
                case "additionalProperties" -> value.getAsJsonObject().keySet().forEach(name ->
                        must(schema.getAsJsonObject("properties").has(name), at + " has an unknown " + name));
                default -> throw new IllegalStateException("The schema uses a word unknown here: " + keyword);
            }
        }
    }

    private void items(JsonObject rule, JsonElement value, String at) {
        for (int i = 0; i < value.getAsJsonArray().size(); i++) {
            check(rule, value.getAsJsonArray().get(i), at + "[" + i + "]");
        }
    }

    private void properties(JsonObject rules, JsonObject value, String at) {
        for (String name : rules.keySet()) {
            if (value.has(name)) {
                check(rules.getAsJsonObject(name), value.get(name), at + "." + name);
            }
        }
    }

    private JsonObject resolve(String reference) {
        JsonObject found = root;
        for (String step : reference.substring(2).split("/")) {
            found = found.getAsJsonObject(step);
        }
        return found;
    }

    private static boolean hasType(JsonElement value, String type) {
        return switch (type) {
            case "object" -> value.isJsonObject();
            case "array" -> value.isJsonArray();
            case "boolean" -> value.isJsonPrimitive() && value.getAsJsonPrimitive().isBoolean();
            case "string" -> value.isJsonPrimitive() && value.getAsJsonPrimitive().isString();
            case "integer" -> value.isJsonPrimitive() && value.getAsJsonPrimitive().isNumber()
                    && value.getAsString().matches("-?\\d+");
            default -> throw new IllegalStateException("A type unknown here: " + type);
        };
    }

    private void must(boolean holds, String otherwise) {
        if (!holds) {
            wrong.add(otherwise);
        }
    }
}
