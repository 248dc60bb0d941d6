package org.cantonment.stock.eras;

import java.util.List;
import java.util.Optional;

import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Progress;
import org.cantonment.stock.Catalogue;
import org.cantonment.stock.supply.Supply;

/**
 * A shelf in every era.
 *
 * @param eras what it can field in each, in the order asked
 * @param carries what carries over from each era to each other, row by row
 */
public record ShelfEras(List<EraAnswer> eras, List<Carry> carries) {

    public ShelfEras {
        eras = List.copyOf(eras);
        carries = List.copyOf(carries);
    }

    /**
     * What a supply can field in each of these eras.
     *
     * @param side only units of this side and anybody's are asked about; empty for all
     * @throws org.cantonment.domain.common.Cancelled if the token says so
     */
    public static ShelfEras of(
            Catalogue catalogue, Supply supply, List<EraUnits> eras, Optional<Id> side, CancelToken cancel,
            Progress progress) {
        return new EraReckoning(catalogue, supply, side, cancel, progress).reckon(eras);
    }

    /** What carries over from the one to the other. */
    public Optional<Carry> carry(Id from, Id to) {
        return carries.stream().filter(carry -> carry.from().equals(from) && carry.to().equals(to)).findFirst();
    }
}
