package org.cantonment.rules.guest;

import org.cantonment.domain.common.CancelToken;

/** A call of foreign code. */
@FunctionalInterface
interface Call<T> {

    /**
     * @param stop says when nobody waits for the answer any more
     * @throws Exception whatever foreign code throws
     */
    T make(CancelToken stop) throws Exception;
}
