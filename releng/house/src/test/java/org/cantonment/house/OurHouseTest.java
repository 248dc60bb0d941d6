package org.cantonment.house;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Path;

import org.junit.jupiter.api.Test;

/** This project by its own rules. */
class OurHouseTest {

    @Test
    void isInOrder() throws IOException {
        Path root = Path.of(System.getProperty("cantonment.root", "../..")).toAbsolutePath().normalize();
        assertEquals("", String.join("\n", House.inspect(root)));
    }
}
