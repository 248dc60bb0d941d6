package org.cantonment.rules.view;

import java.util.List;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.rules.Cost;
import org.cantonment.domain.rules.Need;
import org.cantonment.domain.rules.Swap;

/** An option of a unit at this time: all lines about it put together. */
public record OptionView(String name, String title, int max, Cost cost, List<Need> adds, List<Swap> swaps,
        List<Need> drops, List<String> needs, List<String> groups, Id rule) {
}
