package org.cantonment.desk.csv;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;

/** Several texts in one cell, parted by semicolons; a semicolon in a text is written twice. */
final class Cell {
    private Cell() {
    }

    static String of(List<String> texts) {
        return texts.stream().map(text -> text.replace(";", ";;")).collect(Collectors.joining("; "));
    }

    static List<String> parts(String cell) {
        return cell.isEmpty() ? List.of() : Arrays.stream(cell.split("(?<!;);(?!;)")).map(part -> part.replace(";;", ";").strip())
                .filter(part -> !part.isEmpty()).toList();
    }
}
