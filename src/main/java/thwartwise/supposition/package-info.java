/**
 * The changes that somebody wants to try on a boat without saving it, from the typed words to the
 * boat.
 */
package thwartwise.supposition;
