package org.cantonment.rules.view;

import org.cantonment.domain.common.Id;

/** One line of a limit, looked up. */
public sealed interface LimitLine permits BoundView, TakingView, AlwaysView, KeepView, BeforeView {

    /** The place of the line. */
    Id id();

    /** The title of the book that says it. */
    String book();
}
