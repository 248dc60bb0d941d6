package org.cantonment.workbench.tests.visitor;

import java.util.ArrayList;
import java.util.List;

import org.cantonment.domain.finding.Finding;
import org.cantonment.domain.finding.Severity;
import org.cantonment.rules.api.FindingKind;
import org.cantonment.rules.api.Parameter;
import org.cantonment.rules.api.Question;
import org.cantonment.rules.api.RuleCheck;

/** Says the same of every list; or throws, hangs or eats memory, if that is what it is to say. */
public final class FordCheck implements RuleCheck {

    private static final FindingKind KIND = new FindingKind("deep", Severity.BREACH, "The ford is too deep.");

    private final String name;
    private final String words;

    /** @param words what it says: a sentence, or {@code throws}, {@code hangs} or {@code eats} */
    public FordCheck(String name, String words) {
        this.name = name;
        this.words = words;
    }

    @Override
    public String name() {
        return name;
    }

    @Override
    public String label() {
        return "Fords of the lake";
    }

    @Override
    public String about() {
        return "Looks whether the fords can be crossed.";
    }

    @Override
    public List<Parameter> parameters() {
        return List.of(Parameter.count("Depth", "Depth", "In hands.").within(1, 20).presetTo(3));
    }

    @Override
    public List<FindingKind> findings() {
        return List.of(KIND);
    }

    @Override
    public List<Finding> check(Question question) {
        switch (words) {
            case "throws":
                throw new IllegalStateException("no ford");
            case "hangs":
                long turns = 0;
                while (question.list() != null) {
                    turns++;
                }
                return List.of();
            case "eats":
                List<byte[]> eaten = new ArrayList<>();
                while (question.list() != null) {
                    eaten.add(new byte[1 << 16]);
                }
                return List.of();
            default:
                return List.of(KIND.at(question.list().id(), words));
        }
    }
}
