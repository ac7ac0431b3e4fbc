/**
 * What a page is made of, and its three forms: text of 80 columns, HTML and PDF. Knows type,
 * tables, bars and drawings, and nothing of boats.
 */
package thwartwise.page;
