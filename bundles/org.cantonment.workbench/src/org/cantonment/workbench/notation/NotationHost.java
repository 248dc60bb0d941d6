package org.cantonment.workbench.notation;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.cantonment.editor.api.FileGroup;
import org.cantonment.editor.api.LanguageHost;
import org.cantonment.editor.api.OutlineNode;
import org.cantonment.editor.api.StyledRun;
import org.cantonment.editor.api.Suggestion;
import org.cantonment.editor.api.TextChange;
import org.cantonment.editor.api.TextKind;
import org.cantonment.editor.api.TokenNames;
import org.cantonment.notation.Notation;
import org.cantonment.notation.ide.BookIdeSetup;
import org.cantonment.notation.ide.CheckHelp;
import org.cantonment.notation.ide.Completion;
import org.cantonment.notation.ide.Proposal;
import org.cantonment.notation.text.Layout;
import org.cantonment.workbench.Icons;
import org.cantonment.workbench.guests.GuestHouse;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.resources.IResourceChangeEvent;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.xtext.resource.XtextResource;

import com.google.inject.Injector;

/** The notation as a language to be edited. */
public final class NotationHost implements LanguageHost {

    private static final Pattern DOTS = Pattern.compile("(?<dots>\\s*\\.+)(?<rest>.*)");

    private final Map<IProject, CampaignGroup> groups = new HashMap<>();

    NotationHost() {
        Notation.setUpBy(() -> new BookIdeSetup().createInjectorAndDoEMFRegistration());
        ResourcesPlugin.getWorkspace().addResourceChangeListener(event -> forget((IProject) event.getResource()),
                IResourceChangeEvent.PRE_DELETE | IResourceChangeEvent.PRE_CLOSE);
        GuestHouse.instance().guests().onChange(new JudgingAnew(this::groups)::soon);
    }

    private synchronized Map<IProject, CampaignGroup> groups() {
        return Map.copyOf(groups);
    }

    private synchronized void forget(IProject project) {
        groups.remove(project);
    }

    @Override
    public Set<String> fileExtensions() {
        return Notation.ENDINGS;
    }

    @Override
    public Injector injector() {
        return Notation.get().injector();
    }

    @Override
    public FileGroup group(IFile file) {
        return groupOf(file.getProject());
    }

    synchronized CampaignGroup groupOf(IProject project) {
        return groups.computeIfAbsent(project, CampaignGroup::new);
    }

    @Override
    public List<Suggestion> complete(XtextResource resource, String text, int offset) {
        List<Proposal> all = new ArrayList<>(
                CheckHelp.proposals(text, offset, GuestHouse.instance().guests().known()));
        all.addAll(injector().getInstance(Completion.class).at(resource, text, offset));
        return all.stream()
                .map(one -> new Suggestion(one.text(), one.description(), one.name() ? "name" : "word", one.offset()))
                .toList();
    }

    @Override
    public List<OutlineNode> outline(XtextResource resource) {
        return BookOutline.of(resource);
    }

    @Override
    public String documentation(EObject thing) {
        return Documentation.of(thing);
    }

    @Override
    public String documentation(String text, int offset) {
        return CheckHelp.hover(text, offset, GuestHouse.instance().guests().known());
    }

    @Override
    public List<TextChange> format(String text, int offset, int length) {
        return Layout.of(text).stream()
                .filter(change -> change.offset() <= offset + length && change.offset() + change.length() >= offset)
                .map(change -> new TextChange(change.offset(), change.length(), change.text())).toList();
    }

    @Override
    public List<StyledRun> finerKinds(XtextResource resource) {
        return NameKinds.of(resource);
    }

    @Override
    public TextKind kindOfToken(String tokenName) {
        return switch (tokenName) {
            case "RULE_CAPITAL", "RULE_SMALL" -> TextKind.NAME;
            case "RULE_DOT1", "RULE_DOT2", "RULE_DOT3", "RULE_DOT4" -> TextKind.SIGN;
            case "','", "':'", "'/'" -> TextKind.PLAIN;
            default -> TokenNames.kindOf(tokenName);
        };
    }

    /** A dotted line is followed by its sibling; a line with nothing behind its dots was the end of them. */
    @Override
    public String nextLine(String line) {
        Matcher dots = DOTS.matcher(line);
        if (!dots.matches()) {
            return "";
        }
        return dots.group("rest").isBlank() ? null : dots.group("dots") + " ";
    }

    @Override
    public ImageDescriptor icon(String name) {
        return Icons.descriptor(name.equals("card") ? "name" : name);
    }
}
