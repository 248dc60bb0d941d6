package org.cantonment.workbench.tests.visitor;

import org.cantonment.rules.api.RuleCheck;
import org.osgi.framework.BundleActivator;
import org.osgi.framework.BundleContext;

/** Brings one check, as the plug-in's manifest says. */
public final class FordPlugin implements BundleActivator {

    /** The header that names the check. */
    public static final String NAME = "Check-Name";
    /** The header that says what it says, or how it misbehaves. */
    public static final String WORDS = "Check-Words";

    @Override
    public void start(BundleContext context) {
        var headers = context.getBundle().getHeaders();
        context.registerService(RuleCheck.class, new FordCheck(headers.get(NAME), headers.get(WORDS)), null);
    }

    @Override
    public void stop(BundleContext context) {
        // the framework takes the service back
    }
}
