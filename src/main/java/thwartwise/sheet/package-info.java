/**
 * The sheet to fill in with a pencil before the walk. A run of the walk gives its questions and
 * their order.
 */
package thwartwise.sheet;
