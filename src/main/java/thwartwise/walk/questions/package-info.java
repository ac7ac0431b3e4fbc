/**
 * The questions about a boat, one class for each group of them, and what makes an answer unlikely.
 */
package thwartwise.walk.questions;
