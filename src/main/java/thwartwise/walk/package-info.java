/**
 * The conversation with a person holding a tape: which question comes next, what was understood,
 * going back. A pure function of the answers given so far; it owns no terminal, file or clock.
 */
package thwartwise.walk;
