package lake.club.checks;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

import org.cantonment.domain.finding.Finding;
import org.cantonment.domain.finding.Mend;
import org.cantonment.domain.finding.RemoveEntry;
import org.cantonment.domain.finding.SetCount;
import org.cantonment.domain.finding.Severity;
import org.cantonment.domain.force.Entry;
import org.cantonment.rules.api.FindingKind;
import org.cantonment.rules.api.Parameter;
import org.cantonment.rules.api.Question;
import org.cantonment.rules.api.RuleCheck;
import org.osgi.service.component.annotations.Component;

/** No entry of a list may weigh more than its part of the points. */
@Component
public final class FerryLoad implements RuleCheck {

    /** The one setting: how many percent of the list's points an entry may take. */
    static final String SHARE = "Share";

    private static final FindingKind TOO_HEAVY = new FindingKind("too-heavy", Severity.BREACH,
            "An entry takes more of the list's points than it may. Take fewer of it, or something lighter.");
    private static final FindingKind NOT_WEIGHED = new FindingKind("not-weighed", Severity.NOTE,
            "The list costs no points, so nothing in it can be weighed. Write the points into the rules.");

    @Override
    public String name() {
        return "Ferry-Load";
    }

    @Override
    public String label() {
        return "Ferry load";
    }

    @Override
    public String about() {
        return "No entry of a list may weigh more than its part of the points.";
    }

    @Override
    public List<Parameter> parameters() {
        return List.of(Parameter.percent(SHARE, "Share", "The most that one entry may take of the list's points, in percent.")
                .within(1, 100).presetTo(40));
    }

    @Override
    public List<FindingKind> findings() {
        return List.of(TOO_HEAVY, NOT_WEIGHED);
    }

    @Override
    public List<Finding> check(Question question) {
        if (question.used() == 0) {
            return List.of(NOT_WEIGHED.at(question.list().id(), "The list costs no points, so nothing was weighed."));
        }
        BigDecimal percent = question.number(SHARE);
        List<Finding> found = new ArrayList<>();
        for (Entry entry : question.entries().keySet()) {
            question.cancel().check();
            long points = question.points(entry.id());
            if (tooHeavy(points, question.used(), percent)) {
                found.add(TOO_HEAVY.at(entry.id(), entry.what().name() + " takes " + points + " of the list's "
                        + question.used() + " points; at most " + percent.toPlainString() + " percent may be in one entry.",
                        mend(entry, points, question.used(), percent)));
            }
        }
        return found;
    }

    /** Whether points are more than so many percent of a whole; exactly so many are allowed. */
    static boolean tooHeavy(long points, long whole, BigDecimal percent) {
        return BigDecimal.valueOf(points).movePointRight(2).compareTo(percent.multiply(BigDecimal.valueOf(whole))) > 0;
    }

    /** As many copies as are light enough; the list gets lighter with each one that goes. If none is, the entry goes. */
    private static Mend mend(Entry entry, long points, long used, BigDecimal percent) {
        long each = points / entry.count();
        for (int count = entry.count() - 1; count >= 1; count--) {
            if (!tooHeavy(count * each, used - (entry.count() - count) * each, percent)) {
                return new Mend("Take only " + count + " of " + entry.what().name(),
                        List.of(new SetCount(entry.id(), count)));
            }
        }
        return new Mend("Leave " + entry.what().name() + " ashore", List.of(new RemoveEntry(entry.id())));
    }
}
