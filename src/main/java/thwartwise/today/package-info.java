/** What must be answered with yes before somebody goes afloat today. */
package thwartwise.today;
