/**
 * Real changes to a boat, one class for each kind. The gain of a change is found by inspecting the
 * changed boat.
 */
package thwartwise.remedy;
