package org.cantonment.notation.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.finding.Action;
import org.cantonment.domain.finding.AddUnit;
import org.cantonment.domain.finding.Mend;
import org.cantonment.domain.finding.MoveEntry;
import org.cantonment.domain.finding.RemoveEntry;
import org.cantonment.domain.finding.ReplaceUnit;
import org.cantonment.domain.finding.SetCount;
import org.cantonment.domain.finding.SetOption;
import org.cantonment.domain.finding.SetStrength;
import org.cantonment.domain.finding.SetText;
import org.cantonment.domain.finding.Unpin;
import org.cantonment.model.book.Line;
import org.cantonment.model.force.Entry;
import org.cantonment.model.force.ForcePackage;
import org.cantonment.model.force.SupportHere;
import org.cantonment.model.force.Taken;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.xtext.nodemodel.ICompositeNode;
import org.eclipse.xtext.nodemodel.INode;
import org.eclipse.xtext.nodemodel.util.NodeModelUtils;
import org.eclipse.xtext.util.ITextRegion;

/** Turns what an engine would change in a list into changes of its text; whole lines come and go. */
public final class MendWriter {

    private final String text;
    private final LineStarts lines;
    private final Map<Id, EObject> places;

    /**
     * @param text   the list's text
     * @param lines  where its lines begin
     * @param places what its ids stand for
     */
    public MendWriter(String text, LineStarts lines, Map<Id, EObject> places) {
        this.text = text;
        this.lines = lines;
        this.places = places;
    }

    /** @return the mend as changes of the text; without any if one of its changes cannot be written here */
    public TextMend write(Mend mend) {
        List<Written> changes = new ArrayList<>();
        for (MendSteps.Step step : MendSteps.of(mend.actions())) {
            List<TextChange> part = write(step);
            if (part.isEmpty()) {
                return new TextMend(mend.label(), List.of());
            }
            part.forEach(change -> changes.add(new Written(change, rank(step.action()))));
        }
        return new TextMend(mend.label(), Written.together(changes));
    }

    /** What belongs to what lies deeper stands before what is added beside that; supports stand last. */
    private int rank(Action action) {
        if (!(action instanceof AddUnit unit)) {
            return Integer.MIN_VALUE;
        }
        String[] path = unit.parent().text().split("\\+");
        EObject parent = places.get(Id.of(path[0]));
        boolean support = path.length > 1 ? path[1].startsWith("support-") : unit.support();
        boolean headed = support && parent != null && support(parent).isPresent();
        return parent == null ? 0 : support && !headed ? 1 - 2 * depth(parent) : -2 * depth(headed ? support(parent).get() : parent);
    }

    private static Optional<Line> support(EObject parent) {
        return parent.eContents().stream().filter(SupportHere.class::isInstance).map(Line.class::cast).findFirst();
    }

    private List<TextChange> write(MendSteps.Step step) {
        Action action = step.action();
        if (action instanceof RemoveEntry remove) {
            return entry(remove.entry()).map(this::without).orElse(List.of());
        }
        if (action instanceof SetCount count) {
            return entry(count.entry()).map(entry -> count(entry, count.count())).orElse(List.of());
        }
        if (action instanceof SetStrength strength) {
            return entry(strength.entry()).map(entry -> strength(entry, strength.strength())).orElse(List.of());
        }
        if (action instanceof SetOption option) {
            return entry(option.entry()).map(entry -> option(entry, option)).orElse(List.of());
        }
        if (action instanceof ReplaceUnit unit) {
            return entry(unit.entry()).map(entry -> replace(entry, unit, options(step))).orElse(List.of());
        }
        if (action instanceof AddUnit unit) {
            return add(unit, options(step));
        }
        if (action instanceof MoveEntry move) {
            return move.billet().flatMap(billet -> entry(move.entry()).map(entry -> pin(entry, billet)))
                    .orElse(List.of());
        }
        if (action instanceof Unpin unpin) {
            return entry(unpin.entry()).map(this::unpin).orElse(List.of());
        }
        if (action instanceof SetText set) {
            EObject object = places.get(set.place());
            ITextRegion at = object == null ? null : Regions.of(object, null, 0, text);
            return at == null ? List.of() : List.of(new TextChange(at.getOffset(), at.getLength(), set.text()));
        }
        return List.of();
    }

    private Optional<Entry> entry(Id id) {
        return Optional.ofNullable(places.get(id)).filter(Entry.class::isInstance).map(Entry.class::cast);
    }

    /** The entry's line and all that belong to it. */
    private List<TextChange> without(Entry entry) {
        ICompositeNode node = NodeModelUtils.findActualNodeFor(entry);
        int from = lines.startOf(lines.lineOf(node.getOffset()));
        int end = Math.max(node.getOffset(), node.getEndOffset() - 1);
        int to = lines.startOf(lines.lineOf(end) + 1);
        return List.of(new TextChange(from, to - from, ""));
    }

    private List<TextChange> count(Entry entry, int count) {
        if (count == 0) {
            return without(entry);
        }
        Optional<ITextRegion> written = region(entry, ForcePackage.Literals.ENTRY__COUNT);
        if (written.isPresent()) {
            return List.of(change(written.get(), Integer.toString(count)));
        }
        int at = region(entry, ForcePackage.Literals.ENTRY__WHAT).map(ITextRegion::getOffset).orElse(0);
        return List.of(new TextChange(at, 0, count + " "));
    }

    private List<TextChange> strength(Entry entry, int strength) {
        Optional<ITextRegion> written = region(entry, ForcePackage.Literals.ENTRY__STRENGTH);
        if (written.isPresent()) {
            return List.of(change(written.get(), Integer.toString(strength)));
        }
        return List.of(new TextChange(endOfUnit(entry), 0, " of " + strength));
    }

    private int endOfUnit(Entry entry) {
        return region(entry, ForcePackage.Literals.ENTRY__STRENGTH)
                .or(() -> region(entry, ForcePackage.Literals.ENTRY__WHAT))
                .map(at -> at.getOffset() + at.getLength()).orElse(0);
    }

    private List<TextChange> option(Entry entry, SetOption wanted) {
        for (Taken taken : entry.getOptions()) {
            if (taken.getOption() != null && wanted.option().equals(taken.getOption().getName())) {
                ITextRegion at = Regions.of(taken, null, 0, text);
                if (wanted.count() == 0) {
                    int comma = text.lastIndexOf(',', at.getOffset());
                    return List.of(new TextChange(comma, at.getOffset() + at.getLength() - comma, ""));
                }
                return List.of(change(at, amount(wanted.count()) + wanted.option()));
            }
        }
        return wanted.count() == 0 ? List.of() : List.of(new TextChange(endOfOptions(entry), 0,
                ", " + amount(wanted.count()) + wanted.option()));
    }

    private int endOfOptions(Entry entry) {
        if (entry.getOptions().isEmpty()) {
            return endOfUnit(entry);
        }
        ITextRegion last = Regions.of(entry.getOptions().get(entry.getOptions().size() - 1), null, 0, text);
        return last.getOffset() + last.getLength();
    }

    private static String options(MendSteps.Step step) {
        return step.options().stream().filter(option -> option.count() > 0)
                .map(option -> ", " + amount(option.count()) + option.option()).collect(Collectors.joining());
    }

    private static String amount(int count) {
        return count == 1 ? "" : count + " ";
    }

    private List<TextChange> replace(Entry entry, ReplaceUnit unit, String options) {
        List<TextChange> changes = new ArrayList<>();
        region(entry, ForcePackage.Literals.ENTRY__WHAT).ifPresent(at -> {
            int end = endOfOptions(entry);
            String strength = unit.strength().isPresent() ? " of " + unit.strength().getAsInt() : "";
            changes.add(new TextChange(at.getOffset(), end - at.getOffset(), unit.unit().name() + strength + options));
        });
        return changes;
    }

    private List<TextChange> pin(Entry entry, String billet) {
        Optional<ITextRegion> written = region(entry, ForcePackage.Literals.ENTRY__BILLET);
        if (written.isPresent()) {
            return List.of(change(written.get(), billet));
        }
        ITextRegion line = NodeModelUtils.findActualNodeFor(entry).getTextRegion();
        return List.of(new TextChange(line.getOffset(), 0, billet + ": "));
    }

    /** From the billet's name to what the line says next. */
    private List<TextChange> unpin(Entry entry) {
        return region(entry, ForcePackage.Literals.ENTRY__BILLET).map(written -> {
            int end = region(entry, ForcePackage.Literals.ENTRY__COUNT)
                    .or(() -> region(entry, ForcePackage.Literals.ENTRY__WHAT)).map(ITextRegion::getOffset).orElse(0);
            return List.of(new TextChange(written.getOffset(), Math.max(0, end - written.getOffset()), ""));
        }).orElse(List.of());
    }

    // The id of what was added by an earlier action is that of its place, a plus sign and what was added.
    private List<TextChange> add(AddUnit unit, String options) {
        String[] path = unit.parent().text().split("\\+");
        EObject parent = places.get(Id.of(path[0]));
        if (parent == null) {
            return List.of();
        }
        int depth = depth(parent) + path.length;
        EObject below = parent;
        StringBuilder added = new StringBuilder();
        for (int i = 1; i <= path.length; i++) {
            boolean here = i == path.length;
            if (here ? unit.support() : path[i].startsWith("support-")) {
                Optional<Line> support = i > 1 ? Optional.empty() : support(parent);
                below = support.isPresent() ? support.get() : below;
                if (here && support.isEmpty()) {
                    added.append(dots(depth)).append("support").append(lineEnd());
                }
                depth++;
            }
        }
        added.append(dots(depth));
        unit.billet().ifPresent(billet -> added.append(billet).append(": "));
        added.append(amount(unit.count())).append(unit.unit().name());
        unit.strength().ifPresent(strength -> added.append(" of ").append(strength));
        added.append(options);
        return List.of(insertBelow(below, added.append(lineEnd()).toString()));
    }

    /** Behind the last line that belongs to something. */
    private TextChange insertBelow(EObject parent, String added) {
        ICompositeNode node = NodeModelUtils.findActualNodeFor(parent);
        int end = Math.max(0, node.getEndOffset() - 1);
        int at = lines.startOf(lines.lineOf(end) + 1);
        boolean open = at > 0 && at == text.length() && text.charAt(at - 1) != '\n' && text.charAt(at - 1) != '\r';
        return new TextChange(at, 0, open ? lineEnd() + added : added);
    }

    private String lineEnd() {
        return text.contains("\r\n") ? "\r\n" : "\n";
    }

    private static int depth(EObject object) {
        int depth = -1;
        for (EObject at = object; at instanceof Line; at = at.eContainer()) {
            depth++;
        }
        return depth;
    }

    private static String dots(int depth) {
        return depth == 0 ? "" : "  ".repeat(depth) + ".".repeat(depth) + " ";
    }

    private static TextChange change(ITextRegion at, String instead) {
        return new TextChange(at.getOffset(), at.getLength(), instead);
    }

    private static Optional<ITextRegion> region(EObject object, EStructuralFeature feature) {
        List<INode> nodes = NodeModelUtils.findNodesForFeature(object, feature);
        return nodes.isEmpty() ? Optional.empty() : Optional.of(nodes.get(0).getTextRegion());
    }
}
