package org.cantonment.notation.reading;

import java.util.ArrayList;
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
        List<Content> outside = new ArrayList<>(things.size());
        for (Content thing : things) {
            EObject what = thing.getWhat();
            boolean circle = what == holder
                    || holds(what) && Circles.leadsBack(holder, at -> at == holder ? List.of(what) : inside(at));
            if (circle) {
                reading.problem(thing, RangePackage.Literals.CONTENT__WHAT, Severity.BREACH, Codes.CIRCLE,
                        "This would hold itself.");
            } else {
                outside.add(thing);
            }
        }
        return outside;
    }

    private static boolean holds(EObject what) {
        return what instanceof Box || what instanceof Part;
    }

    private static List<EObject> inside(EObject holder) {
        List<EObject> found = new ArrayList<>();
        inside(((Line) holder).getLines(), found);
        found.removeIf(what -> !holds(what));
        return found;
    }

    private static void inside(List<Line> lines, List<EObject> found) {
        for (Line line : lines) {
            if (line instanceof Contents contents) {
                contents.getThings().forEach(thing -> found.add(thing.getWhat()));
            } else if (line instanceof Builds builds) {
                builds.getThings().forEach(thing -> found.add(thing.getWhat()));
                builds.getBits().forEach(thing -> found.add(thing.getWhat()));
            } else if (line instanceof Printing) {
                inside(line.getLines(), found);
            }
        }
    }
}
