package org.cantonment.rules.view;

import java.util.List;

import org.cantonment.domain.common.Id;

/** A billet at this time; it is filled through exactly one of its rooms. */
public record BilletView(String name, String title, List<Room> rooms, Id rule) {
}
