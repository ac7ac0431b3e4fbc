/** The short walk about a borrowed boat: at most twenty-five questions, the rest assumed. */
package thwartwise.walk.borrowed;
