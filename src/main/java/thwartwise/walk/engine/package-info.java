/**
 * Asking, without a word about boats: a question with its reader and its range, the answers kept so
 * far, and their replay.
 */
package thwartwise.walk.engine;
