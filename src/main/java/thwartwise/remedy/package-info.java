/**
 * Real changes that could be made to a boat, one class a kind. They say nothing of what a change
 * buys: that is found by inspecting the changed boat.
 */
package thwartwise.remedy;
