package org.cantonment.workbench.guests;

import java.util.concurrent.Executor;

import org.cantonment.rules.api.RuleCheck;
import org.cantonment.rules.guest.Guests;
import org.cantonment.rules.guest.Origin;
import org.osgi.framework.Bundle;
import org.osgi.framework.BundleContext;
import org.osgi.framework.ServiceReference;
import org.osgi.util.tracker.ServiceTracker;

/** Leads services that are checks to the guests, and out again. */
final class Arrivals extends ServiceTracker<RuleCheck, ServiceReference<RuleCheck>> {

    private final Guests guests;
    private final DropFolder dropped;
    private final Executor door;

    Arrivals(BundleContext context, Guests guests, DropFolder dropped, Executor door) {
        super(context, RuleCheck.class, null);
        this.guests = guests;
        this.dropped = dropped;
        this.door = door;
    }

    // The service is made when it is first got, which is foreign code already.
    @Override
    public ServiceReference<RuleCheck> addingService(ServiceReference<RuleCheck> reference) {
        Origin origin = origin(reference.getBundle());
        door.execute(() -> guests.enter(reference, () -> context.getService(reference), origin));
        return reference;
    }

    @Override
    public void removedService(ServiceReference<RuleCheck> reference, ServiceReference<RuleCheck> same) {
        door.execute(() -> {
            guests.leave(same);
            context.ungetService(reference);
        });
    }

    private Origin origin(Bundle bundle) {
        return dropped.origin(bundle).orElseGet(() -> Origins.installed(bundle));
    }
}
