/**
 * Reading what people type, into SI with the typed unit next to it. Metres, kilograms, cubic metres
 * and watts are used inside the program; feet, inches, pounds, stones and litres only at this edge.
 */
package thwartwise.measure;
