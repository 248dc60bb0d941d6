package org.cantonment.notation.names;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

import org.cantonment.model.book.Named;
import org.cantonment.model.campaign.Campaign;
import org.cantonment.model.campaign.CampaignPackage;
import org.cantonment.model.campaign.Clause;
import org.cantonment.model.campaign.Deed;
import org.cantonment.model.campaign.OnClause;
import org.cantonment.model.campaign.Plays;
import org.cantonment.model.campaign.Round;
import org.cantonment.model.campaign.RoundClause;
import org.cantonment.model.campaign.Session;
import org.cantonment.model.force.Contingent;
import org.cantonment.model.force.ForceList;
import org.cantonment.model.force.Taken;
import org.cantonment.model.range.RangePackage;
import org.cantonment.model.ruleset.Change;
import org.cantonment.model.ruleset.Formation;
import org.cantonment.model.ruleset.Limit;
import org.cantonment.model.ruleset.OptionsOn;
import org.cantonment.model.ruleset.RuleSet;
import org.cantonment.model.ruleset.RulesetPackage;
import org.cantonment.model.ruleset.Unit;
import org.cantonment.model.shelf.Holding;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.emf.ecore.util.EcoreUtil;

/** Finds what a name means at a place: the one answer that linking, completion and navigation share. */
public final class Lookup {

    private final NameTable table;

    /** @param table the names of the folder */
    public Lookup(NameTable table) {
        this.table = table;
    }

    /**
     * @param context   the object that holds the reference
     * @param reference the reference
     * @param text      what was written: a name, or a book's name, a slash and a name
     * @return everything that it can mean, best first; more than one only if the text leaves it open
     */
    public List<Entry> find(EObject context, EReference reference, String text) {
        int slash = text.indexOf('/');
        String name = text.substring(slash + 1);
        Resource book = context.eResource();
        if (book != null) {
            table.asks(book, name);
        }
        List<Entry> found = candidates(context, reference, name);
        if (slash > 0) {
            String qualifier = NameTable.fold(text.substring(0, slash));
            found.removeIf(entry -> !NameTable.fold(entry.book()).equals(qualifier));
        }
        return found.size() < 2 ? found : prefer(found, context, book);
    }

    /**
     * @param context   the object that holds the reference, or the one in which it would stand
     * @param reference the reference
     * @return everything that could be named there
     */
    public List<Entry> all(EObject context, EReference reference) {
        EClass type = reference.getEReferenceType();
        if (reference == RulesetPackage.Literals.OPTIONS_ON__OPTION && optionOwner(context).isEmpty()) {
            return table.allOwned(type); // whose option it is is said behind it
        }
        String owner = owner(context, type);
        if (owner != null) {
            List<Entry> found = table.allIn(owner, type);
            if (type == RulesetPackage.Literals.BILLETED) {
                found.addAll(table.all(RulesetPackage.Literals.SUPPORT));
            }
            return found;
        }
        return ownChecks(table.all(type), context);
    }

    /** The checks that somebody else's campaign turns on have no say here. */
    private static List<Entry> ownChecks(List<Entry> entries, EObject context) {
        entries.removeIf(entry -> entry.type() == CampaignPackage.Literals.CHECK_USE
                && entry.getEObjectOrProxy().eResource() != context.eResource());
        return entries;
    }

    private List<Entry> candidates(EObject context, EReference reference, String name) {
        EClass type = reference.getEReferenceType();
        String owner = owner(context, type);
        if (owner == null) {
            return ownChecks(new ArrayList<>(table.find(name, type)), context);
        }
        List<Entry> found = new ArrayList<>(table.findIn(owner, name, type));
        if (found.isEmpty() && type == RulesetPackage.Literals.BILLETED) {
            found.addAll(table.find(name, RulesetPackage.Literals.SUPPORT));
        }
        // A layer and an era may each say more of an option or a billet: all lines of that name are the one thing.
        return found.isEmpty() ? found : new ArrayList<>(found.subList(0, 1));
    }

    /** @return whose name it is; null for things known by their bare name; empty if the owner cannot be told */
    private static String owner(EObject context, EClass type) {
        if (type == RulesetPackage.Literals.OPTION) {
            return optionOwner(context);
        }
        if (type == RulesetPackage.Literals.LET) {
            return cardOwner(context);
        }
        if (type == RulesetPackage.Literals.BILLETED) {
            return context.eContainer() instanceof org.cantonment.model.force.Entry parent
                    && parent.getWhat() instanceof Formation formation ? nonNull(formation.getName()) : "";
        }
        if (type == RangePackage.Literals.PRINTING) {
            Holding holding = up(context, Holding.class);
            return holding != null && holding.getWhat() instanceof org.cantonment.model.range.Box box
                    ? nonNull(box.getName()) : "";
        }
        return null;
    }

    /** A card's own names: those of a layer's change are those of what it changes. */
    private static String cardOwner(EObject context) {
        for (EObject at = context; at != null; at = at.eContainer()) {
            if (at instanceof Change change) {
                return BookNames.textOf(change, RulesetPackage.Literals.CHANGE__TARGET);
            }
            if (at instanceof Unit || at instanceof Formation || at instanceof Limit) {
                return nonNull(((Named) at).getName());
            }
        }
        return "";
    }

    private static String optionOwner(EObject context) {
        if (context instanceof OptionsOn some) {
            return BookNames.textOf(some, RulesetPackage.Literals.OPTIONS_ON__OF);
        }
        EObject at = context instanceof Taken ? context.eContainer() : context;
        if (at instanceof org.cantonment.model.force.Entry entry) {
            return entry.getWhat() instanceof Unit unit ? nonNull(unit.getName()) : "";
        }
        Unit unit = up(context, Unit.class);
        if (unit != null) {
            return nonNull(unit.getName());
        }
        Change change = up(context, Change.class);
        return change == null ? "" : BookNames.textOf(change, RulesetPackage.Literals.CHANGE__TARGET);
    }

    private static String nonNull(String name) {
        return name == null ? "" : name;
    }

    /** One's own book first; then, in a list or a campaign, the books that are played. */
    private List<Entry> prefer(List<Entry> found, EObject context, Resource book) {
        List<Entry> own = new ArrayList<>(found);
        own.removeIf(entry -> entry.getEObjectOrProxy().eResource() != book);
        if (found.get(0).getEObjectOrProxy() instanceof Session) {
            return List.of(evening(found, context));
        }
        if (!own.isEmpty()) {
            return own.subList(0, 1);
        }
        if (found.get(0).getEObjectOrProxy() instanceof RuleSet) {
            return found; // which books are played is what is being asked: asking it here would go round in a circle
        }
        Set<String> played = new HashSet<>();
        EObject root = EcoreUtil.getRootContainer(context);
        if (root instanceof ForceList list) {
            list.getRules().forEach(rules -> open(rules, played));
            Contingent contingent = up(context, Contingent.class);
            if (contingent != null) {
                contingent.getRules().forEach(rules -> open(rules, played));
            }
        } else if (root instanceof RuleSet rules) {
            open(rules, played);
        }
        if (played.isEmpty()) {
            openCampaigns(played);
        }
        List<Entry> inPlay = new ArrayList<>(found);
        inPlay.removeIf(entry -> !played.contains(NameTable.fold(entry.book())));
        return inPlay.isEmpty() ? found : inPlay;
    }

    /** Rounds may call their evenings alike: that of the round at hand, of the round said, or of the day said. */
    private static Entry evening(List<Entry> found, EObject context) {
        Round round = up(context, Round.class);
        Deed deed = up(context, Deed.class);
        for (Entry entry : found) {
            Session session = (Session) entry.getEObjectOrProxy();
            if (session.eContainer() == round || deed != null && said(deed, session)) {
                return entry;
            }
        }
        return found.get(0);
    }

    private static boolean said(Deed deed, Session session) {
        for (Clause clause : deed.getClauses()) {
            if (clause instanceof RoundClause in && in.getRound() != null && session.eContainer() instanceof Round round
                    && in.getRound().equals(round.getNumber())
                    || clause instanceof OnClause on && on.getDate() != null && on.getDate().equals(session.getDate())) {
                return true;
            }
        }
        return false;
    }

    private void openCampaigns(Set<String> played) {
        for (Entry entry : table.all(CampaignPackage.Literals.CAMPAIGN)) {
            ((Campaign) entry.getEObjectOrProxy()).getLines().stream().filter(Plays.class::isInstance)
                    .forEach(line -> ((Plays) line).getRules().forEach(rules -> open(rules, played)));
        }
    }

    private static void open(RuleSet rules, Set<String> played) {
        if (rules.getName() != null && played.add(NameTable.fold(rules.getName()))) {
            rules.getBases().forEach(base -> open(base, played));
        }
    }

    private static <T> T up(EObject from, Class<T> type) {
        for (EObject at = from; at != null; at = at.eContainer()) {
            if (type.isInstance(at)) {
                return type.cast(at);
            }
        }
        return null;
    }
}
