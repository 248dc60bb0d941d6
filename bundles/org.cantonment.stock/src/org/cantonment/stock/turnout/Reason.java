package org.cantonment.stock.turnout;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.force.Requirement;

/** Why pieces are short, so that a person can check it. What all reasons of a turnout lack is what it lacks. */
public sealed interface Reason {

    /** The needs it is about. */
    List<Requirement> needs();

    /** How many pieces are short by it. */
    int lacking();

    /** What something counts as. */
    enum Kind {
        /** Pieces ready to hand. */
        PIECES,
        /** Parts that are or can be built as what is needed; the pieces are the most they can give. */
        FRAMES,
        /** Parts under a cap of their box; the pieces are what it leaves. */
        CAPPED,
        /** A conversion; the pieces are the most it can give. */
        CONVERSION,
        /** A share of stand-ins; the pieces are what it allows. */
        SHARE
    }

    /**
     * Something that may fill the needs of a block.
     *
     * @param what the piece type, part, cap, conversion or line of likeness
     * @param pieces how many pieces it can be counted on for
     * @param perhaps how many more there may be, where nobody knows
     * @param frames how many parts, for parts
     */
    record Source(Kind kind, Id what, int pieces, int perhaps, int frames) {
    }

    /**
     * These needs ask for so many pieces together; all that may fill any of them is so much, and that is too little.
     * (A violator of Hall's condition.)
     */
    record Block(List<Requirement> needs, List<Source> from, int needed, int there) implements Reason {

        public Block {
            needs = List.copyOf(needs);
            from = List.copyOf(from);
        }

        @Override
        public int lacking() {
            return needed - there;
        }
    }

    /**
     * Needs that so many pieces must come out of frames for.
     *
     * @param pieces what is not there otherwise
     * @param each the most that one frame can give of it
     * @param frames how many frames that takes at the least
     */
    record Portion(List<Requirement> needs, int pieces, int each, int frames) {

        public Portion {
            needs = List.copyOf(needs);
        }
    }

    /** No frame serves two portions at once, and together they take more frames than there are. */
    record InFrames(Id part, int frames, List<Portion> portions, int lacking) implements Reason {

        public InFrames {
            portions = List.copyOf(portions);
        }

        @Override
        public List<Requirement> needs() {
            return portions.stream().flatMap(portion -> portion.needs().stream()).toList();
        }

        /** How many frames the portions take. */
        public int framesNeeded() {
            return portions.stream().mapToInt(Portion::frames).sum();
        }
    }

    /**
     * One way to give each type one meaning.
     *
     * @param itself for each type whether it stands for itself, else only for others
     * @param blocks what is short then
     */
    record Case(Map<Id, Boolean> itself, List<Block> blocks) {

        public Case {
            itself = Collections.unmodifiableMap(new TreeMap<>(itself));
            blocks = List.copyOf(blocks);
        }

        /** How many pieces are short then, at the least. */
        public int lacking() {
            return blocks.stream().mapToInt(Block::lacking).sum();
        }
    }

    /** A type that stands for itself stands for nothing else that evening; whichever it is, so many are short. */
    record OneMeaning(List<Requirement> needs, List<Case> cases, int lacking) implements Reason {

        public OneMeaning {
            needs = List.copyOf(needs);
            cases = List.copyOf(cases);
        }
    }

    /**
     * Found by trying.
     *
     * @param lacking what the best turnout found lacks
     * @param least what every turnout lacks; as much as is lacking where every way was ruled out
     * @param steps how many ways were looked at
     */
    record Searched(List<Requirement> needs, int lacking, int least, int steps) implements Reason {

        public Searched {
            needs = List.copyOf(needs);
        }

        /** Whether no way is left that could lack less. */
        public boolean proven() {
            return least == lacking;
        }
    }
}
