package org.cantonment.domain.shelf;

import org.cantonment.domain.common.Id;

/** What a player gets done at the bench. */
public record WishBench(Id id, BenchTime time) {
}
