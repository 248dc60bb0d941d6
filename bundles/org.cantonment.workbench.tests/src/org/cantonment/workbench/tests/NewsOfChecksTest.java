package org.cantonment.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.cantonment.rules.guest.Guests;
import org.cantonment.rules.guest.Origin;
import org.cantonment.workbench.guests.News;
import org.cantonment.workbench.tests.visitor.FordCheck;
import org.eclipse.core.runtime.preferences.IEclipsePreferences;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.osgi.service.prefs.BackingStoreException;

/** What is told of checks that come, once each. */
class NewsOfChecksTest {

    private static final Origin ORIGIN = new Origin("org.fen.fords", "1.0.0", Optional.of(Path.of("fords.jar")), 1);
    private static final String FIRST = "From now on the check Fords of plug-in org.fen.fords 1.0.0 (fords.jar) is asked"
            + " wherever a campaign turns it on.";

    private final IEclipsePreferences memory = InstanceScope.INSTANCE.getNode("org.cantonment.workbench.tests.news");
    private final Guests guests = new Guests();
    private final List<String> told = new ArrayList<>();

    private News anotherSession() {
        return new News(guests, memory, told::addAll);
    }

    @AfterEach
    void forget() throws BackingStoreException {
        memory.clear();
        memory.flush();
    }

    @Test
    void aCheckThatWasNotThereBeforeIsToldOnce() {
        News news = anotherSession();
        FordCheck check = new FordCheck("Fords", "Deep.");
        guests.enter(check, ORIGIN);
        news.look();
        news.look();
        anotherSession().look();
        assertEquals(List.of(FIRST), told);
        guests.leave(check);
        news.look();
        guests.enter(check, ORIGIN);
        news.look();
        assertEquals(List.of(FIRST, FIRST), told);
    }

    @Test
    void whatComesOneBehindAnotherAtAStartIsNoNews() {
        FordCheck fords = new FordCheck("Fords", "Deep.");
        FordCheck weirs = new FordCheck("Weirs", "High.");
        News news = anotherSession();
        for (FordCheck check : List.of(fords, weirs)) {
            guests.enter(check, ORIGIN);
            news.look();
        }
        assertEquals(2, told.size());
        guests.leave(fords);
        guests.leave(weirs);
        News next = anotherSession();
        for (FordCheck check : List.of(fords, weirs)) {
            guests.enter(check, ORIGIN);
            next.look();
        }
        assertEquals(2, told.size(), told::toString);
    }

    @Test
    void whatWasNotLetInIsTold() {
        guests.refuse(ORIGIN, "The jar fords.jar in the folder of checks is no plug-in.");
        anotherSession().look();
        anotherSession().look();
        assertEquals(List.of("The jar fords.jar in the folder of checks is no plug-in."), told);
    }
}
