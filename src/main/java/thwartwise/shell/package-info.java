/**
 * The start of the program, and every command that a person can type.
 *
 * <p>Words come in as an argument list or as a typed line; a command reads them, calls one thing
 * below, and prints its result. Only this package uses Spring Shell and the terminal.
 */
package thwartwise.shell;
