/** The questions about a boat, one class for each group, and the checks for unlikely answers. */
package thwartwise.walk.questions;
