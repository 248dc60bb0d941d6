package org.cantonment.notation.reading;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

import org.cantonment.domain.finding.Severity;
import org.cantonment.model.book.Line;
import org.cantonment.model.range.Box;
import org.cantonment.model.range.Builds;
import org.cantonment.model.range.Content;
import org.cantonment.model.range.Contents;
import org.cantonment.model.range.Family;
import org.cantonment.model.range.Part;
import org.cantonment.model.range.Printing;
import org.cantonment.model.range.RangePackage;
import org.cantonment.notation.form.Codes;
import org.eclipse.emf.ecore.EObject;

/** Families inside themselves, and boxes and parts that hold themselves, through whatever books. */
final class RangeCircles {

    private final Reading reading;
    private final Set<Family> sound = new HashSet<>();

    RangeCircles(Reading reading) {
        this.reading = reading;
    }

    /** @return whether the family lies in itself; if so, a finding is made at what it is said to lie in */
    boolean inItself(Family family) {
        Set<Family> walked = new HashSet<>();
        Family at = family;
        while (at != null && !sound.contains(at) && walked.add(at)) {
            at = at.getFamily();
        }
        if (at == null || sound.contains(at)) {
            sound.addAll(walked);
            return false;
        }
        if (at != family) {
            return false;
        }
        reading.problem(family, RangePackage.Literals.FAMILY__FAMILY, Severity.BREACH, Codes.CIRCLE,
                Under.words("The family", family) + " would lie inside itself.");
        return true;
    }

    /** @return the things without those that hold, at whatever depth, the box or part; a finding is made at each */
    List<Content> outside(EObject holder, List<Content> things) {
        return things.stream().filter(thing -> {
            boolean circle = holds(thing.getWhat(), holder);
            if (circle) {
                reading.problem(thing, RangePackage.Literals.CONTENT__WHAT, Severity.BREACH, Codes.CIRCLE,
                        "This would hold itself.");
            }
            return !circle;
        }).toList();
    }

    private static boolean holds(EObject from, EObject wanted) {
        Set<EObject> seen = new HashSet<>();
        Deque<EObject> open = new ArrayDeque<>();
        push(open, from);
        while (!open.isEmpty()) {
            EObject at = open.pop();
            if (at == wanted) {
                return true;
            }
            if (seen.add(at)) {
                inside(((Line) at).getLines(), open);
            }
        }
        return false;
    }

    private static void inside(List<Line> lines, Deque<EObject> open) {
        for (Line line : lines) {
            if (line instanceof Contents contents) {
                contents.getThings().forEach(thing -> push(open, thing.getWhat()));
            } else if (line instanceof Builds builds) {
                builds.getThings().forEach(thing -> push(open, thing.getWhat()));
                builds.getBits().forEach(thing -> push(open, thing.getWhat()));
            } else if (line instanceof Printing) {
                inside(line.getLines(), open);
            }
        }
    }

    private static void push(Deque<EObject> open, EObject what) {
        if (what instanceof Box || what instanceof Part) {
            open.push(what);
        }
    }
}
