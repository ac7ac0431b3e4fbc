/**
 * Pictures of an inspected boat, drawn from the solids and equilibria of its figures.
 *
 * <p>A picture is one SVG element that refers to nothing outside itself. Whatever a tone shows,
 * hatching or dashes show too, and every hatching is plain strokes, because not every printer draws
 * patterns. Words that somebody typed stand in the caption, never among the lettering.
 */
package thwartwise.picture;
