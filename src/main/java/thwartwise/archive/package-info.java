/**
 * The folder of boats, drafts and records: its files, the chain of records, and the locks and
 * transactions that never leave half a file behind.
 */
package thwartwise.archive;
