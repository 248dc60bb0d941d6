package org.cantonment.rules.view;

import java.util.List;

import org.cantonment.domain.common.Id;

/**
 * A support at this time.
 *
 * @param index its number among the supports, from 0
 * @param perCount with per, the rooms hold once for each full group of so many
 */
public record SupportView(Id id, String title, int index, List<Room> rooms, int perCount, Selector per,
        Permission permission, Id rule) {
}
