/**
 * Published limits and formulas with their sources, as data; a formula is a Java class chosen by
 * name.
 */
package thwartwise.rules;
