/**
 * Where the program starts, and every command a person can type.
 *
 * <p>Words come in as an argument list or as a typed line; a command reads them, calls one thing
 * below, and prints what it returns. Spring Shell and the terminal live here and nowhere else.
 */
package thwartwise.shell;
