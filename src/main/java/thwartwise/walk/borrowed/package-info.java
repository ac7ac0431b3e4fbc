/** The short walk about a borrowed boat: some thirty questions, the rest assumed. */
package thwartwise.walk.borrowed;
