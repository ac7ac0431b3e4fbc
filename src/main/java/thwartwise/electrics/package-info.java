/**
 * Electrical equipment as read from labels and measured, and its sums: how long a battery lasts,
 * what a panel gives back, what a wire loses and which fuse guards it. Plain numbers, no boat.
 *
 * <p>SI: volts, amperes, coulombs (an ampere-hour is 3600), seconds, watts, metres, square metres,
 * radians.
 */
package thwartwise.electrics;
