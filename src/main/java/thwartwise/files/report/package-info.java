/** The report as JSON, as {@code --json} prints it and a record keeps it. */
package thwartwise.files.report;
