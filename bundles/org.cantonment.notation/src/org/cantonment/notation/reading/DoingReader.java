package org.cantonment.notation.reading;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;

import org.cantonment.domain.campaign.Claim;
import org.cantonment.domain.campaign.Converted;
import org.cantonment.domain.campaign.CountTaken;
import org.cantonment.domain.campaign.Doing;
import org.cantonment.domain.campaign.Funded;
import org.cantonment.domain.campaign.GaveUp;
import org.cantonment.domain.campaign.HandedIn;
import org.cantonment.domain.campaign.Honoured;
import org.cantonment.domain.campaign.MoveVerb;
import org.cantonment.domain.campaign.Moved;
import org.cantonment.domain.campaign.PassVerb;
import org.cantonment.domain.campaign.Passed;
import org.cantonment.domain.campaign.Plain;
import org.cantonment.domain.campaign.PlainVerb;
import org.cantonment.domain.campaign.Result;
import org.cantonment.domain.campaign.Rolled;
import org.cantonment.domain.campaign.Scored;
import org.cantonment.domain.campaign.TakesRole;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.shelf.Held;
import org.cantonment.model.campaign.Act;
import org.cantonment.model.campaign.Deed;

/** What somebody did; empty wherever a name that it cannot do without means nothing. */
final class DoingReader {

    private final GameReader games;

    DoingReader(Reading reading) {
        games = new GameReader(reading);
    }

    Optional<Doing> read(Deed deed) {
        Act act = deed.getAct();
        if (act instanceof org.cantonment.model.campaign.Plain plain) {
            return Words.of(PlainVerb.class, plain.getVerb()).map(Plain::new);
        }
        if (act instanceof org.cantonment.model.campaign.TakesRole takes) {
            return Reading.ref(takes.getRole()).map(TakesRole::new);
        }
        if (act instanceof org.cantonment.model.campaign.HandedIn) {
            return Optional.of(new HandedIn());
        }
        if (act instanceof org.cantonment.model.campaign.Claim claim) {
            return claim.getOwn() == null || claim.getTheirs() == null ? Optional.empty()
                    : Optional.of(new Claim(new Result(claim.getOwn(), claim.getTheirs())));
        }
        if (act instanceof org.cantonment.model.campaign.Rolled rolled) {
            List<Integer> values = Reading.written(rolled.getValues());
            return values.isEmpty() ? Optional.empty() : Optional.of(new Rolled(values));
        }
        Optional<Doing> game = games.read(deed);
        return game.isPresent() ? game : withThings(act).or(() -> counted(act));
    }

    private static Optional<Doing> withThings(Act act) {
        if (act instanceof org.cantonment.model.campaign.Moved moved) {
            return things(moved.getThings(), held -> Words.of(MoveVerb.class, moved.getVerb())
                    .map(verb -> new Moved(verb, held)));
        }
        if (act instanceof org.cantonment.model.campaign.Passed passed) {
            return things(passed.getThings(), held -> passed(passed, held));
        }
        if (act instanceof org.cantonment.model.campaign.GaveUp gave) {
            return things(gave.getThings(), held -> Optional.of(new GaveUp(held)));
        }
        if (act instanceof org.cantonment.model.campaign.Converted converted) {
            return things(converted.getThings(), held -> Things.held(converted.getInto())
                    .map(into -> new Converted(held, into)));
        }
        return act instanceof org.cantonment.model.campaign.CountTaken taken
                ? things(taken.getThings(), held -> Optional.of(new CountTaken(held))) : Optional.empty();
    }

    private static Optional<Doing> things(List<org.cantonment.model.shelf.Held> things,
            Function<List<Held>, Optional<? extends Doing>> doing) {
        List<Held> held = Things.held(things);
        return held.isEmpty() ? Optional.empty() : doing.apply(held).map(Function.identity());
    }

    private static Optional<Doing> passed(org.cantonment.model.campaign.Passed passed, List<Held> held) {
        Optional<Id> to = Reading.ref(passed.getOther());
        if (to.isEmpty() && !passed.isClub()) {
            return Optional.empty();
        }
        return Words.of(PassVerb.class, passed.getVerb()).map(verb -> new Passed(verb, held, to));
    }

    private static Optional<Doing> counted(Act act) {
        if (act instanceof org.cantonment.model.campaign.Funded funded) {
            return funded.getAmount() == null ? Optional.empty() : Reading.ref(funded.getFund())
                    .map(fund -> new Funded("earned".equals(funded.getVerb()), funded.getAmount(), fund));
        }
        if (act instanceof org.cantonment.model.campaign.Scored scored) {
            return scored.getAmount() == null ? Optional.empty()
                    : Reading.ref(scored.getTally()).map(tally -> new Scored(scored.getAmount(), tally));
        }
        return act instanceof org.cantonment.model.campaign.Honoured honoured
                ? Reading.ref(honoured.getVeteran()).map(veteran -> new Honoured(veteran,
                        Reading.optional(honoured.getExperience()), Optional.ofNullable(honoured.getHonour())))
                : Optional.empty();
    }
}
