package org.cantonment.desk.tests.outside;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Published tables of another trade as rule books: how many must be there for how many, with steps, ratios and
 * alternatives. Code of Federal Regulations of the United States (public domain), numbers written from memory.
 */
class StaffingTablesTest {
    private final Books books = Books.of("staffing");

    /** Title 14, section 121.391(a): each row is a seating at an edge of the table, and what the section asks for. */
    @ParameterizedTest
    @CsvSource({"10, 1", "50, 1", "51, 2", "100, 2", "101, 3", "150, 3", "151, 4", "200, 4", "201, 5", "250, 5", "500, 10"})
    void flightAttendantsBySeats(int seats, int attendants) {
        books.retype("lists/aeroplane.list", "Aeroplane of 10", "Aeroplane of " + seats);
        least("aeroplane", "1 Attendant", "Attendant", attendants);
    }

    /** Title 29, section 1910.141, table J-1: the first and last of each row, and whole steps of 40 above it. */
    @ParameterizedTest
    @CsvSource({"1, 1", "15, 1", "16, 2", "35, 2", "36, 3", "55, 3", "56, 4", "80, 4", "81, 5", "110, 5", "111, 6",
            "150, 6", "190, 7", "230, 8", "550, 16"})
    void closetsByPeople(int people, int closets) {
        books.retype("lists/works.list", "People of 10", "People of " + people);
        least("works", "1 Closet", "Closet", closets);
    }

    /** Title 45, section 1302.21(b)(2): two teachers for up to eight children, three for nine, and no class of ten. */
    @ParameterizedTest
    @CsvSource({"4, 1, no", "4, 2, yes", "8, 2, yes", "8, 3, yes", "9, 2, no", "9, 3, yes", "10, 3, no", "10, 4, no"})
    void teachersByChildren(int children, int teachers, String allowed) {
        books.retype("lists/class.list", "8 Child", children + " Child");
        books.retype("lists/class.list", "2 Teacher", teachers + " Teacher");
        assertEquals(allowed.equals("yes"), books.said("class").isEmpty(), books.sentences("class").toString());
    }

    @Test
    void theAnswerOpensIntoWhatTheTableCountsWith() {
        books.retype("lists/aeroplane.list", "Aeroplane of 10", "Aeroplane of 151");
        assertEquals(List.of("More than 100 seats (Cabin crew): count of Attendant is 1 and should be at least 4 "
                + "(2 plus More); More is 2 (Above divided by 50 rounded up); Above is 51 (strength of Aeroplane minus "
                + "100); strength of Aeroplane is 151."), books.sentences("aeroplane"));
    }

    @Test
    void theTablesAreSound() {
        assertEquals(List.of(), books.saidOfBooks());
    }

    /** Legal with so many, and not with one less. */
    private void least(String list, String written, String what, int needed) {
        String file = "lists/" + list + ".list";
        books.retype(file, written, needed + " " + what);
        assertEquals(List.of(), books.sentences(list));
        if (needed > 1) {
            books.retype(file, needed + " " + what, needed - 1 + " " + what);
            assertEquals(1, books.sentences(list).size(), books.sentences(list).toString());
        }
    }
}
