package org.cantonment.workbench.guests;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;

import org.cantonment.rules.guest.Guests;
import org.cantonment.rules.guest.KnownCheck;
import org.cantonment.rules.guest.Origin;
import org.cantonment.rules.guest.Refusal;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.preferences.IEclipsePreferences;
import org.osgi.service.prefs.BackingStoreException;

/**
 * What people are told of checks of others: one that was not here before, one that was not let in, one that was shut out.
 * Each once, also over several sessions; what goes while somebody looks is forgotten, so that it is news when it comes
 * again.
 */
public final class News {

    private static final String TOLD = "checks.told";

    private final Guests guests;
    private final IEclipsePreferences memory;
    private final Consumer<List<String>> tell;
    private final Set<String> seen = new LinkedHashSet<>();

    /** @param tell takes whole sentences; called in the thread in which something came or went */
    public News(Guests guests, IEclipsePreferences memory, Consumer<List<String>> tell) {
        this.guests = guests;
        this.memory = memory;
        this.tell = tell;
    }

    /** Looks what is new, and tells it. */
    public synchronized void look() {
        Set<String> before = new LinkedHashSet<>(Arrays.asList(memory.get(TOLD, "").split("\n")));
        Set<String> now = new LinkedHashSet<>();
        List<String> news = new ArrayList<>();
        for (KnownCheck check : guests.known()) {
            String key = key(check.origin(), check.name());
            if (check.shutOut().isPresent()) {
                note(key + " shut out", "The check " + check.name() + " of " + check.origin().words() + ' '
                        + check.shutOut().get() + ". It is not asked again before the next start.", before, now, news);
            }
            note(key, "From now on the check " + check.name() + " of " + check.origin().words()
                    + " is asked wherever a campaign turns it on.", before, now, news);
        }
        for (Refusal refusal : guests.refusals()) {
            note(key(refusal.origin(), refusal.name()) + " refused", refusal.why(), before, now, news);
        }
        // At a start checks come one after another: what has not come yet is not gone.
        Set<String> kept = new LinkedHashSet<>(before);
        kept.removeAll(seen);
        kept.addAll(now);
        seen.addAll(now);
        seen.retainAll(now);
        if (!kept.equals(before)) {
            remember(kept);
        }
        if (!news.isEmpty()) {
            tell.accept(news);
        }
    }

    private static void note(String key, String sentence, Set<String> before, Set<String> now, List<String> news) {
        now.add(key);
        if (!before.contains(key)) {
            news.add(sentence);
        }
    }

    private static String key(Origin origin, String name) {
        return origin.plugin() + ' ' + origin.version() + ' ' + origin.since() + ' ' + name;
    }

    private void remember(Set<String> now) {
        memory.put(TOLD, String.join("\n", now));
        try {
            memory.flush();
        } catch (BackingStoreException failed) {
            ILog.of(News.class).warn("What was told of checks could not be kept; it will be told again", failed);
        }
    }
}
