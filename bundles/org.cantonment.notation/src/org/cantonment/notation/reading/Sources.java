package org.cantonment.notation.reading;

import java.util.List;
import java.util.Optional;

import org.cantonment.domain.shelf.Source;
import org.cantonment.model.campaign.CampaignPackage;
import org.cantonment.model.range.RangePackage;
import org.cantonment.notation.names.Entry;
import org.cantonment.notation.names.NameTable;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.resource.Resource;

/** Where things came from: somebody or something that the books know, or whatever was written. */
final class Sources {

    private static final List<EClass> KINDS = List.of(RangePackage.Literals.SELLER, RangePackage.Literals.LOT,
            CampaignPackage.Literals.PLAYER, CampaignPackage.Literals.CLUB);

    private Sources() {
    }

    /**
     * @param at   where it is written
     * @param text what was written in quotes; null if nothing was
     * @param name the name that was written; null if none was
     * @return the source; empty if neither was written
     */
    static Optional<Source> read(EObject at, String text, String name) {
        if (name == null) {
            return Optional.ofNullable(text).map(said -> new Source(Optional.empty(), said));
        }
        return Optional.of(new Source(named(at, name).flatMap(Reading::ref), name));
    }

    /** @return what the name means: a seller, lot, player or club; one's own book comes first */
    static Optional<EObject> named(EObject at, String written) {
        Resource book = at.eResource();
        if (written == null || book == null || book.getResourceSet() == null) {
            return Optional.empty();
        }
        NameTable table = NameTable.of(book.getResourceSet());
        String name = written.substring(written.indexOf('/') + 1);
        String owner = written.substring(0, Math.max(0, written.indexOf('/')));
        table.asks(book, name);
        EObject found = null;
        for (EClass kind : KINDS) {
            for (Entry entry : table.find(name, kind)) {
                EObject object = entry.getEObjectOrProxy();
                boolean fits = owner.isEmpty() || owner.equalsIgnoreCase(entry.book());
                if (fits && (found == null || object.eResource() == book && found.eResource() != book)) {
                    found = object;
                }
            }
        }
        return Optional.ofNullable(found);
    }
}
