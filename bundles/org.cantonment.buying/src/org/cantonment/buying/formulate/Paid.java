package org.cantonment.buying.formulate;

/** What orders cost, in the least unit of the currency of account. */
public record Paid(long goods, long sending, long off) {

    /** What is paid in all. */
    public long total() {
        return goods + sending - off;
    }
}
