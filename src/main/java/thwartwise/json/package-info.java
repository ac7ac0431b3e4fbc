/**
 * JSON as text and as a tree, read strictly: every value that cannot be used is refused in one line
 * that says where it stands, what was there, what was wanted and what to do.
 */
package thwartwise.json;
