package org.cantonment.notation.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.range.Cap;
import org.cantonment.domain.range.Certainty;
import org.cantonment.domain.range.Content;
import org.cantonment.domain.shelf.Held;
import org.cantonment.domain.shelf.State;
import org.eclipse.emf.ecore.EObject;

/** So many of this and that: contents of boxes, and things in people's hands. Names that mean nothing are left out. */
final class Things {

    private Things() {
    }

    static Optional<Content> content(org.cantonment.model.range.Content content) {
        return content == null ? Optional.empty() : Reading.ref(content.getWhat()).map(what -> new Content(
                Words.of(Certainty.class, content.getCertainty()).orElse(Certainty.KNOWN),
                Reading.number(content.getCount(), 1), what));
    }

    static List<Content> contents(List<org.cantonment.model.range.Content> things) {
        List<Content> read = new ArrayList<>(things.size());
        things.forEach(thing -> content(thing).ifPresent(read::add));
        return read;
    }

    static Optional<Held> held(org.cantonment.model.shelf.Held held) {
        return held == null ? Optional.empty() : Reading.ref(held.getWhat()).map(what -> new Held(
                Reading.number(held.getCount(), 1), what, Words.of(State.class, held.getState())));
    }

    static List<Held> held(List<org.cantonment.model.shelf.Held> things) {
        List<Held> read = new ArrayList<>(things.size());
        things.forEach(thing -> held(thing).ifPresent(read::add));
        return read;
    }

    static Optional<Cap> cap(org.cantonment.model.range.Cap cap, Id id) {
        List<Id> of = Reading.refs(cap.getWhat());
        return of.isEmpty() || cap.getCount() == null ? Optional.empty() : Optional.of(new Cap(id, cap.getCount(), of));
    }

    /** @return whether names were written of which none means anything; to leave them out would say something else */
    static boolean lost(List<? extends EObject> targets) {
        return !targets.isEmpty() && Reading.refs(targets).isEmpty();
    }

    /** @return whether a name was written that means nothing */
    static boolean lost(EObject target) {
        return target != null && Reading.ref(target).isEmpty();
    }
}
