/** Published limits and formulas with their sources, as data; formulas are Java chosen by name. */
package thwartwise.rules;
