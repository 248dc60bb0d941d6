package org.cantonment.notation.names;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.xtext.naming.QualifiedName;
import org.eclipse.xtext.resource.EObjectDescription;

/** One name of one book. */
public final class Entry extends EObjectDescription {

    private final String name;
    private final String owner;
    private final String book;

    /**
     * @param name   the bare name
     * @param owner  whose option, billet or printing it is; empty for what is known by its bare name
     * @param book   the name of the book; empty if it has none
     * @param object the thing itself
     */
    public Entry(String name, String owner, String book, EObject object) {
        super(QualifiedName.create(name), object, null);
        this.name = name;
        this.owner = owner;
        this.book = book;
    }

    /** @return the bare name */
    public String name() {
        return name;
    }

    /** @return the name of the unit, formation or box it belongs to, or an empty text */
    public String owner() {
        return owner;
    }

    /** @return the name of the book it stands in, or an empty text */
    public String book() {
        return book;
    }

    /** @return what kind of thing it is */
    public EClass type() {
        return getEClass();
    }
}
