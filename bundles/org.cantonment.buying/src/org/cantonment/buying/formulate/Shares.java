package org.cantonment.buying.formulate;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

import org.cantonment.buying.market.Ware;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.range.Fixing;
import org.cantonment.stock.likeness.Conversion;
import org.cantonment.stock.supply.BoxCap;
import org.cantonment.stock.supply.Frames;
import org.cantonment.stock.supply.Stack;
import org.cantonment.stock.supply.Supply;
import org.cantonment.stock.supply.Way;

/**
 * An order of several people, who do not share their shelves. A piece of one is another type than the same piece of another,
 * and whatever is bought is a part that is built as the piece of one of them: who gets it. With one person nothing changes.
 */
public final class Shares {

    /** No name has a blank in it. */
    private static final String OF = " of ";

    private final int people;

    /** Shares among so many. */
    public Shares(int people) {
        this.people = people;
    }

    /** The type as it belongs to a person. */
    public Id of(Id type, int person) {
        return people == 1 ? type : Id.of(type.text() + OF + person);
    }

    /** What of these counts belongs to a person, by plain types. */
    public Map<Id, Integer> plain(Map<Id, Integer> counts, int person) {
        Map<Id, Integer> own = new TreeMap<>();
        counts.forEach((type, count) -> {
            if (person(type) == person) {
                own.put(plain(type), count);
            }
        });
        return own;
    }

    /** Whose it is; the first person's if it is not told apart. */
    public int person(Id type) {
        int at = type.text().lastIndexOf(OF);
        return people == 1 || at < 0 ? 0 : Integer.parseInt(type.text().substring(at + OF.length()));
    }

    /** The type, whosever it is. */
    public Id plain(Id type) {
        int at = type.text().lastIndexOf(OF);
        return people == 1 || at < 0 ? type : Id.of(type.text().substring(0, at));
    }

    /** What a ware brings, for whoever it is for. */
    public Supply load(Ware ware) {
        return people == 1 ? ware.load() : anybodys(ware.load());
    }

    Set<Id> of(Set<Id> types, int person) {
        Set<Id> own = new TreeSet<>();
        types.forEach(type -> own.add(of(type, person)));
        return own;
    }

    Conversion of(Conversion turn, int person) {
        if (people == 1) {
            return turn;
        }
        return new Conversion(of(turn.line(), person), of(turn.from(), person), of(turn.to(), person), turn.gives(), turn.times());
    }

    /** All shelves as one supply. */
    public Supply shelves(List<Supply> shelves) {
        Supply all = Supply.NONE;
        for (int person = 0; person < people; person++) {
            all = people == 1 ? shelves.get(0) : all.plus(owned(shelves.get(person), person));
        }
        return all;
    }

    private Supply owned(Supply shelf, int person) {
        List<Stack> stacks = shelf.stacks().stream()
                .map(one -> new Stack(of(one.what(), person), one.known(), one.guessed(), one.unknown())).toList();
        List<Frames> frames = shelf.frames().stream().map(one -> new Frames(one.part(), one.count(), one.guessed(),
                one.ways().stream().map(way -> of(way, person)).toList(), one.built(), one.fixing())).toList();
        List<BoxCap> caps = shelf.caps().stream()
                .map(one -> new BoxCap(one.cap(), one.most(), of(one.of(), person), one.frames())).toList();
        return new Supply(stacks, frames, caps, shelf.findings());
    }

    private Way of(Way way, int person) {
        return new Way(of(way.build(), person), of(way.gives(), person), of(way.leaves(), person));
    }

    private Map<Id, Integer> of(Map<Id, Integer> counts, int person) {
        Map<Id, Integer> own = new TreeMap<>();
        counts.forEach((type, count) -> own.put(of(type, person), count));
        return own;
    }

    List<Ware> wares(List<Ware> wares) {
        return people == 1 ? wares : wares.stream().map(ware -> new Ware(ware.line(), ware.box(), ware.boxes(), ware.title(),
                ware.code(), ware.seller(), ware.price(), ware.cost(), ware.most(), load(ware), ware.pieces()))
                .toList();
    }

    private Supply anybodys(Supply load) {
        List<Frames> frames = new ArrayList<>();
        for (Frames one : load.frames()) {
            List<Way> ways = new ArrayList<>();
            for (int person = 0; person < people; person++) {
                for (Way way : one.ways()) {
                    ways.add(of(way, person));
                }
            }
            frames.add(new Frames(one.part(), one.count(), one.guessed(), ways, -1, Fixing.GLUED));
        }
        for (Stack stack : load.stacks()) {
            if (stack.counted() > 0) {
                List<Way> ways = new ArrayList<>();
                for (int person = 0; person < people; person++) {
                    ways.add(new Way(of(stack.what(), person), Map.of(of(stack.what(), person), 1)));
                }
                frames.add(new Frames(stack.what(), stack.counted(), stack.known() == 0, ways, -1, Fixing.GLUED));
            }
        }
        List<BoxCap> caps = load.caps().stream().map(one -> {
            Set<Id> all = new TreeSet<>();
            for (int person = 0; person < people; person++) {
                all.addAll(of(one.of(), person));
            }
            return new BoxCap(one.cap(), one.most(), all, one.frames());
        }).toList();
        return new Supply(List.of(), frames, caps, load.findings());
    }
}
