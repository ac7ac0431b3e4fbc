/** What the boat is loaded with and what is done to it, as data: for records, pages and checks. */
package thwartwise.loadcase;
