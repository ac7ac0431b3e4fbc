/**
 * The sheet to fill in with a pencil before the walk. Its questions and their order come from a run
 * of the walk itself.
 */
package thwartwise.sheet;
