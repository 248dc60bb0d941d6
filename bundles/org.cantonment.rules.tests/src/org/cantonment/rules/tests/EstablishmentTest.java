package org.cantonment.rules.tests;

import static org.cantonment.rules.tests.Court.breaches;
import static org.cantonment.rules.tests.Line.available;
import static org.cantonment.rules.tests.Line.billet;
import static org.cantonment.rules.tests.Line.needs;
import static org.cantonment.rules.tests.Line.strength;
import static org.cantonment.rules.tests.ListOf.formation;
import static org.cantonment.rules.tests.ListOf.one;
import static org.cantonment.rules.tests.ListOf.some;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Span;
import org.cantonment.domain.finding.Finding;
import org.cantonment.domain.force.ForceList;
import org.cantonment.domain.force.Requirement;
import org.cantonment.rules.Requirements;
import org.cantonment.rules.Verdict;
import org.cantonment.rules.view.Ruling;
import org.junit.jupiter.api.Test;

/**
 * Establishments that were published: the imperial decrees of 18 February 1808 (title I, articles 1 to 4) and of
 * 13 April 1815 on the French line infantry, and United States Army Ground Forces Study No. 8, chapters 11 and 12. All
 * are in the public domain. A point stands for a man, so that the tally must come to the published total.
 */
class EstablishmentTest {

    private static final String[] COMPANIES = {"Grenadiers", "Voltigeurs", "Fusiliers", "Depot-Company"};

    private final BookOf french = french();

    private static BookOf french() {
        BookOf book = new BookOf("Line").eras("Of-1808", "Of-1815")
                .unit("Officers", strength(3, 3), needs(true, 1, "Officer"))
                .unit("Sergeant-Major", strength(1, 1), needs(true, 1, "Man"))
                .unit("Sergeants", strength(4, 4), needs(true, 1, "Man"))
                .unit("Fourrier", strength(1, 1), needs(true, 1, "Man"))
                .unit("Corporals", strength(8, 8), needs(true, 1, "Man"))
                .unit("Men", strength(121, 121), needs(true, 1, "Man"))
                .unit("Drummers", strength(2, 2), needs(true, 1, "Man"))
                .unit("Staff", strength(50, 50), strength(25, 25).from("Of-1815"),
                        Line.withoutStrength(50).from("Of-1815"))
                .unit("Minor-Staff", strength(29, 29), available().from("Of-1815"))
                .unit("Battalion-Of-600", strength(600, 600), available().from("Of-1815"));
        for (String company : COMPANIES) {
            book.formation(company, billet("Officers", Span.exactly(1), "Officers"),
                    billet("Sergeant-Major", Span.exactly(1), "Sergeant-Major"),
                    billet("Sergeants", Span.exactly(1), "Sergeants"), billet("Fourrier", Span.exactly(1), "Fourrier"),
                    billet("Corporals", Span.exactly(1), "Corporals"), billet("Ranks", Span.exactly(1), "Men"),
                    billet("Drummers", Span.exactly(1), "Drummers"));
        }
        book.formation("War-Battalion", billet("Right", Span.exactly(1), "Grenadiers"),
                billet("Left", Span.exactly(1), "Voltigeurs"), billet("Centre", Span.exactly(4), "Fusiliers"));
        book.formation("Depot-Battalion", billet("Companies", Span.exactly(4), "Depot-Company"));
        return book.formation("Regiment", billet("Staff", Span.exactly(1), "Staff"),
                billet("Minor-Staff", Span.exactly(1), "Minor-Staff").from("Of-1815"),
                billet("War", Span.exactly(4), "War-Battalion"),
                billet("War", Span.of(2, 5), "Battalion-Of-600").from("Of-1815"),
                billet("Depot", Span.exactly(1), "Depot-Battalion"), Line.without("Depot").from("Of-1815"));
    }

    private static ListOf.Row company(int count, String name) {
        ListOf.Row[] ranks = {one("Officers"), one("Sergeant-Major"), one("Sergeants"), one("Fourrier"),
                one("Corporals"), one("Men"), one("Drummers")};
        return ListOf.formation(count, name, ranks);
    }

    private static ListOf.Row battalion(int fusiliers) {
        return formation("War-Battalion", company(1, "Grenadiers"), company(1, "Voltigeurs"),
                company(fusiliers, "Fusiliers"));
    }

    private static ListOf regiment(int fusiliersOfTheLast, ListOf.Row... more) {
        List<ListOf.Row> rows = new ArrayList<>(List.of(one("Staff"), battalion(4), battalion(4), battalion(4),
                battalion(fusiliersOfTheLast), formation("Depot-Battalion", company(4, "Depot-Company"))));
        rows.addAll(List.of(more));
        return new ListOf("Decree", "Line").add(formation("Regiment", rows.toArray(ListOf.Row[]::new)));
    }

    private Ruling of(String era) {
        return Court.ruling(Court.in("Line/" + era), french);
    }

    @Test
    void theRegimentOf1808Is3970Men() {
        Verdict verdict = Court.judge(of("Of-1808"), regiment(4));
        assertEquals(List.of(), verdict.findings());
        assertEquals(3970, verdict.points());
        assertEquals(28 * 140 + 50, verdict.points());
    }

    @Test
    void itsCompaniesHave84OfTheOfficers() {
        ForceList list = regiment(4).build();
        long officers = 0;
        long others = 0;
        for (Requirement need : Requirements.of(of("Of-1808"), list, Map.of())) {
            if (need.anyOf().equals(List.of(Id.of("Line/Officer")))) {
                officers += need.count();
            } else {
                others += need.count();
            }
        }
        // The decree's 108 officers and 3,862 others less a staff of 50, of whom 24 are officers.
        assertEquals(108 - 24, officers);
        assertEquals(3862 - 26, others);
    }

    @Test
    void oneCompanyTooManyIsNamedAtItsBillet() {
        Verdict verdict = Court.judge(of("Of-1808"), regiment(5));
        assertEquals(List.of("billet.full"), breaches(verdict));
        Finding finding = verdict.findings().get(0);
        assertEquals(Id.of("Line/War-Battalion#3"), finding.rule().orElseThrow());
        assertEquals("No place for 1 of 5 Fusiliers in War-Battalion: billet Centre takes 4 of Fusiliers and is full.",
                finding.message());
    }

    @Test
    void oneCompanyTooFewIsNamedAtItsBillet() {
        Verdict verdict = Court.judge(of("Of-1808"), regiment(3));
        assertEquals(List.of("billet.short"), breaches(verdict));
        Finding finding = verdict.findings().get(0);
        assertEquals(Id.of("Line/War-Battalion#3"), finding.rule().orElseThrow());
        assertEquals("War-Battalion: billet Centre takes 4 of Fusiliers and has 3; 1 more must be placed.",
                finding.message());
        assertEquals("Add Fusiliers, 140 points.", finding.mends().get(0).label());
    }

    @Test
    void aCompanyOfTheWrongKindIsNamedWithTheBilletsThatWouldTakeIt() {
        ListOf list = new ListOf("Decree", "Line").add(formation("Depot-Battalion", company(4, "Depot-Company"),
                company(1, "Voltigeurs")));
        Verdict verdict = Court.judge(of("Of-1808"), list);
        assertEquals(List.of("billet.wrong-kind"), breaches(verdict));
        assertEquals("No billet of Depot-Battalion takes Voltigeurs; places for that: billet Left of War-Battalion.",
                verdict.findings().get(0).message());
    }

    @Test
    void theRegimentOf1815HasItsOwnEstablishment() {
        ListOf list = new ListOf("Decree", "Line").add(formation("Regiment", one("Staff"), one("Minor-Staff"),
                some(2, "Battalion-Of-600")));
        Verdict verdict = Court.judge(of("Of-1815"), list);
        assertEquals(List.of(), verdict.findings());
        assertEquals(25 + 29 + 2 * 600, verdict.points());
        assertTrue(breaches(Court.judge(of("Of-1808"), list)).contains("era.not-yet"));
        Verdict old = Court.judge(of("Of-1815"), regiment(4));
        assertTrue(breaches(old).contains("billet.wrong-kind"));
        assertTrue(breaches(old).contains("billet.empty"));
    }

    @Test
    void theCutRifleCompanySaves162MenForEachDivision() {
        BookOf army = new BookOf("Ground-Forces").eras("Before", "After").unit("Rifle-Company", strength(198, 198),
                strength(192, 192).from("After"), Line.withoutStrength(198).from("After"))
                .formation("Division-Rifles", billet("Companies", Span.exactly(27), "Rifle-Company"));
        ListOf list = new ListOf("Study", "Ground-Forces").add(formation("Division-Rifles",
                some(27, "Rifle-Company")));
        Verdict before = Court.judge(Court.ruling(Court.in("Ground-Forces/Before"), army), list);
        Verdict after = Court.judge(Court.ruling(Court.in("Ground-Forces/After"), army), list);
        assertEquals(List.of(), before.findings());
        assertEquals(List.of(), after.findings());
        assertEquals(5184, after.points());
        assertEquals(162, before.points() - after.points());
        ListOf more = new ListOf("Study", "Ground-Forces").add(formation("Division-Rifles",
                some(28, "Rifle-Company")));
        assertEquals(List.of("billet.full"), breaches(Court.judge(Court.ruling(Court.in("Ground-Forces/After"), army),
                more)));
    }
}
