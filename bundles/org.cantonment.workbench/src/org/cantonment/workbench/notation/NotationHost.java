package org.cantonment.workbench.notation;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BooleanSupplier;

import org.cantonment.editor.api.FileGroup;
import org.cantonment.editor.api.Finding;
import org.cantonment.editor.api.Fix;
import org.cantonment.editor.api.LanguageHost;
import org.cantonment.editor.api.OutlineNode;
import org.cantonment.editor.api.StyledRun;
import org.cantonment.editor.api.TextChange;
import org.cantonment.editor.api.TextKind;
import org.cantonment.editor.api.TokenNames;
import org.cantonment.notation.ide.BookIdeSetup;
import org.cantonment.workbench.Icons;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.resources.IResourceChangeEvent;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.xtext.documentation.IEObjectDocumentationProvider;
import org.eclipse.xtext.formatting2.FormatterRequest;
import org.eclipse.xtext.formatting2.IFormatter2;
import org.eclipse.xtext.formatting2.regionaccess.ITextRegionAccess;
import org.eclipse.xtext.formatting2.regionaccess.ITextReplacement;
import org.eclipse.xtext.formatting2.regionaccess.TextRegionAccessBuilder;
import org.eclipse.xtext.resource.XtextResource;
import org.eclipse.xtext.util.TextRegion;

import com.google.inject.Injector;

/** The notation as a language to be edited. */
public final class NotationHost implements LanguageHost {

    private final Map<IProject, CampaignGroup> groups = new HashMap<>();
    private Injector injector;

    NotationHost() {
        ResourcesPlugin.getWorkspace().addResourceChangeListener(event -> forget((IProject) event.getResource()),
                IResourceChangeEvent.PRE_DELETE | IResourceChangeEvent.PRE_CLOSE);
    }

    private synchronized void forget(IProject project) {
        groups.remove(project);
    }

    @Override
    public Set<String> fileExtensions() {
        return Books.EXTENSIONS;
    }

    @Override
    public synchronized Injector injector() {
        if (injector == null) {
            injector = new BookIdeSetup().createInjectorAndDoEMFRegistration();
        }
        return injector;
    }

    @Override
    public FileGroup group(IFile file) {
        return groupOf(file.getProject());
    }

    synchronized CampaignGroup groupOf(IProject project) {
        return groups.computeIfAbsent(project, key -> new CampaignGroup(key, injector()));
    }

    @Override
    public List<Finding> furtherFindings(IFile file, String text, BooleanSupplier cancelled) {
        return DeskLink.instance().furtherFindings(file, text, cancelled);
    }

    @Override
    public List<Fix> fixes(XtextResource resource, Finding finding) {
        return DataFixes.of(finding, resource.getParseResult().getRootNode().getText());
    }

    @Override
    public List<OutlineNode> outline(XtextResource resource) {
        return BookOutline.of(resource);
    }

    @Override
    public String documentation(EObject thing) {
        String said = injector().getInstance(IEObjectDocumentationProvider.class).getDocumentation(thing);
        return said == null ? "" : said;
    }

    @Override
    public List<TextChange> format(XtextResource resource, int offset, int length) {
        ITextRegionAccess access = injector().getInstance(TextRegionAccessBuilder.class).forNodeModel(resource)
                .create();
        FormatterRequest request = injector().getInstance(FormatterRequest.class).setTextRegionAccess(access)
                .setAllowIdentityEdits(false).addRegion(new TextRegion(offset, length));
        List<TextChange> changes = new ArrayList<>();
        for (ITextReplacement one : injector().getInstance(IFormatter2.class).format(request)) {
            changes.add(new TextChange(one.getOffset(), one.getLength(), one.getReplacementText()));
        }
        return changes;
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
            default -> TokenNames.kindOf(tokenName);
        };
    }

    @Override
    public ImageDescriptor icon(String name) {
        return Icons.descriptor(switch (name) {
            case "card" -> "name";
            case "proposal.KEYWORD" -> "word";
            case "proposal.REFERENCE", "proposal.VALUE" -> "name";
            default -> Books.EXTENSIONS.contains(name) ? name : "line";
        });
    }
}
