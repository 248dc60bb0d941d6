package org.cantonment.workbench.notation;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;

import org.cantonment.desk.CampaignDesk;
import org.cantonment.desk.DeskSnapshot;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Cancelled;
import org.cantonment.domain.common.Progress;
import org.cantonment.editor.api.FileGroup;
import org.cantonment.editor.api.Finding;
import org.cantonment.editor.api.Judgement;
import org.cantonment.editor.api.Taken;
import org.cantonment.notation.Document;
import org.cantonment.workbench.guests.GuestHouse;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.runtime.IPath;
import org.eclipse.xtext.util.CancelIndicator;

/** The books of one project, which see one another: the desk's own, so that nothing is read twice. */
final class CampaignGroup implements FileGroup {

    private final IProject project;
    private final CampaignDesk desk;

    CampaignGroup(IProject project) {
        this.project = project;
        desk = CampaignDesk.openUnjudged(project.getLocation().toPath(), GuestHouse.instance().guests(),
                CancelToken.NEVER, Progress.SILENT);
    }

    CampaignDesk desk() {
        return desk;
    }

    @Override
    public Taken take(IFile file, String text) {
        CampaignDesk.Taken taken = desk.take(path(file), text);
        return new Taken(taken.document().resource(), files(taken.renewed()));
    }

    @Override
    public List<Finding> ownFindings(IFile file, CancelIndicator cancel) {
        Document document = desk.document(path(file)).orElseThrow();
        document.read(cancel);
        return document.findings().stream().map(Findings::of).toList();
    }

    @Override
    public Judgement judge(BooleanSupplier cancelled) {
        try {
            DeskSnapshot snapshot = desk.judge(cancelled::getAsBoolean);
            return file -> snapshot.findings(path(file)).stream().map(finding -> Findings.of(finding, desk::text))
                    .toList();
        } catch (Cancelled madeRoom) {
            throw new CancellationException();
        }
    }

    @Override
    public Collection<IFile> letGo(IFile file) {
        return files(desk.letGo(path(file)));
    }

    static Path path(IFile file) {
        return file.getLocation().toPath();
    }

    private List<IFile> files(List<Path> paths) {
        List<IFile> files = new ArrayList<>();
        for (Path path : paths) {
            IPath within = IPath.fromPath(path).makeRelativeTo(project.getLocation());
            files.add(project.getFile(within));
        }
        return files;
    }
}
