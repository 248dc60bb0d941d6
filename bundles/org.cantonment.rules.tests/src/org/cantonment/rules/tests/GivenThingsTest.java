package org.cantonment.rules.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.reflect.Constructor;
import java.lang.reflect.Method;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.lang.reflect.WildcardType;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.Set;

import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.rules.RuleSet;
import org.cantonment.rules.api.Question;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

/** Nothing that a check is given can be changed, however deep it lies: found by walking all types it may see. */
class GivenThingsTest {

    private static final Set<Class<?>> FIRM = Set.of(String.class, BigDecimal.class, LocalDate.class, LocalTime.class,
            LocalDateTime.class, Money.class, CurrencyUnit.class, Integer.class, Long.class, Boolean.class,
            OptionalInt.class, OptionalLong.class, CancelToken.class);
    private static final Set<Class<?>> HOLDERS = Set.of(List.class, Set.class, Map.class, Optional.class);

    private static Set<Class<?>> reached() {
        Set<Class<?>> reached = new LinkedHashSet<>();
        for (Method method : Question.class.getMethods()) {
            if (method.getDeclaringClass() == Question.class && method.getReturnType() != Question.class
                    && !method.getName().equals("about")) {
                walk(method.getGenericReturnType(), reached);
            }
        }
        return reached;
    }

    private static void walk(Type type, Set<Class<?>> reached) {
        if (type instanceof ParameterizedType generic) {
            assertTrue(HOLDERS.contains(generic.getRawType()), type + " may be changed");
            Arrays.stream(generic.getActualTypeArguments()).forEach(argument -> walk(argument, reached));
        } else if (type instanceof WildcardType wild) {
            walk(wild.getUpperBounds()[0], reached);
        } else {
            Class<?> plain = (Class<?>) type;
            if (plain.isPrimitive() || plain.isEnum() || FIRM.contains(plain) || !reached.add(plain)) {
                return;
            }
            if (plain.isRecord()) {
                Arrays.stream(plain.getRecordComponents()).forEach(part -> walk(part.getGenericType(), reached));
            } else {
                assertTrue(plain.isSealed(), plain + " may be anything");
                Arrays.stream(plain.getPermittedSubclasses()).forEach(one -> walk(one, reached));
            }
        }
    }

    @Test
    void everyTypeIsARecordOfFirmThings() {
        Set<Class<?>> reached = reached();
        assertTrue(reached.size() > 100, "only " + reached.size());
        assertFalse(reached.contains(Object.class));
    }

    @Test
    void everyRecordKeepsACopyThatNobodyCanChange() throws ReflectiveOperationException {
        int held = 0;
        for (Class<?> type : reached()) {
            if (type.isRecord() && Arrays.stream(type.getRecordComponents()).anyMatch(GivenThingsTest::isHeld)) {
                held += probe(type);
            }
        }
        assertTrue(held > 80, "only " + held);
    }

    private static boolean isHeld(RecordComponent part) {
        return Collection.class.isAssignableFrom(part.getType()) || Map.class.isAssignableFrom(part.getType());
    }

    private static int probe(Class<?> type) throws ReflectiveOperationException {
        RecordComponent[] parts = type.getRecordComponents();
        Object[] given = Arrays.stream(parts).map(part -> sample(part.getType())).toArray();
        Constructor<?> make = type.getDeclaredConstructor(
                Arrays.stream(parts).map(RecordComponent::getType).toArray(Class<?>[]::new));
        Object made = make.newInstance(given);
        int held = 0;
        for (RecordComponent part : parts) {
            if (isHeld(part)) {
                held++;
                Object kept = part.getAccessor().invoke(made);
                if (kept instanceof Map<?, ?> map) {
                    assertThrows(UnsupportedOperationException.class, () -> map.remove("x"), type + "." + part.getName());
                } else {
                    Collection<?> all = (Collection<?>) kept;
                    assertThrows(UnsupportedOperationException.class, () -> all.add(null), type + "." + part.getName());
                }
            }
        }
        return held;
    }

    private static Object sample(Class<?> type) {
        if (type == List.class) {
            return new ArrayList<>();
        }
        if (type == Set.class) {
            return new HashSet<>();
        }
        if (type == Map.class) {
            return new HashMap<>();
        }
        if (type == Optional.class) {
            return Optional.empty();
        }
        if (type == OptionalInt.class) {
            return OptionalInt.empty();
        }
        if (type == int.class || type == long.class) {
            return type == int.class ? (Object) 1 : (Object) 1L;
        }
        return type == boolean.class ? false : null;
    }

    @Test
    void aQuestionKeepsNoListOfWhoeverAsked() {
        List<RuleSet> books = new ArrayList<>(List.of(Visitor.BOOK));
        Question question = Question.about(Visitor.LIST).under(books).ask();
        books.clear();
        assertEquals(List.of(Visitor.BOOK), question.books());
    }
}
