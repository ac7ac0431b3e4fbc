/** The short walk about a borrowed boat: a dozen questions, the rest assumed. */
package thwartwise.walk.borrowed;
