/**
 * The folder of boats, drafts and records: what is stored there, the chain of records, and the
 * locks and transactions that never leave half a file behind.
 */
package thwartwise.archive;
