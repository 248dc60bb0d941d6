package org.cantonment.domain.expression;

/** What a name of a let line of the same card stands for; of the type that the reader of the line took it for. */
public record NameUse(String name, Type type) implements Expression {
}
