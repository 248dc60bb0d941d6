package org.cantonment.rules.tests;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;

import org.cantonment.domain.campaign.Campaign;
import org.cantonment.domain.campaign.CheckUse;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Occasion;
import org.cantonment.domain.common.Setting;
import org.cantonment.domain.common.Validity;
import org.cantonment.domain.finding.Finding;
import org.cantonment.domain.finding.Severity;
import org.cantonment.domain.force.ForceList;
import org.cantonment.domain.rules.RuleSet;
import org.cantonment.rules.Judge;
import org.cantonment.rules.api.FindingKind;
import org.cantonment.rules.api.Parameter;
import org.cantonment.rules.api.Question;
import org.cantonment.rules.api.RuleCheck;
import org.cantonment.rules.compile.RulingCompiler;
import org.cantonment.rules.guest.Circumstances;
import org.cantonment.rules.guest.Guests;
import org.cantonment.rules.guest.Origin;
import org.cantonment.rules.view.Ruling;
import org.cantonment.rules.view.Situation;

/** A check of others that answers as it is told to. */
record Visitor(String name, Function<Question, List<Finding>> answer) implements RuleCheck {

    static final FindingKind TOO_FEW = new FindingKind("too-few", Severity.BREACH, "There are too few banks.");
    static final FindingKind BY_THE_WAY = new FindingKind("by-the-way", Severity.NOTE, "Something about banks.");
    static final RuleSet BOOK = new BookOf("Lake").unit("Barge", Line.strength(1, 12)).build();
    static final ForceList LIST = new ListOf("Anna/4", "Lake").add(ListOf.some(3, "Barge")).build();
    static final Campaign SEASON = new Campaign(Id.of("Season"), "", Optional.empty(), List.of(), List.of(), List.of(),
            List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(),
            List.of(), List.of(), List.of(), List.of(), List.of(), List.of());

    @Override
    public String label() {
        return "Crossing the river";
    }

    @Override
    public String about() {
        return "Counts banks.";
    }

    @Override
    public List<Parameter> parameters() {
        return List.of(Parameter.count("Banks", "Banks", "How many banks there are.").within(1, 20).presetTo(2),
                Parameter.yesNo("Strict", "Strict", "Or not.").presetTo(false));
    }

    @Override
    public List<FindingKind> findings() {
        return List.of(TOO_FEW, BY_THE_WAY);
    }

    @Override
    public List<Finding> check(Question question) {
        return answer.apply(question);
    }

    static Origin from(String plugin) {
        return Origin.installed(plugin, "1.0.0", 1);
    }

    static CheckUse use(String name, Setting... settings) {
        return new CheckUse(Id.of("Season#9"), name, Optional.empty(), List.of(settings), Validity.ALWAYS);
    }

    static Circumstances about(ForceList list, CancelToken cancel) {
        Ruling ruling = RulingCompiler.compile(List.of(BOOK), Occasion.UNKNOWN);
        return new Circumstances(SEASON, list, List.of(BOOK), ruling, Situation.BARE,
                Judge.judge(ruling, list, Situation.BARE), List.of(), List.of(), cancel);
    }

    /** What the checks of some lines say of the list. */
    static List<Finding> ask(Guests guests, CheckUse... uses) {
        return guests.ask(List.of(uses), about(LIST, CancelToken.NEVER)).stream()
                .flatMap(said -> said.findings().stream()).toList();
    }
}
