/**
 * The mechanism of asking, which knows nothing of boats: a question with its reader and its range,
 * the stored answers, and their replay.
 */
package thwartwise.walk.engine;
