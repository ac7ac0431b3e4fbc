/**
 * What people type, read into SI with the unit understood kept next to it. Metre, kilogram, cubic
 * metre, watt inside; feet, inches, pounds, stones and litres at this edge only.
 */
package thwartwise.measure;
