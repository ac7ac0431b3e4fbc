/**
 * The conversation with a person who measures a boat: the next question, what was understood, going
 * back. It is a pure function of the answers given so far and has no terminal, file or clock.
 */
package thwartwise.walk;
