/**
 * Pictures of an inspected boat, drawn from the same solids and balances that its figures come
 * from.
 *
 * <p>A picture is one SVG element that refers to nothing outside itself. What is told by tone is
 * told by hatching or dashes as well, and every hatching is plain strokes, since not every printer
 * draws patterns. Words that somebody typed stand in the caption, never among the lettering.
 */
package thwartwise.picture;
