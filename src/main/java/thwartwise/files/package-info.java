/**
 * Boats, drafts, rule sets, reports and records as files: strict reading with an answer for a
 * person, and writing that never leaves half a file behind. Jackson lives here and nowhere else.
 */
package thwartwise.files;
