/**
 * One class a check: its question, role, condition, limit with source, and its wording. SI units.
 */
package thwartwise.checks;
