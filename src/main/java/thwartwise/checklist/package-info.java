/** What is looked at by hand and eye, and which of it concerns a boat. */
package thwartwise.checklist;
