package org.cantonment.editor.model;

import java.util.ArrayList;
import java.util.List;

import org.cantonment.editor.api.Finding;
import org.cantonment.editor.api.Severity;
import org.eclipse.xtext.resource.XtextResource;
import org.eclipse.xtext.util.CancelIndicator;
import org.eclipse.xtext.validation.CheckMode;
import org.eclipse.xtext.validation.Issue;

/** What the language itself finds: slips of syntax, names that lead nowhere, its own checks. */
public final class LanguageFindings {

    private LanguageFindings() {
    }

    /**
     * Looks for the findings. To be called on the language worker.
     *
     * @param resource an up-to-date resource
     * @param tools the language's services
     * @param cancel asked now and then
     * @return the findings in the order in which they were made; places lie in the text
     * @throws org.eclipse.xtext.service.OperationCanceledError or the like, if cancelled
     */
    public static List<Finding> of(XtextResource resource, XtextTools tools, CancelIndicator cancel) {
        List<Issue> issues = tools.validator().validate(resource, CheckMode.NORMAL_AND_FAST, cancel);
        tools.cancelling().checkCanceled(cancel);
        int textLength = resource.getParseResult() == null ? 0
                : resource.getParseResult().getRootNode().getTotalLength();
        List<Finding> findings = new ArrayList<>();
        for (Issue issue : issues) {
            if (issue.getSeverity() != org.eclipse.xtext.diagnostics.Severity.IGNORE) {
                findings.add(finding(issue, textLength));
            }
        }
        return findings;
    }

    private static Finding finding(Issue issue, int textLength) {
        int offset = issue.getOffset() == null ? 0 : Math.min(issue.getOffset(), textLength);
        int length = issue.getLength() == null ? 0 : Math.min(issue.getLength(), textLength - offset);
        List<String> data = issue.getData() == null ? List.of() : List.of(issue.getData());
        String code = issue.getCode() == null ? "" : issue.getCode();
        return new Finding(severity(issue), code, issue.getMessage(), "", offset, length, data);
    }

    private static Severity severity(Issue issue) {
        return switch (issue.getSeverity()) {
            case ERROR -> Severity.BREACH;
            case WARNING -> Severity.CAUTION;
            default -> Severity.NOTE;
        };
    }
}
