/** The report as JSON, as {@code --json} prints it and a record stores it. */
package thwartwise.files.report;
