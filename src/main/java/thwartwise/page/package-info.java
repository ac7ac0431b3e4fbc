/**
 * The pieces of a page, and its three forms: text of 80 columns, HTML and PDF. It knows type,
 * tables, bars and drawings, and nothing of boats.
 */
package thwartwise.page;
