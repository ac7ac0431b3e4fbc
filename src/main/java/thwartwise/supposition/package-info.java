/** What somebody wants to try on a boat without keeping it, from the typed words to the boat. */
package thwartwise.supposition;
