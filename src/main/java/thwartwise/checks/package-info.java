/** One class for each check: its question, role, load case and limit with source. SI units. */
package thwartwise.checks;
