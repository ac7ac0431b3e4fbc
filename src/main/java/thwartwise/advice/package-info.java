/** What could be done about a boat: real changes, tried on it and ranked by what they buy. */
package thwartwise.advice;
